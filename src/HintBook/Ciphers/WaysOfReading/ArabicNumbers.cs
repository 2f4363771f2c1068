namespace HintBook.Ciphers.WaysOfReading;

/// <summary>
/// Arabic number words from 0 to 9999, with things of either gender: <c>خمسة وعشرون</c> is 25, the ones before the tens. What is written as one with the
/// word for “and” or with the article is read without it. Words from memory.
/// </summary>
internal static class ArabicNumbers
{
    private const string Ones =
        "صفر 0, واحد 1, واحدة 1, اثنان 2, اثنين 2, اثنتان 2, اثنتين 2, ثلاثة 3, ثلاث 3, أربعة 4, أربع 4, خمسة 5, خمس 5, ستة 6, ست 6, سبعة 7, سبع 7, "
        + "ثمانية 8, ثماني 8, ثمان 8, تسعة 9, تسع 9, عشرة 10, عشر 10";

    private const string Tens =
        "عشرون 20, عشرين 20, ثلاثون 30, ثلاثين 30, أربعون 40, أربعين 40, خمسون 50, خمسين 50, ستون 60, ستين 60, سبعون 70, سبعين 70, ثمانون 80, ثمانين 80, "
        + "تسعون 90, تسعين 90";

    private const string Hundreds =
        "مئة 100, مائة 100, مئتان 200, مئتين 200, مائتان 200, مائتين 200, ثلاثمئة 300, ثلاثمائة 300, أربعمئة 400, أربعمائة 400, خمسمئة 500, خمسمائة 500, "
        + "ستمئة 600, ستمائة 600, سبعمئة 700, سبعمائة 700, ثمانمئة 800, ثمانمائة 800, تسعمئة 900, تسعمائة 900";

    private const string Thousands = "ألف 1000, ألفان 2000, ألفين 2000";

    private static readonly Dictionary<string, int> Values = $"{Ones}, {Tens}, {Hundreds}, {Thousands}, أحد 1, إحدى 1, اثنا 2, اثني 2, اثنتا 2, اثنتي 2"
        .Split(", ").Select(row => row.Split(' ')).ToDictionary(row => Accents.Folded(row[0]), row => int.Parse(row[1]));

    private static readonly string And = Accents.Folded("و");
    private static readonly string Article = Accents.Folded("ال");
    private static readonly string[] Teen = [Accents.Folded("عشر"), Accents.Folded("عشرة")];
    private static readonly string ThousandsOf = Accents.Folded("آلاف");

    /// <summary>A word without the “and” and the article that may stand before it.</summary>
    public static string Bare(string word, Func<string, bool> isKnown)
    {
        if (isKnown(word))
            return word;
        foreach (var before in new[] { And, Article, And + Article })
        {
            if (word.StartsWith(before, StringComparison.Ordinal) && isKnown(word[before.Length..]))
                return word[before.Length..];
        }

        return word;
    }

    /// <summary>The number that begins at a token, and how many tokens it takes; null if none does.</summary>
    public static (int Number, int Words)? At(Token[] tokens, int at)
    {
        if (Part(tokens, at) is not var (number, words))
            return null;
        // Thousands, then hundreds, then the ones before the tens, each but the first behind an “and”.
        for (var part = number; at + words < tokens.Length && tokens[at + words] is { IsJoined: true } next && StartsWithAnd(next.Text);)
        {
            // Some write the “and” as a word of its own.
            var from = at + words + (next.Text == And ? 1 : 0);
            if (from >= tokens.Length || Part(tokens, from) is not var (more, taken) || !Follows(part, more))
                break;
            (part, number, words) = (more, number + more, from + taken - at);
        }

        return (number, words);
    }

    private static bool Follows(int part, int more) => part switch
    {
        >= 1000 => more < 1000,
        >= 100 => more is < 100 and > 0,
        > 0 and < 10 => more is >= 20 and < 100 && more % 10 == 0,
        _ => false,
    };

    private static bool StartsWithAnd(string word) => word.StartsWith(And, StringComparison.Ordinal) && !Values.ContainsKey(word);

    private static (int Number, int Words)? Part(Token[] tokens, int at)
    {
        if (!Values.TryGetValue(Bare(tokens[at].Text, Values.ContainsKey), out var value))
            return null;
        var next = at + 1 < tokens.Length && tokens[at + 1].IsJoined ? tokens[at + 1].Text : "";
        return value switch
        {
            > 0 and < 10 when Teen.Contains(next) => (value + 10, 2),
            > 2 and < 10 when next == ThousandsOf => (value * 1000, 2),
            > 2 and < 10 when Values.GetValueOrDefault(next) == 100 => (value * 100, 2),
            _ => (value, 1),
        };
    }
}
