using System.Text;
using HintBook.Reading.Folder;
using HintBook.Tests.Reading;
using HintBook.Workbench.Writing;

namespace HintBook.Tests.Workbench;

/// <summary>The workbench reads and writes the text files of one book, and nothing else.</summary>
public sealed class BookFilesTests : IDisposable
{
    private const string Lid = "stages/01-the-lid.md";

    private readonly BookOnDisk book = new();
    private readonly BookFiles files;

    public BookFilesTests() => files = new(book.Path);

    public void Dispose() => book.Dispose();

    [Fact]
    public void The_text_files_are_those_of_the_book()
    {
        book.With(".hidden.md", "no").With("published/site/page.md", "no").With("photos/lid.jpg", "no").With("fr/book.yaml", "title: Bon");

        Assert.Equal(["book.yaml", "fr/book.yaml", Lid], files.Names());
    }

    [Theory]
    [InlineData("../book.yaml")]
    [InlineData("stages/../book.yaml")]
    [InlineData("/etc/hostname")]
    [InlineData("C:/book.yaml")]
    [InlineData("stages\\01-the-lid.md")]
    [InlineData("stages/01-the-lid.md\0")]
    [InlineData(".hidden.md")]
    [InlineData("published/note.md")]
    [InlineData("photos/lid.jpg")]
    [InlineData("stages")]
    [InlineData("")]
    public void Nothing_else_is_read_or_written(string name)
    {
        book.With(".hidden.md", "no").With("published/note.md", "no").With("photos/lid.jpg", "no");

        Assert.Null(files.Read(name));
        Assert.IsType<Saved.Refused>(files.Save(name, "mine", ""));
    }

    [Fact]
    public void No_link_is_followed()
    {
        using var elsewhere = new BookOnDisk();
        book.WithLink("stages/02-link.md", Path.Combine(elsewhere.Path, Lid)).WithLink("fr", elsewhere.Path);

        Assert.Equal(["book.yaml", Lid], files.Names());
        Assert.Null(files.Read("stages/02-link.md"));
        Assert.IsType<Saved.Refused>(files.Save("fr/book.yaml", "mine", ""));
    }

    [Fact]
    public void A_saved_text_lies_on_the_disk_and_can_be_saved_over_again()
    {
        var first = Assert.IsType<Saved.Done>(files.Save(Lid, "one\n", DigestOf(Lid)));
        var second = Assert.IsType<Saved.Done>(files.Save(Lid, "two\n", first.Digest));

        Assert.Equal("two\n", File.ReadAllText(Path.Combine(book.Path, Lid)));
        Assert.Equal(new FileText("two\n", second.Digest), files.Read(Lid));
    }

    [Fact]
    public void A_byte_order_mark_and_the_ends_of_lines_stay()
    {
        book.With(Lid, [0xEF, 0xBB, 0xBF, .. "---\r\ntitle: The lid\r\n---\r\n"u8]);

        files.Save(Lid, "---\ntitle: The other lid\n---\n", DigestOf(Lid));

        Assert.Equal([0xEF, 0xBB, 0xBF, .. "---\r\ntitle: The other lid\r\n---\r\n"u8], File.ReadAllBytes(Path.Combine(book.Path, Lid)));
    }

    [Fact]
    public void What_somebody_else_wrote_meanwhile_is_shown_and_not_written_over()
    {
        var digest = DigestOf(Lid);
        book.With(Lid, "theirs\r\n");

        var saved = Assert.IsType<Saved.ChangedMeanwhile>(files.Save(Lid, "mine\n", digest));

        Assert.Equal("theirs\n", saved.Theirs.Text);
        Assert.Equal("theirs\r\n", File.ReadAllText(Path.Combine(book.Path, Lid)));
        Assert.IsType<Saved.Done>(files.Save(Lid, "mine\n", saved.Theirs.Digest));
    }

    [Fact]
    public void A_text_that_is_too_long_is_refused_and_the_file_stays()
    {
        var before = File.ReadAllText(Path.Combine(book.Path, Lid));

        Assert.IsType<Saved.Refused>(files.Save(Lid, new string('a', BookFolder.MostTextBytes + 1), DigestOf(Lid)));

        Assert.Equal(before, File.ReadAllText(Path.Combine(book.Path, Lid)));
    }

    [Fact]
    public void A_file_that_is_not_UTF_8_is_left_alone()
    {
        book.With(Lid, Encoding.Latin1.GetBytes("Ein Fräser"));

        Assert.Null(files.Read(Lid));
    }

    private string DigestOf(string name) => files.Read(name)?.Digest ?? "none";
}
