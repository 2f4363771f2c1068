using HintBook.Cards;
using HintBook.Cards.Typesetting;
using HintBook.Photos.Drawings;
using HintBook.Tests.House;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace HintBook.Tests.Cards;

/// <summary>
/// The examples of SVG 1.1 (W3C Recommendation, second edition, chapters 8 and 9), in our PDF as poppler draws it, at points worked out by hand.
/// </summary>
public class MarkDrawingTests
{
    private const string White = "FFFFFF";
    private const string Red = "FF0000";
    private const string Blue = "0000FF";
    private const string Yellow = "FFFF00";

    public static TheoryData<string, string, (double X, double Y, string Colour)[]> Examples => new()
    {
        {
            "0 0 400 400",
            "<path d='M 100 100 L 300 100 L 200 300 z' fill='red' stroke='blue' stroke-width='3'/>",
            [(200, 150, Red), (170, 200, Red), (130, 200, White), (200, 100, Blue), (150, 200, Blue), (200, 310, White)]
        },
        {
            "0 0 500 400",
            "<path style='fill:none; stroke:red; stroke-width:5' d='M100,200 C100,100 250,100 250,200 S400,300 400,200'/>",
            [(175, 125, Red), (325, 275, Red), (250, 200, Red), (175, 150, White), (325, 250, White)]
        },
        {
            "0 0 1200 600",
            "<path d='M200,300 Q400,50 600,300 T1000,300' fill='none' stroke='red' stroke-width='5'/>",
            [(400, 175, Red), (800, 425, Red), (600, 300, Red), (400, 190, White), (800, 410, White)]
        },
        {
            "0 0 1200 400",
            """
            <path d="M300,200 h-150 a150,150 0 1,0 150,-150 z" fill="red" stroke="blue" stroke-width="5"/>
            <path d="M275,175 v-150 a150,150 0 0,0 -150,150 z" fill="yellow" stroke="blue" stroke-width="5"/>
            <path d="M600,350 l 50,-25 a25,25 -30 0,1 50,-25 l 50,-25 a25,50 -30 0,1 50,-25 l 50,-25 a25,75 -30 0,1 50,-25 l 50,-25
                     a25,100 -30 0,1 50,-25 l 50,-25" fill="none" stroke="red" stroke-width="5"/>
            """,
            [
                (350, 150, Red), (350, 250, Red), (250, 250, Red), (290, 190, White), (220, 130, Yellow),
                (625, 337.5, Red), (662.5, 287.5, Red), (687.5, 337.5, White),
            ]
        },
        {
            "0 0 1200 400",
            """
            <rect x="100" y="100" width="400" height="200" rx="50" fill="#008000"/>
            <g transform="translate(700 210) rotate(-30)">
              <rect x="0" y="0" width="400" height="200" rx="50" fill="none" stroke="purple" stroke-width="30"/></g>
            """,
            [(300, 200, "008000"), (104, 104, White), (150, 101, "008000"), (873.2, 110, "800080"), (923.2, 196.6, White)]
        },
        {
            "0 0 1200 400",
            """
            <ellipse transform="translate(900 200) rotate(-30)" rx="250" ry="100" fill="none" stroke="blue" stroke-width="20"/>
            <circle cx="300" cy="200" r="100"/>
            """,
            [(300, 110, "000000"), (300, 90, White), (900 + (250 * 0.866), 200 - 125, Blue), (900 + 50, 200 + 86.6, Blue), (900, 200, White)]
        },
    };

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_of_the_standard_is_drawn_where_it_belongs(string box, string content, (double X, double Y, string Colour)[] points)
    {
        var (drawing, problems) = SvgReader.Read($"<svg xmlns='http://www.w3.org/2000/svg' viewBox='{box}'>{content}</svg>");
        Assert.Empty(problems);
        Assert.NotNull(drawing);
        using var image = Rendered(drawing);
        var unit = 1000 / Math.Max(double.Parse(box.Split(' ')[2], null), double.Parse(box.Split(' ')[3], null));
        Assert.All(points, point => Assert.Equal((point, point.Colour), (point, At(image, point.X * unit, point.Y * unit))));
    }

    // Two squares in each other, one turned round: the two rules of what is within (SVG 1.1, section 11.3).
    [Theory]
    [InlineData("nonzero", "M10 10H90V90H10zM30 30H70V70H30z", "000000")]
    [InlineData("evenodd", "M10 10H90V90H10zM30 30H70V70H30z", White)]
    [InlineData("nonzero", "M10 10H90V90H10zM30 30V70H70V30z", White)]
    public void Both_rules_of_what_is_within_are_kept(string rule, string data, string middle)
    {
        var path = $"<path fill-rule='{rule}' d='{data}'/>";
        var (drawing, _) = SvgReader.Read($"<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 100'>{path}</svg>");
        Assert.NotNull(drawing);
        using var image = Rendered(drawing);
        Assert.Equal(middle, At(image, 500, 500));
        Assert.Equal("000000", At(image, 200, 200));
    }

    private static string At(Image<Rgb24> image, double x, double y)
    {
        var pixel = image[(int)x, (int)y];
        return $"{pixel.R:X2}{pixel.G:X2}{pixel.B:X2}";
    }

    // Its longer side is a thousand pixels.
    private static Image<Rgb24> Rendered(Drawing drawing)
    {
        const double side = 84.666666;
        var size = new HintBook.Cards.Size(side * drawing.Width / Drawing.LongSide, side * drawing.Height / Drawing.LongSide);
        var pdf = StablePdf.Make("Mark", document => PdfDrawing.Add(document, new(size, [new PrintedDrawing(new(0, 0, size.Width, size.Height), drawing)])));
        var folder = Directory.CreateTempSubdirectory("hintbook-mark-");
        try
        {
            var (file, page) = (Path.Combine(folder.FullName, "p.pdf"), Path.Combine(folder.FullName, "p"));
            File.WriteAllBytes(file, pdf);
            DebianProgram.Run("/", "pdftoppm", "-r", "300", "-png", "-singlefile", file, page);
            return Image.Load<Rgb24>(page + ".png");
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
