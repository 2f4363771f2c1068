using System.Text;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>
/// Braille letters and, after the number sign, figures: as cells (U+2800 and up, whose dots are the bits) or as the numbers of
/// the dots, <c>125</c> or <c>1-2-5</c>. A space, or a letter that is no figure, ends the figures.
/// </summary>
internal static class BrailleCells
{
    // Dots by letter: liblouis, latinLetterDef6Dots.
    private const string Table =
        "a1 b12 c14 d145 e15 f124 g1245 h125 i24 j245 k13 l123 m134 n1345 o135 p1234 q12345 r1235 s234 t2345 u136 v1236 w2456 x1346 y13456 z1356";

    private const string NumberSign = "3456";
    private const string CapitalSign = "6";

    private static readonly Dictionary<string, string> Letters =
        Table.Split(' ').ToDictionary(entry => entry[1..], entry => entry[..1].ToUpperInvariant());

    private static readonly Dictionary<char, string> DotsByLetter = Letters.ToDictionary(pair => pair.Value[0], pair => pair.Key);

    public static Way Way { get; } = Way.Bare(
        "braille",
        "Braille as letters and, after the number sign, figures: cells, or the numbers of their dots parted by spaces.",
        "Unicode 15.0, names of U+2800 to U+28FF; the letters of the Latin alphabet as in all Braille codes that use it.",
        Read);

    private static ReadingResult Read(string text)
    {
        var cells = text.Any(IsCell) ? text.Where(IsCell).Select(cell => (cell.ToString(), DotsOf(cell))) : Written(text);
        var (rows, figures) = (new List<Row>(), false);
        foreach (var (written, dots) in cells)
        {
            if (dots is NumberSign or CapitalSign or "")
            {
                figures = dots == NumberSign || (figures && dots != "");
                continue;
            }

            if (!Letters.TryGetValue(dots, out var letter))
                return new ReadingResult.Stuck($"{TextPieces.Quoted(written)} is no letter in Braille");
            figures = figures && letter[0] <= 'J';
            rows.Add(new Row(written, figures ? ((char)('0' + ((letter[0] - 'A' + 1) % 10))).ToString() : letter));
        }

        var besides = text.Any(IsCell) ? TextPieces.Words(text).Select(word => word.Value) : [];
        return ReadingResult.Of(rows, besides, $"no Braille stands in {TextPieces.Quoted(text)}");
    }

    /// <summary>Capital letters and figures as cells: before figures the number sign; behind them, where one of the letters A to J follows, a blank.</summary>
    public static string Of(string text)
    {
        var (cells, figures) = (new StringBuilder(), false);
        foreach (var symbol in text)
        {
            var figure = char.IsAsciiDigit(symbol);
            if (figure != figures && (figure || symbol <= 'J'))
                cells.Append(figure ? CellOf(NumberSign) : '\u2800');
            figures = figure;
            cells.Append(CellOf(DotsByLetter[figure ? (symbol == '0' ? 'J' : (char)(symbol - '1' + 'A')) : symbol]));
        }

        return cells.ToString();
    }

    /// <summary>The numbers of a cell's dots, in order: <c>125</c>.</summary>
    public static string DotsOf(char cell) =>
        string.Concat(Enumerable.Range(0, 8).Where(dot => ((cell >> dot) & 1) == 1).Select(dot => (char)('1' + dot)));

    private static char CellOf(string dots) => (char)('\u2800' + dots.Sum(dot => 1 << (dot - '1')));

    private static IEnumerable<(string Written, string Dots)> Written(string text) =>
        from piece in text.Split([' ', '\t', '\n', '\r', ',', ';', '/'], StringSplitOptions.RemoveEmptyEntries)
        select (piece, piece.Replace("-", "", StringComparison.Ordinal));

    private static bool IsCell(char symbol) => symbol is >= '\u2800' and <= '\u28FF';
}
