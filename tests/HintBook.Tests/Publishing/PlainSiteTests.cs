using HintBook.Sealing;
using HintBook.Starting.Edition;

namespace HintBook.Tests.Publishing;

/// <summary>A book that isn't sealed knows nothing of sealing: neither its site nor its papers, whatever lies in its folder.</summary>
public sealed class PlainSiteTests : IDisposable
{
    private readonly BookAndOutput desk = new();

    public PlainSiteTests() => File.AppendAllText(Path.Combine(desk.Book, "book.yaml"), "\nid: plain-box\n");

    public void Dispose() => desk.Dispose();

    [Fact]
    public void No_file_or_mark_of_a_sealed_book_is_there()
    {
        desk.Published();

        var files = BookAndOutput.Tree(desk.Site).Keys.ToArray();
        Assert.DoesNotContain(files, file => Path.GetFileName(file) is "open.js" or "open.css" || file.Split('/', '\\')[0] is "k" or "p");
        var pages = files.Where(file => file.EndsWith(".html", StringComparison.Ordinal)).Select(file => File.ReadAllText(Path.Combine(desk.Site, file)));
        string[] marks = ["open.js", "open.css", "data-seal", "data-tag=", "data-epoch=", "data-version=", "data-locked", "data-forget", "blob:"];
        Assert.All(pages, page => Assert.DoesNotContain(marks, mark => page.Contains(mark, StringComparison.Ordinal)));
    }

    [Fact]
    public void A_key_and_numbers_in_its_folder_change_no_byte()
    {
        desk.Published();
        var (site, print) = (BookAndOutput.Tree(desk.Site), BookAndOutput.Tree(Path.Combine(desk.Output, "print")));
        var secret = new BookSecret([.. Enumerable.Range(0, BookSecret.Length).Select(each => (byte)each)]);
        Assert.Null(new SealedEdition(desk.Book, "plain-box").Complete(["001"], () => secret, new Random(2).Next).Why);

        var again = Path.Combine(desk.Root, "again");
        desk.Published(desk.Options with { Output = again });

        Assert.Equal(site, BookAndOutput.Tree(Path.Combine(again, "site")));
        Assert.Equal(print, BookAndOutput.Tree(Path.Combine(again, "print")));
    }

    [Fact]
    public void Copies_change_no_byte_of_the_site()
    {
        desk.Published();
        var site = BookAndOutput.Tree(desk.Site);
        File.WriteAllText(Path.Combine(desk.Book, "copies.yaml"), "copies:\n  \"001\": { sold: true }\n  \"002\": {}\n");

        var again = Path.Combine(desk.Root, "again");
        desk.Published(desk.Options with { Output = again });

        Assert.Equal(site, BookAndOutput.Tree(Path.Combine(again, "site")));
    }

    [Fact]
    public void What_the_line_sealed_adds_is_gone_with_it()
    {
        desk.Published();
        var site = BookAndOutput.Tree(desk.Site);
        File.AppendAllText(Path.Combine(desk.Book, "book.yaml"), "sealed: true\n");
        File.WriteAllText(Path.Combine(desk.Book, "copies.yaml"), "copies:\n  \"001\": {}\n");
        var secret = new BookSecret([.. Enumerable.Range(0, BookSecret.Length).Select(each => (byte)each)]);
        Assert.Null(new SealedEdition(desk.Book, "plain-box").Complete(["001"], () => secret, new Random(2).Next).Why);
        desk.Published();
        Assert.NotEqual(site, BookAndOutput.Tree(desk.Site));

        desk.Change("book.yaml", "sealed: true\n", "");
        desk.Published();

        Assert.Equal(site, BookAndOutput.Tree(desk.Site));
    }
}
