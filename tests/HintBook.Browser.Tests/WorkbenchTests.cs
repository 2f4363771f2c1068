using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;
using HintBook.Starting;
using HintBook.Workbench;

namespace HintBook.Browser.Tests;

/// <summary>The workbench as its maker uses it: the text on one side, what a reader sees on the other, an editor of their own beside it.</summary>
public sealed class WorkbenchTests(ReadingRoom room) : IAsyncLifetime
{
    private const string Number = "stages/02-the-number.md";

    // The page that the phone was sent to is there, and not only the one before.
    private const string Shown =
        """
        () => {
          const view = document.querySelector('#phone-view');
          return view.contentDocument?.readyState === 'complete' && view.contentWindow.location.href === view.src;
        }
        """;

    private static readonly PageWaitForFunctionOptions Patience = new() { Timeout = 60_000 };

    private readonly string root = Directory.CreateTempSubdirectory("hintbook-workbench-").FullName;
    private WorkbenchServer bench = null!;
    private IPage page = null!;

    private string Book => Path.Combine(root, "book");

    public async ValueTask InitializeAsync()
    {
        NewBook.In(Book);
        bench = await WorkbenchServer.Open(Book);
        page = await room.Page(new() { Width = 1600, Height = 900 });
        await page.GotoAsync(bench.Address.ToString());
        await page.WaitForFunctionAsync("() => document.documentElement.dataset.look > 0", null, Patience);
    }

    public async ValueTask DisposeAsync()
    {
        await page.Context.DisposeAsync();
        await bench.DisposeAsync();
        Directory.Delete(root, recursive: true);
    }

    [Fact]
    public async Task What_is_typed_is_on_the_disk_and_in_the_readers_page_with_the_fold_still_open()
    {
        await Open(Number);
        await page.FrameLocator("#phone-view").Locator("summary").First.ClickAsync();

        await Type("# Nudge\n", "# Nudge\nTyped words. ");

        await Seen("Typed words.");
        Assert.Contains("Typed words.", await File.ReadAllTextAsync(Path.Combine(Book, Number)), StringComparison.Ordinal);
        await page.WaitForFunctionAsync("() => document.querySelector('#phone-view').contentDocument?.querySelector('details')?.open", null, Patience);
    }

    [Fact]
    public async Task What_another_editor_saves_is_in_the_readers_page_and_in_the_text()
    {
        await Open(Number);

        Elsewhere(Number, text => text.Replace("# Nudge\n", "# Nudge\nFrom elsewhere. ", StringComparison.Ordinal));

        await Seen("From elsewhere.");
        await page.WaitForFunctionAsync("() => document.querySelector('#text').value.includes('From elsewhere.')", null, Patience);
    }

    [Fact]
    public async Task Two_who_write_at_once_lose_nothing()
    {
        await Open(Number);
        // The page hears of no change until it is told to, as if both had saved in the same moment.
        await page.EvaluateAsync(
            """
            () => {
              const now = window.fetch;
              const told = new Promise(go => { window.tell = go; });
              window.fetch = (what, how) => String(what).endsWith('/look') ? told.then(() => now(what, how)) : now(what, how);
            }
            """);
        Elsewhere(Number, text => text + "\nTheirs.\n");

        await Type("# Nudge\n", "# Nudge\nMine. ");

        await page.WaitForFunctionAsync("() => !document.querySelector('#clash').hidden", null, Patience);
        Assert.Contains("Mine.", await page.Locator("#yours").TextContentAsync() ?? "", StringComparison.Ordinal);
        Assert.Contains("Theirs.", await page.Locator("#theirs").TextContentAsync() ?? "", StringComparison.Ordinal);
        Assert.DoesNotContain("Mine.", await File.ReadAllTextAsync(Path.Combine(Book, Number)), StringComparison.Ordinal);

        await page.Locator("#keep-yours").ClickAsync();
        await page.EvaluateAsync("() => window.tell()");
        await Seen("Mine.");
    }

    [Fact]
    public async Task A_broken_file_leaves_the_page_and_says_what_is_wrong_below_its_text()
    {
        await Open("book.yaml");

        await Type("title:", "titel:");

        await page.Locator("#stale").WaitForAsync();
        await page.Locator("#here li").First.WaitForAsync();
        await Assertions.Expect(page.Locator("#here")).ToContainTextAsync("titel");
        await Assertions.Expect(page.Locator("#marks u.error")).Not.ToHaveCountAsync(0);

        await Type("titel:", "title:");
        await page.Locator("#stale").WaitForAsync(new() { State = WaitForSelectorState.Hidden });
    }

    [Fact]
    public async Task Every_theme_is_shown_light_and_dark_with_script_and_without()
    {
        foreach (var theme in Circumstances.Themes)
        {
            await page.Locator("#theme").SelectOptionAsync(theme);
            await Background(theme, dark: false);
            await page.Locator("#dark").CheckAsync();
            await Background(theme, dark: true);
            await page.Locator("#dark").UncheckAsync();
        }

        await page.Locator("#still").CheckAsync();
        Assert.Equal("allow-same-origin", await page.Locator("#phone-view").GetAttributeAsync("sandbox"));
    }

