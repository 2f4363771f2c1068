using System.Globalization;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>
/// English number words from zero to 999,999, with or without the British "and": <c>twenty-one</c>, <c>one hundred and one</c>, <c>one hundred
/// one</c>, <c>nineteen hundred</c>, <c>a hundred</c>, <c>four and twenty</c>. Words that stand together but can't be one number (<c>five
/// one</c>) are several; <c>double five</c> is 55, and <c>oh</c> beside a figure is 0.
/// </summary>
internal static class EnglishNumbers
{
    private static readonly Dictionary<string, int> Small = Counted(
        "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen", 1);

    private static readonly Dictionary<string, int> Tens = Counted("nought ten twenty thirty forty fifty sixty seventy eighty ninety", 10);

    private static readonly HashSet<string> Others =
        ["hundred", "hundreds", "thousand", "thousands", "million", "millions", "billion", "billions", "dozen", "dozens"];

    /// <summary>Every number, in order.</summary>
    public static IEnumerable<Row> In(string text) => Pieces(text).Where(piece => piece.Number is not null).Select(piece => new Row(piece.Read, piece.Number!));

    /// <summary>The words that numbers are made of.</summary>
    public static IEnumerable<string> Names => [.. Small.Keys, .. Tens.Keys, "hundred", "thousand"];

    /// <summary>The name of a number from 0 to 99, with a space between its words.</summary>
    public static string NameOf(int number) => Small.FirstOrDefault(name => name.Value == number).Key
        ?? Tens.First(name => name.Value == number / 10 * 10).Key + (number % 10 == 0 ? "" : $" {NameOf(number % 10)}");

    /// <summary>Words that are no part of a number, in order.</summary>
    public static IEnumerable<string> Rest(string text) => Pieces(text).Where(piece => piece.Number is null).Select(piece => piece.Read);

    /// <summary>Whether a word speaks of a number, but is no part of one from zero to 999,999: <c>million</c>, <c>dozen</c>, <c>hundreds</c>.</summary>
    public static bool IsStrange(string word) => Others.Contains(word.ToLowerInvariant());

    // The text word by word, words of one number together.
    private static IEnumerable<(string Read, string? Number)> Pieces(string text)
    {
        var words = TextPieces.Words(text).ToArray();
        for (var at = 0; at < words.Length;)
        {
            var rest = new Run(text, words, at);
            var number = Next(ref rest);
            var end = number is null ? at + 1 : rest.At;
            yield return (text[words[at].Start..words[end - 1].End], number);
            at = end;
        }
    }

    private static string? Next(ref Run run)
    {
        if (run.Next is "double" or "triple" or "treble")
        {
            var times = run.Next == "double" ? 2 : 3;
            run.At++;
            return Digit(run.Next) is { } repeated ? Taken(ref run, new string((char)('0' + repeated), times)) : null;
        }

        if (run.Next is "oh" or "o" && run.IsBeside(word => Digit(word) is not null || word is "oh" or "o" or "double" or "triple" or "treble"))
            return Taken(ref run, "0");
        return Number(ref run)?.ToString(CultureInfo.InvariantCulture);
    }

    private static string Taken(ref Run run, string number)
    {
        run.At++;
        return number;
    }

    private static int? Number(ref Run run)
    {
        if (BelowThousand(ref run) is not { } thousands)
            return null;
        if (thousands == 0 || !run.Take("thousand"))
            return thousands;
        var before = run;
        run.Take("and");
        run.AfterComma = true;
        if (BelowThousand(ref run) is { } rest and > 0)
            return (thousands * 1000) + rest;
        run = before;
        return thousands * 1000;
    }

    private static int? BelowThousand(ref Run run)
    {
        var start = run;
        // “A hundred” is 100; “a” alone is no number. “Nineteen hundred” is 1900, and “twenty hundred” is nothing that people say.
        var article = run.Take("a");
        if (article && run.Next is not ("hundred" or "thousand"))
        {
            run = start;
            return null;
        }

        if ((article ? 1 : BelowHundred(ref run)) is not { } hundreds)
            return null;
        if (hundreds is 0 || hundreds % 10 is 0 || !run.Take("hundred"))
            return hundreds;
        var before = run;
        run.Take("and");
        if (BelowHundred(ref run) is { } rest and > 0)
            return (hundreds * 100) + rest;
        run = before;
        return hundreds * 100;
    }

    private static int? BelowHundred(ref Run run)
    {
        if (run.Next is { } ten && Tens.TryGetValue(ten, out var tens) && tens > 10)
        {
            run.At++;
            if (run.Next is { } one && Small.TryGetValue(one, out var ones) && ones is > 0 and < 10)
            {
                run.At++;
                return tens + ones;
            }

            return tens;
        }

        if (run.Next is not { } word || !(Small.TryGetValue(word, out var small) || (word == "nought" && Tens.TryGetValue(word, out small))))
            return null;
        run.At++;
        // “Four and twenty” is 24.
        var before = run;
        if (small is > 0 and < 10 && run.Take("and") && run.Next is { } old && Tens.TryGetValue(old, out var more) && more > 10)
        {
            run.At++;
            return more + small;
        }

        run = before;
        return small;
    }

    private static int? Digit(string? word) => word switch
    {
        null => null,
        "nought" or "oh" => 0,
        _ => Small.TryGetValue(word, out var digit) && digit < 10 ? digit : null,
    };

    private static Dictionary<string, int> Counted(string words, int step) =>
        words.Split(' ').Select((word, index) => (word, value: index * step)).ToDictionary(pair => pair.word, pair => pair.value);

    /// <summary>Words that still belong together: parted by spaces, hyphens or a dash without spaces, or by a comma after a thousand.</summary>
    private struct Run(string text, TextPiece[] words, int at)
    {
        private readonly int first = at;

        public int At { get; set; } = at;

        public bool AfterComma { get; set; }

        public readonly string? Next => At < words.Length && (At == first || IsJoined(At)) ? words[At].Value.ToLowerInvariant() : null;

        public bool Take(string word)
        {
            if (Next != word)
                return false;
            At++;
            AfterComma = false;
            return true;
        }

        /// <summary>Whether the word before or behind this one belongs to it and is one of a kind.</summary>
        public readonly bool IsBeside(Func<string, bool> kind) =>
            (At > 0 && IsJoined(At) && kind(words[At - 1].Value.ToLowerInvariant()))
            || (At + 1 < words.Length && IsJoined(At + 1) && kind(words[At + 1].Value.ToLowerInvariant()));

        private readonly bool IsJoined(int at)
        {
            var between = text.AsSpan(words[at - 1].End..words[at].Start);
            return between is "–" || between.Trim() is "" or "-" or "‐" or "‑" || (AfterComma && between.Trim() is ",");
        }
    }
}
