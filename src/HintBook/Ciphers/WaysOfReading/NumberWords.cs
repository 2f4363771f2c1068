using System.Globalization;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>
/// English number words from zero to 999,999, with or without the British "and": <c>twenty-one</c>, <c>one hundred and one</c>,
/// <c>one hundred one</c>. Words that stand together but can't be one number (<c>five one</c>) are several.
/// </summary>
internal static class NumberWords
{
    private static readonly Dictionary<string, int> Small = Counted(
        "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen", 1);

    private static readonly Dictionary<string, int> Tens = Counted("nought ten twenty thirty forty fifty sixty seventy eighty ninety", 10);

    public static Way Read { get; } = Way.Bare(
        "number-words",
        "The numbers that are written as English words, in order.",
        "The spelling rules of English; checked against num2words and number-to-words, which differ only in the “and”.",
        text => ReadingResult.Of(In(text), $"no English number word stands in {TextPieces.Quoted(text)}"));

    public static Way Count { get; } = Way.Bare(
        "count-number-words",
        "How many numbers are written as English words.",
        "No source: counting.",
        text => In(text).ToArray() is { Length: > 0 } rows
            ? ReadingResult.Of([new Row(string.Join(", ", rows.Select(row => row.Read)), rows.Length.ToString(CultureInfo.InvariantCulture))], "")
            : new ReadingResult.Stuck($"no English number word stands in {TextPieces.Quoted(text)}"));

    /// <summary>Every number that is written in words.</summary>
    public static IEnumerable<Row> In(string text)
    {
        var words = TextPieces.Words(text).ToArray();
        for (var at = 0; at < words.Length;)
        {
            var rest = new Run(text, words, at);
            if (Number(ref rest) is { } number)
            {
                yield return new Row(text[words[at].Start..words[rest.At - 1].End], number.ToString(CultureInfo.InvariantCulture));
                at = rest.At;
            }
            else
            {
                at++;
            }
        }
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
        if (BelowHundred(ref run) is not { } hundreds)
            return null;
        if (hundreds is 0 or > 9 || !run.Take("hundred"))
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
        return small;
    }

    private static Dictionary<string, int> Counted(string words, int step) =>
        words.Split(' ').Select((word, index) => (word, value: index * step)).ToDictionary(pair => pair.word, pair => pair.value);

    /// <summary>Words that still belong together: parted by spaces and hyphens alone, or by a comma after a thousand.</summary>
    private struct Run(string text, TextPiece[] words, int at)
    {
        private readonly int first = at;

        public int At { get; set; } = at;

        public bool AfterComma { get; set; }

        public readonly string? Next => At < words.Length && (At == first || IsJoined()) ? words[At].Value.ToLowerInvariant() : null;

        public bool Take(string word)
        {
            if (Next != word)
                return false;
            At++;
            AfterComma = false;
            return true;
        }

        private readonly bool IsJoined()
        {
            var between = text.AsSpan(words[At - 1].End..words[At].Start).Trim();
            return between is "" or "-" or "‑" || (AfterComma && between is ",");
        }
    }
}
