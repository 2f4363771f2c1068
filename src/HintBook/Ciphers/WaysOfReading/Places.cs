using System.Collections.Immutable;
using System.Globalization;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>Letters and words by where they stand in words and lines.</summary>
internal static class Places
{
    private const string Source = "Common practice: reading off.";

    private static readonly WayArgument Place = new("a number from 1 to 99", "3");

    public static Way Acrostic { get; } = new()
    {
        Name = "acrostic",
        Says = "The first letter of each line; with “{ acrostic: 3 }” the third.",
        Source = Source,
        Told = Place with { Needed = false },
        Read = (text, told) => At(told, place => Each(TextPieces.Lines(text), TextPieces.Letters, place, "line")),
    };

    public static Way LineEnds { get; } = Way.Bare(
        "line-ends", "The last letter of each line.", Source, text => Last(TextPieces.Lines(text)));

    public static Way FirstLetters { get; } = Way.Bare(
        "first-letters", "The first letter of each word.", Source, text => Each(WordsOf(text), TextPieces.Letters, 1, "word"));

    public static Way LastLetters { get; } = Way.Bare(
        "last-letters", "The last letter of each word.", Source, text => Last(WordsOf(text)));

    public static Way NthLetters { get; } = new()
    {
        Name = "nth-letters",
        Says = "The letter at one place of each word: “{ nth-letters: 2 }” takes the second.",
        Source = Source,
        Told = Place,
        Read = (text, told) => At(told, place => Each(WordsOf(text), TextPieces.Letters, place, "word")),
    };

    public static Way NthWords { get; } = new()
    {
        Name = "nth-words",
        Says = "The word at one place of each line: “{ nth-words: 2 }” takes the second.",
        Source = Source,
        Told = Place,
        Read = (text, told) => At(told, place => Each(TextPieces.Lines(text), WordsOf, place, "line")),
    };

    /// <summary>Letters or words by stated places: <c>2-3-1</c> is line 2, word 3, letter 1; <c>2-3</c> is the whole word.</summary>
    public static Way Coordinates { get; } = new()
    {
        Name = "coordinates",
        Says = "Letters by line, word and letter, each counted from 1: “{ coordinates: [ 2-3-1 ] }”; words by line and word: “2-3”.",
        Source = "Common practice: the book cipher.",
        Told = new("places such as “2-3-1” for line, word and letter", "[ 2-3-1, 1-4-2 ]"),
        Read = (text, told) =>
        {
            var lines = TextPieces.Lines(text).Select(line => WordsOf(line).ToArray()).ToArray();
            var rows = told.Select(place => (place, found: Found(lines, place))).ToArray();
            return rows.FirstOrDefault(row => row.found is null) is { place: { } lost }
                ? new ReadingResult.BadArgument($"the text has no place {TextPieces.Quoted(lost)}")
                : ReadingResult.Of(rows.Select(row => new Row(row.place, row.found!)), "it was told no place");
        },
    };

    private static string? Found(string[][] lines, string place)
    {
        var numbers = place.Split('-', StringSplitOptions.TrimEntries)
            .Select(number => int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var at) ? at : 0)
            .ToArray();
        if (numbers.Length is not (2 or 3) || lines.ElementAtOrDefault(numbers[0] - 1)?.ElementAtOrDefault(numbers[1] - 1) is not { } word)
            return null;
        return numbers.Length == 2 ? word : TextPieces.Letters(word).ElementAtOrDefault(numbers[2] - 1)?.ToUpperInvariant();
    }

    private static IEnumerable<string> WordsOf(string text) => TextPieces.Words(text).Select(word => word.Value);

    private static ReadingResult Each(IEnumerable<string> wholes, Func<string, IEnumerable<string>> pieces, int place, string what)
    {
        var rows = wholes.Select(whole => (whole, piece: pieces(whole).ElementAtOrDefault(place - 1))).ToArray();
        return rows.FirstOrDefault(row => row.piece is null) is { whole: { } lacking }
            ? new ReadingResult.Stuck($"the {what} {TextPieces.Quoted(lacking)} has nothing at place {place}")
            : ReadingResult.Of(rows.Select(row => new Row(row.whole, row.piece!.ToUpperInvariant())), $"the text has no {what}");
    }

    private static ReadingResult Last(IEnumerable<string> wholes)
    {
        var rows = wholes.Select(whole => (whole, last: TextPieces.Letters(whole).LastOrDefault())).ToLookup(row => row.last is not null);
        return ReadingResult.Of(
            rows[true].Select(row => new Row(row.whole, row.last!.ToUpperInvariant())), rows[false].Select(row => row.whole), "the text has no letter");
    }

    private static ReadingResult At(ImmutableArray<string> told, Func<int, ReadingResult> read) => told switch
    {
        [] => read(1),
        [var one] when int.TryParse(one, NumberStyles.None, CultureInfo.InvariantCulture, out var place) && place is >= 1 and <= 99 => read(place),
        _ => new ReadingResult.BadArgument($"{TextPieces.Quoted(string.Join(", ", told))} is no place from 1 to 99"),
    };
}
