using HintBook.Browser.Tests.Engines;
using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;
using UglyToad.PdfPig;

namespace HintBook.Browser.Tests;

// What the other engines keep of a site, and what they put on paper.
public class EngineMemoryTests(ReadingRoom room, EngineRoom engines)
{
    [Theory]
    [MemberData(nameof(EngineRoom.Names), MemberType = typeof(EngineRoom))]
    public async Task After_one_visit_every_page_opens_without_a_network(string engine)
    {
        using var site = OwnSite($"without a network, {engine}");
        await using var visitor = await engines.Seat(engine, site, new());
        await visitor.OpenFront();
        await visitor.Until("document.documentElement.dataset.kept === 'kept'");

        site.Server.CutAfter(0);
        var answered = site.Server.Answered.Count;
        foreach (var page in site.Pages)
        {
            await visitor.Open(page);
            await visitor.OpenAll();
            Assert.NotEqual("", await visitor.Heading());
        }

        Assert.Equal(answered, site.Server.Answered.Count);
    }

    [Theory]
    [MemberData(nameof(EngineRoom.Names), MemberType = typeof(EngineRoom))]
    public async Task Ticks_and_what_is_done_are_there_after_the_browser_was_closed(string engine)
    {
        using var site = OwnSite($"closed, {engine}");
        var profile = Directory.CreateTempSubdirectory("hintbook profile").FullName;
        await using (var visitor = await engines.Seat(engine, site, new(), profile))
        {
            await visitor.Open("reset.html");
            await visitor.Click("details.whole > summary");
            await visitor.Until("document.querySelector('details.whole').open");
            await visitor.Click("[data-tick]");
            await visitor.Until("document.querySelector('[data-tick]').checked");
            await visitor.OpenStage("plover");
            await visitor.Press(Words.Done);
        }

        await using (var visitor = await engines.Seat(engine, site, new(), profile))
        {
            await visitor.Open("reset.html");
            Assert.Equal("1", await visitor.Text("[...document.querySelectorAll('[data-tick]')].filter(each => each.checked).length"));
            await visitor.OpenFront();
            Assert.Equal([SmallBook.TitleOf("plover")], await visitor.StageLinks("[data-way-done]"));
        }

        await Wait.Removed(profile);
    }

    // Firefox gives each file a store of its own; WebKit gives all of them one.
    [Theory]
    [InlineData(EngineRoom.Firefox, false)]
    [InlineData(EngineRoom.WebKit, true)]
    public async Task From_a_memory_stick_the_way_is_kept_or_a_sentence_says_that_it_is_not(string engine, bool isKept)
    {
        const string Sentence = "some browsers remember each page by itself";
        var circumstances = new Circumstances(Source: Source.File);
        await using var visitor = await engines.Seat(engine, room.Shelf.Small, circumstances);
        await visitor.OpenStage("plover");
        await visitor.Press(Words.Done);
        await visitor.Follow(Words.ToFront);

        Assert.Equal(isKept ? [SmallBook.TitleOf("plover")] : [], await visitor.StageLinks("[data-way-done]"));
        Assert.Equal(!isKept, (await visitor.Seen()).Contains(Sentence, StringComparison.Ordinal));
        await visitor.OpenStage("heron");
        await visitor.Press(Words.Done);
        Assert.Equal(!isKept, (await visitor.Seen()).Contains(Sentence, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Where_nothing_can_keep_the_site_the_page_helps_all_the_same()
    {
        await using var reader = await room.Seat(new Circumstances());
        await reader.BeforeEveryPage("Object.defineProperty(Navigator.prototype, 'serviceWorker', { get: () => undefined });");
        await reader.OpenStage("plover");
        await reader.Press(Words.Nudge);

        Assert.Contains(SmallBook.Nudge("plover"), await reader.Seen());
        Complaint.None(reader.Network.Complaints);
    }

    // Pictures come at the width that they have on paper: Firefox would print those of the screen, 11 MB of them.
    [Theory]
    [MemberData(nameof(EngineRoom.Names), MemberType = typeof(EngineRoom))]
    public async Task The_solution_is_printed_whole_and_small(string engine)
    {
        var site = room.Shelf[Shelf.Names.Last(), new()];
        await using var visitor = await engines.Seat(engine, site, new());

        var printed = await visitor.Tab.Print(site.Address(Source.Http) + "solution.html");

        Assert.InRange(printed.Length, 100_000, 5_000_000);
        using var pdf = PdfDocument.Open(printed);
        var text = Letters(string.Concat(pdf.GetPages().SelectMany(page => page.Letters).Select(letter => letter.Value)));
        Assert.InRange(pdf.NumberOfPages, 3, 20);
        Assert.All(site.Book.Stages.Select(stage => Letters(stage.Title.Value)), title => Assert.Contains(title, text, StringComparison.Ordinal));
    }

    // A ligature is one letter or two, as the engine likes.
    private static string Letters(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)))
        .Replace("\ufb00", "ff", StringComparison.Ordinal)
        .Replace("\ufb01", "fi", StringComparison.Ordinal)
        .Replace("\ufb02", "fl", StringComparison.Ordinal);

    private PublishedSite OwnSite(string name)
    {
        var book = room.Shelf.SmallBookFor(name);
        return PublishedSite.Of(name, book, book + ", published");
    }
}
