using System.Text.RegularExpressions;
using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;
using HintBook.Sealing;
using HintBook.Starting.Edition;

namespace HintBook.Browser.Tests;

// A site that opens with a card: the whole way of an owner who has one, and of one who hasn't.
public sealed class SealedTests(ReadingRoom room) : IDisposable
{
    private const string Id = "bird-table";

    // The tables of slots and sealed pictures that are kept on the device.
    private const string KeptFiles =
        """
        async () => {
          const kept = [];
          for (const name of await caches.keys()) for (const file of await (await caches.open(name)).keys()) {
            const found = /\/([kp]\/[^/]+)$/.exec(new URL(file.url).pathname);
            if (found) kept.push(found[1]);
          }
          return kept.sort();
        }
        """;

    private const string SealedCaches = "async () => (await caches.keys()).filter(name => name.startsWith('hintbook-sealed:'))";

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
        await Noted(reader);
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

    [Theory]
    [InlineData(Source.Http)]
    [InlineData(Source.File)]
    public async Task A_card_fills_in_what_is_its_own_copys_and_the_last_card_counts(Source source)
    {
        var site = SealedWithOwn($"own values, {source}");
        await using var reader = await room.Seat(site, new(Source: source));
        await Scan(reader, site.PageOf("plover"), BoxCode());
        await Answered("5173", "2846");

        // Another copy's card on the same device: the page is loaded anew.
        await reader.Page.EvaluateAsync("() => { window.isBefore = true; }");
        await Scan(reader, site.PageOf("plover"), edition.Codes!.OfBox(edition.Read().Kept!["002"]!));
        await reader.Page.WaitForFunctionAsync("() => !window.isBefore");
        await Opened(reader);
        await Answered("2846", "5173");
        await reader.Open("solution.html");
        await reader.OpenAll();
        await Assertions.Expect(reader.Page.Locator("[data-own]").First).ToHaveTextAsync("2846");

        async Task Answered(string own, string other)
        {
            await reader.OpenAll();
            await Assertions.Expect(reader.Page.Locator("[data-own=number]")).ToHaveTextAsync(own);
            Assert.DoesNotContain(other, await reader.Page.ContentAsync());
        }
    }

