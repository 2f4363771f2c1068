using HintBook.Books;
using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;
using BookReader = HintBook.Reading.Reader;

namespace HintBook.Browser.Tests;

// "Save my notes": a table of the reader's way, made on their device, that the maker puts into the folder of sittings.
public sealed class NotesTests(ReadingRoom room) : IDisposable
{
    // The page's own clock, which a test sets forward.
    private const string Clock = "{ const now = Date.now; Date.now = () => now() + (window.minutesLater || 0) * 60000; }";

    private readonly List<PublishedSite> sites = [];

    public void Dispose() => sites.ForEach(site => site.Dispose());

    [Theory]
    [InlineData(Source.Http)]
    [InlineData(Source.File)]
    public async Task The_notes_of_a_reader_are_read_as_a_sitting_with_the_same_steps_help_and_minutes(Source source)
    {
        var (book, site) = Published($"notes, {source}");
        await using var reader = await room.Seat(site, new(Source: source));
        await reader.BeforeEveryPage(Clock);
        await Do(reader, "plover", minutes: 7.5, Words.Nudge, Words.Clue);
        await Do(reader, "rook", minutes: 200);
        await Do(reader, "magpie", minutes: 0, Words.Nudge);
        await reader.OpenStage("heron");
        await reader.Press(Words.Nudge);
        await reader.Press(Words.Clue);
        await reader.Take(Words.Answer);
        await reader.OpenFront();

        var saved = await reader.SaveNotes("=Ann \"of\" Alder Row, 12");

        Assert.Matches("^sitting-[0-9]{4}-[0-9]{2}-[0-9]{2}[.]csv$", saved.Name);
        var read = Read(book, saved.Path);
        Assert.Equal(
            ["heron  Answer", "magpie  Nudge", "plover 7.5 Clue", "rook  Nothing"],
            read.Sittings.Select(row => FormattableString.Invariant($"{row.Stage} {row.Minutes} {row.Help}")).Order(StringComparer.Ordinal));
        Assert.All(read.Sittings, row => Assert.Equal("Ann \"of\" Alder Row, 12", row.Who));
        Assert.Contains("where downloads go", await reader.Seen());
        Complaint.None(reader.Network.Complaints);
    }

    [Fact]
    public async Task What_a_step_needs_is_noted_as_done_and_what_is_taken_back_is_not()
    {
        var (book, site) = Published("notes, taken back");
        await using var reader = await room.Seat(site, new());
        await Do(reader, "wren", minutes: 0);
        await Do(reader, "rook", minutes: 0);
        await reader.Page.GetByRole(AriaRole.Button, new() { Name = Words.Undone }).ClickAsync();
        await reader.OpenFront();

        var read = Read(book, (await reader.SaveNotes("")).Path);

        Assert.Equal(["plover", "heron", "wren"], read.Sittings.Select(row => row.Stage));
        Assert.All(read.Sittings, row => Assert.Equal((HelpTaken.Nothing, null, ""), (row.Help, row.Minutes, row.Who)));
    }

    [Fact]
    public async Task The_minutes_begin_when_a_page_is_opened_for_help_and_end_when_its_step_is_done()
    {
        var (book, site) = Published("notes, minutes");
        await using var reader = await room.Seat(site, new());
        await reader.BeforeEveryPage(Clock);
        await reader.OpenStage("plover");
        Assert.DoesNotContain(site.PageOf("plover").Split('.')[0], await reader.Kept());
        await reader.Press(Words.Nudge);
        await reader.BeforeEveryPage("window.minutesLater = 20");
        await Do(reader, "plover", minutes: 30);
        await reader.BeforeEveryPage("window.minutesLater = 60");
        await reader.OpenStage("plover");
        await reader.OpenFront();

        var read = Read(book, (await reader.SaveNotes("")).Path);

        Assert.Equal(30, Assert.Single(read.Sittings).Minutes!.Value, tolerance: 0.5);
    }

    [Fact]
    public async Task Nothing_is_sent_and_without_a_way_or_a_script_there_is_nothing_to_save()
    {
        var site = room.Shelf.Small;
        await using var reader = await room.Seat(new());
        await reader.OpenFront();
        Assert.False(await reader.Summary(Words.Notes).IsVisibleAsync());
        await Do(reader, "plover", minutes: 0);
        await reader.OpenFront();
        await reader.SaveNotes("Ann");
        Assert.All(reader.Network.Requests, address => Assert.StartsWith(site.Address(Source.Http), address));

        await using var other = await room.Seat(new(Script: false));
        await other.OpenFront();
        Assert.False(await other.Summary(Words.Notes).IsVisibleAsync());
    }

    private static async Task Do(Reader reader, string stage, double minutes, params string[] help)
    {
        await reader.OpenStage(stage);
        foreach (var tier in help)
            await reader.Press(tier);
        await reader.Page.EvaluateAsync("minutes => { window.minutesLater = minutes; }", minutes);
        await reader.Press(Words.Done);
    }

    // As the maker does: puts the file into the folder, and asks.
    private static Book Read(string book, string file)
    {
        Directory.CreateDirectory(Path.Combine(book, "sittings"));
        File.Copy(file, Path.Combine(book, "sittings", "friday.csv"));
        var read = BookReader.Read(book);
        Assert.DoesNotContain(read.Findings.All, finding => finding.At.File.Path.StartsWith("sittings/", StringComparison.Ordinal));
        return read.Book!;
    }

    private (string Book, PublishedSite Site) Published(string test)
    {
        var book = room.Shelf.SmallBookFor(test);
        var site = PublishedSite.Of(test, book, book + ", published");
        sites.Add(site);
        return (book, site);
    }
}
