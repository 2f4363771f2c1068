using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>
/// Whether the word for a thing says what something abstract is, speaks of the page itself or of shops and lives, is somebody's name (<see cref="NotMeant"/>),
/// or means something else beside another word (<see cref="OtherSenses"/>).
/// </summary>
internal sealed class Figurative
{
    private const int MostBefore = 6;
    private const int MostBetween = 3;
    private const int ShortestWord = 4;
    private const int ShortestStem = 3;
    private const int MostAround = 16;
    private const Gap Ending = Gap.Stop | Gap.Paragraph | Gap.Line | Gap.Comma;
    private static readonly char[] Stops = ['.', '!', '?', '\n', '。', '؟', '！', '？'];
    private readonly WordList words;
    private readonly HashSet<string> copulas;
    private readonly HashSet<string> abstracts;
    private readonly HashSet<string> titles;
    private readonly HashSet<string> sons;
    private readonly string[] endings;
    private readonly string[] screens;
    private readonly string[] topics;
    private readonly HashSet<string> readers;
    private readonly Dictionary<int, List<string>> senses = [];
    private readonly Dictionary<string, List<string>> sensesOfRuns = [];

    public Figurative(WordList words)
    {
        this.words = words;
        var notMeant = NotMeant.Of(words.Language.Code);
        var reader = new WordReader(words);
        (copulas, abstracts, titles, sons) = (Set(notMeant.Copulas), Set(notMeant.Abstract), Set(notMeant.Titles), Set(notMeant.SonOf));
        endings = [.. Set(notMeant.AbstractEndings)];
        screens = notMeant.Screens.Split("; ", StringSplitOptions.RemoveEmptyEntries);
        topics = notMeant.Topics.Split("; ", StringSplitOptions.RemoveEmptyEntries);
        readers = Set(notMeant.Reader);
        AddSenses(reader);

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
        IsNameOfSomebody(text, first, last) || IsWhatSomethingIs(text, first) || IsElsewhere(text, source, first, last)
        || HasOtherSense(text, source, first, last);

    private void AddSenses(WordReader reader)
    {
        var hasNoSpaces = words.Language.HasNoSpaces;
        foreach (var entry in OtherSenses.Of(words.Language.Code).Split("; ", StringSplitOptions.RemoveEmptyEntries))
        {
            var colon = entry.IndexOf(':', StringComparison.Ordinal);
            string[] beside = entry[(colon + 2)..].Split(hasNoSpaces ? ", " : " ", StringSplitOptions.RemoveEmptyEntries);
            foreach (var noun in entry[..colon].Split(' '))
            {
                if (hasNoSpaces)
                {
                    sensesOfRuns[noun] = [.. beside];
                    continue;
                }

                reader.Read(noun);
                var number = words.NumberOf(reader.Bare(reader.Words[0]));
                if (number < 0)
                    continue;
                if (!senses.TryGetValue(number, out var all))
                    senses[number] = all = [];
                foreach (var word in beside)
                {
                    reader.Read(word);
                    var bare = reader.Bare(reader.Words[0]).ToString();
                    all.Add(word[0] == '*' ? "*" + bare : word[^1] == '*' ? bare + "*" : bare);
                }
            }
        }
    }

    // "The seal lay on the rocks", "die Straße macht eine Schleife".
    private bool HasOtherSense(WordReader text, string source, int first, int last)
    {
        if (sensesOfRuns.Count > 0)
        {
            var (start, end) = Sentence(text, source, first, last);
            return sensesOfRuns.TryGetValue(source[text.Words[first].Start..text.Words[last].End], out var beside)
                && beside.Exists(one => source.AsSpan(start, end - start).Contains(one, StringComparison.Ordinal));
        }

        if (!senses.TryGetValue(text.Words[last].Id, out var all))
            return false;
        for (var i = first - 1; i >= 0 && i >= first - MostAround && (text.Words[i + 1].Gap & (Gap.Stop | Gap.Paragraph)) == Gap.None; i--)
        {
            if (IsBeside(all, text.Bare(text.Words[i])))
                return true;
        }

        for (var i = last + 1; i < text.Words.Length && i <= last + MostAround && (text.Words[i].Gap & (Gap.Stop | Gap.Paragraph)) == Gap.None; i++)
        {
            if (IsBeside(all, text.Bare(text.Words[i])))
                return true;
        }

        return false;
    }

    private static bool IsBeside(List<string> all, ReadOnlySpan<char> bare)
    {
        foreach (var one in all)
        {
            if (one[0] == '*' ? bare.EndsWith(one.AsSpan(1)) : one[^1] == '*' ? bare.StartsWith(one.AsSpan(0, one.Length - 1)) : bare.SequenceEqual(one))
                return true;
        }

        return false;
    }

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

    // "Tap the round button at the top of this page": the sentence speaks of what it stands on. "Does the stamp on the parcel have to be first class?": or of
    // what lies far from any box, unless it speaks to the reader.
    private bool IsElsewhere(WordReader text, string source, int first, int last)
    {
        if (screens.Length == 0)
            return false;
        var (start, end) = Sentence(text, source, first, last);
        var sentence = source.AsSpan(start, end - start);
        return HasAny(screens, sentence, isWord: false)
            || (HasAny(topics, sentence, isWord: !words.Language.HasNoSpaces) && !SpeaksToReader(text, start, end));
    }

    private static bool HasAny(string[] phrases, ReadOnlySpan<char> sentence, bool isWord)
    {
        foreach (var phrase in phrases)
        {
            if (sentence.IndexOf(phrase, StringComparison.OrdinalIgnoreCase) is >= 0 and var at && !(isWord && at > 0 && char.IsLetter(sentence[at - 1])))
                return true;
        }

        return false;
    }

    private bool SpeaksToReader(WordReader text, int start, int end)
    {
        for (var i = 0; readers.Count > 0 && i < text.Words.Length; i++)
        {
            if (text.Words[i].Start >= start && text.Words[i].End <= end && IsOne(readers, text, i))
                return true;
        }

        return false;
    }

    private static (int Start, int End) Sentence(WordReader text, string source, int first, int last)
    {
        var start = source.LastIndexOfAny(Stops, text.Words[first].Start) + 1;
        var end = source.IndexOfAny(Stops, text.Words[last].End);
        return (start, end < 0 ? source.Length : end);
    }

    private static bool IsOne(HashSet<string> all, WordReader text, int at) =>
        all.Count > 0 && all.GetAlternateLookup<ReadOnlySpan<char>>().Contains(text.Bare(text.Words[at]));
}
