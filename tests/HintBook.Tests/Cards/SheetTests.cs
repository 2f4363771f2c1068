using HintBook.Books;
using HintBook.Cards;

namespace HintBook.Tests.Cards;

/// <summary>Sizes in the finished PDF, read with PdfPig.</summary>
public class SheetTests
{
    // A hundredth of a millimetre is finer than any printer.
    private const double Fine = 0.01;

    // Page 2 has the backs of nine cards' first sheet.
    private static readonly byte[] Full = CardBooks.Pdf(CardBooks.Print(CardBooks.Of("Drawers", CardBooks.Stages(8))).Set);

    // ISO 216 A4, and US letter of 8.5 × 11 inches.
    [Theory]
    [InlineData(Paper.A4, 210, 297)]
    [InlineData(Paper.Letter, 215.9, 279.4)]
    public void A_sheet_has_the_size_of_its_paper(Paper paper, double width, double height)
    {
        var pdf = CardBooks.Pdf(CardBooks.Print(CardBooks.Beekeeper, paper).Set);
        var size = PdfMeasure.Page(pdf, 1, PdfMeasure.Size);
        Assert.Equal(width, size.Width, Fine);
        Assert.Equal(height, size.Height, Fine);
    }

    // 85 × 55 mm with 3 mm of bleed on each side: common practice in Europe (check-list of printers, no standard).
    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void Crop_marks_lie_around_eight_cards_of_85_by_55_with_3_mm_bleed(Paper paper)
    {
        var pdf = CardBooks.Pdf(CardBooks.Print(CardBooks.Beekeeper, paper).Set);
        foreach (var side in new[] { 1, 2 })
        {
            var marks = PdfMeasure.Page(pdf, side, page => PdfMeasure.Lines(page).Where(mark => IsCropMark(mark, Size.Of(paper))).ToArray());
            var upright = Distinct(marks.Where(mark => mark.Width < 0.1).Select(mark => mark.Left));
            var level = Distinct(marks.Where(mark => mark.Height < 0.1).Select(mark => mark.Top));
            Assert.Equal([85, 6, 85], Steps(upright));
            Assert.Equal([55, 6, 55, 6, 55, 6, 55], Steps(level));
        }
    }

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void Crop_marks_keep_off_every_bleed_and_stay_on_the_sheet(Paper paper)
    {
        var sheet = Size.Of(paper);
        foreach (var mark in Imposition.CropMarks(paper))
        {
            Assert.InRange(mark.X1, 5, sheet.Width - 5);
            Assert.InRange(mark.X2, 5, sheet.Width - 5);
            Assert.InRange(mark.Y1, 5, sheet.Height - 5);
            Assert.InRange(mark.Y2, 5, sheet.Height - 5);
            var line = new Extent(mark.X1, mark.Y1, mark.X2, mark.Y2).Grown(0.05);
            for (var slot = 0; slot < Imposition.PerSheet; slot++)
            {
                var bleed = Imposition.Front(paper, slot).Grown(Imposition.Bleed);
                Assert.False(line.Meets(new(bleed.X, bleed.Y, bleed.Right, bleed.Bottom)));
            }
        }
    }

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void Turned_on_its_long_edge_a_sheet_has_every_back_behind_its_front(Paper paper)
    {
        for (var slot = 0; slot < Imposition.PerSheet; slot++)
        {
            var front = Imposition.Front(paper, slot);
            var back = Imposition.Back(paper, slot);
            Assert.Equal(Size.Of(paper).Width - front.Right, back.X, 9);
            Assert.Equal(front.Y, back.Y, 9);
        }
    }

    [Fact]
    public void The_ground_runs_3_mm_over_the_cut_on_both_sides_of_the_sheet()
    {
        foreach (var (page, isFront) in new[] { (1, true), (2, false) })
        {
            var card = isFront ? Imposition.Front(Paper.A4, 0) : Imposition.Back(Paper.A4, 0);
            var edge = isFront ? card.X - 3 : card.Right + 3;
            var grounds = PdfMeasure.Page(Full, page, found => PdfMeasure.Others(found).Where(shape => shape.Height > 60).ToArray());
            Assert.Contains(grounds, ground => Math.Abs((isFront ? ground.Left : ground.Right) - edge) < Fine && Math.Abs(ground.Height - 61) < Fine);
        }
    }

    // ISO/IEC 18004: four light modules around the symbol. A finder pattern is seven modules wide there, which gives the
    // module's size without asking the program for it.
    [Fact]
    public void Every_code_has_modules_of_at_least_0_4_mm_and_a_quiet_zone_of_four()
    {
        PdfMeasure.Page(Full, 2, page =>
        {
            var codes = PdfMeasure.Codes(page);
            Assert.Equal(8, codes.Count);
            foreach (var (all, finder) in codes)
            {
                var module = finder.Width / 7;
                Assert.InRange(module, 0.4, 2);
                Assert.Equal(all.Width, all.Height, Fine);
                Assert.Equal(0, (all.Width / module) % 1 is var rest && rest > 0.5 ? 1 - rest : rest, 0.02);
                var quiet = all.Grown(4 * module - Fine);
                Assert.DoesNotContain(PdfMeasure.Others(page), quiet.Meets);
                Assert.DoesNotContain(codes, other => other.All != all && quiet.Meets(other.All));
            }

            return codes.Count;
        });
    }

    [Fact]
    public void Every_code_lies_on_its_card_with_its_quiet_zone()
    {
        var cards = Enumerable.Range(0, 8).Select(slot => Imposition.Back(Paper.A4, slot)).ToArray();
        foreach (var (all, finder) in PdfMeasure.Page(Full, 2, PdfMeasure.Codes))
        {
            var quiet = all.Grown(4 * finder.Width / 7);
            Assert.Contains(cards, card => quiet.Left > card.X && quiet.Right < card.Right && quiet.Top > card.Y && quiet.Bottom < card.Bottom);
        }
    }

    [Theory]
    [InlineData(CardChoice.Box, 2)]
    [InlineData(CardChoice.Stages, 2)]
    [InlineData(CardChoice.Both, 4)]
    public void The_pages_are_fronts_and_backs(CardChoice choice, int pages)
    {
        var book = CardBooks.Of("Drawers", CardBooks.Stages(8)) with { Cards = choice };
        Assert.Equal(pages, PdfMeasure.Pages(CardBooks.Pdf(CardBooks.Print(book).Set)));
    }

    // Marks of registration stand in the middle of each side.
    private static bool IsCropMark(Extent mark, Size sheet) =>
        Math.Abs(mark.Left + mark.Right - sheet.Width) > 3 && Math.Abs(mark.Top + mark.Bottom - sheet.Height) > 3
        && (mark.Width < 0.1 || mark.Height < 0.1);

    private static double[] Distinct(IEnumerable<double> places) => [.. places.Select(place => Math.Round(place, 2)).Distinct().Order()];

    private static double[] Steps(double[] places) => [.. places.Zip(places.Skip(1), (one, next) => Math.Round(next - one, 1))];
}