    [Fact]
    public async Task The_box_is_opened_step_by_step_and_a_changed_book_is_played_anew()
    {
        await page.Locator("#to-play").ClickAsync();
        await page.Locator("#possible button").First.WaitForAsync();
        for (var step = 1; await page.Locator("#played").TextContentAsync() != "The box is open."; step++)
        {
            await page.Locator("#shortest").ClickAsync();
            await page.WaitForFunctionAsync("step => document.querySelectorAll('#made li').length === step", step, Patience);
        }

        var made = await page.Locator("#made li").CountAsync();
        await page.Locator("#back").ClickAsync();
        await page.WaitForFunctionAsync("made => document.querySelectorAll('#made li').length === made - 1", made, Patience);

        var look = await page.EvaluateAsync<int>("() => Number(document.documentElement.dataset.look)");
        Elsewhere("book.yaml", text => text + "\n# changed\n");
        await page.WaitForFunctionAsync("look => document.documentElement.dataset.look > look", look, Patience);
        Assert.Equal(made - 1, await page.Locator("#made li").CountAsync());
        Complaint.None(await AccessTests.Broken(page));
    }

    [Fact]
    public async Task Steps_are_kept_as_a_file_and_played_again()
    {
        await page.Locator("#to-play").ClickAsync();
        await page.Locator("#possible button").First.ClickAsync();
        await page.WaitForFunctionAsync("() => document.querySelectorAll('#made li').length === 1", null, Patience);

        await page.GetByLabel("Keep these steps as").FillAsync("My first try");
        await page.Keyboard.PressAsync("Enter");
        await page.Locator("#rehearsals button").WaitForAsync();
        await page.Locator("#anew").ClickAsync();
        await page.WaitForFunctionAsync("() => document.querySelectorAll('#made li').length === 0", null, Patience);
        await page.Locator("#rehearsals button").ClickAsync();

        await page.WaitForFunctionAsync("() => document.querySelectorAll('#made li').length === 1", null, Patience);
        var kept = await File.ReadAllTextAsync(Path.Combine(Book, "rehearsals", "my-first-try.yaml"));
        Assert.Contains("title: \"My first try\"", kept, StringComparison.Ordinal);
        Complaint.None(await AccessTests.Broken(page));
    }

    [Fact]
    public async Task What_is_proved_stands_beside_the_map()
    {
        await page.Locator("#to-proofs").ClickAsync();

        await page.WaitForFunctionAsync("() => document.querySelector('#map').naturalWidth > 0", null, Patience);
        Assert.Equal(5, await page.Locator("#verdicts li").CountAsync());
        Complaint.None(await AccessTests.Broken(page));
    }

    [Fact]
    public async Task A_book_is_written_by_keyboard_alone()
    {
        await page.Locator("#files button").First.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForFunctionAsync("() => document.querySelector('#writing').textContent === 'book.yaml'", null, Patience);
        await page.Locator("#text").FocusAsync();
        await page.Keyboard.PressAsync("Control+End");
        await page.Keyboard.TypeAsync("# a remark\n");

        await page.WaitForFunctionAsync("() => document.querySelector('#saved').textContent === 'Saved.'", null, Patience);
        Assert.EndsWith("# a remark\n", await File.ReadAllTextAsync(Path.Combine(Book, "book.yaml")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task No_view_breaks_a_rule_of_accessibility()
    {
        var broken = new List<string>();
        broken.AddRange(await AccessTests.Broken(page));
        await Open("book.yaml");
        await Type("title:", "titel:");
        await page.Locator("#here li").First.WaitForAsync();
        await page.Locator("#count").ClickAsync();
        broken.AddRange(await AccessTests.Broken(page));

        Complaint.None(broken);
    }

    private async Task Open(string file)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = file }).First.ClickAsync();
        await page.WaitForFunctionAsync("file => document.querySelector('#writing').textContent === file", file, Patience);
        await page.WaitForFunctionAsync(Shown, null, Patience);
    }

    private async Task Type(string from, string to) => await page.EvaluateAsync(
        """
        ([from, to]) => {
          const text = document.querySelector('#text');
          text.value = text.value.replace(from, to);
          text.dispatchEvent(new Event('input'));
        }
        """,
        new[] { from, to });

    private async Task Seen(string words) => await page.WaitForFunctionAsync(
        "words => document.querySelector('#phone-view').contentDocument?.body?.textContent.includes(words)", words, Patience);

    private void Elsewhere(string file, Func<string, string> change) => Disk.Save(Path.Combine(Book, file), change(File.ReadAllText(Path.Combine(Book, file))));

    // The frame's own background in the light and in the dark: one is brighter than the other.
    private async Task Background(string theme, bool dark) => await page.WaitForFunctionAsync(
        """
        ([theme, dark]) => {
          const view = document.querySelector('#phone-view');
          const shown = view.contentDocument;
          const place = `/${theme}/${dark ? 'dark' : 'light'}/`;
          if (!shown?.body || shown.readyState !== 'complete' || !view.contentWindow.location.pathname.includes(place)) return false;
          const [red, green, blue] = getComputedStyle(shown.body).color.match(/\d+/g).map(Number);
          return dark === red + green + blue > 384;
        }
        """,
        new object[] { theme, dark },
        Patience);
}
