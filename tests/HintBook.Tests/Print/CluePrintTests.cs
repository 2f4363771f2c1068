using System.Globalization;
using System.Xml.Linq;
using HintBook.Cards;
using HintBook.Ciphers.Making;
using HintBook.Print.Clues;
using UglyToad.PdfPig;

namespace HintBook.Tests.Print;

/// <summary>Printed clues, read as a solver reads them: the letters under the holes, by nothing but millimetres.</summary>
public class CluePrintTests
{
    private const double PointsToMm = 25.4 / 72;

    [Theory]
    [InlineData("51737319", "turning-grille")]
    [InlineData("WHENTHEWINDISINTHENORTHSHUTTHEDOORXX", "turning-grille")]
    [InlineData("CLOVER", "stencil")]
    [InlineData("5173", "stencil")]
    public void Through_the_holes_of_the_SVGs_one_reads_the_answer(string answer, string way)
    {
        var clue = Made(answer, way);
        var (block, mask) = (Svg(clue, 0), Svg(clue, 1));
        var edge = mask.Elements().Single(element => (string?)element.Attribute("class") == "edge");
        var letters = block.Elements().Where(element => element.Name.LocalName == "text" && element.Value.Length == 1)
            .Select(text => (text.Value, X: Number(text, "x"), Y: Number(text, "y") - (Number(text, "font-size") * 0.364)));
        var holes = mask.Elements().Where(element => (string?)element.Attribute("class") == "hole")
            .Select(hole => (X: Number(hole, "x") + (Number(hole, "width") / 2), Y: Number(hole, "y") + (Number(hole, "height") / 2)));

        var middle = (Number(edge, "x") + (Number(edge, "width") / 2), Number(edge, "y") + (Number(edge, "height") / 2));
        Assert.Equal(answer, Read([.. letters], [.. holes], middle, clue.Mask!.Clockwise is null ? 1 : 4));
    }

    [Theory]
    [InlineData("51737319", "turning-grille")]
    [InlineData("CLOVER", "stencil")]
    public void Through_the_holes_of_the_PDFs_second_page_one_reads_the_answer(string answer, string way)
    {
        var clue = Made(answer, way);
        using var pdf = PdfDocument.Open(Files(clue, "clue.pdf")[0]);
        Assert.Equal(2, pdf.NumberOfPages);
        var (block, mask) = (pdf.GetPage(1), pdf.GetPage(2));
        var letters = block.GetWords().Where(word => word.Text.Length == 1 && word.Letters[0].PointSize > 15)
            .Select(word => (word.Text, X: word.BoundingBox.Centroid.X * PointsToMm, Y: (block.Height - word.BoundingBox.Centroid.Y) * PointsToMm));
        var boxes = mask.Paths.Select(path => path.GetBoundingRectangle()!.Value).Where(box => box.Width > 0 && box.Height > 0).ToArray();
        var holes = boxes.Where(box => Math.Abs((box.Width * PointsToMm) - 7) < 0.1 && Math.Abs((box.Height * PointsToMm) - 7) < 0.1)
            .Select(box => (X: box.Centroid.X * PointsToMm, Y: (mask.Height - box.Centroid.Y) * PointsToMm));
        var edge = boxes.Single(box => Math.Abs((box.Width * PointsToMm) - clue.Mask!.Width) < 0.1);

        var middle = (edge.Centroid.X * PointsToMm, (mask.Height - edge.Centroid.Y) * PointsToMm);
        Assert.Equal(answer, Read([.. letters], [.. holes], middle, clue.Mask!.Clockwise is null ? 1 : 4));
    }

    [Fact]
    public void An_SVG_is_as_large_as_its_sheet_and_counts_in_millimetres()
    {
        var svg = Svg(Made("5173", "morse"), 0);

        Assert.Equal(("210mm", "297mm", "0 0 210 297"), ((string?)svg.Attribute("width"), (string?)svg.Attribute("height"), (string?)svg.Attribute("viewBox")));
    }

