using HintBook.Print;
using HintBook.Publishing;
using HintBook.Text;

namespace HintBook.Tests.Publishing;

/// <summary>Papers beside the cards that haven't changed aren't drawn again.</summary>
public class PaperCacheTests
{
    private static readonly HashSet<PaperKind> Asked = [PaperKind.Booklet, PaperKind.Leaflet, PaperKind.Reset, PaperKind.Label];

    [Fact]
    public void Of_an_unchanged_book_no_paper_is_drawn_again_and_the_files_are_the_same()
    {
        using var desk = new BookAndOutput();
        Assert.Contains("booklet.pdf", Printed(desk));
        var files = BookAndOutput.Tree(Path.Combine(desk.Output, "print"));

        Assert.Empty(Printed(desk));
        Assert.Equal(files, BookAndOutput.Tree(Path.Combine(desk.Output, "print")));
    }

    [Fact]
    public void A_changed_answer_has_only_those_papers_drawn_again_that_say_it()
    {
        using var desk = new BookAndOutput();
        Printed(desk);
        File.AppendAllText(desk.StageFile, "\nTake your time.\n");

        var drawn = Printed(desk);

        Assert.Contains("booklet.pdf", drawn);
        Assert.DoesNotContain("label.pdf", drawn);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.5)]
    [InlineData(1)]
    public void A_damaged_file_in_the_cache_is_noticed_and_every_paper_drawn_again(double at)
    {
        using var desk = new BookAndOutput();
        var drawn = Printed(desk);
        var kept = Path.Combine(desk.Output, ".hintbook", "cache", "papers.kept");
        var bytes = File.ReadAllBytes(kept);
        bytes[(int)(at * (bytes.Length - 1))] ^= 1;
        File.WriteAllBytes(kept, bytes);

        Assert.Equal(drawn, Printed(desk));
    }

    private static string[] Printed(BookAndOutput desk)
    {
        var log = new WorkLog();
        Assert.IsType<Published>(Pipeline.PrintPapers(desk.Book, Asked, desk.Options with { Work = log }));
        return [.. log.Times.Keys.Where(did => did.Work == Work.MakePaper).Select(did => did.What).Order(StringComparer.Ordinal)];
    }
}
