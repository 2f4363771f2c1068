using System.Buffers;

namespace HintBook.Audit.Mentions;

/// <summary>Tells whether a word that is also a code of letters is set or spelt where it stands in small letters.</summary>
internal sealed class WordCodes(WordNumbers numbers)
{
    private const string Quotes = "\"“”„‟«»‘’'‚‹›「」『』*";
    private static readonly SearchValues<char> Vowels = SearchValues.Create("aeiouy");

    // The beginnings of words in the languages that the audit knows.
    private static readonly HashSet<string> Onsets =
    [
        .. ("bl br ch cl cr dr dw fl fr gh gl gn gr kl kn kr ll ph pf pl pn pr ps qu rh sc sh sk sl sm sn sp sq st sv sw sz th tr ts tw vr wh wr zw")
            .Split(' '),
    ];

    private readonly HashSet<string> setting = [.. FoldedText.BareWords(numbers.Language.Setting)];

    private readonly Answers answers = new(numbers);

    private readonly HashSet<string> verbsAhead =
        [.. FoldedText.BareWords(Languages.RemarksIn.Of(numbers.Language.Code).VerbsAhead).Where(word => word is not ("to" or "not" or "never"))];

    /// <summary>Whether letters can be no word: "kqvr".</summary>
    public static bool IsNoWord(ReadOnlySpan<char> letters)
    {
        if (letters.ContainsAnyExceptInRange('a', 'z') || letters.Length < 2)
            return false;
        var vowels = letters.IndexOfAny(Vowels);
        return vowels < 0 || (vowels > 1 && !Onsets.Contains(letters[..2].ToString())) || vowels > 3;
    }

    /// <summary>Whether a word is set or spelt: in quotes, alone, in capitals within a sentence, or beside a word such as "spell".</summary>
    public bool IsSet(FoldedText text, string source, int at)
    {
        var word = text.Words[at];
        // "The film may buffer."
        if (at > 0 && word.Parting == Parting.Space && verbsAhead.Contains(text.Of(text.Words[at - 1]).ToString()) && !IsQuoted(source, word.Start, word.End))
            return false;
        return text.Words.Length <= 2
            || IsNoWord(text.Of(word))
            || IsSmallAtStart(source, at == 0, word.Start)
            || IsQuoted(source, word.Start, word.End)
            || IsCapitalWithin(text, source, at)
            || IsNearSetting(text, source, at)
            || IsAloneBesideSetting(text, at)
            || answers.Is(text, source, at);
    }

    // "What glows when the fire is out? Ember. Set it."
    private bool IsAloneBesideSetting(FoldedText text, int at)
    {
        var first = at;
        while (first > 0 && text.Words[first].Parting < Parting.Stop
            && (numbers.UseOf(numbers.Of(text.Of(text.Words[first - 1]))) & WordUse.Determiner) != WordUse.Plain)
            first--;
        if (numbers.Language.IsUnspaced || (first > 0 && text.Words[first].Parting < Parting.Stop)
            || (at + 1 < text.Words.Length && text.Words[at + 1].Parting < Parting.Stop))
            return false;
        var stops = 0;
        for (var i = at + 1; i < text.Words.Length && (stops += text.Words[i].Parting >= Parting.Stop ? 1 : 0) < 2; i++)
        {
            if (setting.Contains(text.Of(text.Words[i]).ToString()))
                return true;
        }

        stops = 0;
        for (var i = first - 1; i >= 0 && stops < 1; i--)
        {
            if (setting.Contains(text.Of(text.Words[i]).ToString()))
                return true;
            stops += text.Words[i].Parting >= Parting.Stop ? 1 : 0;
        }

        return false;
    }

    // Sentences begin with a capital: "harbor, without the u" is no sentence about a harbor.
    private static bool IsSmallAtStart(string source, bool isFirst, int start) => isFirst && char.IsLower(source[start]);

    private static bool IsQuoted(string source, int start, int end) =>
        start > 0 && end < source.Length
        && Quotes.Contains(Inner(source, start - 1, -1), StringComparison.Ordinal) && Quotes.Contains(Inner(source, end, 1), StringComparison.Ordinal);

    private static char Inner(string source, int at, int step)
    {
        while (at > 0 && at < source.Length - 1 && source[at] is ' ' or '\u00A0' or '\u202F' or ',' or '.')
            at += step;
        return source[at];
    }

    // Nouns have a capital in German.
    private bool IsCapitalWithin(FoldedText text, string source, int at) =>
        !numbers.Language.HasCompounds && at > 0 && text.Words[at].Parting < Parting.Colon && char.IsUpper(source[text.Words[at].Start]);

    private bool IsNearSetting(FoldedText text, string source, int at)
    {
        if (numbers.Language.IsUnspaced)
        {
            var start = source.LastIndexOf('。', text.Words[at].Start) + 1;
            var end = source.IndexOf('。', text.Words[at].End);
            var sentence = source.AsSpan(start, (end < 0 ? source.Length : end) - start);
            foreach (var said in numbers.Language.Setting.Split(' '))
            {
                if (sentence.Contains(said, StringComparison.Ordinal))
                    return true;
            }

            return false;
        }

        var from = at;
        while (from > 0 && text.Words[from].Parting < Parting.Stop)
            from--;
        for (var i = from; i < text.Words.Length && (i <= at || text.Words[i].Parting < Parting.Stop); i++)
        {
            var word = text.Of(text.Words[i]);
            if (i != at && (setting.Contains(word.ToString()) || (numbers.Language.HasCompounds && word.EndsWith("wort"))))
                return true;
        }

        return false;
    }
}
