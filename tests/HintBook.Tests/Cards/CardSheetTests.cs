using HintBook.Books;
using HintBook.Cards;
using HintBook.Tests.House;
using HintBook.Text;

namespace HintBook.Tests.Cards;

/// <summary>Every size of card on every sheet: measured with PdfPig, read by poppler with zbar and by ZXing.</summary>
public class CardSheetTests
{
    private const double Tenth = 0.1;

    // ID-1: ISO/IEC 7810 as quoted by Kuhn; A7: ISO 216; the others are habits of their countries (origamijapan.net's list of business cards).
    public static TheoryData<string, double, double> Cards => new()
    {
        { "european", 85, 55 },
        { "american", 88.9, 50.8 },
        { "japanese", 91, 55 },
        { "id-1", 85.60, 53.98 },
        { "a7", 105, 74 },
        { "100 x 60 mm", 100, 60 },
        { "55x90", 90, 55 },
        { "70 x 45", 70, 45 },
    };

    [Theory]
    [MemberData(nameof(Cards))]
    public void A_card_in_a_shops_form_is_a_page_with_a_trim_box_of_its_size_and_3_mm_of_bleed(string card, double width, double height)
    {
        var pdf = CardBooks.Pdf(CardBooks.Print(Wishing(card, "shop")).Set);
        Assert.Equal(2 * 4, PdfMeasure.Pages(pdf));
        PdfMeasure.Page(pdf, 1, page =>
        {
            var (whole, trim, bleed) = (page.MediaBox.Bounds, page.Dictionary, page.CropBox.Bounds);
            Assert.Equal(width + 6, Millimetres(whole.Width), Tenth);
            Assert.Equal(height + 6, Millimetres(whole.Height), Tenth);
            Assert.Equal(Millimetres(whole.Width), Millimetres(bleed.Width), Tenth);
            AssertBox([3, 3, width + 3, height + 3], Box(trim, "TrimBox"));
            AssertBox([0, 0, width + 6, height + 6], Box(trim, "BleedBox"));
            return trim;
        });
    }

    // As many as fit with 3 mm of bleed around each and 11 mm for marks at each edge, worked out by hand.
    [Theory]
    [InlineData("european", "a4", 2, 4)]
    [InlineData("american", "letter", 2, 4)]
    [InlineData("european", "a3", 3, 6)]
    [InlineData("european", "sra3", 3, 7)]
    [InlineData("a7", "a4", 2, 2)]
    [InlineData("id-1", "a4", 2, 4)]
    public void As_many_cards_lie_on_a_sheet_as_there_is_room_for(string card, string sheet, int columns, int rows)
    {
        var made = CardSheet.Of(Wishing(card, sheet).Print, Paper.A4).Sheet;
        Assert.Equal((columns, rows), (made.Columns, made.Rows));
    }

    [Theory]
    [InlineData("a4", "long-edge")]
    [InlineData("a4", "short-edge")]
    [InlineData("a3", "long-edge")]
    [InlineData("a3", "short-edge")]
    public void Turned_over_the_edge_that_is_named_every_back_lies_behind_its_front(string sheet, string duplex)
    {
        var made = CardSheet.Of(Wishing("european", sheet, duplex).Print, Paper.A4).Sheet;
        for (var slot = 0; slot < made.PerSheet; slot++)
        {
            var (front, back) = (made.Front(slot), made.Back(slot));
            var upright = duplex == "long-edge";
            Assert.Equal(upright ? made.Page.Width - front.Right : front.X, back.X, 9);
            Assert.Equal(upright ? front.Y : made.Page.Height - front.Bottom, back.Y, 9);
        }
    }

    [Fact]
    public void Backs_and_their_marks_are_moved_against_the_printers_offset()
    {
        var book = Wishing("european", "a4");
        var moved = book with { Print = book.Print with { Offset = (1.5, -2) } };
        var (straight, off) = (CardBooks.Pdf(CardBooks.Print(book).Set), CardBooks.Pdf(CardBooks.Print(moved).Set));
        var (codes, movedCodes) = (PdfMeasure.Page(straight, 2, PdfMeasure.Codes), PdfMeasure.Page(off, 2, PdfMeasure.Codes));
        Assert.All(codes.Zip(movedCodes), pair =>
        {
            Assert.Equal(-1.5, pair.Second.All.Left - pair.First.All.Left, 0.01);
            Assert.Equal(2, pair.Second.All.Top - pair.First.All.Top, 0.01);
        });
        Assert.Equal(PdfMeasure.Page(straight, 1, PdfMeasure.Codes), PdfMeasure.Page(off, 1, PdfMeasure.Codes));
    }

