using CsCheck;
using HintBook.Publishing;
using HintBook.Publishing.Films;
using HintBook.Starting;
using HintBook.Tests.Cli;
using HintBook.Tests.Photos;
using HintBook.Text;

namespace HintBook.Tests.Publishing.Unchanged;

/// <summary>A publish of what hasn't changed makes nothing and says so; whatever has changed, it ends as a publish into a new folder would.</summary>
public class LastPublishTests
{
    private static readonly (string Name, Action<BookAndOutput> Do)[] Changes =
    [
        ("a word of the book", desk => desk.Change("book.yaml", "\ntitle:", "\ntitle: Another Name for")),
        ("a remark of the book", desk => File.AppendAllText(Path.Combine(desk.Book, "book.yaml"), "# a remark\n")),
        ("a word of a stage", desk => File.AppendAllText(desk.StageFile, "\nTake your time.\n")),
        ("a stage's name", desk => File.Move(desk.StageFile, Path.Combine(desk.Book, "stages", "02-four-wheels.md"))),
        ("a stage that appears", desk => File.WriteAllText(Path.Combine(desk.Book, "stages", "04-the-end.md"), OneMoreStage)),
        ("another photo", desk => File.WriteAllBytes(Photo(desk), Shots.Jpeg(640, 480))),
        ("a photo that nothing uses", desk => File.WriteAllBytes(Path.Combine(desk.Book, "photos", "more.jpg"), Shots.Jpeg(300, 300))),
        ("a file of the theme", desk => File.AppendAllText(Path.Combine(desk.Book, "themes", "parlour", "theme.css"), "\nbody { color: #111; }\n")),
        ("a file of the theme that appears", desk => File.WriteAllText(Path.Combine(desk.Book, "themes", "parlour", "more.css"), "body { color: #111; }\n")),
        ("the kept addresses", desk => File.Delete(Path.Combine(desk.Book, "kept-addresses.txt"))),
        ("the kept addresses in the output folder", desk => File.Delete(Path.Combine(desk.Output, "kept-addresses.txt"))),
        ("a page", desk => File.AppendAllText(Path.Combine(desk.Site, "index.html"), "<!-- tampered with -->")),
        ("a page of the same length", desk => Turn(Path.Combine(desk.Site, "index.html"))),
        ("a page that goes", desk => File.Delete(Path.Combine(desk.Site, "index.html"))),
        ("the site that goes", desk => Directory.Delete(desk.Site, recursive: true)),
        ("a card", desk => Turn(Path.Combine(desk.Output, "print", "cards.pdf"))),
        ("what is printed, all gone", desk => Directory.Delete(Path.Combine(desk.Output, "print"), recursive: true)),
        ("the report", desk => File.WriteAllText(Path.Combine(desk.Output, "report.json"), "{}")),
    ];

    private const string OneMoreStage =
        "---\ntitle: The end\nsign: The box is open.\nred-herring: true\n---\n# Nudge\n\nIs there more?\n\n# Clue\n\nLook around.\n\n# Answer\n\nNo.\n";

    public static TheoryData<string> Named => [.. Changes.Select(change => change.Name)];

    [Fact]
    public void Of_an_unchanged_book_nothing_is_made_or_worked_out_and_the_files_are_the_same()
    {
        using var desk = Desk();
        desk.Published();
        var before = BookAndOutput.Tree(desk.Root);
        var log = new WorkLog();
        var steps = 0;

        var report = desk.Published(desk.Options with { Work = log, Disk = new(_ => Interlocked.Increment(ref steps)) }).Report;

        Assert.NotNull(report.Unchanged);
        Assert.Empty(log.Times);
        Assert.Equal(0, steps);
        Assert.Equal(before, BookAndOutput.Tree(desk.Root));
    }

    [Fact]
    public void It_is_counted_what_was_compared()
    {
        using var desk = Desk();
        desk.Published();

        var compared = desk.Published().Report.Unchanged!.Value;

        Assert.Equal(Directory.GetFiles(desk.Book, "*", SearchOption.AllDirectories).Length, compared.Read);
        string[] own = [Path.Combine(desk.Output, ".hintbook", "cache"), Path.Combine(desk.Output, ".hintbook", "hold")];
        Assert.Equal(
            Directory.GetFiles(desk.Output, "*", SearchOption.AllDirectories).Count(file => !own.Any(each => file.StartsWith(each, StringComparison.Ordinal))),
            compared.Made);
    }

    [Fact]
    public void Other_times_of_the_files_are_no_change()
    {
        using var desk = Desk();
        desk.Published();
        foreach (var file in Directory.GetFiles(desk.Root, "*", SearchOption.AllDirectories).Where(file => !file.EndsWith("hold", StringComparison.Ordinal)))
            File.SetLastWriteTimeUtc(file, new(2001, 2, 3, 4, 5, 6, DateTimeKind.Utc));

        Assert.NotNull(desk.Published().Report.Unchanged);
    }

