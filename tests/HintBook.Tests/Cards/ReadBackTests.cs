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
        var (pixels, width, height) = Raster.Fill(page, 10, 10).Cut(new(0, 0, 10 * 25.4 / 72, 10 * 25.4 / 72));
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
        var raster = Raster.Fill(page, 10, 10);
        var (pixels, width, height) = raster.Cut(new(0, 0, 10 * 25.4 / 72, 10 * 25.4 / 72));
        Assert.Equal(luminance, pixels[(height / 2 * width) + (width / 2)]);
    }

    [Theory]
    [InlineData("/Im0 Do")]
    [InlineData("0 0 10 10 re W n")]
    [InlineData("0 0 m 1 1 2 2 3 3 c f")]
    public void A_page_that_could_hide_a_code_unseen_is_refused(string content) =>
        Assert.Throws<InvalidDataException>(() => PageInk.Extract(ContentStream.Read(Encoding.ASCII.GetBytes(content))));

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
}
