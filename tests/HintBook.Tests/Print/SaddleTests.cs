using CsCheck;
using HintBook.Cards;
using HintBook.Print.Booklets;
using HintBook.Print.Flow;
using UglyToad.PdfPig;

namespace HintBook.Tests.Print;

/// <summary>Sheets that are printed, folded and read: by hand in these tests, as a reader would.</summary>
public class SaddleTests
{
    private const double PointsToMm = 25.4 / 72;

    [Fact]
    public void Folded_and_stapled_the_sheets_read_in_order() => Gen.Int[1, 60].Sample(sheets =>
        Assert.Equal(Enumerable.Range(0, 4 * sheets), ReadThrough(Saddle.Sides(4 * sheets))));

    [Theory]
    [InlineData(false, Paper.A4)]
    [InlineData(true, Paper.A4)]
    [InlineData(false, Paper.Letter)]
    public void The_finished_sheets_of_the_example_read_as_its_booklet_does(bool large, Paper paper)
    {
        var booklet = Booklet.Set(PrintedBooks.Example, large, Veil.Upright);
        using var pages = PdfDocument.Open(PaperPdf.Write("pages", "en", booklet.Pages));
        using var sheets = PdfDocument.Open(PaperPdf.Write("sheets", "en", Saddle.Sheets(booklet.Pages, paper, fromRight: false)));

        var size = booklet.Pages[0].Frame.Page;
        var spreads = sheets.GetPages().Select(sheet => Spreads(sheet, size).ToArray()).ToArray();
        // A sheet of paper may hold several sheets of the booklet: they are cut apart before they are folded.
        var cut = spreads.Chunk(2).SelectMany(sides => sides[0].Zip(sides[1], (front, back) => new[] { front, back }).SelectMany(both => both))
            .Where(spread => spread.Left.Length + spread.Right.Length > 0).ToList();
        var read = ReadThrough([.. cut.Select(spread => (spread.Left, spread.Right))]);

        var inOrder = pages.GetPages().Select(page => WordsOf(page, 0, size.Width, 0, size.Height));
        Assert.Equal(inOrder.Where(text => text.Length > 0), read.Where(text => text.Length > 0));
    }

    [Fact]
    public void From_right_to_left_the_first_page_stands_at_the_left_of_its_sheet()
    {
        var page = new PageFrame(new(105, 148), new(10, 10, 85, 124));
        PaperPage[] pages = [.. Enumerable.Range(1, 4).Select(number => new PaperPage(page, [], [new PrintedText(10, 20, $"{number}", default, 3, Tone.Ink)]))];

        var sheets = Saddle.Sheets([.. pages], Paper.A4, fromRight: true);

        var first = sheets[0].Furniture.OfType<PrintedText>().ToDictionary(text => text.Text, text => text.X);
        Assert.True(first["1"] < first["4"]);
    }

    // Half a millimetre and more on twelve sheets: the innermost page moves by eleven times the paper's thickness.
    [Fact]
    public void Inner_pages_move_towards_the_fold_by_the_thickness_of_the_sheets_around_them()
    {
        var frame = new PageFrame(new(148, 210), new(15, 15, 118, 178));
        PaperPage[] pages = [.. Enumerable.Range(0, 48).Select(_ => new PaperPage(frame, [], [new PrintedText(15, 20, "x", default, 3, Tone.Ink)]))];

        var sheets = Saddle.Sheets([.. pages], Paper.A4, fromRight: false);

        var lefts = sheets.Where((_, side) => side % 2 == 0).Select(sheet => sheet.Furniture.OfType<PrintedText>().Min(text => text.X)).ToArray();
        Assert.Equal(12, lefts.Length);
        Assert.Equal(11 * Saddle.Thickness, lefts[^1] - lefts[0], 3);
    }

    // Sheets lie in one another. One leafs from the front cover to the middle, then on to the back cover.
    private static IEnumerable<T> ReadThrough<T>(IReadOnlyList<(T Left, T Right)> sides)
    {
        var sheets = sides.Chunk(2).ToArray();
        foreach (var sheet in sheets)
        {
            yield return sheet[0].Right;
            yield return sheet[1].Left;
        }

        foreach (var sheet in sheets.Reverse())
        {
            yield return sheet[1].Right;
            yield return sheet[0].Left;
        }
    }

    private static IEnumerable<(string Left, string Right)> Spreads(UglyToad.PdfPig.Content.Page sheet, HintBook.Cards.Size page)
    {
        var (width, height) = (sheet.Width * PointsToMm, sheet.Height * PointsToMm);
        var rows = (int)((height + 0.01) / page.Height);
        var (fold, top) = (width / 2, (height - (rows * page.Height)) / 2);
        for (var row = 0; row < rows; row++)
        {
            var y = top + (row * page.Height);
            yield return (WordsOf(sheet, fold - page.Width, fold, y, y + page.Height), WordsOf(sheet, fold, fold + page.Width, y, y + page.Height));
        }
    }

    private static string WordsOf(UglyToad.PdfPig.Content.Page page, double left, double right, double top, double bottom) => string.Concat(
        from letter in page.Letters
        let x = letter.StartBaseLine.X * PointsToMm
        let y = (page.Height - letter.StartBaseLine.Y) * PointsToMm
        where x >= left && x < right && y >= top && y < bottom && !string.IsNullOrWhiteSpace(letter.Value)
        select letter.Value);
}
