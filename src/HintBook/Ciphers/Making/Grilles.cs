using System.Collections.Immutable;
using System.Globalization;

namespace HintBook.Ciphers.Making;

/// <summary>Blocks of letters with a mask that shows some of them.</summary>
internal static class Grilles
{
    // What has room on a sheet of paper beside its marks.
    private const int MostCells = 16;

    public static ClueWay Turning { get; } = new()
    {
        Name = "turning-grille",
        Says = "A square of letters, and a mask that is turned by quarters; "
            + "state the direction and the holes with “--with clockwise 1-1 1-3”, or leave them to chance.",
        Carries = Carries.Both,
        IsTold = true,
        Make = Turned,
    };

    public static ClueWay Stencil { get; } = new()
    {
        Name = "stencil",
        Says = "A square of letters, and a mask that shows the answer; state the holes with “--with 1-1 2-3”.",
        Carries = Carries.Both,
        IsTold = true,
        Make = Laid,
    };

    private static Draft Turned(Wish wish)
    {
        if (wish.Answer.Length % 4 != 0)
        {
            return new Draft.None(
                $"A mask that is turned three times shows four letters through each hole, and {wish.Answer.Length} can't be parted by four. "
                + "Take “stencil”, or a longer answer.");
        }

        var count = wish.Answer.Length / 4;
        var direction = wish.Told is [var first, ..] ? first : "clockwise";
        if (direction is not ("clockwise" or "anticlockwise"))
            return new Draft.None($"A turning grille begins with “clockwise” or “anticlockwise”, not with {TextPieces.Quoted(direction)}.");

        var stated = Holes(wish.Told.Skip(1));
        if (stated.Contains(null))
            return new Draft.None("Each hole is its row and its column, counted from 1: “1-3”.");
        var size = Math.Max(4, stated.Select(hole => Math.Max(hole!.Value.Row, hole.Value.Column) + 1).DefaultIfEmpty(0).Max());
        while (size * size / 4 < count || size % 2 != 0)
            size++;
        if (size > MostCells)
            return new Draft.None($"The block would have {size} rows, and a sheet has room for {MostCells}.");

        var cells = stated.Length > 0 ? [.. stated.Select(hole => hole!.Value)] : Chosen(size, count, wish.Choices);
        if (cells.Length != count)
            return new Draft.None($"{wish.Answer.Length} letters need {count} holes, and {cells.Length} are stated.");
        var shown = Enumerable.Range(0, 4).SelectMany(turn => cells.Select(cell => Quarter(cell, size, turn, direction == "clockwise")).Order()).ToArray();
        return shown.Distinct().Count() < shown.Length
            ? new Draft.None("Two of the holes come to lie on one letter when the mask is turned. State others, or none.")
            : Block(
                wish,
                size,
                size,
                shown,
                Grille.Over(size, size, direction == "clockwise", cells),
                mask => new MadeStep("turning-grille", [direction, .. mask.Places]));
    }

    private static Draft Laid(Wish wish)
    {
        var stated = Holes(wish.Told);
        if (stated.Contains(null))
            return new Draft.None("Each hole is its row and its column, counted from 1: “1-3”.");
        if (stated.Length > 0 && stated.Length != wish.Answer.Length)
            return new Draft.None($"The answer has {wish.Answer.Length} symbols, and {stated.Length} holes are stated.");
        var rows = Math.Max(4, stated.Select(hole => hole!.Value.Row + 1).DefaultIfEmpty(0).Max());
        var columns = Math.Max(4, stated.Select(hole => hole!.Value.Column + 1).DefaultIfEmpty(0).Max());
        // Four letters that mean nothing for each that does, as far as there is room.
        for (; rows < MostCells && (rows * columns < 5 * wish.Answer.Length || columns < rows); columns = Math.Max(columns, rows))
            rows++;
        if (rows > MostCells || columns > MostCells || rows * columns < wish.Answer.Length)
            return new Draft.None($"The block would have more than the {MostCells} rows and columns for which a sheet has room.");
        var every = Enumerable.Range(0, rows * columns).Select(cell => (Row: cell / columns, Column: cell % columns));
        var cells = stated.Length > 0
            ? stated.Select(hole => hole!.Value).ToArray()
            : Apart(wish.Choices.Shuffled(every), wish.Answer.Length);
        return cells.Distinct().Count() < cells.Length || !cells.SequenceEqual(cells.Order())
            ? new Draft.None("The holes must be different ones, row by row, since that is how they are read.")
            : Block(wish, rows, columns, cells, Grille.Over(rows, columns, null, cells), mask => new MadeStep("stencil", mask.Places));
    }

    private static Draft.Text Block(Wish wish, int rows, int columns, (int Row, int Column)[] shown, Grille mask, Func<Grille, MadeStep> reading)
    {
        var block = Enumerable.Range(0, rows).Select(_ => Enumerable.Range(0, columns).Select(_ => wish.Choices.Filler).ToArray()).ToArray();
        foreach (var (symbol, cell) in wish.Answer.Zip(shown))
            block[cell.Row][cell.Column] = symbol;
        return new Draft.Text(string.Join('\n', block.Select(line => new string(line))), [reading(mask)], ClueLook.Block, mask);
    }

    // A quarter of the square holds one cell of each four that a hole passes over.
    private static (int Row, int Column)[] Chosen(int size, int count, Choices choices) =>
    [
        .. from cell in choices.Shuffled(Enumerable.Range(0, size * size / 4)).Take(count).ToArray()
           select Quarter((cell / (size / 2), cell % (size / 2)), size, choices.Below(4), clockwise: true),
    ];

    // Neighbours could be read without the mask, and leave little card between them: they are taken last.
    private static (int Row, int Column)[] Apart((int Row, int Column)[] cells, int count)
    {
        List<(int Row, int Column)> taken = [];
        foreach (var cell in cells.Where(_ => taken.Count < count))
        {
            if (!taken.Exists(other => Math.Abs(other.Row - cell.Row) <= 1 && Math.Abs(other.Column - cell.Column) <= 1))
                taken.Add(cell);
        }

        return [.. taken.Concat(cells.Except(taken)).Take(count).Order()];
    }

    private static (int Row, int Column) Quarter((int Row, int Column) cell, int size, int turns, bool clockwise)
    {
        for (var turn = 0; turn < turns; turn++)
            cell = clockwise ? (cell.Column, size - 1 - cell.Row) : (size - 1 - cell.Column, cell.Row);
        return cell;
    }

    private static (int Row, int Column)?[] Holes(IEnumerable<string> written) =>
    [
        .. from hole in written
           select hole.Split('-') is [var row, var column]
               && int.TryParse(row, NumberStyles.None, CultureInfo.InvariantCulture, out var down) && down is >= 1 and <= MostCells
               && int.TryParse(column, NumberStyles.None, CultureInfo.InvariantCulture, out var along) && along is >= 1 and <= MostCells
                   ? (down - 1, along - 1)
                   : ((int, int)?)null,
    ];
}
