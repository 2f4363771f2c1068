namespace HintBook.Ciphers.WaysOfReading;

/// <summary>The ordinals from 1 to 31 in words, as days of a month are said: <c>fourteenth</c>, <c>vierzehnter</c>, <c>premier</c>. From memory.</summary>
internal static class Ordinals
{
    private static readonly string[] EnglishSmall =
    [
        "first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth", "thirteenth", "fourteenth",
        "fifteenth", "sixteenth", "seventeenth", "eighteenth", "nineteenth", "twentieth",
    ];

    private static readonly string[] ArabicSmall = ["أول", "ثاني", "ثالث", "رابع", "خامس", "سادس", "سابع", "ثامن", "تاسع", "عاشر"];

    private static readonly Dictionary<string, int> English = Table(
        from day in Enumerable.Range(1, 31)
        select (day <= 20 ? EnglishSmall[day - 1] : day == 30 ? "thirtieth" : $"{(day < 30 ? "twenty" : "thirty")} {EnglishSmall[(day % 10) - 1]}", day));

    private static readonly Dictionary<string, int> German = Table(
        from day in Enumerable.Range(1, 31)
        let name = day switch { 1 => "ers", 3 => "drit", 7 => "sieb", 8 => "ach", _ => NumberNames.InGerman(day) + (day < 20 ? "" : "s") }
        from ending in new[] { "te", "ten", "ter" }
        select (name + ending, day));

    // With the article or without, for either gender; eleven and twelve in two words.
    private static readonly Dictionary<string, int> Arabic = Table(
    [
        .. from one in Enumerable.Range(1, 10) from ending in new[] { "", "ة" } select (ArabicSmall[one - 1] + ending, one),
        .. from one in Enumerable.Range(2, 8) from ending in new[] { "", "ة" } select ($"{ArabicSmall[one - 1]}{ending} عشر{ending}", one + 10),
        ("حادي عشر", 11), ("حادية عشرة", 11), ("واحدة", 1),
    ]);

    /// <summary>An English ordinal.</summary>
    public static (int Number, int Words)? EnglishAt(Token[] tokens, int at) => At(English, tokens, at, word => word);

    /// <summary>A German ordinal in any case.</summary>
    public static (int Number, int Words)? GermanAt(Token[] tokens, int at) => At(German, tokens, at, word => word);

    /// <summary>An Arabic ordinal of either gender, up to nineteen.</summary>
    public static (int Number, int Words)? ArabicAt(Token[] tokens, int at) =>
        At(Arabic, tokens, at, word => ArabicNumbers.Bare(word, bare => Arabic.ContainsKey(bare) || bare == Eleven[0] || bare == Eleven[1]));

    private static readonly string[] Eleven = [Accents.Folded("حادي"), Accents.Folded("حادية")];

    private static (int Number, int Words)? At(Dictionary<string, int> table, Token[] tokens, int at, Func<string, string> bare)
    {
        var word = bare(tokens[at].Text);
        if (at + 1 < tokens.Length && tokens[at + 1].IsJoined && table.TryGetValue($"{word} {tokens[at + 1].Text}", out var two))
            return (two, 2);
        return table.TryGetValue(word, out var one) ? (one, 1) : null;
    }

    private static Dictionary<string, int> Table(IEnumerable<(string Name, int Day)> names) =>
        names.ToDictionary(name => Accents.Folded(name.Name), name => name.Day);
}
