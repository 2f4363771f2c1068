using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;
using HintBook.Sealing;
using HintBook.Starting.Edition;

namespace HintBook.Browser.Tests;

// A site that opens with a card: the whole way of an owner who has one, and of one who hasn't.
public sealed class SealedTests(ReadingRoom room) : IDisposable
{
    private const string Id = "bird-table";

    private static readonly BookSecret Secret = new([.. Enumerable.Range(0, BookSecret.Length).Select(each => (byte)each)]);

    private readonly List<PublishedSite> sites = [];
    private SealedEdition edition = null!;

    public void Dispose() => sites.ForEach(site => site.Dispose());

    [Theory]
    [InlineData(Source.Http)]
    [InlineData(Source.File)]
    public async Task A_card_of_the_box_opens_each_page_and_each_step_when_it_is_asked_for(Source source)
    {
        var site = Sealed($"a card, {source}");
        await using var reader = await room.Seat(site, new(Source: source));
        await Scan(reader, site.PageOf("plover"), BoxCode());

        Assert.Equal(SmallBook.TitleOf("plover"), await reader.Page.Locator("h1").TextContentAsync());
        Assert.DoesNotContain(SmallBook.Nudge("plover"), await reader.Page.ContentAsync());
        await reader.Press(Words.Nudge);
        await Assertions.Expect(reader.Page.Locator("details.nudge")).ToContainTextAsync(SmallBook.Nudge("plover"));
        Assert.DoesNotContain(SmallBook.Clue("plover"), await reader.Page.ContentAsync());
        Assert.DoesNotContain("#", reader.Page.Url);

        await reader.OpenStage("heron");
        await Opened(reader);
        Assert.Equal(SmallBook.TitleOf("heron"), await reader.Page.Locator("h1").TextContentAsync());
        await reader.OpenStage("plover");
        await Opened(reader);
        await reader.Press(Words.Done);
        await reader.Page.WaitForSelectorAsync("[data-next]");
        await reader.OpenFront();
        await Opened(reader);
        Assert.Equal([SmallBook.TitleOf("plover")], await reader.StageLinks("[data-way-done]"));
        Complaint.None(reader.Network.Complaints);
    }

    [Fact]
    public async Task Without_a_card_nothing_can_be_read_and_a_sentence_says_why()
    {
        var site = Sealed("no card");
        await using var reader = await room.Seat(site, new());
        await reader.OpenStage("plover");

        Assert.Contains("The key is on the card in your box", await reader.Seen());
        Assert.Equal(0, await reader.Page.Locator("h1").CountAsync());
        await reader.OpenAll();
        Assert.DoesNotContain(SmallBook.Nudge("plover"), await reader.Page.ContentAsync());
    }

    [Theory]
    [InlineData("201K MJ2S 05VF 77S9 PGA6 HZ0M EQBN CST", "31 of 32")]
    [InlineData("not a code", "8 of 32")]
    [InlineData("201K MJ2S 05VF 77S9 PGA6 HZ0M EQBN CSTJ", "group by group")]
    [InlineData("201K MJ2S 05VF 77S9 PGA6 HZ0M EQBN CSTK", "doesn't open this page")]
    public async Task What_is_typed_wrong_is_told(string typed, string says)
    {
        var site = Sealed($"mistyped {says}");
        await using var reader = await room.Seat(site, new());
        await reader.OpenStage("plover");
        await reader.Page.Locator("[data-locked] input[type=text]").FillAsync(typed);
        await reader.Page.Locator("[data-locked] button").ClickAsync();

        await Assertions.Expect(reader.Page.Locator("[data-locked] [role=status]")).ToContainTextAsync(says);
    }

    [Fact]
    public async Task A_code_is_read_as_people_type_it()
    {
        var site = Sealed("typed");
        await using var reader = await room.Seat(site, new());
        await reader.OpenStage("plover");
        await reader.Page.Locator("[data-locked] input[type=text]")
            .FillAsync(BoxCode().ToGroups().ToLowerInvariant().Replace(' ', '-').Replace('0', 'o').Replace('1', 'l'));
        await reader.Page.Locator("[data-locked] button").ClickAsync();

        await Opened(reader);
        Assert.Equal(SmallBook.TitleOf("plover"), await reader.Page.Locator("h1").TextContentAsync());
    }

