using System.Collections.Immutable;
using System.Globalization;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>Ciphers that move letters to other places.</summary>
internal static class Transpositions
{
    public static Way RailFence { get; } = new()
    {
        Name = "rail-fence",
        Says = "Reads along a zigzag of as many rails as stated, into which the text was written rail by rail.",
        Source = "Common practice.",
        Told = new("a whole number of rails from 2 to 99", "3"),
        Read = (text, told) => told is [var one] && int.TryParse(one, NumberStyles.None, CultureInfo.InvariantCulture, out var rails) && rails is >= 2 and <= 99
            ? Along(text, rails)
            : new ReadingResult.BadArgument($"{TextPieces.Quoted(string.Join(", ", told))} isn't a number of rails from 2 to 99"),
    };

    /// <summary>
    /// A square mask with holes is laid on a square of letters, read row by row, turned a quarter, and so four times. Rows and
    /// columns count from 1. The direction matters and is stated.
    /// </summary>
    public static Way TurningGrille { get; } = new()
    {
        Name = "turning-grille",
        Says = "Letters of a square block through the holes of a mask that is turned three times: "
            + "“{ turning-grille: [ clockwise, 1-1, 1-3 ] }” (row and column of each hole, from 1), or “anticlockwise”.",
        Source = "Common practice: the turning grille of Fleissner and others.",
        Told = new("“clockwise” or “anticlockwise”, and the row and column of each hole", "[ clockwise, 1-1, 1-3 ]"),
        Conventions = told => told is [var way, ..]
            ? [new([way == "clockwise" ? "anticlockwise" : "clockwise", .. told[1..]], "turning the grille the other way")]
            : [],
        Read = (text, told) => told is ["clockwise" or "anticlockwise", _, ..]
            ? Through(text, clockwise: told[0] == "clockwise", turns: 4, told[1..])
            : new ReadingResult.BadArgument("it says neither “clockwise” nor “anticlockwise” before the holes"),
    };

    /// <summary>A mask that isn't turned, on a block of any size (Cardan, 1550).</summary>
    public static Way Stencil { get; } = new()
    {
        Name = "stencil",
        Says = "Letters of a block through the holes of a mask: “{ stencil: [ 1-1, 2-3 ] }” (row and column of each hole, from 1).",
        Source = "Common practice, after Cardan's grille of 1550.",
        Told = new("the row and column of each hole", "[ 1-1, 2-3 ]"),
        Read = (text, told) => Through(text, clockwise: true, turns: 1, told),
    };

    /// <summary>The block and its mask, for a step that lays one on; null for any other.</summary>
    public static MaskedBlock? BlockOf(string way, string text, ImmutableArray<string> told) =>
        way != Stencil.Name && way != TurningGrille.Name
            ? null
            : new(
                [.. TextPieces.Lines(text).Select(line => TextPieces.Set(line).ToImmutableArray())],
                [.. told.Select(Hole).OfType<(int, int)>()]);

    private static ReadingResult Along(string text, int rails)
    {
        var letters = TextPieces.Set(text).ToArray();
        if (letters.Length == 0)
            return new ReadingResult.Stuck("there is no letter");
        var period = 2 * (rails - 1);
        var order = Enumerable.Range(0, letters.Length).OrderBy(place => Math.Min(place % period, period - (place % period))).ThenBy(place => place);
        var read = new string[letters.Length];
        foreach (var (from, to) in order.Index())
            read[to] = letters[from];
        return ReadingResult.Of(string.Concat(read));
    }

    private static ReadingResult Through(string text, bool clockwise, int turns, ImmutableArray<string> written)
    {
        var block = TextPieces.Lines(text).Select(line => TextPieces.Set(line).ToArray()).ToArray();
        if (turns > 1 && (block.Length == 0 || block.Any(line => line.Length != block.Length)))
            return new ReadingResult.Stuck($"{TextPieces.Quoted(text)} isn't a square of as many lines as letters");
        var holes = written.Select(Hole).ToArray();
        if (Array.FindIndex(holes, hole => hole is not { } at || at.Row >= block.Length || at.Column >= block[at.Row].Length) is >= 0 and var lost)
            return new ReadingResult.BadArgument($"the hole {TextPieces.Quoted(written[lost])} isn't on the block");
        var size = block.Length;
        var rows = new List<Row>();
        var mask = holes.Select(hole => hole!.Value);
        for (var turn = 0; turn < turns; turn++)
        {
            rows.AddRange(mask.Order().Select(hole => new Row($"{hole.Row + 1}-{hole.Column + 1}", block[hole.Row][hole.Column])));
            mask = [.. mask.Select(hole => clockwise ? (hole.Column, size - 1 - hole.Row) : (size - 1 - hole.Column, hole.Row))];
        }

        return rows.GroupBy(row => row.Read).FirstOrDefault(same => same.Count() > 1) is { } twice
            ? new ReadingResult.BadArgument($"the place {twice.Key} shows twice")
            : ReadingResult.Of(rows, "there is no hole");
    }

    private static (int Row, int Column)? Hole(string written) =>
        written.Split('-', StringSplitOptions.TrimEntries) is [var row, var column]
        && int.TryParse(row, NumberStyles.None, CultureInfo.InvariantCulture, out var down) && down >= 1
        && int.TryParse(column, NumberStyles.None, CultureInfo.InvariantCulture, out var along) && along >= 1
            ? (down - 1, along - 1)
            : null;
}
