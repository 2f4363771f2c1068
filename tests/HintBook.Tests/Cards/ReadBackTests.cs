using System.Text;
using HintBook.Cards.Codes;
using HintBook.Cards.ReadingBack;
using HintBook.Text;

namespace HintBook.Tests.Cards;

public class ReadBackTests
{
    [Fact]
    public void Every_card_is_read_from_its_picture_and_from_the_finished_pdf()
    {
        var (set, findings) = CardBooks.Print(CardBooks.Of("Drawers", CardBooks.Stages(20)));
        Assert.Equal(new ReadBack(21, 21, 21), set.ReadBack with { Figures = null });
        Assert.True(set.ReadBack.All);
        Assert.Empty(findings.All);
    }

    [Fact]
    public void A_code_with_many_modules_flipped_is_caught_in_both_places()
    {
        var (readBack, findings) = PrintWith(code => SpoiltCards.Flipped(code, every: 3));
        Assert.Equal(new ReadBack(4, 3, 3), readBack with { Figures = null });
        Assert.Equal(["HB6104", "HB6104"], findings.All.Select(finding => finding.Code.Id));
        Assert.Contains(findings.All, finding => finding.Message.Contains("cards.pdf, page 2", StringComparison.Ordinal));
        Assert.Contains(findings.All, finding => finding.Message.Contains(".png", StringComparison.Ordinal));
        Assert.True(findings.AnyError);
    }

    [Fact]
    public void A_code_that_says_another_address_is_caught_in_both_places()
    {
        var (readBack, findings) = PrintWith(_ => QrMatrix.Encode("https://other.example/")!);
        Assert.Equal(new ReadBack(4, 3, 3), readBack with { Figures = null });
        Assert.Equal(["HB6105", "HB6105"], findings.All.Select(finding => finding.Code.Id));
        Assert.All(findings.All, finding => Assert.Contains("https://other.example/", finding.Message, StringComparison.Ordinal));
    }

    [Fact]
    public void A_few_flipped_modules_are_repaired_by_the_code_itself()
    {
        var (readBack, findings) = PrintWith(code => SpoiltCards.Flipped(code, every: 200));
        Assert.True(readBack.All);
        Assert.Empty(findings.All);
    }

    [Fact]
    public void A_shape_painted_over_a_code_counts_as_the_page_shows_it()
    {
        var page = PageInk.Extract(ContentStream.Read("0 g 0 0 10 10 re f 1 g 2 2 4 4 re f"u8.ToArray()));
        var (pixels, width, height) = Raster.Paint(page, 10, 10).Cut(new(0, 0, 10 * 25.4 / 72, 10 * 25.4 / 72));
        Assert.Equal(0, pixels[0]);
        Assert.Equal(255, pixels[((int)(height * 0.6) * width) + (int)(width * 0.4)]);
    }

    // ISO 32000-1, 8.5.3.3: a hole turned the same way is filled by the nonzero rule and left open by the even-odd rule.
    [Theory]
    [InlineData("f", 0)]
    [InlineData("f*", 255)]
    public void A_hole_follows_the_rule_that_the_page_names(string rule, int luminance)
    {
        var page = PageInk.Extract(ContentStream.Read(Encoding.ASCII.GetBytes($"0 0 10 10 re 4 4 2 2 re {rule}")));
        var raster = Raster.Paint(page, 10, 10);
        var (pixels, width, height) = raster.Cut(new(0, 0, 10 * 25.4 / 72, 10 * 25.4 / 72));
        Assert.Equal(luminance, pixels[(height / 2 * width) + (width / 2)]);
    }

    // A circle of four Bézier curves (the usual factor 0.5523, from memory) of 40 points has the area π r² within a thousandth; lines between its four
    // points alone would have 2 r².
    [Theory]
    [InlineData("10 0 0 10 0 0 cm 9 5 m 9 7.2092 7.2092 9 5 9 c 2.7908 9 1 7.2092 1 5 c 1 2.7908 2.7908 1 5 1 c 7.2092 1 9 2.7908 9 5 c h f")]
    [InlineData("10 0 0 -10 0 100 cm 9 5 m 9 7.2092 7.2092 9 5 9 c 2.7908 9 1 7.2092 1 5 c 1 2.7908 2.7908 1 5 1 c 7.2092 1 9 2.7908 9 5 c f*")]
    public void A_curve_is_filled_as_a_curve(string content)
    {
        const double toPoints = 72 / 25.4 / Raster.PixelsPerMillimetre;
        var area = Painted(content, side: 100).Count(pixel => pixel == 0) * toPoints * toPoints;
        Assert.Equal(Math.PI * 40 * 40, area, 5.0);
    }

    // ISO 32000-1, 8.5.4: paint outside of the clip isn't seen, clips within clips leave what both leave, and Q takes them back.
    [Theory]
    [InlineData("0 0 5 10 re W n 0 0 10 10 re f", 50)]
    [InlineData("0 0 5 10 re W n 0 0 10 5 re W n 0 0 10 10 re f", 25)]
    [InlineData("0 0 10 10 re 2 2 6 6 re W* n 0 0 10 10 re f", 64)]
    [InlineData("q 0 0 5 10 re W n Q 0 0 10 10 re f", 100)]
    public void What_lies_outside_of_a_clip_is_not_seen(string content, int percent)
    {
        var pixels = Painted(content);
        Assert.Equal(percent, 100.0 * pixels.Count(pixel => pixel == 0) / pixels.Length, 3.0);
    }

