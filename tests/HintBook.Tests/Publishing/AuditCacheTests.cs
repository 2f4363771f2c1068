using HintBook.Audit;
using HintBook.Print;
using HintBook.Publishing;

namespace HintBook.Tests.Publishing;

/// <summary>Printed files that haven't changed aren't audited again, as long as who may see what hasn't changed either.</summary>
public class AuditCacheTests
{
    private static readonly HashSet<PaperKind> Asked = [PaperKind.Cards, PaperKind.Booklet];

    [Fact]
    public void Of_an_unchanged_book_no_printed_file_is_audited_again()
    {
        using var desk = new BookAndOutput();
        var first = Printed(desk);
        Assert.True(first is { Kept: 0, Files: > 4, Codes: > 4 });
        Assert.Equal(first with { Kept = first.Files }, Printed(desk));
    }

    // The nudge of a stage may say less once a name in it has become a secret: every file is searched anew.
    [Fact]
    public void With_another_table_of_secrets_every_file_is_audited_again()
    {
        using var desk = new BookAndOutput();
        Printed(desk);
        desk.Change("stages/02-the-number.md", "title:", "title: Now");
        Assert.Equal(0, Printed(desk).Kept);
    }

    [Fact]
    public void A_publish_takes_nothing_from_a_damaged_file_in_the_cache()
    {
        using var desk = new BookAndOutput();
        var read = desk.Published().Report.Print;
        desk.ForgetLastPublish();
        Assert.Equal(read.Files, desk.Published().Report.Print.Kept);
        var kept = Path.Combine(desk.Output, ".hintbook", "cache", "audits.kept");
        var bytes = File.ReadAllBytes(kept);
        bytes[bytes.Length / 2] ^= 1;
        File.WriteAllBytes(kept, bytes);
        desk.ForgetLastPublish();

        Assert.Equal(read, desk.Published().Report.Print);
    }

    private static PrintReport Printed(BookAndOutput desk) =>
        Assert.IsType<Published>(Pipeline.PrintPapers(desk.Book, Asked, desk.Options)).Report.Print;
}