    [Fact]
    public void A_PDF_is_as_large_as_its_sheet()
    {
        using var pdf = PdfDocument.Open(Files(Made("5173", "morse"), "clue.pdf", Paper.Letter)[0]);

        // 8.5 × 11 inches.
        Assert.Equal((612, 792), (Math.Round(pdf.GetPage(1).Width), Math.Round(pdf.GetPage(1).Height)));
    }

    [Fact]
    public void The_ruler_is_a_hundred_millimetres_long() =>
        Assert.Single(
            Svg(Made("5173", "morse"), 0).Elements(),
            element => element.Name.LocalName == "line" && Math.Abs(Number(element, "x2") - Number(element, "x1") - 100) < 0.001);

    // ITU-R M.1677-1: a dash is three dots long, the space inside of a letter one, between letters three.
    [Fact]
    public void Morse_is_drawn_in_the_lengths_of_the_standard()
    {
        var bars = Svg(Made("NE", "morse"), 0).Elements().Where(element => (string?)element.Attribute("class") == "sign")
            .Select(bar => (X: Number(bar, "x"), Width: Number(bar, "width"))).ToArray();

        Assert.Equal([6.0, 2.0, 2.0], bars.Select(bar => bar.Width));
        Assert.Equal([2.0, 6.0], bars.Zip(bars.Skip(1), (bar, next) => next.X - bar.X - bar.Width));
    }

    [Fact]
    public void Each_colour_is_a_band()
    {
        var bands = Svg(Made("5173", "resistor-colours"), 0).Elements().Where(element => (string?)element.Attribute("class") == "band");
        Assert.Equal(4, bands.Select(band => (string?)band.Attribute("fill")).Distinct().Count());
    }

    [Theory]
    [InlineData("turning-grille", "WHENTHEWINDISINT")]
    [InlineData("stencil", "CLOVER")]
    [InlineData("morse", "CLOVER")]
    [InlineData("resistor-colours", "5173")]
    [InlineData("acrostic", "CLOVER")]
    public void No_sheet_says_the_answer(string way, string answer)
    {
        var clue = Made(answer, way);
        Assert.All(
            Files(clue, "clue.svg"),
            file => Assert.DoesNotContain(answer, System.Text.Encoding.UTF8.GetString(file), StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData("clue.svg")]
    [InlineData("clue.pdf")]
    public void The_same_clue_gives_the_same_bytes(string path) => Assert.Equal(Files(Made("CLOVER", "stencil"), path), Files(Made("CLOVER", "stencil"), path));

    [Fact]
    public void What_has_no_room_on_a_sheet_is_said() =>
        Assert.Contains(
            "a sheet has room for 180 × 212 mm",
            CluePrint.Make(Made(new string('B', 100), "acrostic"), "clue.pdf", Paper.A4).NoRoom,
            StringComparison.Ordinal);

    // The mask is turned about its middle by a quarter at a time, clockwise; each time the holes are read row by row.
    private static string Read((string Text, double X, double Y)[] letters, (double X, double Y)[] holes, (double X, double Y) middle, int turns)
    {
        var read = "";
        for (var turn = 0; turn < turns; turn++)
        {
            foreach (var (x, y) in holes.OrderBy(hole => Math.Round(hole.Y)).ThenBy(hole => hole.X))
                read += letters.Single(letter => Math.Abs(letter.X - x) < 3.5 && Math.Abs(letter.Y - y) < 3.5).Text;
            holes = [.. holes.Select(hole => (middle.X - (hole.Y - middle.Y), middle.Y + (hole.X - middle.X)))];
        }

        return read;
    }

    private static MadeClue Made(string answer, string way) => Assert.IsType<Attempt.Made>(Clues.For(answer, way, [])).Clue;

    private static byte[][] Files(MadeClue clue, string path, Paper paper = Paper.A4) =>
        [.. CluePrint.Make(clue, path, paper).Files.Select(file => file.Content().ToArray())];

    private static XElement Svg(MadeClue clue, int sheet) => XElement.Parse(System.Text.Encoding.UTF8.GetString(Files(clue, "clue.svg")[sheet]));

    private static double Number(XElement element, string name) => double.Parse((string)element.Attribute(name)!, CultureInfo.InvariantCulture);
}