    [Theory]
    [MemberData(nameof(Cards))]
    public void Every_code_is_read_blurred_and_noisy_at_300_dots_to_the_inch(string card, double width, double height)
    {
        Assert.True(width > height);
        DebianProgram.Have("pdftoppm", "poppler-utils");
        DebianProgram.Have("zbarimg", "zbar-tools");
        var book = Wishing(card, "a4");
        var addresses = CardBooks.AddressesOf(book);
        var wanted = book.Stages.Select(stage => addresses.PrintedFor(stage.Id.Value)!).Append(CardBooks.Address).Order(StringComparer.Ordinal).ToArray();
        var (set, findings) = CardBooks.Print(book);
        Assert.Empty(findings.All.Where(finding => finding.IsError));
        Assert.Equal(4, set.ReadBack.FromPdf);
        Assert.InRange(set.ReadBack.Figures!.Module, 0.7, 2);
        Assert.InRange(set.ReadBack.Figures.QuietZone, 3.9, 6);
        Assert.InRange(set.ReadBack.Figures.Contrast, 20, 21);
        Assert.Equal(wanted, RenderedPage.Codes(CardBooks.Pdf(set), 2).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("0 x 0")]
    [InlineData("40 x 20")]
    [InlineData("90 x 40")]
    [InlineData("400 x 300")]
    public void A_card_that_is_too_small_or_too_large_is_an_error_that_says_the_limits(string card)
    {
        var (set, findings) = CardBooks.Print(Wishing(card, "a4"));
        var finding = Assert.Single(findings.All);
        Assert.Equal(("HB6111", Severity.Error), (finding.Code.Id, finding.Code.Severity));
        Assert.Contains("70 × 45 mm", finding.Message, StringComparison.Ordinal);
        Assert.Empty(set.Files);
    }

    [Fact]
    public void The_test_sheet_has_a_square_of_100_mm_and_a_cross_in_the_middle_of_both_sides()
    {
        var pdf = CardBooks.Bytes(CardBooks.Print(Wishing("european", "a4")).Set, "test-sheet.pdf");
        Assert.Equal(2, PdfMeasure.Pages(pdf));
        var square = PdfMeasure.Page(pdf, 1, page => PdfMeasure.Lines(page).Single(line => line.Width > 50 && line.Height > 50));
        Assert.Equal(100, square.Width, Tenth);
        Assert.Equal(100, square.Height, Tenth);
        foreach (var side in new[] { 1, 2 })
        {
            var level = PdfMeasure.Page(
                pdf, side, page => PdfMeasure.Lines(page).Where(line => line.Height < 0.1 && Math.Abs(line.Width - 20) < Tenth).ToArray());
            Assert.Contains(level, line => Math.Abs(line.Top - 148.5) < Tenth && Math.Abs(line.Left - 95) < Tenth);
        }
    }

    [Fact]
    public void A_fold_is_marked_outside_what_is_printed() =>
        Assert.All(PrintersMarks.Fold(new(20, 20, 100, 60), 70), mark =>
        {
            Assert.Equal(70, mark.X1);
            Assert.True(mark.Y2 <= 19 || mark.Y1 >= 81);
        });

    [Fact]
    public void Short_addresses_stand_on_cards_without_their_ending()
    {
        var book = CardBooks.Beekeeper;
        var addresses = CardBooks.AddressesOf(book) with { Short = true };
        var (set, _) = CardPrint.Print(book, addresses, Paper.A4, CardBooks.English);
        Assert.True(set.ReadBack.All);
        Assert.DoesNotContain(".html", PdfMeasure.Text(CardBooks.Pdf(set), 2), StringComparison.Ordinal);
    }

    private static void AssertBox(double[] wanted, double[] got) => Assert.All(wanted.Zip(got), edge => Assert.Equal(edge.First, edge.Second, Tenth));

    private static double Millimetres(double points) => points * 25.4 / 72;

    private static double[] Box(UglyToad.PdfPig.Tokens.DictionaryToken page, string name) =>
        page.Data[name] is UglyToad.PdfPig.Tokens.ArrayToken box
            ? [.. box.Data.OfType<UglyToad.PdfPig.Tokens.NumericToken>().Select(edge => Millimetres(edge.Double))]
            : [];

    private static Book Wishing(string card, string sheet, string? duplex = null)
    {
        var book = CardBooks.Of("Drawers", CardBooks.Stages(3));
        return book with
        {
            Print = new()
            {
                Card = book.Title.With(card),
                Sheet = book.Title.With(sheet),
                Duplex = duplex is null ? null : book.Title.With(duplex),
            },
        };
    }
}
