using System.Globalization;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>The names of the numbers 0 to 999 in German and French, and every one of them that stands in a text.</summary>
internal sealed class NumberNames
{
    private static readonly string[] GermanSmall =
    [
        "null", "ein", "zwei", "drei", "vier", "fünf", "sechs", "sieben", "acht", "neun", "zehn", "elf", "zwölf", "dreizehn", "vierzehn", "fünfzehn",
        "sechzehn", "siebzehn", "achtzehn", "neunzehn",
    ];

    private static readonly string[] GermanTens = ["", "", "zwanzig", "dreißig", "vierzig", "fünfzig", "sechzig", "siebzig", "achtzig", "neunzig"];

    private static readonly string[] FrenchSmall =
    [
        "zéro", "un", "deux", "trois", "quatre", "cinq", "six", "sept", "huit", "neuf", "dix", "onze", "douze", "treize", "quatorze", "quinze", "seize",
        "dix sept", "dix huit", "dix neuf",
    ];

    private static readonly string[] FrenchTens = ["", "", "vingt", "trente", "quarante", "cinquante", "soixante", "soixante", "quatre vingt", "quatre vingt"];

    private readonly Dictionary<string, string> numbers;
    private readonly int longest;

    private NumberNames(IEnumerable<(string Name, int Number)> names)
    {
        numbers = names.DistinctBy(name => name.Name).ToDictionary(name => name.Name, name => name.Number.ToString(CultureInfo.InvariantCulture));
        longest = numbers.Keys.Max(name => name.Count(' ') + 1);
    }

    /// <summary>German. <c>eins</c> and the article in all its cases are 1.</summary>
    public static NumberNames German { get; } = new(
    [
        .. Enumerable.Range(0, 1000).Select(number => (InGerman(number), number)),
        .. Enumerable.Range(0, 1000).Select(number => (InGerman(number).Replace("ß", "ss", StringComparison.Ordinal), number)),
        .. Enumerable.Range(0, 10).Select(hundreds => ($"{(hundreds == 0 ? "" : InGerman(hundreds * 100))}eins", (hundreds * 100) + 1)),
        .. Enumerable.Range(100, 100).Select(number => (InGerman(number)["ein".Length..], number)),
        ("hunderteins", 101), ("eine", 1), ("einen", 1), ("einem", 1), ("einer", 1), ("eines", 1),
    ]);

    /// <summary>French. <c>une</c> is 1, and a plural s doesn't matter.</summary>
    public static NumberNames French { get; } = new(
    [
        .. Enumerable.Range(0, 1000).SelectMany(number => new[]
        {
            (InFrench(number), number),
            (InFrench(number).Replace("vingt", "vingts", StringComparison.Ordinal), number),
            (InFrench(number).Replace("cent", "cents", StringComparison.Ordinal), number),
        }),
        .. Enumerable.Range(0, 1000).Where(number => number % 10 == 1 && number % 100 is not (11 or 71 or 91))
            .Select(number => ($"{InFrench(number)}e", number)),
    ]);

    /// <summary>Every number whose name stands in a text; of names that begin at one word the longest.</summary>
    public IEnumerable<Row> In(string text)
    {
        var words = TextPieces.Words(text).ToArray();
        for (var at = 0; at < words.Length;)
        {
            var taken = Enumerable.Range(1, Math.Min(longest, words.Length - at)).Reverse().FirstOrDefault(count => Joined(text, words, at, count) is { } name
                && numbers.ContainsKey(name));
            if (taken > 0)
                yield return new Row(text[words[at].Start..words[at + taken - 1].End], numbers[Joined(text, words, at, taken)!]);
            at += Math.Max(1, taken);
        }
    }

    /// <summary>The words that numbers are made of.</summary>
    public IEnumerable<string> Names => numbers.Keys.SelectMany(name => name.Split(' ')).Distinct();

    // Words of one number are parted by spaces and hyphens alone.
    private static string? Joined(string text, TextPiece[] words, int at, int count) =>
        Enumerable.Range(at + 1, count - 1).All(next => text.AsSpan(words[next - 1].End..words[next].Start).Trim() is "" or "-" or "‐" or "‑" or "–")
            ? string.Join(' ', words.AsSpan(at, count).ToArray().Select(word => word.Value.ToLowerInvariant()))
            : null;

    private static string InGerman(int number) => number switch
    {
        < 20 => GermanSmall[number],
        < 100 => (number % 10 == 0 ? "" : GermanSmall[number % 10] + "und") + GermanTens[number / 10],
        _ => $"{GermanSmall[number / 100]}hundert{(number % 100 == 0 ? "" : InGerman(number % 100))}",
    };

    // Seventy is sixty and ten, eighty four twenties, ninety four twenties and ten; “et” stands before one and eleven, but not behind four twenties.
    private static string InFrench(int number)
    {
        if (number < 20)
            return FrenchSmall[number];
        if (number >= 100)
            return $"{(number < 200 ? "" : $"{FrenchSmall[number / 100]} ")}cent{(number % 100 == 0 ? "" : $" {InFrench(number % 100)}")}";
        var (tens, rest) = (number / 10, number % 10 + (number / 10 is 7 or 9 ? 10 : 0));
        return FrenchTens[tens] + (rest == 0 ? "" : rest is 1 or 11 && tens < 8 ? $" et {FrenchSmall[rest]}" : $" {FrenchSmall[rest]}");
    }
}
