using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;
using HintBook.Sealing;
using HintBook.Starting.Edition;

namespace HintBook.Browser.Tests;

// A step of a sealed site whose help opens with what the box has given by then: the way of an owner who has it, and of one who wants to skip.
public sealed class GateTests(ReadingRoom room) : IDisposable
{
    private const string Last = "swift", Field = "[data-gate] input", Status = "[data-gate] [role=status]";

    private readonly List<PublishedSite> sites = [];
    private SealedEdition edition = null!;

    public void Dispose() => sites.ForEach(site => site.Dispose());

    [Theory]
    [InlineData(Source.Http)]
    [InlineData(Source.File)]
    public async Task A_card_shows_sign_and_cautions_and_the_code_opens_the_help_for_good(Source source)
    {
        var site = Gated($"gate, {source}");
        await using var reader = await room.Seat(site, new(Source: source));
        await Scan(reader, site.PageOf(Last), BoxCode());

        Assert.Equal(SmallBook.TitleOf(Last), await reader.Page.Locator("h1").TextContentAsync());
        Assert.Contains("Glass", await reader.Seen(), StringComparison.Ordinal);
        await Assertions.Expect(reader.Summary(Words.Nudge)).ToBeHiddenAsync();
        await Assertions.Expect(reader.Summary(Words.Done)).ToBeHiddenAsync();
        await Assertions.Expect(reader.Page.GetByLabel("perch lock")).ToBeVisibleAsync();

        await Type(reader, "5174");
        await Assertions.Expect(reader.Page.Locator(Status)).ToContainTextAsync("That isn't it");
        await Assertions.Expect(reader.Page.Locator(Field)).ToBeFocusedAsync();
        await reader.OpenAll();
        Assert.DoesNotContain(SmallBook.Nudge(Last), await reader.Page.ContentAsync(), StringComparison.Ordinal);
        Assert.DoesNotContain("damaged", await reader.Page.Locator("[data-locked] [role=status]").TextContentAsync(), StringComparison.Ordinal);
        await reader.Page.ReloadAsync();
        await Opened(reader);

        await Type(reader, " 51-73 ");
        await Assertions.Expect(reader.Page.Locator(Status)).ToHaveTextAsync("The help is open.");
        await Assertions.Expect(reader.Page.Locator("details.nudge > summary")).ToBeFocusedAsync();
        await Assertions.Expect(reader.Page.Locator(Field)).ToBeHiddenAsync();
        // Folds that were open before are filled at once.
        await Assertions.Expect(reader.Page.Locator("details.nudge")).ToContainTextAsync(SmallBook.Nudge(Last));

        await reader.Page.ReloadAsync();
        await Opened(reader);
        await Assertions.Expect(reader.Page.Locator("[data-gate]")).ToBeHiddenAsync();
        await Assertions.Expect(reader.Page.Locator("details.nudge")).ToContainTextAsync(SmallBook.Nudge(Last));
        // It is the last step: behind “done” stands the way to putting the box back.
        await reader.Press(Words.Done);
        await Assertions.Expect(reader.Page.Locator("details.done a[href='reset.html']")).ToBeVisibleAsync();
        Complaint.None(reader.Network.Complaints);
    }

    [Fact]
    public async Task Pages_without_a_gate_ask_for_nothing()
    {
        var site = Gated("no gate");
        await using var reader = await room.Seat(site, new());
        await Scan(reader, site.PageOf("plover"), BoxCode());

        await reader.Press(Words.Nudge);
        await Assertions.Expect(reader.Page.Locator("details.nudge")).ToContainTextAsync(SmallBook.Nudge("plover"));
        Assert.Equal(0, await reader.Page.Locator("[data-gate]").CountAsync());
    }