    [Fact]
    public async Task A_card_of_one_stage_opens_that_stage_alone()
    {
        var site = Sealed("one stage");
        await using var reader = await room.Seat(site, new());
        var name = Path.GetFileNameWithoutExtension(site.PageOf("plover"));
        await Scan(reader, site.PageOf("plover"), edition.Codes!.OfPage(edition.Read().Kept!["001"]!, name));

        Assert.Equal(SmallBook.TitleOf("plover"), await reader.Page.Locator("h1").TextContentAsync());
        await reader.OpenStage("heron");
        await Assertions.Expect(reader.Page.Locator("[data-locked] [role=status]")).ToContainTextAsync("doesn't open this page");
        Assert.Equal(0, await reader.Page.Locator("h1").CountAsync());
    }

    [Fact]
    public async Task A_code_that_is_pasted_into_an_open_tab_opens_it()
    {
        var site = Sealed("pasted");
        await using var reader = await room.Seat(site, new());
        await reader.OpenStage("plover");
        await reader.Page.EvaluateAsync("code => { location.hash = code; }", $"{BoxCode()}");

        await Opened(reader);
        Assert.Equal(SmallBook.TitleOf("plover"), await reader.Page.Locator("h1").TextContentAsync());
    }

    [Fact]
    public async Task What_was_opened_once_opens_without_a_network()
    {
        var site = Sealed("offline");
        await using var reader = await room.Seat(site, new());
        await Scan(reader, site.PageOf("plover"), BoxCode());
        await Assertions.Expect(reader.Page.Locator("html[data-kept=kept]")).ToBeAttachedAsync();

        site.Server.CutAfter(0);
        await reader.OpenStage("heron");
        await Opened(reader);
        Assert.Equal(SmallBook.TitleOf("heron"), await reader.Page.Locator("h1").TextContentAsync());
    }

    [Fact]
    public async Task A_box_that_was_forgotten_is_locked_again()
    {
        var site = Sealed("forgotten");
        await using var reader = await room.Seat(site, new());
        await Scan(reader, site.PageOf("plover"), BoxCode());
        await reader.Page.Locator("[data-forget]").ClickAsync();

        await Assertions.Expect(reader.Page.Locator("html:not([data-opened])")).ToBeAttachedAsync();
        await reader.OpenStage("plover");
        Assert.Equal(0, await reader.Page.Locator("h1").CountAsync());
        Assert.Equal("[]", await reader.Page.EvaluateAsync<string>("() => JSON.stringify(Object.keys(localStorage).filter(key => key.endsWith(':keys')))"));
    }

    [Fact]
    public async Task A_retired_copy_is_locked_out_of_the_next_publish()
    {
        var site = Sealed("retired");
        await using var reader = await room.Seat(site, new());
        await Scan(reader, site.PageOf("plover"), BoxCode());
        edition.Keep(edition.Read().Kept!.Retire("001"));
        Published("retired");

        await reader.OpenStage("plover");
        await Assertions.Expect(reader.Page.Locator("[data-locked] [role=status]")).ToContainTextAsync("doesn't open this page");
    }

    [Fact]
    public async Task The_code_is_in_no_request_and_in_no_letter()
    {
        var site = Sealed("quiet");
        await using var reader = await room.Seat(site, new());
        var code = BoxCode();
        await Scan(reader, site.PageOf("plover"), code);

        Assert.DoesNotContain(site.Server.Answered, file => file.Contains($"{code}", StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain($"{code}", await reader.Page.ContentAsync());
    }

    private static async Task Scan(Reader reader, string page, CardCode code)
    {
        await reader.Open($"{page}#{code}");
        await Opened(reader);
    }

    private static Task Opened(Reader reader) => Assertions.Expect(reader.Page.Locator("html[data-opened]")).ToBeAttachedAsync();

    private CardCode BoxCode() => edition.Codes!.OfBox(edition.Read().Kept!["001"]!);

    private PublishedSite Sealed(string test)
    {
        var book = room.Shelf.SmallBookFor(test);
        File.AppendAllText(Path.Combine(book, "book.yaml"), "\nsealed: true\n");
        File.WriteAllText(Path.Combine(book, "copies.yaml"), "copies:\n  \"001\": { sold: true }\n  \"002\": { sold: true }\n");
        edition = new(book, Id);
        Assert.Null(edition.Complete(["001", "002"], () => Secret, new Random(3).Next).Why);
        var site = PublishedSite.Of(test, book, book + ", published");
        sites.Add(site);
        return site;
    }

    // What is served stays the same folder.
    private void Published(string test) => PublishedSite.Of($"{test} again", edition.Folder, edition.Folder + ", published").Dispose();
}
