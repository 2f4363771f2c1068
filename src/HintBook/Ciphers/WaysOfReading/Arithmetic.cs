using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>Arithmetic with the numbers of a text: its runs of figures, or the single figures of its only run.</summary>
internal static class Arithmetic
{
    // A longer number is a serial number: nobody calculates with it.
    private const int MostFigures = 18;
    private const string Source = "Common practice: arithmetic.";

    public static Way Sum { get; } = Way.Bare(
        "sum", "The sum of all numbers.", Source, text => With(text, numbers => [Sums(numbers)]));

    public static Way LineSums { get; } = Way.Bare(
        "line-sums",
        "The sum of the numbers of each line.",
        Source,
        text => TextPieces.Lines(text).FirstOrDefault(line => NumbersIn(line) is not { Length: > 0 }) is { } strange
            ? new ReadingResult.Stuck($"no number to reckon with stands in {TextPieces.Quoted(strange)}")
            : ReadingResult.Of(TextPieces.Lines(text).Select(line => Sums(NumbersIn(line)!)), "there is no line")) with
    {
        StandsAlone = false,
    };

    public static Way Differences { get; } = Way.Bare(
        "differences",
        "How far each number is from the one before it.",
        Source,
        text => With(text, numbers => numbers.Zip(numbers.Skip(1), Differs))) with
    {
        StandsAlone = false,
    };

    public static Way Modulo { get; } = new()
    {
        Name = "modulo",
        Says = "What remains of each number when it is divided: “{ modulo: 10 }” leaves the last figure.",
        Source = Source,
        Told = new("a whole number from 2 to 1000", "10"),
        Read = (text, told) => Divisor(told) is { } by
            ? With(text, numbers => numbers.Select(number => new Row(Told(number), Told(number % by))))
            : new ReadingResult.BadArgument($"{TextPieces.Quoted(string.Join(", ", told))} isn't a whole number from 2 to 1000"),
    };

    private static int? Divisor(ImmutableArray<string> told) =>
        told is [var one] && int.TryParse(one, NumberStyles.None, CultureInfo.InvariantCulture, out var by) && by is >= 2 and <= 1000 ? by : null;

    private static ReadingResult With(string text, Func<BigInteger[], IEnumerable<Row>> reckon) => NumbersIn(text) switch
    {
        null => new ReadingResult.Stuck($"a number in {TextPieces.Quoted(text)} has more than {MostFigures} figures"),
        { Length: 0 } => new ReadingResult.Stuck($"no number stands in {TextPieces.Quoted(text)}"),
        var numbers => ReadingResult.Of(reckon(numbers), $"one number alone stands in {TextPieces.Quoted(text)}"),
    };

    private static BigInteger[]? NumbersIn(string text)
    {
        var numbers = TextPieces.Numbers(text);
        return Array.Exists(numbers, number => number.Length > MostFigures)
            ? null
            : [.. numbers.Select(number => BigInteger.Parse(number, NumberStyles.None, CultureInfo.InvariantCulture))];
    }

    private static Row Sums(BigInteger[] numbers) =>
        new(string.Join(" + ", numbers.Select(Told)), Told(numbers.Aggregate(BigInteger.Zero, (sum, number) => sum + number)));

    private static Row Differs(BigInteger left, BigInteger right) => new($"{left}, {right}", Told(BigInteger.Abs(right - left)));

    private static string Told(BigInteger number) => number.ToString(CultureInfo.InvariantCulture);
}
