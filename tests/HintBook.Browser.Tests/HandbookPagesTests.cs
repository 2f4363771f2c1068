using HintBook.Browser.Tests.Reading;
using HintBook.Handbook;
using HintBook.Tests.House;

namespace HintBook.Browser.Tests;

/// <summary>The handbook in a browser, opened from a folder on the disk: no server, in the light and in the dark, on a phone and on paper.</summary>
public sealed class HandbookPagesTests(ReadingRoom room, HandbookPagesTests.OnDisk handbook) : IClassFixture<HandbookPagesTests.OnDisk>
{
    private static readonly ViewportSize Phone = new() { Width = 320, Height = 640 };
    private static readonly ViewportSize Desk = new() { Width = 1200, Height = 900 };

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task No_page_breaks_a_rule_of_access(ColorScheme scheme)
    {
        var page = await room.Page(Desk);
        await page.EmulateMediaAsync(new() { ColorScheme = scheme });
        var broken = new List<string>();
        foreach (var file in handbook.Kinds)
        {
            await page.GotoAsync(handbook.Address(file));
            broken.AddRange((await AccessTests.Broken(page)).Select(rule => $"{file}: {rule}"));
        }

        Complaint.None(broken);
        await page.CloseAsync();
    }

    [Fact]
    public async Task Nothing_scrolls_sideways_on_a_narrow_phone()
    {
        var page = await room.Page(Phone);
        var wide = new List<string>();
        foreach (var file in handbook.Kinds)
        {
            await page.GotoAsync(handbook.Address(file));
            if (await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth") is > 320 and var width)
                wide.Add($"{file} is {width} pixels wide");
        }

        Complaint.None(wide);
        await page.CloseAsync();
    }

    [Fact]
    public async Task A_search_without_a_server_leads_to_the_page_that_is_meant()
    {
        var page = await room.Page(Phone);
        await page.GotoAsync(handbook.Address("search.html"));
        await page.GetByLabel("Words to look for").FillAsync("sharp knife");

        await page.Locator("#found a").First.ClickAsync();

        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Printing and cutting" })).ToBeVisibleAsync();
        await page.CloseAsync();
    }

    [Fact]
    public async Task What_is_nowhere_is_not_found()
    {
        var page = await room.Page(Phone);
        await page.GotoAsync(handbook.Address("search.html"));
        await page.GetByLabel("Words to look for").FillAsync("submarine");

        await Assertions.Expect(page.GetByRole(AriaRole.Status)).ToHaveTextAsync("0 places found.");
        await page.CloseAsync();
    }

    [Fact]
    public async Task Without_a_script_the_words_of_all_headings_lead_on()
    {
        var page = await room.Page(Phone, script: false);
        await page.GotoAsync(handbook.Address("search.html"));

        await Assertions.Expect(page.GetByLabel("Words to look for")).ToBeHiddenAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Printing and cutting", Exact = true }).First.ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Printing and cutting" })).ToBeVisibleAsync();
        await page.CloseAsync();
    }

    [Fact]
    public async Task A_page_of_the_small_book_shows_in_its_frame_and_nothing_is_refused()
    {
        var page = await room.Page(Desk);
        var said = new List<string>();
        page.Console += (_, line) => said.Add(line.Text);
        await page.GotoAsync(handbook.Address("01-what-you-get.html"));
        await page.Locator("iframe").ScrollIntoViewIfNeededAsync();

        await Assertions.Expect(page.FrameLocator("iframe").GetByRole(AriaRole.Heading, new() { Name = "My First Box" })).ToBeVisibleAsync();
        Assert.Empty(said);
        await page.CloseAsync();
    }

    [Fact]
    public async Task On_paper_there_is_nothing_that_can_only_be_pressed()
    {
        var page = await room.Page(Desk);
        await page.GotoAsync(handbook.Address("03-your-first-box.html"));
        await page.EmulateMediaAsync(new() { Media = Media.Print });

        await Assertions.Expect(page.Locator("nav.top")).ToBeHiddenAsync();
        await Assertions.Expect(page.Locator("nav.turn")).ToBeHiddenAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Your first box" })).ToBeVisibleAsync();
        await page.CloseAsync();
    }

    /// <summary>The handbook in a folder, without its pages of findings but one: they are alike.</summary>
    public sealed class OnDisk : IDisposable
    {
        private readonly string root = Directory.CreateTempSubdirectory("hintbook-handbook-").FullName;

        public OnDisk()
        {
            var guide = Path.Combine(Repository.Root, "src", "HintBook.Cli", "Guide");
            var pages = Directory.GetFiles(guide, "*.md").Order(StringComparer.Ordinal).Select(Text).ToLookup(page => char.IsAsciiDigit(page.Name[0]));
            var files = HandbookSite.Make(
                new([.. pages[true]], [.. pages[false]], [Text(Path.Combine(guide, "Findings", "HB2101.md"))]), Path.Combine(root, "making"));
            foreach (var file in files)
            {
                var path = Path.Combine(root, file.Path);
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                File.WriteAllBytes(path, file.Content().ToArray());
            }

            string[] one = ["index.html", "search.html", "format.html", "findings.html", "HB2101.html", "captive.html"];
            Kinds = [.. one, .. pages[true].Select(page => $"{page.Name}.html")];
        }

        /// <summary>A page of each kind, and every chapter.</summary>
        public IReadOnlyList<string> Kinds { get; }

        public string Address(string file) => new Uri(Path.Combine(root, file)).AbsoluteUri;

        public void Dispose() => Directory.Delete(root, recursive: true);

        private static HandbookText Text(string path) => new(Path.GetFileNameWithoutExtension(path), File.ReadAllText(path));
    }
}