    [Theory]
    [MemberData(nameof(Named))]
    public void After_any_change_a_publish_ends_as_one_into_a_new_folder(string change)
    {
        using var desk = Desk();
        desk.Published();
        Array.Find(Changes, each => each.Name == change).Do(desk);

        var report = desk.Published().Report;

        Assert.Null(report.Unchanged);
        AssertAsNew(desk, report);
        Assert.NotNull(desk.Published().Report.Unchanged);
    }

    [Fact]
    public void After_any_changes_in_any_order_a_publish_ends_as_one_into_a_new_folder() =>
        Gen.OneOf(Changes).Array[1, 4].Sample(
            changes =>
            {
                using var desk = Desk();
                foreach (var (_, change) in changes.DistinctBy(change => change.Name))
                {
                    desk.Published();
                    // Two changes may want the same file, and the second then finds it gone.
                    try
                    {
                        change(desk);
                    }
                    catch (IOException)
                    {
                        continue;
                    }
                }

                AssertAsNew(desk, desk.Published().Report);
                AssertAsNew(desk, desk.Published().Report);
            },
            iter: 6,
            print: changes => string.Join(", ", changes.Select(change => change.Name)));

    public static TheoryData<string, Func<PublishOptions, PublishOptions>> Asked => new()
    {
        { nameof(PublishOptions.Paper), options => options with { Paper = HintBook.Cards.Paper.Letter } },
        { nameof(PublishOptions.Date), options => options with { Date = new(2026, 11, 29) } },
        { nameof(PublishOptions.FilmTools), options => options with { FilmTools = new FilmTools("/nowhere/ffmpeg", "/nowhere/ffprobe") } },
    };

    [Theory]
    [MemberData(nameof(Asked))]
    public void What_else_is_asked_for_is_a_change(string what, Func<PublishOptions, PublishOptions> other)
    {
        using var desk = Desk();
        desk.Published();
        Assert.True(desk.Published(other(desk.Options)).Report.Unchanged is null, what);
    }

