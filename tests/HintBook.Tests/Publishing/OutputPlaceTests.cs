using HintBook.Publishing;
using HintBook.Tests.House;

namespace HintBook.Tests.Publishing;

/// <summary>Where a publish writes: never through a link, never into a book's own folders, and what it replaces is its own.</summary>
public sealed class OutputPlaceTests : IDisposable
{
    private readonly BookAndOutput desk = new();
    private readonly string elsewhere;

    public OutputPlaceTests()
    {
        elsewhere = Path.Combine(desk.Root, "elsewhere");
        Directory.CreateDirectory(Path.Combine(elsewhere, "next"));
        File.WriteAllText(Path.Combine(elsewhere, "next", "holiday.txt"), "mine");
    }

    public void Dispose() => desk.Dispose();

    [Theory]
    [InlineData(".hintbook")]
    [InlineData(".hintbook/next")]
    [InlineData(".hintbook/cache")]
    [InlineData("site")]
    [InlineData("print")]
    [InlineData("books")]
    public void A_link_in_the_place_of_what_a_publish_writes_is_refused(string name)
    {
        desk.Published();
        var link = Path.Combine(desk.Output, name);
        if (Directory.Exists(link))
            Directory.Delete(link, recursive: true);
        Directory.CreateSymbolicLink(link, elsewhere);
        var before = BookAndOutput.Tree(elsewhere);

        var failed = Assert.IsType<Failed>(desk.Publish());

        Assert.Equal(FailureKind.Usage, failed.Kind);
        Assert.Contains($"“{link}” is a link", failed.Message, StringComparison.Ordinal);
        Assert.Equal(before, BookAndOutput.Tree(elsewhere));
        Assert.NotNull(new FileInfo(link).LinkTarget);
    }

    [Theory]
    [InlineData("stages")]
    [InlineData("photos")]
    [InlineData("clips/site")]
    [InlineData("themes/mine")]
    public void A_folder_that_the_book_is_read_from_is_refused(string name)
    {
        var output = Path.Combine(desk.Book, name, "out");
        var before = BookAndOutput.Tree(desk.Book);

        var failed = Assert.IsType<Failed>(desk.Publish(desk.Options with { Output = output }));

        Assert.Equal(FailureKind.Usage, failed.Kind);
        Assert.Contains("a book keeps its own files", failed.Message, StringComparison.Ordinal);
        Assert.Equal(before, BookAndOutput.Tree(desk.Book));
    }

    [Fact]
    public void A_link_into_the_book_s_photos_is_seen_through()
    {
        Directory.CreateDirectory(Path.Combine(desk.Book, "photos"));
        Directory.CreateSymbolicLink(desk.Output, Path.Combine(desk.Book, "photos"));

        Assert.Equal(FailureKind.Usage, Assert.IsType<Failed>(desk.Publish()).Kind);
    }

    [Fact]
    public void Folders_of_that_name_outside_a_book_are_like_any_other() =>
        desk.Published(desk.Options with { Output = Path.Combine(desk.Root, "photos", "out") });

    [Fact]
    public void A_link_that_the_maker_put_among_the_files_goes_along_as_a_link()
    {
        desk.Published();
        var link = Path.Combine(desk.Site, "mine");
        Directory.CreateSymbolicLink(link, elsewhere);
        desk.Change("stages/02-the-number.md", "# Nudge", "# Nudge\n\nOne more sentence.");

        desk.Published();

        Assert.Equal(elsewhere, new FileInfo(link).LinkTarget);
        Assert.True(File.Exists(Path.Combine(elsewhere, "next", "holiday.txt")));
    }

    [Fact]
    public void A_pipe_among_the_files_is_refused_and_left_alone()
    {
        desk.Published();
        var pipe = Path.Combine(desk.Site, "pipe");
        Pipes.Make(pipe);

        Assert.Equal(FailureKind.Usage, Assert.IsType<Failed>(desk.Publish()).Kind);
        Assert.True(File.Exists(pipe));
    }
}
