using HintBook.Browser.Tests.Reading;
using HintBook.Workbench;

namespace HintBook.Browser.Tests.Sites;

/// <summary>A workbench that is open in the browser, on a folder of its own that is gone afterwards.</summary>
internal sealed class OpenBench : IAsyncDisposable
{
    public static readonly PageWaitForFunctionOptions Patience = new() { Timeout = 60_000 };

    private readonly string root;
    private readonly WorkbenchServer server;

    private OpenBench(string root, WorkbenchServer server, IPage page)
    {
        this.root = root;
        this.server = server;
        Page = page;
    }

    public IPage Page { get; }

    public string Book => Path.Combine(root, "book");

    /// <summary>Opens one.</summary>
    /// <param name="room">The browser.</param>
    /// <param name="make">Makes the book in a folder that isn't there yet.</param>
    public static async Task<OpenBench> On(ReadingRoom room, Action<string> make)
    {
        var folder = Directory.CreateTempSubdirectory("hintbook-bench-").FullName;
        make(Path.Combine(folder, "book"));
        var bench = await WorkbenchServer.Open(Path.Combine(folder, "book"));
        var page = await room.Page(new() { Width = 1280, Height = 900 });
        await page.GotoAsync(bench.Address.ToString());
        await page.WaitForFunctionAsync("() => document.documentElement.dataset.look > 0", null, Patience);
        return new(folder, bench, page);
    }

    public async ValueTask DisposeAsync()
    {
        await Page.Context.DisposeAsync();
        await server.DisposeAsync();
        Directory.Delete(root, recursive: true);
    }

    /// <summary>Opens a file, and waits for its form.</summary>
    public async Task Open(string file)
    {
        await Page.GetByRole(AriaRole.Button, new() { Name = file }).First.ClickAsync();
        await Opened(file);
    }

    /// <summary>Waits until a file is open, and its form with it.</summary>
    public async Task Opened(string file)
    {
        await Page.WaitForFunctionAsync("file => document.querySelector('#writing').textContent === file", file, Patience);
        await Page.WaitForFunctionAsync(
            "file => document.querySelector('#form').dataset.of === file && document.querySelector('#form-fold:not([hidden]) fieldset')", file, Patience);
    }

    public string Text(string file) => File.ReadAllText(Path.Combine(Book, file));

    /// <summary>What another program does to a file.</summary>
    public void Elsewhere(string file, Func<string, string> change) => Disk.Save(Path.Combine(Book, file), change(Text(file)));

    /// <summary>Waits until a file says something on the disk.</summary>
    public Task OnDisk(string file, string words) => Disk.Until(
        Book, () => File.Exists(Path.Combine(Book, file)) && Text(file).Contains(words, StringComparison.Ordinal));

    public Task Wait(string script, object? argument = null) => Page.WaitForFunctionAsync(script, argument, Patience);

    /// <summary>Fills a field of the form, and leaves it.</summary>
    public async Task Fill(string field, string text)
    {
        await Page.Locator($"[id='field-{field}']").FillAsync(text);
        await Page.Locator($"[id='field-{field}']").PressAsync("Enter");
    }

    /// <summary>Adds a row to a list of the form.</summary>
    public async Task Add(string field, params string[] texts)
    {
        var rows = Page.Locator($"[id='field-{field}-rows'] li");
        var index = await rows.CountAsync();
        await Page.Locator($"[id='field-{field}-add']").ClickAsync();
        foreach (var (place, text) in texts.Index().Reverse())
            await Page.Locator($"[id='field-{field}-{index}-{place}']").FillAsync(text);
        await Page.Locator($"[id='field-{field}-{index}-0']").PressAsync("Enter");
    }
}
