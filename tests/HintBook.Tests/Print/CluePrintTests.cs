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

    // The circle rule, read off the drawing: an arm's eighth of a turn from straight down, clockwise. See TablesTests for its source.
    [Theory]
    [InlineData("ABCDEFGHIJKLMNOPQRS")]
    [InlineData("TUVWXYZ")]
    public void Drawn_signallers_hold_their_arms_in_the_circles_places(string letters)
    {
        var arms = Svg(Made(letters, "semaphore"), 0).Elements().Where(element => (string?)element.Attribute("class") == "arm").Select(Eighth).ToArray();
        string[] circles = ["ABCDEFG", "HIKLMN", "OPQRS", "TUY", ".JV", "WX", "Z"];

        Assert.Equal(2 * letters.Length, arms.Length);
        Assert.Equal(letters, string.Concat(arms.Chunk(2).Select(pair => circles[pair.Min()][pair.Max() - pair.Min() - 1])));
    }

    // Marburg medium, from memory: dots 2.5 mm apart, cells 6 mm. Dots 1, 2, 3 go down the left side, 4, 5, 6 down the right one.
    [Fact]
    public void Drawn_cells_have_their_dots_where_they_are_embossed()
    {
        var discs = Svg(Made("HIVE", "braille"), 0).Elements()
            .Where(element => element.Name.LocalName == "circle" && element.Attribute("class") is not null).ToArray();
        var (left, top) = (discs.Min(disc => Number(disc, "cx")), discs.Min(disc => Number(disc, "cy")));
        var dots = discs.Where(disc => (string?)disc.Attribute("class") == "dot").Select(disc => (X: Number(disc, "cx") - left, Y: Number(disc, "cy") - top));
        var cells = dots.GroupBy(dot => (int)(dot.X / 6)).OrderBy(cell => cell.Key)
            .Select(cell => string.Concat(cell.Select(dot => 1 + Math.Round(dot.Y / 2.5) + (dot.X - (6 * cell.Key) > 1 ? 3 : 0)).Order()));

        Assert.Equal(["125", "24", "1236", "15"], cells);
    }

    [Fact]
    public void Drawn_dice_have_as_many_points_as_the_figures_say()
    {
        var svg = Svg(Made("635142", "dice"), 0);
        var dice = svg.Elements().Where(element => (string?)element.Attribute("class") == "die").Select(die => Number(die, "x"));
        var points = svg.Elements().Where(element => (string?)element.Attribute("class") == "point").Select(point => Number(point, "cx")).ToArray();

        Assert.Equal([6, 3, 5, 1, 4, 2], dice.Select(x => points.Count(point => point > x && point < x + 16)));
    }

    // The International Code of Signals, from memory, compared with the public domain designs of the signal-flags project: the colours at some places of a
    // flag, in shares of its width and height.
    [Theory]
    [InlineData('A', "white blue white blue", 0.1, 0.5, 0.6, 0.1, 0.4, 0.9, 0.6, 0.9)]
    [InlineData('B', "red red", 0.1, 0.1, 0.6, 0.5)]
    [InlineData('C', "blue white red white blue", 0.5, 0.1, 0.5, 0.3, 0.5, 0.5, 0.5, 0.7, 0.5, 0.9)]
    [InlineData('D', "yellow blue yellow", 0.5, 0.1, 0.5, 0.5, 0.5, 0.9)]
    [InlineData('E', "blue red", 0.5, 0.2, 0.5, 0.8)]
    [InlineData('F', "red white white", 0.5, 0.5, 0.1, 0.1, 0.9, 0.9)]
    [InlineData('G', "yellow blue yellow blue yellow blue", 0.08, 0.5, 0.25, 0.5, 0.42, 0.5, 0.58, 0.5, 0.75, 0.5, 0.92, 0.5)]
    [InlineData('H', "white red", 0.2, 0.5, 0.8, 0.5)]
    [InlineData('I', "yellow black yellow", 0.1, 0.5, 0.5, 0.5, 0.9, 0.1)]
    [InlineData('J', "blue white blue", 0.5, 0.1, 0.5, 0.5, 0.5, 0.9)]
    [InlineData('K', "yellow blue", 0.2, 0.5, 0.8, 0.5)]
    [InlineData('L', "yellow black black yellow", 0.2, 0.2, 0.8, 0.2, 0.2, 0.8, 0.8, 0.8)]
    [InlineData('M', "white blue blue white", 0.5, 0.5, 0.5, 0.1, 0.1, 0.5, 0.9, 0.9)]
    [InlineData('N', "blue white white blue", 0.1, 0.1, 0.4, 0.1, 0.1, 0.4, 0.9, 0.9)]
    [InlineData('O', "red yellow", 0.8, 0.2, 0.2, 0.8)]
    [InlineData('P', "white blue", 0.5, 0.5, 0.1, 0.5)]
    [InlineData('Q', "yellow yellow", 0.1, 0.1, 0.9, 0.9)]
    [InlineData('R', "yellow yellow red", 0.5, 0.1, 0.1, 0.5, 0.1, 0.1)]
    [InlineData('S', "blue white", 0.5, 0.5, 0.1, 0.5)]
    [InlineData('T', "red white blue", 0.1, 0.5, 0.5, 0.5, 0.9, 0.5)]
    [InlineData('U', "red white white red", 0.2, 0.2, 0.8, 0.2, 0.2, 0.8, 0.8, 0.8)]
    [InlineData('V', "red white red", 0.5, 0.5, 0.5, 0.1, 0.9, 0.1)]
    [InlineData('W', "red white blue", 0.5, 0.5, 0.25, 0.5, 0.05, 0.5)]
    [InlineData('X', "blue blue white", 0.5, 0.1, 0.1, 0.5, 0.1, 0.1)]
    [InlineData('Y', "yellow red yellow red", 0.05, 0.05, 0.15, 0.15, 0.85, 0.85, 0.95, 0.95)]
    [InlineData('Z', "yellow blue red black", 0.5, 0.1, 0.9, 0.5, 0.5, 0.9, 0.1, 0.5)]
    public void Drawn_flags_have_the_colours_of_the_code(char letter, string colours, params double[] places)
    {
        var flag = SignalFlag.Of(letter);
        var corners = flag.OfType<DrawnLine>().ToArray();
        var (left, right) = (corners.Min(line => line.X1), corners.Max(line => line.X1));
        var (top, bottom) = (corners.Min(line => line.Y1), corners.Max(line => line.Y1));

        Assert.Equal(
            colours.Split(' ').Select(Inks.Of),
            places.Chunk(2).Select(at => FillAt(flag, left + (at[0] * (right - left)), top + (at[1] * (bottom - top)))));
    }

    [Theory]
    [InlineData("semaphore", "HIVE5")]
    [InlineData("signal-flags", "HIVE")]
    [InlineData("braille", "HIVE5")]
    [InlineData("dice", "3165")]
    public void What_is_drawn_stands_in_a_PDF_as_well(string way, string answer)
    {
        using var pdf = PdfDocument.Open(Files(Made(answer, way), "clue.pdf")[0]);
        var filled = pdf.GetPage(1).Paths.Count(path => path.IsFilled);

        Assert.True(filled >= answer.Length, $"{filled} areas");
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

    // The arm's first two corners are at the shoulder and at the hand, on one side of it.
    private static int Eighth(XElement arm)
    {
        var corners = ((string)arm.Attribute("points")!).Split(' ', ',').Select(part => double.Parse(part, CultureInfo.InvariantCulture)).ToArray();
        var (x, y) = ((corners[2] + corners[4] - corners[0] - corners[6]) / 2, (corners[3] + corners[5] - corners[1] - corners[7]) / 2);
        return (int)Math.Round(Math.Atan2(-x, y) / (Math.PI / 4) + 8) % 8;
    }

    // The colour that was painted last at a place.
    private static string? FillAt(IEnumerable<Drawn> things, double x, double y) => things.Select(thing => thing switch
    {
        DrawnShape shape when IsInside(shape.Corners, x, y) => shape.Fill,
        DrawnDisc disc when Math.Pow(disc.X - x, 2) + Math.Pow(disc.Y - y, 2) < disc.Radius * disc.Radius => disc.Fill,
        _ => null,
    }).LastOrDefault(fill => fill is not null);

    // Even-odd rule.
    private static bool IsInside(IReadOnlyList<(double X, double Y)> corners, double x, double y) => Enumerable.Range(0, corners.Count).Count(place =>
    {
        var (a, b) = (corners[place], corners[(place + 1) % corners.Count]);
        return a.Y > y != b.Y > y && x < a.X + ((y - a.Y) / (b.Y - a.Y) * (b.X - a.X));
    }) % 2 == 1;

    private static MadeClue Made(string answer, string way) => Assert.IsType<Attempt.Made>(Clues.For(answer, way, [])).Clue;

    private static byte[][] Files(MadeClue clue, string path, Paper paper = Paper.A4) =>
        [.. CluePrint.Make(clue, path, paper).Files.Select(file => file.Content().ToArray())];

    private static XElement Svg(MadeClue clue, int sheet) => XElement.Parse(System.Text.Encoding.UTF8.GetString(Files(clue, "clue.svg")[sheet]));

    private static double Number(XElement element, string name) => double.Parse((string)element.Attribute(name)!, CultureInfo.InvariantCulture);
}