    [Fact]
    public async Task The_key_of_a_gate_is_kept_without_what_was_typed_and_forgotten_with_the_box()
    {
        var site = Gated("gate, forgotten");
        await using var reader = await room.Seat(site, new());
        await Pass(reader, site, BoxCode(), SmallBook.Code);
        var kept = await reader.Page.EvaluateAsync<string>("() => JSON.stringify([Object.entries(localStorage), Object.entries(sessionStorage)])");
        Assert.Contains("gates", kept, StringComparison.Ordinal);
        Assert.DoesNotContain(SmallBook.Code, kept, StringComparison.Ordinal);

        await reader.Page.Locator("[data-forget]").ClickAsync();
        await Assertions.Expect(reader.Page.Locator("html:not([data-opened])")).ToBeAttachedAsync();
        await reader.Page.Whole();
        await Scan(reader, site.PageOf(Last), BoxCode());

        await Assertions.Expect(reader.Page.Locator(Field)).ToBeVisibleAsync();
        Assert.DoesNotContain("gates", await reader.Page.EvaluateAsync<string>("() => JSON.stringify(Object.entries(localStorage))"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("solution.html")]
    [InlineData("reset.html")]
    public async Task A_page_about_all_steps_says_kindly_that_one_waits_and_shows_it_once_its_gate_is_open(string list)
    {
        var site = Gated($"gate on {list}");
        var page = site.PageOf(Last);
        await using var reader = await room.Seat(site, new());
        await Scan(reader, site.PageOf("plover"), BoxCode());
        await reader.Open(list);
        await Opened(reader);
        await reader.OpenAll();
        var piece = reader.Page.Locator($"[data-sealed='{page.Split('.')[0]}']");

        await Assertions.Expect(piece).ToContainTextAsync("opens with something that you find on the way");
        Assert.DoesNotContain("damaged", await reader.Page.Locator("[data-locked] [role=status]").TextContentAsync(), StringComparison.Ordinal);
        await piece.Locator("a").ClickAsync();
        await reader.Arrive(page);
        await Opened(reader);
        await Type(reader, SmallBook.Code);
        await Assertions.Expect(reader.Page.Locator("html:not([data-gated])")).ToBeAttachedAsync();
        await reader.Open(list);
        await Opened(reader);
        await reader.OpenAll();
        await Assertions.Expect(piece).ToContainTextAsync(list == "solution.html" ? SmallBook.Answer(Last) : $"This is the {Last} way back.");
    }

    // Before its gate is open, a damaged step can't be told from one that waits.
    [Fact]
    public async Task A_step_that_arrived_damaged_is_told_as_that_once_its_gate_is_open()
    {
        var site = Gated("gate, damaged");
        await using var reader = await room.Seat(site, new());
        await Pass(reader, site, BoxCode(), SmallBook.Code);
        var page = site.PageOf(Last).Split('.')[0];
        var solution = Path.Combine(site.Folder, "solution.html");
        var html = File.ReadAllText(solution);
        var at = html.IndexOf($"data-sealed=\"{page}\" data-text=\"", StringComparison.Ordinal) + 200;
        File.WriteAllText(solution, html[..at] + (html[at] == 'A' ? 'B' : 'A') + html[(at + 1)..]);
        await reader.Open("solution.html");
        await Opened(reader);
        await reader.OpenAll();

        await Assertions.Expect(reader.Page.Locator("[data-locked] [role=status]")).ToContainTextAsync("arrived damaged");
    }

    [Theory]
    [InlineData("５１７３")]
    [InlineData("٥١٧٣")]
    public async Task Digits_of_any_keyboard_will_do(string typed)
    {
        var site = Gated($"gate, {typed}");
        await using var reader = await room.Seat(site, new());

        await Pass(reader, site, BoxCode(), typed);
    }

    [Theory]
    [InlineData("strasse", "Straße")]
    [InlineData("Queen Bee", "queen-bee!")]
    [InlineData("μελισσεσ", "ΜΕΛΙΣΣΕΣ")]
    [InlineData("μελισσεσ", "μελισσες")]
    [InlineData("kisin", "KIŞIN", false)]
    public async Task A_word_is_read_as_people_type_it(string word, string typed, bool fits = true)
    {
        var site = Gated($"gate, {typed}", gate: $"\"{word}\"");
        await using var reader = await room.Seat(site, new());
        await Scan(reader, site.PageOf(Last), BoxCode());
        await Type(reader, typed);

        await Assertions.Expect(reader.Page.Locator(Status)).ToContainTextAsync(fits ? "The help is open." : "That isn't it");
    }

    [Fact]
    public async Task What_has_no_letters_is_told_at_once()
    {
        var site = Gated("gate, empty");
        await using var reader = await room.Seat(site, new());
        await Scan(reader, site.PageOf(Last), BoxCode());
        await Type(reader, " - ");

        await Assertions.Expect(reader.Page.Locator(Status)).ToHaveTextAsync("Type letters or digits.");
    }

    [Fact]
    public async Task Where_each_copy_has_its_own_code_a_card_goes_with_its_own_alone()
    {
        var site = Gated("gate, own", ownCodes: true);
        await using var reader = await room.Seat(site, new());
        await Scan(reader, site.PageOf(Last), BoxCode("002"));
        await Type(reader, SmallBook.Code);
        await Assertions.Expect(reader.Page.Locator(Status)).ToContainTextAsync("That isn't it");
        await Type(reader, "2846");
        await Assertions.Expect(reader.Page.Locator(Status)).ToHaveTextAsync("The help is open.");

        await reader.Page.ReloadAsync();
        await Opened(reader);
        await reader.Press(Words.Nudge);
        await Assertions.Expect(reader.Page.Locator("details.nudge")).ToContainTextAsync(SmallBook.Nudge(Last));
    }

    [Fact]
    public async Task The_card_of_one_stage_asks_as_well()
    {
        var site = Gated("gate, one stage", ownCodes: true);
        await using var reader = await room.Seat(site, new());
        var page = site.PageOf(Last);

        await Pass(reader, site, edition.Codes!.OfPage(edition.Read().Kept!["001"]!, page.Split('.')[0]), SmallBook.Code);
    }

    [Fact]
    public async Task Without_a_network_a_gate_opens_too()
    {
        var site = Gated("gate, offline", ownCodes: true);
        await using var reader = await room.Seat(site, new());
        await Scan(reader, site.PageOf("plover"), BoxCode());
        await Assertions.Expect(reader.Page.Locator("html[data-kept=kept]")).ToBeAttachedAsync();

        site.Server.CutAfter(0);
        await reader.OpenStage(Last);
        await Opened(reader);
        await Type(reader, SmallBook.Code);
        await Assertions.Expect(reader.Page.Locator(Status)).ToHaveTextAsync("The help is open.");
    }

    [Theory]
    [InlineData("parlour")]
    [InlineData("plain")]
    [InlineData("workshop")]
    public async Task A_gate_breaks_no_rule_of_access(string theme)
    {
        var site = Gated($"gate, access in {theme}", theme: theme);
        await using var reader = await room.Seat(site, new(Theme: theme));
        await Scan(reader, site.PageOf(Last), BoxCode());
        await Assertions.Expect(reader.Page.Locator(Field)).ToBeVisibleAsync();
        var broken = (await AccessTests.Broken(reader, "shut")).ToList();
        await Type(reader, "5174");
        await Assertions.Expect(reader.Page.Locator(Status)).ToContainTextAsync("That isn't it");
        broken.AddRange(await AccessTests.Broken(reader, "told"));
        await Type(reader, SmallBook.Code);
        await Assertions.Expect(reader.Page.Locator(Status)).ToHaveTextAsync("The help is open.");
        broken.AddRange(await AccessTests.Broken(reader, "open"));

        Complaint.None(broken);
    }

    private static async Task Pass(Reader reader, PublishedSite site, CardCode code, string typed)
    {
        await Scan(reader, site.PageOf(Last), code);
        await Type(reader, typed);
        await Assertions.Expect(reader.Page.Locator(Status)).ToHaveTextAsync("The help is open.");
    }

    private static async Task Type(Reader reader, string typed)
    {
        await reader.Page.Locator(Field).FillAsync(typed);
        await reader.Page.Locator("[data-gate] button").ClickAsync();
    }

    private static async Task Scan(Reader reader, string page, CardCode code)
    {
        await reader.Open($"{page}#{code}");
        await Opened(reader);
    }

    private static Task Opened(Reader reader) => Assertions.Expect(reader.Page.Locator("html[data-opened]")).ToBeAttachedAsync();

    private CardCode BoxCode(string serial = "001") => edition.Codes!.OfBox(edition.Read().Kept![serial]!);

    // The last step needs the code that the step before it gives.
    private PublishedSite Gated(string test, string gate = "perch-lock", string? theme = null, bool ownCodes = false)
    {
        var book = room.Shelf.SmallBookFor(test);
        var (settings, stage) = (Path.Combine(book, "book.yaml"), Path.Combine(book, "stages", $"{SmallBook.Stages.Length:00}-{Last}.md"));
        if (theme is not null)
            File.AppendAllText(settings, $"\ntheme: {theme}");
        File.AppendAllText(settings, "\nsealed: true\n");
        Change(stage, "\n---\n# Nudge", $"\ngate: {gate}\ncautions: [ glass ]\n---\n# Nudge");
        if (ownCodes)
        {
            Change(settings, $"answer: \"{SmallBook.Code}\"", "answer: { copy: number }");
            Change(Path.Combine(book, "stages", "07-owl.md"), SmallBook.Code, "on the sheet of your copy");
        }

        var own = ownCodes ? new[] { SmallBook.Code, "2846" }.Select(number => $"own: {{ number: \"{number}\" }}").ToArray() : ["sold: true", "sold: true"];
        File.WriteAllText(Path.Combine(book, "copies.yaml"), $"copies:\n  \"001\": {{ {own[0]} }}\n  \"002\": {{ {own[1]} }}\n");
        edition = new(book, "bird-table");
        var secret = new BookSecret([.. Enumerable.Range(0, BookSecret.Length).Select(each => (byte)each)]);
        Assert.Null(edition.Complete(["001", "002"], () => secret, new Random(3).Next).Why);
        var site = PublishedSite.Of(test, book, book + ", published");
        sites.Add(site);
        return site;
    }

    private static void Change(string file, string from, string to)
    {
        var text = File.ReadAllText(file);
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(file, text.Replace(from, to, StringComparison.Ordinal));
    }
}
