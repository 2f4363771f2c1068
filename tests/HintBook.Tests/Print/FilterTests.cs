using System.Text.RegularExpressions;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Cards.Typesetting;
using HintBook.Print.Flow;
using HintBook.Tests.House;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace HintBook.Tests.Print;

/// <summary>
/// An answer under a red filter as poppler draws it, read by tesseract: Debian's programs, neither of which the tool uses. Without a filter as a grey picture
/// of relative luminances (WCAG 2.2), with it as the red of the picture alone, each also with every pixel made black or white at the best threshold (Otsu's).
/// Colour is what this doesn't measure: who looks at it closely can make out letters.
/// </summary>
public partial class FilterTests
{
    // In millimetres.
    private const double Left = 8, Top = 10, Width = 88, Lead = 4.2;

    private static readonly string[] Lines =
    [
        "Set the four wheels to 5173 and pull the lock open. The lid",
        "of the smoker swings back: take the queen clip out of the",
        "bellows, and keep the folded card, since you need it again",
        "when you put the cabinet back. Turn the dial to the north",
        "until it clicks, close the shutter with your thumb, and the",
        "tray drops by about the breadth of a finger.",
    ];

    private static readonly string[] Words = [.. WordsOf(string.Join(' ', Lines))];

    private static double Height => (Lines.Length * Lead) + 1;

    [Theory]
    [InlineData(150)]
    [InlineData(300)]
    public void An_answer_is_read_with_the_filter_and_not_without_it(int resolution)
    {
        DebianProgram.Have("pdftoppm", "poppler-utils");
        DebianProgram.Have("tesseract", "tesseract-ocr");
        using var page = Rendered(Answer(), resolution);

        var bare = Math.Max(Read(page, Grey, resolution, isBlackAndWhite: false), Read(page, Grey, resolution, isBlackAndWhite: true));
        var filtered = Math.Max(Read(page, Red, resolution, isBlackAndWhite: false), Read(page, Red, resolution, isBlackAndWhite: true));

        Assert.True(bare <= Words.Length * 0.1, $"{bare} of {Words.Length} words are read without the filter.");
        Assert.True(filtered >= Words.Length * 0.95, $"{filtered} of {Words.Length} words are read with the filter.");
    }

    [Fact]
    public void Only_the_answer_is_text_for_whoever_reads_the_file()
    {
        using var document = UglyToad.PdfPig.PdfDocument.Open(Answer());
        var text = string.Concat(document.GetPage(1).Letters.Select(letter => letter.Value)).Replace(" ", "", StringComparison.Ordinal);
        Assert.Equal(string.Concat(Lines).Replace(" ", "", StringComparison.Ordinal), text);
    }

    [Fact]
    public void The_same_answer_gives_the_same_bytes() => Assert.Equal(Answer(), Answer());

    // Letters of every font that answers are set in; those in Japanese and Arabic come from fonts that the build may lack.
    [Theory]
    [InlineData("a", Typeface.Regular)]
    [InlineData("8", Typeface.SemiBold)]
    [InlineData("é", Typeface.Regular)]
    [InlineData("ж", Typeface.Regular)]
    [InlineData("λ", Typeface.SemiBold)]
    public void Letters_have_outlines_as_wide_as_they_are_set(string letter, Typeface face)
    {
        var (figures, advance) = Assert.NotNull(GlyphOutlines.Of(letter.EnumerateRunes().Single(), face));
        var points = figures.SelectMany(figure => figure.Curves.Select(curve => curve.End)).ToArray();

        Assert.Equal(Letters.Width(letter, face, 1), advance, 2);
        Assert.InRange(points.Min(point => point.X), -0.1, advance / 2);
        Assert.InRange(points.Max(point => point.X), advance / 2, advance + 0.1);
        Assert.InRange(points.Min(point => point.Y), -1, -0.4);
    }

