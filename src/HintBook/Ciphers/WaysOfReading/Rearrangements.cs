using System.Collections.Immutable;
using System.Globalization;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>The same symbols in another order.</summary>
internal static class Rearrangements
{
    private const string Source = "Common practice: putting in order.";

    private static readonly Comparison<string> BySize = (left, right) =>
        IsNumber(left) && IsNumber(right) && left.TrimStart('0').Length != right.TrimStart('0').Length
            ? left.TrimStart('0').Length.CompareTo(right.TrimStart('0').Length)
            : string.CompareOrdinal(left.TrimStart('0'), right.TrimStart('0'));

    public static Way Reverse { get; } = Order(
        "reverse", "From the last symbol to the first.", text => Given(TextPieces.Symbols(text).Reverse(), ""));

    public static Way ReverseWords { get; } = Order(
        "reverse-words", "From the last word to the first.", text => Given(Words(text).Reverse(), " "));

    public static Way ReverseLines { get; } = Order(
        "reverse-lines", "From the last line to the first.", text => Given(TextPieces.Lines(text).Reverse(), "\n"));

    public static Way Sort { get; } = Order(
        "sort", "Numbers by size, letters by the alphabet.", text => Sorted(text, BySize));

    public static Way SortDown { get; } = Order(
        "sort-down",
        "Numbers by size and letters by the alphabet, the last first.",
        text => Sorted(text, (left, right) => BySize(right, left)));

    /// <summary>The key says which symbol comes next: with 312 the third, then the first, then the second. A word orders by its letters.</summary>
    public static Way Arrange { get; } = new()
    {
        Name = "arrange",
        Says = "In the order of a key: with “{ arrange: 312 }” the third symbol comes first, then the first, then the second; a word orders by its letters.",
        Source = "Common practice: columnar transposition takes columns in the order of a key's letters.",
        Told = new("a key of as many figures, numbers or letters as there are pieces", "312"),
        Conventions = told => KeyIn(told) is { } key && !Inverse(key).SequenceEqual(key)
            ? [new([.. Inverse(key).Select(place => (place + 1).ToString(CultureInfo.InvariantCulture))], "taking the key as where each symbol goes")]
            : [],
        Read = (text, told) =>
        {
            var pieces = Parts(text);
            return KeyIn(told) is not { } key
                ? new ReadingResult.BadArgument($"{TextPieces.Quoted(string.Join(", ", told))} names no order")
                : key.Length != pieces.Length
                    ? new ReadingResult.Stuck($"the key orders {key.Length}, but there are {pieces.Length} pieces in {TextPieces.Quoted(text)}")
                    : ReadingResult.Of(key.Select(place => new Row($"{place + 1}", pieces[place])), "there is nothing to order");
        },
    };

    /// <summary>The pieces that have an order: words if there are several, or else symbols.</summary>
    public static string[] Parts(string text)
    {
        var words = Words(text);
        return words.Length > 1 ? words : [.. TextPieces.Set(text)];
    }

    private static Way Order(string name, string says, Func<string, ReadingResult> read) =>
        Way.Bare(name, says, Source, read) with { StandsAlone = false };

    private static string[] Words(string text) => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    private static ReadingResult Given(IEnumerable<string> pieces, string between)
    {
        var text = string.Join(between, pieces);
        return string.IsNullOrWhiteSpace(text) ? new ReadingResult.Stuck("there is nothing to put in order") : ReadingResult.Of(text.Trim());
    }

    private static ReadingResult Sorted(string text, Comparison<string> order)
    {
        var pieces = Parts(text).Order(Comparer<string>.Create(order)).ToArray();
        return pieces.Length == 0 ? new ReadingResult.Stuck("there is nothing to put in order") : ReadingResult.Of(TextPieces.Joined(pieces));
    }

    private static int[]? KeyIn(ImmutableArray<string> told)
    {
        var pieces = told is [var one] ? [.. TextPieces.Set(one)] : told.ToArray();
        if (pieces.Length is 0 or > 100)
            return null;
        if (pieces.All(piece => TextPieces.PlaceOf(piece) > 0))
            return [.. Enumerable.Range(0, pieces.Length).OrderBy(place => TextPieces.PlaceOf(pieces[place])).ThenBy(place => place)];
        var places = pieces.Select(piece => int.TryParse(piece, NumberStyles.None, CultureInfo.InvariantCulture, out var place) ? place - 1 : -1).ToArray();
        return places.Order().SequenceEqual(Enumerable.Range(0, places.Length)) ? places : null;
    }

    private static int[] Inverse(int[] key) => [.. Enumerable.Range(0, key.Length).OrderBy(place => key[place])];

    private static bool IsNumber(string piece) => piece.All(char.IsAsciiDigit);
}