    // Whoever adds an option decides here whether the outcome follows from it.
    [Fact]
    public void Every_option_is_compared_or_changes_nothing_that_is_made()
    {
        // A publish is never of some copies alone; were it, they are compared.
        string[] compared = ["Copies", "Output", .. Asked.Select(row => row.Data.Item1)];
        string[] neverKnownAgain = ["WithCard"];
        string[] changeNothing = ["Say", "Solving", "Work", "Disk"];
        var all = typeof(PublishOptions).GetProperties(
            System.Reflection.BindingFlags.Instance | System.Reflection.BindingFlags.Public | System.Reflection.BindingFlags.NonPublic);
        Assert.Equal(
            compared.Concat(neverKnownAgain).Concat(changeNothing).Order(StringComparer.Ordinal),
            all.Select(option => option.Name).Where(name => name != "EqualityContract").Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Files_under_version_control_are_no_part_of_the_book()
    {
        using var desk = Desk();
        Directory.CreateDirectory(Path.Combine(desk.Book, ".git"));
        desk.Published();
        File.WriteAllText(Path.Combine(desk.Book, ".git", "index"), "changed");

        Assert.NotNull(desk.Published().Report.Unchanged);
    }

    [Fact]
    public void A_book_with_a_link_in_it_is_always_published_anew()
    {
        using var desk = Desk();
        File.CreateSymbolicLink(Path.Combine(desk.Book, "photos", "link.jpg"), "panel.jpg");
        desk.Published();

        Assert.Null(desk.Published().Report.Unchanged);
    }

    [Fact]
    public void A_book_that_changes_while_it_is_published_is_published_anew()
    {
        using var desk = Desk();
        var changed = false;
        desk.Published(desk.Options with
        {
            Disk = new(step =>
            {
                if (Path.GetFileName(step.Path) != "report.json" || changed)
                    return;
                changed = true;
                File.AppendAllText(desk.StageFile, "\nTake your time.\n");
            }),
        });

        var report = desk.Published().Report;

        Assert.Null(report.Unchanged);
        AssertAsNew(desk, report);
    }

    [Fact]
    public void A_publish_whose_addresses_could_not_be_kept_in_the_book_is_gone_through_again()
    {
        using var desk = Desk();
        var first = desk.Published(desk.Options with { Disk = Failing(Path.Combine(desk.Book, "kept-addresses.txt.new")) }).Report;
        Assert.Contains(first.Findings.All, finding => finding.Code.Id.StartsWith("HB7", StringComparison.Ordinal));

        Assert.Null(desk.Published().Report.Unchanged);
        Assert.True(File.Exists(Path.Combine(desk.Book, "kept-addresses.txt")));
    }

    [Fact]
    public void A_publish_that_cannot_be_kept_in_mind_is_a_good_one_all_the_same()
    {
        using var desk = Desk();
        desk.Published(desk.Options with { Disk = Failing(Path.Combine(desk.Output, ".hintbook", "cache", "publish.kept")) });
        Assert.Null(desk.Published().Report.Unchanged);
    }

    [Fact]
    public void A_publish_that_failed_is_not_told_again_as_a_good_one()
    {
        using var desk = Desk();
        desk.Published();
        desk.Change("book.yaml", "goal: [ wooden-heart ]", "goal: [ golden-heart ]");
        Assert.IsType<Rejected>(desk.Publish());
        Assert.IsType<Rejected>(desk.Publish());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.5)]
    [InlineData(1)]
    public void A_damaged_file_in_the_cache_is_as_good_as_none(double at)
    {
        using var desk = Desk();
        desk.Published();
        var kept = Path.Combine(desk.Output, ".hintbook", "cache", "publish.kept");
        var bytes = File.ReadAllBytes(kept);
        bytes[(int)(at * (bytes.Length - 1))] ^= 1;
        File.WriteAllBytes(kept, bytes);

        Assert.Null(desk.Published().Report.Unchanged);
        Assert.NotNull(desk.Published().Report.Unchanged);
    }

    [Fact]
    public void Another_publish_at_work_in_the_folder_is_told_as_ever()
    {
        using var desk = Desk();
        desk.Published();
        using var first = OutputFolder.Open(desk.Output, desk.Book);
        Assert.Contains("Another publish", Assert.IsType<Failed>(desk.Publish()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_screen_says_that_nothing_has_changed_and_shows_every_warning_again()
    {
        using var desk = Desk();
        desk.Change("book.yaml", "\naddress: ", "\n# address: ");
        var first = Said.By("publish", desk.Book, "--out", desk.Output, "--notes");

        var second = Said.By("publish", desk.Book, "--out", desk.Output, "--notes");

        Assert.Equal((0, 0), (first.Exit, second.Exit));
        Assert.StartsWith("Nothing has changed since “", second.Out, StringComparison.Ordinal);
        Assert.Contains("Made and checked then, not now:\n", second.Out, StringComparison.Ordinal);
        Assert.Contains("HB6101", first.Error, StringComparison.Ordinal);
        Assert.Equal($"Said at the last publish, of the same files:\n{first.Error}", second.Error);
    }

    // What was told the first time is what would be told of the same files, worked out again.
    [Fact]
    public void What_is_told_again_is_what_would_be_found_again()
    {
        using var desk = Desk();
        desk.Change("book.yaml", "\naddress: ", "\n# address: ");
        desk.Published();
        var again = desk.Published().Report;
        desk.ForgetLastPublish();
        var anew = desk.Published().Report;

        Assert.Equal(FindingsJson.Write("book", anew.Findings, withNotes: true), FindingsJson.Write("book", again.Findings, withNotes: true));
        Assert.Equal(anew.Claims, again.Claims);
        Assert.Equal((anew.Pages, anew.Photos, anew.SiteBytes, anew.Developed), (again.Pages, again.Photos, again.SiteBytes, again.Developed));
    }

    private static string Photo(BookAndOutput desk) => Path.Combine(desk.Book, "photos", "panel.jpg");

    private static void Turn(string file)
    {
        var bytes = File.ReadAllBytes(file);
        bytes[bytes.Length / 2] ^= 1;
        File.WriteAllBytes(file, bytes);
    }

    private static Disk Failing(string path) => new(step =>
    {
        if (step.Path == path)
            throw new IOException("No space left on device");
    });

    private static void AssertAsNew(BookAndOutput desk, Report report)
    {
        var elsewhere = Path.Combine(desk.Root, "new");
        var fresh = Assert.IsType<Published>(Pipeline.Publish(desk.Book, desk.Options with { Output = elsewhere })).Report;
        Assert.Equal(Shown(elsewhere), Shown(desk.Output));
        Assert.Equal(FindingsJson.Write("book", fresh.Findings, withNotes: true), FindingsJson.Write("book", report.Findings, withNotes: true));
        Directory.Delete(elsewhere, recursive: true);
    }

    // The list of addresses in an output folder keeps what that folder had before.
    private static Dictionary<string, string> Shown(string output) => BookAndOutput.Tree(output)
        .Where(file => !file.Key.StartsWith(".hintbook", StringComparison.Ordinal))
        .ToDictionary();

    private static BookAndOutput Desk()
    {
        var desk = new BookAndOutput();
        Directory.CreateDirectory(Path.Combine(desk.Book, "photos"));
        File.WriteAllBytes(Photo(desk), Shots.Jpeg(900, 600));
        desk.Change("stages/01-the-side-panel.md", "title:", "photos: { answer: { file: panel.jpg, alt: \"The panel, slid open\" } }\ntitle:");
        OwnTheme.In(desk.Book, "parlour");
        return desk;
    }
}
