using System.Collections.Immutable;
using System.Numerics;
using HintBook.Cards;
using HintBook.Cards.Codes;
using HintBook.Cards.Kept;
using HintBook.Photos.Drawings;
using HintBook.Print;
using HintBook.Print.Flow;
using HintBook.Print.Papers;
using HintBook.Text;

namespace HintBook.Tests.Print;

/// <summary>Codes on papers, read back from the pixels of the finished file with all that is painted beside them.</summary>
public class PaperCodesTests
{
    private const string Says = "https://alder-row.example/beekeeper/";
    private static readonly PageFrame Frame = new(new(105, 148), new(10, 10, 85, 128));

    [Fact]
    public void The_code_on_the_label_is_read_and_measured()
    {
        var (counts, findings) = Read(BoxLabel.Layout(PrintedBooks.Example).Pages);

        Assert.Empty(findings);
        Assert.Equal((1, 1, 0), (counts.Codes, counts.Read, counts.Kept));
        // 0.4 mm is the least of the guides' least modules; four light modules are ISO/IEC 18004's quiet zone; black on white has 21 to 1 (WCAG 2.2).
        Assert.True(counts.Figures!.Module > 0.4);
        Assert.True(counts.Figures.QuietZone >= 4);
        Assert.Equal(21, counts.Figures.Contrast, 0.01);
    }

    [Fact]
    public void Each_copy_of_a_label_is_read_with_its_own_letters()
    {
        ImmutableArray<CodedCopy> copies = [.. new[] { "007", "008" }.Select(serial => new CodedCopy(serial, 7, _ => $"SECRET-OF-{serial}"))];
        var (counts, findings) = Read(BoxLabel.Layout(PrintedBooks.Example with { Copies = copies }).Pages);

        Assert.Empty(findings);
        Assert.Equal(2, counts.Read);
    }

    [Fact]
    public void A_code_beside_a_photo_and_a_mark_of_curves_is_read() =>
        Assert.Equal(1, Read([Page([Code(), Photo(60, 10), Circle(60, 60)])]).Counts.Read);

    [Theory]
    [InlineData("photo")]
    [InlineData("circle")]
    public void What_lies_over_a_code_is_seen(string over)
    {
        var (counts, findings) = Read([Page([Code(), over == "photo" ? Photo(12, 12) : Circle(12, 12)])]);

        Assert.Equal((1, 0), (counts.Codes, counts.Read));
        Assert.Equal("HB6104", Assert.Single(findings).Code.Id);
        Assert.Contains("label.pdf, page 1", findings[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_photo_below_a_code_takes_its_quiet_zone_or_the_code_itself()
    {
        var (counts, _) = Read([Page([Photo(5, 5), Code()])]);
        Assert.True(counts.Read == 0 || counts.Figures is not { QuietZone: >= 4 });
    }

    [Fact]
    public void A_code_that_leads_elsewhere_is_told_without_letters_that_open_help()
    {
        var (_, findings) = Read([Page([Code()], "https://alder-row.example/beekeeper/#SECRET-1")]);

        Assert.Equal("HB6105", Assert.Single(findings).Code.Id);
        Assert.DoesNotContain("SECRET", findings[0].Message, StringComparison.Ordinal);
        Assert.Contains("something else", findings[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_read_once_is_not_read_again()
    {
        var (kept, work) = (new KeptWork(), new WorkLog());
        var pages = BoxLabel.Layout(PrintedBooks.Example).Pages;
        Read(pages, kept, work);
        Assert.Single(work.Times.Keys, each => each.Work == Work.DecodePaper);

        var again = new WorkLog();
        Assert.Equal(1, Read(pages, kept, again).Counts.Kept);
        Assert.DoesNotContain(again.Times.Keys, each => each.Work == Work.DecodePaper);
    }

    private static (PaperReadBack Counts, ImmutableArray<Finding> Findings) Read(
        ImmutableArray<PaperPage> pages, KeptWork? kept = null, WorkLog? work = null)
    {
        Assert.True(PaperCodes.AreOn(pages));
        return PaperCodes.Read(PrintedBooks.Example.Book, "label.pdf", PaperPdf.Write("Label", "en", pages), pages, kept ?? new(), work);
    }

    private static PaperPage Page(ImmutableArray<Printed> things, string says = Says) =>
        new(Frame, [new(0, 0, new Piece(100, things) { Role = Role.Figure, Shows = says })], []);

    private static PrintedCode Code() => new(12, 12, 0.9, QrMatrix.Encode(Says)!);

    private static PrintedPhoto Photo(double x, double y)
    {
        using var image = new SixLabors.ImageSharp.Image<SixLabors.ImageSharp.PixelFormats.Rgb24>(64, 64, new(90, 60, 30));
        using var jpeg = new MemoryStream();
        SixLabors.ImageSharp.ImageExtensions.SaveAsJpeg(image, jpeg);
        return new(new(x, y, 34, 34), jpeg.ToArray());
    }

    // Of four curves (the usual factor 0.5523, from memory), filled and with an outline.
    private static PrintedDrawing Circle(double x, double y)
    {
        const float r = 500, k = 0.5523f * r;
        Figure circle = new(
            new(1000, r),
            [
                new(new(1000, r + k), new(r + k, 1000), new(r, 1000), IsStraight: false),
                new(new(r - k, 1000), new(0, r + k), new(0, r), IsStraight: false),
                new(new(0, r - k), new(r - k, 0), new Vector2(r, 0), IsStraight: false),
                new(new(r + k, 0), new(1000, r - k), new(1000, r), IsStraight: false),
            ],
            IsClosed: true);
        return new(new(x, y, 30, 30), new(1000, 1000, [new([circle], 0x204060, EvenOdd: false, new(0, 20, "round", "round", 4))]));
    }
}
