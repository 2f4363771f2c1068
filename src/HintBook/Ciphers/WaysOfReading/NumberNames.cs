using System.Collections.Immutable;
using System.Globalization;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>
/// The names of the numbers 0 to 9999 in a language (0 to 99 in English), and every one of them that stands in a text. Accents may be left out. A table has
/// the names below a hundred; hundreds and thousands are read by the words for them. All names are from memory; 1,341 numbers in each language were
/// compared with those that ICU 72.1 spells out, and the tests hold some of them.
/// </summary>
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

    private static readonly string[] SpanishSmall =
    [
        "cero", "uno", "dos", "tres", "cuatro", "cinco", "seis", "siete", "ocho", "nueve", "diez", "once", "doce", "trece", "catorce", "quince",
        "dieciseis", "diecisiete", "dieciocho", "diecinueve", "veinte", "veintiuno", "veintidos", "veintitres", "veinticuatro", "veinticinco",
        "veintiseis", "veintisiete", "veintiocho", "veintinueve",
    ];

    private static readonly string[] SpanishTens = ["", "", "", "treinta", "cuarenta", "cincuenta", "sesenta", "setenta", "ochenta", "noventa"];

    private static readonly Lazy<NumberNames> LazyEnglish = new(() => new(
        [
            .. Enumerable.Range(0, 100).Select(number => (EnglishNumbers.NameOf(number), number)),
            .. from number in Enumerable.Range(21, 79) where number % 10 > 0
               select ($"{EnglishNumbers.NameOf(number % 10)} and {EnglishNumbers.NameOf(number / 10 * 10)}", number),
        ],
        hundred: [],
        thousand: null));

    private static readonly Lazy<NumberNames> LazyGerman = new(() => new(
        [
            .. Enumerable.Range(0, 100).Select(number => (InGerman(number), number)),
            ("eins", 1), ("eine", 1), ("einen", 1), ("einem", 1), ("einer", 1), ("eines", 1), ("zwo", 2),
        ],
        hundred: ["hundert"],
        thousand: "tausend",
        isOneWord: true));

    private static readonly Lazy<NumberNames> LazyFrench = new(() => new(
        [
            .. Enumerable.Range(0, 100).Select(number => (InFrench(number), number)),
            .. Enumerable.Range(0, 9).Where(tens => tens is not (1 or 7)).Select(tens => ($"{InFrench((tens * 10) + 1)}e", (tens * 10) + 1)),
            ("quatre vingts", 80),
            .. from tens in new[] { ("septante", 70), ("huitante", 80), ("octante", 80), ("nonante", 90) }
               from one in Enumerable.Range(0, 10)
               select ($"{tens.Item1}{one switch { 0 => "", 1 => " et un", _ => $" {FrenchSmall[one]}" }}", tens.Item2 + one),
        ],
        hundred: ["cent", "cents"],
        thousand: "mille"));

    private static readonly Lazy<NumberNames> LazySpanish = new(() => new(
        [
            .. Enumerable.Range(0, 100).Select(number => (InSpanish(number), number)),
            .. Enumerable.Range(0, 10).Where(tens => tens != 1).Select(tens => (tens * 10) + 1)
                .SelectMany(number => new[] { (InSpanish(number)[..^1], number), ($"{InSpanish(number)[..^1]}a", number) }),
            ("cien", 100), ("ciento", 100), ("quinientos", 500), ("quinientas", 500), ("setecientos", 700), ("setecientas", 700), ("novecientos", 900),
            ("novecientas", 900),
            .. from hundreds in new[] { 2, 3, 4, 6, 8 } from gender in new[] { "cientos", "cientas" } select (SpanishSmall[hundreds] + gender, hundreds * 100),
        ],
        hundred: [],
        thousand: "mil"));

    private readonly Dictionary<string, int> numbers;
    private readonly HashSet<string> starts;
    private readonly string[] hundred;
    private readonly string? thousand;
    private readonly bool isOneWord;
    private readonly int longest;

    private NumberNames(IEnumerable<(string Name, int Number)> names, string[] hundred, string? thousand, bool isOneWord = false)
    {
        (this.hundred, this.thousand, this.isOneWord) = (hundred, thousand, isOneWord);
        numbers = names.SelectMany(name => new[] { name, (Name: Accents.SpeltOut(name.Name), name.Number) })
            .Select(name => (Name: Accents.Folded(name.Name), name.Number))
            .DistinctBy(name => name.Name)
            .ToDictionary(name => name.Name, name => name.Number);
        starts = [.. numbers.Keys.Select(name => name.Split(' ')[0])];
        longest = numbers.Keys.Max(name => name.Count(' ') + 1);
        Words = [.. numbers.Keys.SelectMany(name => name.Split(' ')).Distinct(), .. hundred, .. thousand is null ? [] : new[] { thousand }];
    }

    /// <summary>English, up to 99 only: <see cref="EnglishNumbers"/> reads them all.</summary>
    public static NumberNames English => LazyEnglish.Value;

    /// <summary>German. <c>eins</c> and the article in all its cases are 1.</summary>
    public static NumberNames German => LazyGerman.Value;

    /// <summary>French. <c>une</c> is 1, and a plural s doesn't matter.</summary>
    public static NumberNames French => LazyFrench.Value;

    /// <summary>Spanish. <c>un</c> and <c>una</c> are 1.</summary>
    public static NumberNames Spanish => LazySpanish.Value;

    /// <summary>The words that numbers are made of, without accents.</summary>
    public ImmutableArray<string> Words { get; }

    /// <summary>Every number whose name stands in a text; of names that begin at one word the longest.</summary>
    public IEnumerable<Row> In(string text) => In(text, At);

    /// <summary>Every number that a language reads in a text.</summary>
    public static IEnumerable<Row> In(string text, Func<Token[], int, (int Number, int Words)?> reading)
    {
        var tokens = Token.In(text);
        for (var at = 0; at < tokens.Length;)
        {
            // “D'une grange” counts no barns.
            var read = tokens[at].Between is "'" or "’" ? null : reading(tokens, at);
            if (read is var (number, words))
                yield return new Row(text[tokens[at].Start..tokens[at + words - 1].End], number.ToString(CultureInfo.InvariantCulture));
            at += read?.Words ?? 1;
        }
    }

    /// <summary>The number whose name begins at a token, and how many tokens it takes; null if none does.</summary>
    public (int Number, int Words)? At(Token[] tokens, int at)
    {
        var (number, words) = BelowThousand(tokens, at) ?? (1, 0);
        if (thousand is null || number is 0 or > 999 || !Is(tokens, at + words, thousand, words > 0))
            return words == 0 ? null : (number, words);
        (number, words) = (number * 1000, words + 1);
        return BelowThousand(tokens, at + words) is var (rest, more) && rest is > 0 and < 1000 && tokens[at + words].IsJoined
            ? (number + rest, words + more)
            : (number, words);
    }

    private (int Number, int Words)? BelowThousand(Token[] tokens, int at)
    {
        var (number, words) = Named(tokens, at) ?? (1, 0);
        if (number is > 0 and < 20 && Array.Exists(hundred, word => Is(tokens, at + words, word, words > 0)))
            (number, words) = (number * 100, words + 1);
        if (words == 0)
            return null;
        return number is >= 100 and < 2000 && number % 100 == 0 && Named(tokens, at + words) is var (rest, more) && rest is > 0 and < 100
            && tokens[at + words].IsJoined
                ? (number + rest, words + more)
                : (number, words);
    }

    // Of names that begin at one word the longest.
    private (int Number, int Words)? Named(Token[] tokens, int at)
    {
        if (at >= tokens.Length)
            return null;
        if (!starts.Contains(tokens[at].Text))
            return isOneWord && ValueOf(tokens[at].Text) is { } value ? (value, 1) : null;
        (int, int)? found = null;
        var name = "";
        for (var words = 1; words <= longest && at + words <= tokens.Length; words++)
        {
            var token = tokens[at + words - 1];
            if (words > 1 && !token.IsJoined)
                break;
            name = words == 1 ? token.Text : $"{name} {token.Text}";
            if (numbers.TryGetValue(name, out var number))
                found = (number, words);
        }

        return found;
    }

    private static bool Is(Token[] tokens, int at, string word, bool joined) =>
        at < tokens.Length && tokens[at].Text == word && (!joined || tokens[at].IsJoined);

    // “Zweitausendfünf”, “neunzehnhundertvierzehn”, “hundertundeins”.
    private int? ValueOf(string word)
    {
        if (numbers.TryGetValue(word, out var small))
            return small;
        foreach (var (unit, worth) in new[] { (thousand!, 1000), (hundred[0], 100) })
        {
            if (word.IndexOf(unit, StringComparison.Ordinal) is not (>= 0 and var at))
                continue;
            var (head, tail) = (word[..at], word[(at + unit.Length)..]);
            tail = tail.StartsWith("und", StringComparison.Ordinal) ? tail["und".Length..] : tail;
            var (times, rest) = (head.Length == 0 ? 1 : ValueOf(head), tail.Length == 0 ? 0 : ValueOf(tail));
            return times is > 0 and < 20 && rest < worth ? (times * worth) + rest : null;
        }

        return null;
    }

    /// <summary>The German name of a number from 0 to 99.</summary>
    public static string InGerman(int number) =>
        number < 20 ? GermanSmall[number] : (number % 10 == 0 ? "" : GermanSmall[number % 10] + "und") + GermanTens[number / 10];

    // Seventy is sixty and ten, eighty four twenties, ninety four twenties and ten; “et” stands before one and eleven, but not behind four twenties.
    private static string InFrench(int number)
    {
        if (number < 20)
            return FrenchSmall[number];
        var (tens, rest) = (number / 10, (number % 10) + (number / 10 is 7 or 9 ? 10 : 0));
        return FrenchTens[tens] + (rest == 0 ? "" : rest is 1 or 11 && tens < 8 ? $" et {FrenchSmall[rest]}" : $" {FrenchSmall[rest]}");
    }

    private static string InSpanish(int number) =>
        number < 30 ? SpanishSmall[number] : SpanishTens[number / 10] + (number % 10 == 0 ? "" : $" y {SpanishSmall[number % 10]}");
}