    [Fact]
    public async Task A_card_of_one_stage_fills_in_that_stages_own_value()
    {
        var site = SealedWithOwn("own value of a stage");
        await using var reader = await room.Seat(site, new());
        var page = site.PageOf("plover");
        await Scan(reader, page, edition.Codes!.OfPage(edition.Read().Kept!["002"]!, page.Split('.')[0]));
        await reader.OpenAll();

        await Assertions.Expect(reader.Page.Locator("[data-own=number]")).ToHaveTextAsync("2846");
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
    public async Task A_fold_that_was_open_before_the_code_came_is_filled()
    {
        var site = Sealed("folds open early");
        await using var reader = await room.Seat(site, new());
        await reader.OpenStage("plover");
        await reader.OpenAll();
        await reader.Page.EvaluateAsync("code => { location.hash = code; }", $"{BoxCode()}");

        await Assertions.Expect(reader.Page.GetByText(SmallBook.Clue("plover"))).ToBeVisibleAsync();
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
    public async Task A_device_keeps_the_tables_and_pictures_that_it_used_and_no_others_until_they_are_forgotten()
    {
        var site = Sealed("kept files");
        await using var reader = await room.Seat(site, new());
        await Scan(reader, site.PageOf("plover"), BoxCode());
        await Assertions.Expect(reader.Page.Locator("html[data-kept=kept]")).ToBeAttachedAsync();
        await reader.Until($"async () => {{ const kept = await ({KeptFiles})(); return kept[0] === 'k/box-0.js' && kept.length > 1; }}");

        var kept = await reader.Page.EvaluateAsync<string[]>(KeptFiles);
        Assert.Single(kept, file => file.StartsWith("k/", StringComparison.Ordinal));
        Assert.InRange(kept.Length - 1, 1, Directory.GetFiles(Path.Combine(site.Folder, "p")).Length - 1);

        site.Server.CutAfter(0);
        await reader.OpenStage("plover");
        await Opened(reader);
        await Assertions.Expect(reader.Page.Locator("[data-sealed=head] img[src^='blob:']").First).ToBeAttachedAsync();
        await reader.Page.Locator("[data-forget]").ClickAsync();
        await reader.Until($"async () => (await ({KeptFiles})()).length === 0");
    }

    [Fact]
    public async Task A_new_version_of_the_site_fetches_anew_what_was_used()
    {
        var site = Sealed("kept files, corrected");
        await using var reader = await room.Seat(site, new());
        await Scan(reader, site.PageOf("plover"), BoxCode());
        await reader.Until($"async () => (await ({KeptFiles})())[0] === 'k/box-0.js'");
        var before = await reader.Page.EvaluateAsync<string[]>(SealedCaches);
        var stage = Path.Combine(edition.Folder, "stages", "01-plover.md");
        File.WriteAllText(stage, File.ReadAllText(stage).Replace(SmallBook.Nudge("plover"), "Look below.", StringComparison.Ordinal));
        Published("kept files, corrected");

        await reader.OpenStage("plover");
        await reader.Until(
            $"async before => {{ const now = await ({SealedCaches})(); return now.length === 1 && now[0] !== before; }}", Assert.Single(before));

        Assert.Contains("k/box-0.js", await reader.Page.EvaluateAsync<string[]>(KeptFiles));
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
        // Before its worker is there, a browser may show the page that it has, as the host lets it.
        await Assertions.Expect(reader.Page.Locator("html[data-kept=kept]")).ToBeAttachedAsync();
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

    [Fact]
    public async Task A_letter_to_the_maker_names_the_number_of_the_card_and_not_its_code()
    {
        var site = Sealed("a letter");
        await using var reader = await room.Seat(site, new());
        await reader.OpenStage("plover");
        Assert.DoesNotContain("Number of the card", await Letter(reader), StringComparison.Ordinal);

        await Scan(reader, site.PageOf("plover"), BoxCode());

        var letter = await Letter(reader);
        Assert.EndsWith($"Number of the card: {edition.Read().Kept!["001"]!.Number}", letter, StringComparison.Ordinal);
        Assert.DoesNotContain($"{BoxCode()}", letter, StringComparison.OrdinalIgnoreCase);
        await reader.OpenStage("heron");
        await Opened(reader);
        Assert.Single(Regex.Matches(await Letter(reader), "Number of the card"));
    }

    [Fact]
    public async Task The_notes_of_a_way_name_pages_and_say_nothing_of_what_is_sealed()
    {
        var site = Sealed("notes");
        await using var reader = await room.Seat(site, new());
        await Scan(reader, site.PageOf("plover"), BoxCode());
        await reader.Press(Words.Nudge);
        await reader.Press(Words.Done);
        await Noted(reader);
        await reader.OpenFront();
        await Opened(reader);

        var notes = await File.ReadAllLinesAsync((await reader.SaveNotes("")).Path, TestContext.Current.CancellationToken);

        Assert.Equal(2, notes.Length);
        Assert.Equal("who,stage,minutes,help,remarks", notes[0]);
        Assert.Matches($"^\"\",{Path.GetFileNameWithoutExtension(site.PageOf("plover"))},[0-9.]*,nudge,$", notes[1]);
    }

    [Theory]
    [InlineData("parlour")]
    [InlineData("plain")]
    [InlineData("workshop")]
    public async Task A_page_breaks_no_rule_of_access_while_it_is_locked_and_when_it_is_open(string theme)
    {
        var site = Sealed($"access in {theme}", theme);
        await using var reader = await room.Seat(site, new(Theme: theme));
        await reader.OpenStage("plover");
        var broken = (await AccessTests.Broken(reader, "locked")).ToList();
        await reader.Page.Locator("[data-locked] input[type=text]").FillAsync("not a code");
        await reader.Page.Locator("[data-locked] button").ClickAsync();
        await Assertions.Expect(reader.Page.Locator("[data-locked] [role=status]")).ToContainTextAsync("8 of 32");
        broken.AddRange(await AccessTests.Broken(reader, "told"));
        await Scan(reader, site.PageOf("plover"), BoxCode());
        broken.AddRange(await AccessTests.Broken(reader, "open"));

        Complaint.None(broken);
    }

    private static async Task<string> Letter(Reader reader) =>
        Uri.UnescapeDataString(await reader.Page.Locator("a[href^='mailto:'][href*='body=']").First.GetAttributeAsync("href") ?? "");

    private static async Task Scan(Reader reader, string page, CardCode code)
    {
        await reader.Open($"{page}#{code}");
        await Opened(reader);
    }

    // That a step is done is noted after its fold is filled, and told how much help was used after that.
    private static Task Noted(Reader reader) => Assertions.Expect(reader.Page.Locator("[data-used]")).ToBeVisibleAsync();

    private static Task Opened(Reader reader) => Assertions.Expect(reader.Page.Locator("html[data-opened]")).ToBeAttachedAsync();

    private CardCode BoxCode() => edition.Codes!.OfBox(edition.Read().Kept!["001"]!);

    // The first step's answer says a number that each copy has of its own.
    private PublishedSite SealedWithOwn(string test) => Sealed(test, owns: book =>
    {
        var stage = Path.Combine(book, "stages", "01-plover.md");
        var own = File.ReadAllText(stage).Replace(SmallBook.Answer("plover"), "The table has {{ copy: number }} on its back.", StringComparison.Ordinal);
        File.WriteAllText(stage, own);
        File.WriteAllText(
            Path.Combine(book, "copies.yaml"), "copies:\n  \"001\": { own: { number: \"5173\" } }\n  \"002\": { own: { number: \"2846\" } }\n");
    });

    private PublishedSite Sealed(string test, string? theme = null, Action<string>? owns = null)
    {
        var book = room.Shelf.SmallBookFor(test);
        var settings = Path.Combine(book, "book.yaml");
        if (theme is not null)
        {
            var others = File.ReadAllLines(settings).Where(line => !line.StartsWith("theme:", StringComparison.Ordinal)).ToArray();
            File.WriteAllLines(settings, [.. others, $"theme: {theme}"]);
        }

        File.AppendAllText(settings, "\nsealed: true\n");
        File.WriteAllText(Path.Combine(book, "copies.yaml"), "copies:\n  \"001\": { sold: true }\n  \"002\": { sold: true }\n");
        owns?.Invoke(book);
        edition = new(book, Id);
        Assert.Null(edition.Complete(["001", "002"], () => Secret, new Random(3).Next).Why);
        var site = PublishedSite.Of(test, book, book + ", published");
        sites.Add(site);
        return site;
    }

    // What is served stays the same folder.
    private void Published(string test) => PublishedSite.Of($"{test} again", edition.Folder, edition.Folder + ", published").Dispose();
}
