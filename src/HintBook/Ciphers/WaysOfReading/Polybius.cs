using System.Collections.Immutable;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>
/// The square of five by five, row before column. It has 25 cells for 26 letters, and sources differ about the two that share a cell. So
/// the grid is always stated: as the pair that shares a cell, or written out.
/// </summary>
internal static class Polybius
{
    private const string Source = "Common practice after Polybius: I and J share a cell in most books. Other pairs are in use, so that it must be stated.";

    private static readonly WayArgument Grid = new("the pair of letters that shares a cell, “I/J”, “C/K” or the like, or 25 letters", "I/J");

    public static Way ToLetters { get; } = new()
    {
        Name = "polybius",
        Says = "Pairs of figures as letters of a five-by-five square, row before column; “[ I/J, column-first ]” the other way round.",
        Source = Source,
        Told = Grid,
        Conventions = Other,
        Read = (text, told) => GridIn(told) is { } grid ? Letters(text, grid, ColumnFirst(told)) : BadArgument(told),
    };

    public static Way ToFigures { get; } = new()
    {
        Name = "to-polybius",
        Says = "Letters as their row and column in a five-by-five square; “[ I/J, column-first ]” the other way round.",
        Source = Source,
        Told = Grid,
        Conventions = Other,
        Read = (text, told) => GridIn(told) is { } grid ? Cells(text, grid, ColumnFirst(told)) : BadArgument(told),
    };

    private static ReadingResult Letters(string text, string[] grid, bool columnFirst)
    {
        var figures = string.Concat(TextPieces.Figures(text));
        if (figures.Length % 2 != 0 || figures.Any(figure => figure is < '1' or > '5'))
            return new ReadingResult.Stuck($"{TextPieces.Quoted(text)} isn't made of pairs of the figures 1 to 5");
        return EveryWord.BesideFigures(
            text,
            figures.Chunk(2).Select(pair => new Row(new string(pair), grid[CellOf(pair[0] - '1', pair[1] - '1', columnFirst)][..1])),
            $"no figure stands in {TextPieces.Quoted(text)}");
    }

    private static ReadingResult Cells(string text, string[] grid, bool columnFirst)
    {
        var letters = TextPieces.Letters(text).Select(letter => letter.ToUpperInvariant()).ToArray();
        if (letters.FirstOrDefault(letter => CellWith(grid, letter) < 0) is { } strange)
            return new ReadingResult.Stuck($"{TextPieces.Quoted(strange)} isn't in the square");
        return ReadingResult.Of(
            from letter in letters
            let cell = CellWith(grid, letter)
            select new Row(letter, columnFirst ? $"{(cell % 5) + 1}{(cell / 5) + 1}" : $"{(cell / 5) + 1}{(cell % 5) + 1}"),
            $"no letter stands in {TextPieces.Quoted(text)}");
    }

    private static int CellOf(int first, int second, bool columnFirst) => columnFirst ? (second * 5) + first : (first * 5) + second;

    private static int CellWith(string[] grid, string letter) => Array.FindIndex(grid, cell => cell.Contains(letter, StringComparison.Ordinal));

    private static bool ColumnFirst(ImmutableArray<string> told) => told is [_, "column-first"];

    private static string[]? GridIn(ImmutableArray<string> told) => told.Length == 1 || ColumnFirst(told) ? GridIn(told[0]) : null;

    private static string[]? GridIn(string written) => written switch
    {
        [>= 'A' and <= 'Z' and var kept, '/', >= 'A' and <= 'Z' and var gone] when kept < gone =>
            [
                .. from letter in Enumerable.Range('A', 26).Select(letter => (char)letter)
                   where letter != gone
                   select letter == kept ? $"{kept}{gone}" : $"{letter}",
            ],
        { Length: 25 } when written.All(char.IsAsciiLetterUpper) && written.Distinct().Count() == 25 => [.. written.Select(letter => letter.ToString())],
        _ => null,
    };

    private static ReadingResult.BadArgument BadArgument(ImmutableArray<string> told) =>
        new($"{TextPieces.Quoted(string.Join(", ", told))} states no square");

    private static IEnumerable<Convention> Other(ImmutableArray<string> told) => told switch
    {
        [var grid] => [new([grid, "column-first"], "taking the column before the row")],
        [var grid, _] => [new([grid], "taking the row before the column")],
        _ => [],
    };
}
