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
            Disk = new(step =>
            {
                if (step.Act == DiskAct.Write && Interlocked.Increment(ref written) > filesThatFit)
                    throw new IOException("No space left on device");
            }),
        }));

        Assert.Equal(FailureKind.Machine, failed.Kind);
        Assert.Contains("No space left", failed.Message, StringComparison.Ordinal);
        Assert.Equal(before, BookAndOutput.Tree(desk.Output));
    }

    // Whatever fails once the swap has begun, nobody is told that nothing has changed.
    [Theory]
    [InlineData("site", nameof(DiskAct.Rename))]
    [InlineData("report.json", nameof(DiskAct.Rename))]
    [InlineData("made.json.new", nameof(DiskAct.Flush))]
    public void A_swap_that_fails_half_way_is_told_as_it_is_and_finished_by_the_next_publish(string file, string act)
    {
        using var desk = new BookAndOutput();
        desk.Published();
        desk.Change("stages/02-the-number.md", "# Nudge", "# Nudge\n\nOne more sentence.");
        var begun = false;

        var failed = Assert.IsType<Failed>(desk.Publish(desk.Options with
        {
            Disk = new(step =>
            {
                begun |= Path.GetFileName(step.Path) == "swap.json";
                if (begun && step.Act.ToString() == act && Path.GetFileName(step.Path) == file)
                    throw new IOException("No space left on device");
            }),
        }));

        Assert.Contains("cut short: No space left on device.", failed.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("untouched", failed.Help, StringComparison.Ordinal);
        using (OutputFolder.Open(desk.Output, desk.Book))
        {
        }

        var finished = BookAndOutput.Tree(desk.Site);
        desk.Published();
        Assert.Equal(BookAndOutput.Tree(desk.Site), finished);
    }

    [Fact]
    public void A_list_of_addresses_that_does_not_fit_on_the_disk_leaves_the_last_publish_whole()
    {
        using var desk = new BookAndOutput();
        desk.Published();
        var before = BookAndOutput.Tree(desk.Output);
        File.Move(desk.StageFile, Path.Combine(desk.Book, "stages", "02-four-wheels.md"));

        var failed = Assert.IsType<Failed>(desk.Publish(desk.Options with
        {
            Disk = new(step =>
            {
                if (step.Act == DiskAct.Flush && Path.GetFileName(step.Path) == "kept-addresses.txt.new")
                    throw new IOException("No space left on device");
            }),
        }));

        Assert.Contains("untouched", failed.Help, StringComparison.Ordinal);
        Assert.Equal(before, BookAndOutput.Tree(desk.Output));
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

    // As two publishes of one book into two folders do, cut or not. Whoever reads meanwhile finds one of the texts, and never the beginning of one.
    [Fact]
    public void Two_that_write_the_same_list_at_once_never_write_into_each_other_s()
    {
        using var desk = new BookAndOutput();
        var list = Path.Combine(desk.Root, "list.txt");
        string[] texts = [new('a', 100_000), new('b', 100_000)];
        File.WriteAllText(list, texts[0]);
        var second = new Disk();
        var first = new Disk(step =>
        {
            // Whatever step the one has come to, the other writes the whole of its own.
            second.Keep(list, System.Text.Encoding.UTF8.GetBytes(texts[1]));
            Assert.Equal(texts[1], File.ReadAllText(list));
        });

        first.Keep(list, System.Text.Encoding.UTF8.GetBytes(texts[0]));

        Assert.Contains(File.ReadAllText(list), texts);
        Assert.Equal([list], Directory.GetFiles(desk.Root));
    }

    [Fact]
    public void What_a_cut_left_beside_a_list_goes_when_the_list_is_written_again()
    {
        using var desk = new BookAndOutput();
        var list = Path.Combine(desk.Root, "list.txt");
        File.WriteAllText(list + ".new", "begun");
        File.WriteAllText(list + ".new-1", "begun, too");

        new Disk().Keep(list, "whole"u8.ToArray());

        Assert.Equal("whole", File.ReadAllText(list));
        Assert.Equal([list], Directory.GetFiles(desk.Root));
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
}