    private static byte[] Answer()
    {
        const double size = 2.9;
        Printed[] lines = [.. Lines.Select((line, i) => new PrintedText(0, 3.2 + (i * Lead), line, Typeface.Regular, size, Tone.Ink))];
        var under = new PrintedUnderFilter(new(0, 0, Width, Height), [.. lines]);
        var frame = new PageFrame(new HintBook.Cards.Size(105, 60), new Rect(Left, Top, Width, Height));
        return PaperPdf.Write("An answer", "en", [new PaperPage(frame, [new PlacedPiece(Left, Top, new Piece(under.Place.Height, [under]))], [])]);
    }

    // The answer without the page around it.
    private static Image<Rgb24> Rendered(byte[] pdf, int resolution) => InFolder(folder =>
    {
        File.WriteAllBytes(Path.Combine(folder, "p.pdf"), pdf);
        string[] answer = ["-x", Dots(Left), "-y", Dots(Top), "-W", Dots(Width), "-H", Dots(Height)];
        DebianProgram.Run(folder, "pdftoppm", ["-r", $"{resolution}", .. answer, "-png", "-singlefile", "p.pdf", "p"]);
        return Image.Load<Rgb24>(Path.Combine(folder, "p.png"));

        string Dots(double millimetres) => $"{Math.Round(millimetres / 25.4 * resolution)}";
    });

    // How many words of the answer are read, each as often as it stands there at most. A coarse picture is enlarged, as tesseract wants its letters.
    private static int Read(Image<Rgb24> page, Func<Rgb24, double> seen, int resolution, bool isBlackAndWhite) => InFolder(folder =>
    {
        var enlarged = 300 / resolution;
        using var picture = new Image<L8>(page.Width * enlarged, page.Height * enlarged);
        for (var y = 0; y < picture.Height; y++)
        {
            for (var x = 0; x < picture.Width; x++)
                picture[x, y] = new((byte)Math.Round(255 * seen(page[x / enlarged, y / enlarged])));
        }

        if (isBlackAndWhite)
            MakeBlackAndWhite(picture);
        picture.SaveAsPng(Path.Combine(folder, "p.png"));
        var left = WordsOf(DebianProgram.Run(folder, "tesseract", "p.png", "-", "--psm", "6", "--dpi", "300")).ToList();
        return Words.Count(left.Remove);
    });

    private static double Grey(Rgb24 pixel)
    {
        var light = (0.2126 * Linear(pixel.R)) + (0.7152 * Linear(pixel.G)) + (0.0722 * Linear(pixel.B));
        return light <= 0.0031308 ? 12.92 * light : (1.055 * Math.Pow(light, 1 / 2.4)) - 0.055;
    }

    private static double Red(Rgb24 pixel) => pixel.R / 255.0;

    private static double Linear(byte part)
    {
        var share = part / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }

    // N. Otsu, "A threshold selection method from gray-level histograms", 1979 (from memory).
    private static void MakeBlackAndWhite(Image<L8> picture)
    {
        var histogram = new double[256];
        for (var y = 0; y < picture.Height; y++)
        {
            for (var x = 0; x < picture.Width; x++)
                histogram[picture[x, y].PackedValue]++;
        }

        var (all, sum) = (histogram.Sum(), histogram.Select((count, value) => count * value).Sum());
        var threshold = Enumerable.Range(1, 254).MaxBy(value =>
        {
            var (dark, ofDark) = (histogram[..(value + 1)].Sum(), histogram[..(value + 1)].Select((count, each) => count * each).Sum());
            return dark == 0 || dark == all ? 0 : dark * (all - dark) * Math.Pow((ofDark / dark) - ((sum - ofDark) / (all - dark)), 2);
        });
        for (var y = 0; y < picture.Height; y++)
        {
            for (var x = 0; x < picture.Width; x++)
                picture[x, y] = new(picture[x, y].PackedValue <= threshold ? byte.MinValue : byte.MaxValue);
        }
    }

    private static T InFolder<T>(Func<string, T> use)
    {
        var folder = Directory.CreateTempSubdirectory("hintbook-filter-");
        try
        {
            return use(folder.FullName);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static IEnumerable<string> WordsOf(string text) => Word().Matches(text).Select(word => word.Value);

    [GeneratedRegex("[A-Za-z0-9]+", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Word();
}
