using HintBook.Publishing;

namespace HintBook.Tests.Publishing;

public class FailingMachineTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(12)]
    public void A_full_disk_leaves_the_last_publish_whole(int filesThatFit)
    {
        using var desk = new BookAndOutput();
        desk.Published();
        var before = BookAndOutput.Tree(desk.Output);
        desk.Change("stages/02-the-number.md", "# Nudge", "# Nudge\n\nOne more sentence.");
        var written = 0;

        var failed = Assert.IsType<Failed>(desk.Publish(desk.Options with
        {
            WriteFile = (path, content) =>
            {
                if (Interlocked.Increment(ref written) > filesThatFit)
                    throw new IOException("No space left on device");
                File.WriteAllBytes(path, content.Span);
            },
        }));

        Assert.Equal(FailureKind.Machine, failed.Kind);
        Assert.Contains("No space left", failed.Message, StringComparison.Ordinal);
        Assert.Equal(before, BookAndOutput.Tree(desk.Output));
    }

    // A power cut is a swap that stops at some step and is never tidied up after: the watch throws something that nothing
    // catches, and a copy of the folder as it stood then is what the next publish finds.
    [Theory]
    [InlineData("list")]
    [InlineData("site")]
    [InlineData("print")]
    [InlineData("report.json")]
    [InlineData("list again")]
    [InlineData("clear")]
    public void A_power_cut_in_the_swap_leaves_a_whole_site_and_the_next_publish_mends_the_rest(string step)
    {
        using var desk = new BookAndOutput();
        desk.Published();
        var old = BookAndOutput.Tree(desk.Site);
        File.Move(desk.StageFile, Path.Combine(desk.Book, "stages", "02-four-wheels.md"));
        desk.Change("stages/02-four-wheels.md", "title:", "was: [ the-number ]\ntitle:");
        desk.Change("stages/02-four-wheels.md", "# Nudge", "# Nudge\n\nOne more sentence.");
        var cut = Path.Combine(desk.Root, "as-it-stood");

        desk.Published(desk.Options with
        {
            Watch = here =>
            {
                if (here == step)
                    CopyFolder(desk.Output, cut);
            },
        });
        var fresh = BookAndOutput.Tree(desk.Site);
        Assert.NotEqual(old, fresh);

        var found = BookAndOutput.Tree(Path.Combine(cut, "site"));
        Assert.True(SameTree(found, old) || SameTree(found, fresh), "half a site");
        desk.Published(desk.Options with { Output = cut });
        Assert.Equal(fresh, BookAndOutput.Tree(Path.Combine(cut, "site")));
        Assert.Equal(BookAndOutput.Tree(Path.Combine(desk.Output, "print")), BookAndOutput.Tree(Path.Combine(cut, "print")));
    }

    [Fact]
    public void Where_folders_cannot_be_exchanged_in_one_step_a_cut_between_two_is_mended_by_the_next_publish()
    {
        using var desk = new BookAndOutput();
        desk.Published();
        var site = BookAndOutput.Tree(desk.Site);
        // How the two-step swap leaves things when it is cut after the first step.
        var aside = Path.Combine(desk.Output, ".hintbook", "next", "last-site");
        Directory.CreateDirectory(Path.GetDirectoryName(aside)!);
        Directory.Move(desk.Site, aside);
        desk.Change("book.yaml", "goal: [ wooden-heart ]", "goal: [ golden-heart ]");
        Assert.IsType<Rejected>(desk.Publish());
        desk.Change("book.yaml", "goal: [ golden-heart ]", "goal: [ wooden-heart ]");

        using (OutputFolder.Open(desk.Output, desk.Book))
        {
        }

        Assert.Equal(site, BookAndOutput.Tree(desk.Site));
    }

    [Fact]
    public void Two_publishes_at_once_do_not_meet()
    {
        using var desk = new BookAndOutput();
        desk.Published();
        using var first = OutputFolder.Open(desk.Output, desk.Book);

        var failed = Assert.IsType<Failed>(desk.Publish());

        Assert.Equal(FailureKind.Machine, failed.Kind);
        Assert.Contains("Another publish", failed.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_publish_that_is_stopped_leaves_the_last_one_whole()
    {
        using var desk = new BookAndOutput();
        desk.Published();
        var before = BookAndOutput.Tree(desk.Output);
        using var stop = new CancellationTokenSource();
        stop.Cancel();

        var failed = Assert.IsType<Failed>(Pipeline.Publish(desk.Book, desk.Options, stop.Token));

        Assert.Equal(FailureKind.Stopped, failed.Kind);
        Assert.Equal(before, BookAndOutput.Tree(desk.Output));
    }

    [Fact]
    public void A_folder_below_a_file_cannot_be_made()
    {
        using var desk = new BookAndOutput();
        var file = Path.Combine(desk.Root, "file");
        File.WriteAllText(file, "");

        var failed = Assert.IsType<Failed>(desk.Publish(desk.Options with { Output = Path.Combine(file, "out") }));

        Assert.Equal(FailureKind.Machine, failed.Kind);
    }

    [Fact]
    public void A_folder_with_something_else_in_it_is_refused_and_left_alone()
    {
        using var desk = new BookAndOutput();
        Directory.CreateDirectory(desk.Output);
        File.WriteAllText(Path.Combine(desk.Output, "holiday.txt"), "mine");

        var failed = Assert.IsType<Failed>(desk.Publish());

        Assert.Equal(FailureKind.Usage, failed.Kind);
        Assert.Equal(["holiday.txt"], Directory.EnumerateFileSystemEntries(desk.Output).Select(path => Path.GetFileName(path)));
    }

    [Fact]
    public void The_book_itself_is_no_output_folder()
    {
        using var desk = new BookAndOutput();
        foreach (var output in new[] { desk.Book, desk.Root })
            Assert.Equal(FailureKind.Usage, Assert.IsType<Failed>(desk.Publish(desk.Options with { Output = output })).Kind);
    }

    private static bool SameTree(SortedDictionary<string, string> one, SortedDictionary<string, string> other) => one.SequenceEqual(other);

    private static void CopyFolder(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories).Where(file => Path.GetFileName(file) != "hold"))
        {
            var target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }
}
