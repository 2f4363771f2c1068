using HintBook.Audit.Mentions.Languages;
using HintBook.Audit.Mentions.Signs;

namespace HintBook.Audit.Mentions;

/// <summary>
/// Finds codes of letters that are told by some of them: "five letters, T at the front and N at the back", "ow with a G before it and a B behind", "hers and a
/// u, shuffled", "starfish without the fish". All letters that are told must be in the code, where they are told to be. All of it is a doubt.
/// </summary>
internal sealed class LetterRiddles
{
    private const int Shortest = 3, Longest = 12, ShortestWord = 2, MostLetters = 4;
    private readonly CodeTable codes;
    private readonly HashSet<string> letters, shuffled, beside, without;

    public LetterRiddles(CodeTable codes, AuditLanguage language)
    {
        this.codes = codes;
        var words = AnswersIn.Of(language.Code);
        (letters, shuffled, beside, without) = (
            FoldedText.SetOf(words.Letters), FoldedText.SetOf(words.Shuffled), FoldedText.SetOf(words.Beside),
            FoldedText.SetOf(words.Without));
        Shuffled = [.. words.Shuffled.Split(' ', StringSplitOptions.RemoveEmptyEntries), .. words.Without.Split(' ', StringSplitOptions.RemoveEmptyEntries)];
    }

    /// <summary>The words one of which a text must have for <see cref="Reordered"/> to find anything.</summary>
    public string[] Shuffled { get; }

    /// <summary>Adds every mention in a text to a list.</summary>
    /// <param name="text">The text as words.</param>
    /// <param name="tokens">What they say.</param>
    /// <param name="told">The letters that are told, with their first and last word.</param>
    /// <param name="found">Gets the mentions.</param>
    public void In(FoldedText text, ReadOnlySpan<Token> tokens, (string Letters, int First, int Last)[] told, List<FoundSecret> found)
    {
        if (told.Length == 0 || letters.Count == 0)
            return;
        if (told.Length is 2 or 3)
            Crossword(text, tokens, told, found);
        var all = string.Concat(told.Select(one => one.Letters));
        var (isBeside, isShuffled) = (text.HasAny(beside, 0, text.Words.Length), text.HasAny(shuffled, 0, text.Words.Length));
        if (all.Length > MostLetters || !(isBeside || isShuffled))
            return;
        var ordered = Ordered(all);
        for (var at = 0; at < text.Words.Length; at++)
        {
            if (text.Words[at].Length < ShortestWord || Array.Exists(told, one => one.First <= at && one.Last >= at))
                continue;
            var word = text.Of(text.Words[at]).ToString();
            foreach (var code in codes.All)
            {
                if (code.Length != word.Length + all.Length)
                    continue;
                var place = code.IndexOf(word, StringComparison.Ordinal);
                if ((isBeside && place >= 0 && Ordered(code.Remove(place, word.Length)) == ordered) || (isShuffled && Ordered(code) == Ordered(word + all)))
                    Report(code, Math.Min(at, told[0].First), Math.Max(at, told[^1].Last), found);
            }
        }
    }

    /// <summary>Adds codes that are a word with its letters in another order, or without a part, to a list.</summary>
    public void Reordered(FoldedText text, List<FoundSecret> found)
    {
        var (isShuffled, isWithout) = (text.HasAny(shuffled, 0, text.Words.Length), text.HasAny(without, 0, text.Words.Length));
        for (var at = 0; at < text.Words.Length && (isShuffled || isWithout); at++)
        {
            if (text.Words[at].Length < Shortest)
                continue;
            var word = text.Of(text.Words[at]).ToString();
            foreach (var code in isShuffled ? codes.WithSymbolsOf(word) : [])
            {
                if (code != word && !char.IsAsciiDigit(code[0]))
                    Report(code, at, at, found);
            }

            for (var other = at + 1; other < text.Words.Length && isWithout; other++)
            {
                var part = text.Of(text.Words[other]);
                if (part.Length < Shortest || part.Length >= word.Length)
                    continue;
                if (word.AsSpan().EndsWith(part))
                    Report(word[..^part.Length], at, other, found);
                if (word.AsSpan().StartsWith(part))
                    Report(word[part.Length..], at, other, found);
            }
        }
    }

    private void Crossword(FoldedText text, ReadOnlySpan<Token> tokens, (string Letters, int First, int Last)[] told, List<FoundSecret> found)
    {
        for (var i = 0; i + 1 < tokens.Length; i++)
        {
            if (!tokens[i].Is(Sign.Number) || tokens[i].Value is < Shortest or > Longest || !text.Has(letters, tokens[i + 1].First))
                continue;
            foreach (var code in codes.All)
            {
                if (code.Length == tokens[i].Value && code.StartsWith(told[0].Letters, StringComparison.Ordinal)
                    && Array.Exists(told[1..], one => code.EndsWith(one.Letters, StringComparison.Ordinal))
                    && Array.TrueForAll(told, one => code.Contains(one.Letters, StringComparison.Ordinal)))
                    Report(code, Math.Min(tokens[i].First, told[0].First), Math.Max(tokens[i + 1].Last, told[^1].Last), found);
            }
        }
    }

    private void Report(string code, int first, int last, List<FoundSecret> found)
    {
        foreach (var (secret, _) in codes.Of(code))
            found.Add(new(secret, first, last, Sure: false, Words: 1, IsCode: true));
    }

    private static string Ordered(string symbols) => string.Concat(symbols.Order());
}