    [Theory]
    [InlineData("0 0 10 10 re S")]
    [InlineData("0 0 m 10 0 l 10 10 l 0 10 l s")]
    public void A_frame_has_four_sides(string content)
    {
        var pixels = Painted($"1 w {content}");
        var side = (int)Math.Sqrt(pixels.Length);
        Assert.All([side / 2, (side * side) - (side / 2) - 1, side / 2 * side, (side / 2 * side) + side - 1], at => Assert.Equal(0, pixels[at]));
        Assert.Equal(255, pixels[(side / 2 * side) + (side / 2)]);
    }

    // ISO 32000-1, 8.9.3: a picture fills the unit square, its first row at the top.
    [Theory]
    [InlineData("10 0 0 10 0 0 cm /Im0 Do", 10, 80, 160, 240)]
    [InlineData("-10 0 0 -10 10 10 cm /Im0 Do", 240, 160, 80, 10)]
    public void A_picture_stands_as_the_page_turns_it(string content, int topLeft, int topRight, int bottomLeft, int bottomRight)
    {
        var pixels = Painted(content, new PagePicture(2, 2, PicturePacking.Grey, [10, 80, 160, 240]));
        var side = (int)Math.Sqrt(pixels.Length);
        Assert.Equal(
            [topLeft, topRight, bottomLeft, bottomRight],
            new[] { (1, 1), (1, 3), (3, 1), (3, 3) }.Select(at => (int)pixels[(at.Item1 * side / 4 * side) + (at.Item2 * side / 4)]));
    }

    [Fact]
    public void A_jpeg_in_a_finished_file_is_painted()
    {
        using var picture = new SixLabors.ImageSharp.Image<SixLabors.ImageSharp.PixelFormats.Rgb24>(16, 16, new(200, 0, 0));
        using var jpeg = new MemoryStream();
        SixLabors.ImageSharp.ImageExtensions.SaveAsJpeg(picture, jpeg);
        HintBook.Cards.CardPicture photo = new(jpeg.ToArray(), 16, 16, IsMark: false);
        HintBook.Cards.PrintedPage page = new(new(50, 50), [new HintBook.Cards.PrintedPicture(new(10, 10, 30, 30), photo)]);
        var pdf = HintBook.Cards.Typesetting.StablePdf.Make("Picture", document => HintBook.Cards.PdfDrawing.Add(document, page));

        var (pixels, width, _) = Assert.Single(FinishedPage.In(pdf, [new CodedPage(0, OnHead: false, [])])).Pixels()!.Cut(new(0, 0, 50, 50));

        Assert.Equal(255, pixels[(60 * width) + 60]);
        // The red of ITU-R BT.709: 0.2126 of 200, which the packing of a JPEG changes a little.
        Assert.InRange(pixels[(300 * width) + 300], 38, 47);
    }

    [Theory]
    [InlineData("/Im1 Do")]
    [InlineData("/Sh0 sh")]
    [InlineData("/Pattern cs /P0 scn 0 0 10 10 re f")]
    [InlineData("BI /W 1 ID x EI")]
    [InlineData("/Glass gs 0 0 10 10 re f")]
    public void A_page_that_could_hide_a_code_unseen_is_refused(string content) =>
        Assert.Throws<InvalidDataException>(() => Painted(content));

    [Fact]
    public void A_picture_packed_in_an_unknown_way_is_refused() =>
        Assert.Throws<InvalidDataException>(() => Painted("/Im0 Do", new PagePicture(2, 2, PicturePacking.Unknown, [0, 0, 0, 0])));

    [Fact]
    public void Brackets_and_numbers_inside_strings_are_not_instructions() =>
        Assert.Equal(
            ["Tj", "Tj", "re"],
            ContentStream.Read(@"(0 0 1 1 re \) (f)) Tj <0010> Tj % 9 9 re
1 2 3 4 re"u8.ToArray()).Select(step => step.Operator));

    private static (ReadBack ReadBack, Findings Findings) PrintWith(Func<QrMatrix, QrMatrix> spoil)
    {
        var (set, findings) = SpoiltCards.Print(CardBooks.Beekeeper, spoil);
        return (set.ReadBack, findings);
    }

    // A square page, 10 points wide unless said.
    private static byte[] Painted(string content, PagePicture? picture = null, double side = 10)
    {
        var resources = PageResources.None with { Blending = PageResources.None.Blending.Add("Glass") };
        if (picture is not null)
            resources = resources with { Pictures = resources.Pictures.Add("Im0", picture) };
        var page = PageInk.Extract(ContentStream.Read(Encoding.ASCII.GetBytes(content)), resources);
        return Raster.Paint(page, side, side).Cut(new(0, 0, side * 25.4 / 72, side * 25.4 / 72)).Pixels;
    }
}
