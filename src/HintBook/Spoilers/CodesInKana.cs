namespace HintBook.Spoilers;

/// <summary>
/// Codes that Japanese tells by kana: the first letters of words (「むぎ・れもん」のはじめの一字), and figures by words that sound like them (語呂合わせで
/// 「よいふろ」 for 4126). Likely mentions only.
/// </summary>
internal static class CodesInKana
{
    private const string Numerals = "〇一二三四五六七八九";
    private static readonly string[] Initials = ["頭文字", "頭の字", "頭の一字", "頭の文字", "はじめの一字", "はじめの文字", "初めの一字", "最初の一字", "最初の文字", "一文字目"];
    private static readonly string[] Begins = ["で始", "から始", "ではじ", "からはじ"];
    private static readonly string[] Finishes = ["で終", "に終", "でおわ", "で結"];
    private static readonly string[] Sounds = ["語呂", "ごろ合わせ", "ゴロ"];

    // By what each figure is called when one makes a word of a number; common practice, no source.
    private static readonly string[][] Spoken =
    [
        ["れい", "ぜろ", "まる", "れ", "わ", "お"], ["いち", "ひと", "い", "ひ"], ["ふた", "に", "ふ", "つ"], ["さん", "みつ", "さ", "み"], ["よん", "よつ", "し", "よ"],
        ["いつ", "ご", "こ"], ["ろく", "むつ", "ろ", "む"], ["なな", "しち", "な"], ["はち", "やつ", "は", "ば", "や"], ["きゅう", "ここ", "く", "こ"],
    ];

    /// <summary>Adds the mentions of codes of kana that are told by the first letters of a list.</summary>
    public static void InInitials(string source, List<(int Secret, string Letters)> codes, List<Mention> found)
    {
        if (!source.Contains('字', StringComparison.Ordinal) || !Array.Exists(Initials, phrase => source.Contains(phrase, StringComparison.Ordinal)))
            return;
        var items = ItemsOf(source);
        foreach (var (secret, letters) in codes)
        {
            for (var first = 0; first + letters.Length <= items.Count; first++)
            {
                if (Enumerable.Range(0, letters.Length).All(i => BeginsWith(source[items[first + i]], letters[i])))
                    found.Add(new(secret, items[first].Start.Value, items[first + letters.Length - 1].End.Value, Sureness.Likely));
            }
        }
    }

    /// <summary>Adds the mentions of codes of kana of which a text says how many letters they have, the first and the last: 四文字、アで始まりキで終わる.</summary>
    public static void InEnds(string source, List<(int Secret, string Letters)> codes, List<Mention> found)
    {
        if (!source.Contains("文字", StringComparison.Ordinal)
            || LetterBefore(source, Begins) is not (>= 0 and var first)
            || LetterBefore(source, Finishes) is not (>= 0 and var last))
            return;
        foreach (var (secret, letters) in codes)
        {
            if (SaidLetters.Hiragana(source[first..(first + 1)])[0] == letters[0] && SaidLetters.Hiragana(source[last..(last + 1)])[0] == letters[^1]
                && letters.Length < Numerals.Length && SaysLength(source, letters.Length))
                found.Add(new(secret, Math.Min(first, last), Math.Max(first, last) + 1, Sureness.Likely));
        }
    }

    private static bool SaysLength(string source, int letters) =>
        source.Contains($"{Numerals[letters]}文字", StringComparison.Ordinal) || source.Contains($"{letters}文字", StringComparison.Ordinal)
        || source.Contains($"{(char)('０' + letters)}文字", StringComparison.Ordinal);

    // The letter before a phrase, in quotes or not; -1 if there is none.
    private static int LetterBefore(string source, string[] phrases)
    {
        foreach (var phrase in phrases)
        {
            var at = source.IndexOf(phrase, StringComparison.Ordinal) - 1;
            at -= at > 0 && source[at] is '」' or '』' ? 1 : 0;
            if (at >= 0)
                return at;
        }

        return -1;
    }

    // 虫 is read むし.
    private static bool BeginsWith(string item, char letter) =>
        SaidLetters.Hiragana(item)[0] == letter || Languages.JapaneseReadings.Of(item).Any(read => SaidLetters.Hiragana(read)[0] == letter);

    // What signs of a list, quotes and と part.
    private static List<Range> ItemsOf(string source)
    {
        List<Range> items = [];
        for (var at = 0; at < source.Length;)
        {
            var end = at;
            while (end < source.Length && (char.IsLetter(source[end]) || source[end] == 'ー') && !(end > at && source[end] == 'と'))
                end++;
            if (end > at)
                items.Add(at..end);
            at = end + 1;
        }

        return items;
    }

    /// <summary>Adds the mentions of figures that are told by a word that sounds like them.</summary>
    public static void InSounds(string source, List<(int Secret, string Figures)> codes, List<Mention> found)
    {
        if (codes.Count == 0 || !Array.Exists(Sounds, phrase => source.Contains(phrase, StringComparison.Ordinal)))
            return;
        foreach (var item in ItemsOf(source))
        {
            var word = SaidLetters.Hiragana(source[item]);
            foreach (var (secret, figures) in codes)
            {
                if (Sound(word, figures))
                    found.Add(new(secret, item.Start.Value, item.End.Value, Sureness.Likely));
            }
        }
    }

    private static bool Sound(ReadOnlySpan<char> word, ReadOnlySpan<char> figures)
    {
        if (figures.IsEmpty || word.IsEmpty)
            return figures.IsEmpty && word.IsEmpty;
        foreach (var said in Spoken[figures[0] - '0'])
        {
            if (word.StartsWith(said) && Sound(word[said.Length..], figures[1..]))
                return true;
        }

        return false;
    }
}
