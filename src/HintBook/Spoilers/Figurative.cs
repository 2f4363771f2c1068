using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>Whether the word for a thing says what something abstract is, speaks of the page itself, or is somebody's name: <see cref="NotMeant"/>.</summary>
internal sealed class Figurative
{
    private const int MostBefore = 6;
    private const int MostBetween = 3;
    private const int ShortestWord = 4;
    private const int ShortestStem = 3;
    private const Gap Ending = Gap.Stop | Gap.Paragraph | Gap.Line | Gap.Comma;
    private static readonly char[] Stops = ['.', '!', '?', '\n', '。', '؟', '！', '？'];
    private readonly WordList words;
    private readonly HashSet<string> copulas;
    private readonly HashSet<string> abstracts;
    private readonly HashSet<string> titles;
    private readonly HashSet<string> sons;
    private readonly string[] endings;
    private readonly string[] screens;

    public Figurative(WordList words)
    {
        this.words = words;
        var notMeant = NotMeant.Of(words.Language.Code);
        var reader = new WordReader(words);
        (copulas, abstracts, titles, sons) = (Set(notMeant.Copulas), Set(notMeant.Abstract), Set(notMeant.Titles), Set(notMeant.SonOf));
        endings = [.. Set(notMeant.AbstractEndings)];
        screens = notMeant.Screens.Split("; ", StringSplitOptions.RemoveEmptyEntries);

        HashSet<string> Set(string list)
        {
            var all = new HashSet<string>(StringComparer.Ordinal);
            foreach (var word in list.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                reader.Read(word);
                all.Add(reader.Bare(reader.Words[0]).ToString());
            }

            return all;
        }
    }

    /// <summary>Whether a word that stands for a thing doesn't mean one here.</summary>
    public bool Has(WordReader text, string source, int first, int last) =>
        IsNameOfSomebody(text, first, last) || IsWhatSomethingIs(text, first) || IsOnScreen(text, source, first, last);

    // "Dank an Herrn Schlüssel", شكر لمفتاح بن سالم.
    private bool IsNameOfSomebody(WordReader text, int first, int last) =>
        (first > 0 && IsOne(titles, text, first - 1)) || (last + 1 < text.Words.Length && IsOne(sons, text, last + 1));

    // "Perseverance is the key", "Beharrlichkeit ist hier der Schlüssel".
    private bool IsWhatSomethingIs(WordReader text, int first)
    {
        var at = first - 1;
        for (; at >= first - MostBetween && at > 0 && (text.Words[at + 1].Gap & Ending) == Gap.None && !IsOne(copulas, text, at); at--)
        {
            if (text.Words[at].Length > ShortestWord)
                return false;
        }

        if (at <= 0 || !IsOne(copulas, text, at))
            return words.Language.Prefixes.Length > 0 && at >= 0 && IsAbstract(text, at);
        for (var i = at - 1; i >= 0 && i >= at - MostBefore && (text.Words[i + 1].Gap & (Gap.Stop | Gap.Paragraph)) == Gap.None; i--)
        {
            if (IsAbstract(text, i))
                return true;
        }

        return false;
    }

    private bool IsAbstract(WordReader text, int at)
    {
        var bare = text.Bare(text.Words[at]);
        if (abstracts.GetAlternateLookup<ReadOnlySpan<char>>().Contains(bare)
            || (bare.StartsWith("ال") && abstracts.GetAlternateLookup<ReadOnlySpan<char>>().Contains(bare[2..])))
            return true;
        foreach (var ending in endings)
        {
            if (bare.Length >= ending.Length + ShortestStem && bare.EndsWith(ending))
                return true;
        }

        return false;
    }

    // "Tap the round button at the top of this page": the sentence speaks of what it stands on.
    private bool IsOnScreen(WordReader text, string source, int first, int last)
    {
        if (screens.Length == 0)
            return false;
        var start = source.LastIndexOfAny(Stops, text.Words[first].Start) + 1;
        var end = source.IndexOfAny(Stops, text.Words[last].End);
        var sentence = source.AsSpan(start, (end < 0 ? source.Length : end) - start);
        foreach (var screen in screens)
        {
            if (sentence.Contains(screen, StringComparison.OrdinalIgnoreCase))
                return true;
        }

        return false;
    }

    private static bool IsOne(HashSet<string> all, WordReader text, int at) =>
        all.Count > 0 && all.GetAlternateLookup<ReadOnlySpan<char>>().Contains(text.Bare(text.Words[at]));
}
