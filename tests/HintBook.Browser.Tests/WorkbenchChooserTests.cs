using HintBook.Browser.Tests.Reading;
using HintBook.Starting;
using HintBook.Workbench;
using HintBook.Workbench.Choosing;

namespace HintBook.Browser.Tests;

/// <summary>The page that a double click on the program opens.</summary>
public sealed class WorkbenchChooserTests(ReadingRoom room) : IAsyncLifetime
{
    private readonly string documents = Directory.CreateTempSubdirectory("hintbook-chooser-").FullName;
    private readonly List<Uri> shown = [];
    private readonly Guests guests = new(TimeSpan.FromSeconds(1));
    private ChooserServer chooser = null!;
    private IPage page = null!;

    public async ValueTask InitializeAsync()
    {
        NewBook.In(Path.Combine(documents, "tea caddy"));
        chooser = await ChooserServer.Open(documents, Show, guests);
        page = await room.Page(new() { Width = 1000, Height = 800 });
        await page.GotoAsync(chooser.Address.ToString());
    }

    public async ValueTask DisposeAsync()
    {
        await page.Context.DisposeAsync();
        await chooser.DisposeAsync();
        guests.Dispose();
        Directory.Delete(documents, recursive: true);
    }

    [Fact]
    public async Task A_book_in_the_list_opens_in_the_workbench()
    {
        await page.GetByRole(AriaRole.Button, new() { Name = "My First Box" }).ClickAsync();
        await Assertions.Expect(page.Locator("#said")).ToContainTextAsync("is open in another tab");

        await page.GotoAsync(Assert.Single(shown).ToString());

        await Assertions.Expect(page.Locator("#title")).ToHaveTextAsync("My First Box");
    }

    [Fact]
    public async Task A_book_is_begun_by_the_name_of_its_folder()
    {
        await page.GetByLabel("Name of its folder").FillAsync("new box");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator("#said")).ToContainTextAsync("is open in another tab");
        await page.GotoAsync(Assert.Single(shown).ToString());

        await page.FillAsync("#begin-title", "The Tin");
        await page.FillAsync("#begin-maker", "Oak");
        await page.ClickAsync("#begin button");

        await Assertions.Expect(page.Locator("#begun")).ToHaveTextAsync("The book is begun.");
        Assert.True(File.Exists(Path.Combine(documents, "new box", "book.yaml")));
    }

    [Fact]
    public async Task A_path_without_a_book_is_answered_on_the_page()
    {
        await page.GetByLabel("A book somewhere else").FillAsync(Path.Combine(documents, "nowhere", "at", "all"));
        await page.GetByRole(AriaRole.Button, new() { Name = "Open", Exact = true }).ClickAsync();

        await Assertions.Expect(page.Locator("#said")).ToContainTextAsync("There is no folder");
        Assert.Empty(shown);
    }

    [Fact]
    public async Task The_button_closes_it()
    {
        await page.GetByRole(AriaRole.Button, new() { Name = "Close HintBook" }).ClickAsync();

        await chooser.Closed;
        await Assertions.Expect(page.Locator("#said")).ToContainTextAsync("HintBook is closed");
    }

    [Fact]
    public async Task It_is_left_when_its_page_is_closed()
    {
        await Assertions.Expect(page.Locator("#books li")).ToHaveCountAsync(1);
        Assert.False(guests.Left.IsCompleted);

        await page.CloseAsync();

        await guests.Left.WaitAsync(TimeSpan.FromMinutes(1), TestContext.Current.CancellationToken);
    }

    private bool Show(Uri address)
    {
        shown.Add(address);
        return true;
    }
}
