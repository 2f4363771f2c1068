using System.Text;
using System.Text.RegularExpressions;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Cli;
using HintBook.Tests.Photos.Films;
using HintBook.Tests.Reading;

namespace HintBook.Tests.Cli;

/// <summary>A film's captions become stages to start from, and those a book.</summary>
public sealed class DraftVerbTests : IDisposable
{
    private const string Captions = """
        1
        00:00:01,000 --> 00:00:04,000
        This is the sewing box. The lid is shut.

        2
        00:00:04,200 --> 00:00:08,000
        Look at the brass thimble on the side.

        3
        00:00:12,500 --> 00:00:16,000
        Turn the brass thimble to the left --> the lid comes up.

        4
        00:00:16,100 --> 00:00:22,000
        Under the lid lies a wooden key. Take the wooden key.

        5
        00:00:40,000 --> 00:00:46,000
        Put the wooden key into the slot and turn the brass thimble once more.
        """;

    private readonly string root = Directory.CreateTempSubdirectory("hintbook-draft-").FullName;

    private string Book => Path.Combine(root, "book");

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Fact]
    public void A_film_with_its_captions_becomes_a_book()
    {
        Film();

        var said = Said.By("begin", Book, "--from", Path.Combine(root, "sewing-box.mp4"));

        Assert.Equal((ExitCode.Fine, ""), (said.Exit, said.Error));
        Assert.Equal(["01-film-0-01.md", "02-film-0-12.md", "03-film-0-40.md"], Stages());
        Assert.Contains("brass-thimble: { name: brass thimble }", said.Out, StringComparison.Ordinal);
        var second = File.ReadAllText(Path.Combine(Book, "stages", "02-film-0-12.md"));
        Assert.Contains("clip: { file: \"sewing-box.mp4\", from: 0:12, to: 0:40 }", second, StringComparison.Ordinal);
        Assert.Contains("# needs: [ lid, brass-thimble ]", second, StringComparison.Ordinal);
        Assert.Contains("# gives: [ wooden-key ]", second, StringComparison.Ordinal);
        Assert.Contains("Turn the brass thimble to the left -- > the lid comes up.", second, StringComparison.Ordinal);
    }

    [Fact]
    public void A_film_that_cannot_be_copied_leaves_no_half_of_a_book()
    {
        Film();
        Directory.CreateDirectory(Book);
        int exit;
        using (File.Open(Path.Combine(root, "sewing-box.mp4"), FileMode.Open, FileAccess.ReadWrite, FileShare.None))
            exit = Said.By("begin", Book, "--from", Path.Combine(root, "sewing-box.mp4")).Exit;

        Assert.Equal(ExitCode.MachineFailed, exit);
        Assert.Empty(Directory.EnumerateFileSystemEntries(Book));
        Assert.Equal(ExitCode.Fine, Said.By("begin", Book, "--from", Path.Combine(root, "sewing-box.mp4")).Exit);
    }

    [Fact]
    public void What_was_drafted_has_no_other_finding_than_that_it_is_still_to_write()
    {
        Film();
        Said.By("begin", Book, "--from", Path.Combine(root, "sewing-box.mp4"));

        var found = Assert.IsType<Faulty>(Check.Run(Book, new() { CutsClips = true }));

        Assert.NotNull(found.Examined);
        Assert.All(found.Findings.Shown(withNotes: false), finding => Assert.Equal(("HB1319", Draft.Open), (finding.Code.Id, finding.At.Text)));
        Assert.Equal(15, found.Findings.Shown(withNotes: false).Count());
    }

    [Fact]
    public void When_everything_is_written_the_book_is_published()
    {
        Film();
        Said.By("begin", Book, "--from", Path.Combine(root, "sewing-box.mp4"));
        Assert.Equal(ExitCode.BookHasErrors, Said.By("publish", Book).Exit);

        Write();

        var said = Said.By("publish", Book);
        Assert.True(said.Exit == ExitCode.Fine, said.Out + said.Error);
        var pages = Directory.EnumerateFiles(Path.Combine(Book, "published", "site"), "*.html", SearchOption.AllDirectories).Select(File.ReadAllText).ToArray();
        Assert.Contains(pages, page => page.Contains("Words of mine, 7.", StringComparison.Ordinal));
        Assert.DoesNotContain(pages, page => page.Contains("Nobody but you reads this", StringComparison.Ordinal));
    }

    [Fact]
    public void Stages_are_added_behind_those_that_are_there_and_nothing_is_written_over()
    {
        using var book = new BookOnDisk();
        var before = File.ReadAllText(Path.Combine(book.Path, "stages", "01-the-lid.md"));

        var list = Text("chapters.txt", "0:00 The lid\n0:12 The thimble\n");
        var said = Said.By("draft", book.Path, "--from", Text("said.srt", Captions), "--chapters", list);

        Assert.Equal(ExitCode.Fine, said.Exit);
        Assert.Equal(before, File.ReadAllText(Path.Combine(book.Path, "stages", "01-the-lid.md")));
        Assert.Equal(["01-the-lid.md", "02-the-lid-2.md", "03-the-thimble.md"], Stages(book.Path));
        var last = File.ReadAllText(Path.Combine(book.Path, "stages", "03-the-thimble.md"));
        Assert.Contains("title: \"The thimble\"", last, StringComparison.Ordinal);
        Assert.Contains("# clip: { file: film.mp4, from: 0:12 }", last, StringComparison.Ordinal);

        Said.By("draft", book.Path, "--from", Path.Combine(root, "said.srt"), "--chapters", list);

        Assert.Equal(5, Stages(book.Path).Length);
    }

    [Theory]
    [InlineData("no times here", "has no captions with times")]
    [InlineData("00:00:05,000 --> 00:00:02,000\nBack\n", "has no captions with times")]
    public void Captions_that_can_not_be_used_are_told(string captions, string told)
    {
        using var book = new BookOnDisk();

        var said = Said.By("draft", book.Path, "--from", Text("said.srt", captions));

        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        Assert.Contains(told, said.Error, StringComparison.Ordinal);
        Assert.Single(Stages(book.Path));
    }

    [Fact]
    public void What_can_be_used_is_used_and_the_rest_is_told()
    {
        using var book = new BookOnDisk();
        var captions = Captions + "\n\n6\n00:01:05,000 --> 00:01:02,000\nBackwards\n";

        var said = Said.By("draft", book.Path, "--from", Text("said.srt", captions));

        Assert.Equal(ExitCode.Fine, said.Exit);
        Assert.Contains("lines 22 have times that can't be read, or that run backwards; they are passed over", said.Error, StringComparison.Ordinal);
        Assert.Equal(4, Stages(book.Path).Length);
    }

    [Theory]
    // Captions of another film, or of a longer cut.
    [InlineData(30, 2, "The film ends at 0:30, but its captions or chapters go on: what begins at 0:40 and later is passed over.")]
    [InlineData(300, 3, "The captions end at 0:46, the film at 5:00.")]
    [InlineData(60, 3, "")]
    public void A_film_that_ends_before_its_captions_or_long_after_them_is_told_and_what_fits_is_used(int seconds, int stages, string told)
    {
        Film(seconds);

        var said = Said.By("begin", Book, "--from", Path.Combine(root, "sewing-box.mp4"));

        Assert.Equal(ExitCode.Fine, said.Exit);
        Assert.Contains(told, said.Error, StringComparison.Ordinal);
        Assert.Equal(told.Length == 0, said.Error.Length == 0);
        Assert.Equal(stages, Stages().Length);
        var found = Assert.IsType<Faulty>(Check.Run(Book, new() { CutsClips = true }));
        Assert.All(found.Findings.Shown(withNotes: false), finding => Assert.Equal("HB1319", finding.Code.Id));
    }

    [Fact]
    public void A_film_that_is_over_before_anything_is_said_gives_no_stages()
    {
        Film(seconds: 1);

        var said = Said.By("begin", Book, "--from", Path.Combine(root, "sewing-box.mp4"));

        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        Assert.Contains("Do they belong to another film?", said.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Book));
    }

    [Fact]
    public void Captions_in_another_encoding_are_read_and_the_guess_is_told()
    {
        using var book = new BookOnDisk();
        var captions = Path.Combine(root, "said.srt");
        File.WriteAllBytes(captions, Encoding.Latin1.GetBytes("1\n00:00:01,000 --> 00:00:04,000\nLa boîte fermée\n"));

        var said = Said.By("draft", book.Path, "--from", captions);

        Assert.Equal(ExitCode.Fine, said.Exit);
        Assert.Contains("isn't UTF-8; it is read as Windows-1252", said.Error, StringComparison.Ordinal);
        Assert.Contains("La boîte fermée", File.ReadAllText(Path.Combine(book.Path, "stages", "02-film-0-01.md")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Start\nThe lid\n", "has no chapters. Each is a line with a time and a title")]
    [InlineData("", "has no chapters")]
    public void A_list_of_chapters_without_times_is_told_and_nothing_is_written(string list, string told)
    {
        using var book = new BookOnDisk();

        var said = Said.By("draft", book.Path, "--from", Text("said.srt", Captions), "--chapters", Text("list.txt", list));

        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        Assert.Contains(told, said.Error, StringComparison.Ordinal);
        Assert.Single(Stages(book.Path));
    }

    private void Film(int seconds = 60)
    {
        File.WriteAllBytes(Path.Combine(root, "sewing-box.mp4"), Mp4.WithPictures(TimeSpan.FromSeconds(seconds), "avc1"));
        Text("sewing-box.en.srt", Captions);
    }

    // Each open place gets words of its own, the last answer what it gives.
    private void Write()
    {
        var number = 0;
        foreach (var stage in Directory.EnumerateFiles(Path.Combine(Book, "stages")).Order(StringComparer.Ordinal))
        {
            var written = Regex.Replace(File.ReadAllText(stage), Regex.Escape(Draft.Open), _ => $"Words of mine, {++number}.");
            File.WriteAllText(stage, written.Contains("gives: [ goal ]", StringComparison.Ordinal) ? written + "Take the last find.\n" : written);
        }

        var keys = Path.Combine(Book, "book.yaml");
        File.WriteAllText(keys, File.ReadAllText(keys).Replace("# address:", "address:", StringComparison.Ordinal));
    }

    private string Text(string name, string text)
    {
        var path = Path.Combine(root, name);
        File.WriteAllText(path, text);
        return path;
    }

    private string[] Stages(string? book = null) =>
        [.. Directory.EnumerateFiles(Path.Combine(book ?? Book, "stages")).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];
}
