using HintBook.Browser.Tests.Reading;
using HintBook.Publishing;
using HintBook.Starting;

namespace HintBook.Browser.Tests;

/// <summary>An owner who doesn't know which edition their box is of finds it by its number, or by what they see. Read from a memory stick.</summary>
public sealed class EditionTests(ReadingRoom room) : IAsyncLifetime
{
    private readonly string folder = Directory.CreateTempSubdirectory("hintbook-editions-").FullName;
    private IPage page = null!;

    public async ValueTask InitializeAsync()
    {
        Edition("first", "Steel hinges.", "001", "002");
        Edition("second", "Brass hinges.", "A-101");
        Assert.IsType<Published>(Shelf.Publish(folder, new(), (_, _) => { }));
        page = await room.Page(new() { Width = 390, Height = 844 });
        await page.GotoAsync(new Uri(Path.Combine(folder, "published", "site", "index.html")).ToString());
        await page.Locator(".boxes a").ClickAsync();
        await page.GetByLabel("Or type the number of your box").WaitForAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await page.Context.DisposeAsync();
        Directory.Delete(folder, recursive: true);
    }

    [Theory]
    [InlineData("2", "first")]
    [InlineData("no 001", null)]
    [InlineData("a101", "second")]
    [InlineData("7", null)]
    public async Task A_number_leads_to_the_box_that_has_it(string typed, string? book)
    {
        await page.GetByLabel("Or type the number of your box").FillAsync(typed);
        await page.Keyboard.PressAsync("Enter");

        if (book is null)
            await page.GetByText("No box here has that number.").WaitForAsync();
        else
            await page.Arrive($"{book}/index.html");
        Complaint.None(await AccessTests.Broken(page));
    }

    [Fact]
    public async Task What_shows_leads_to_it_too()
    {
        await page.GetByText("Brass hinges.").ClickAsync();

        await page.Arrive("second/index.html");
    }

    private void Edition(string name, string line, params string[] serials)
    {
        var book = Path.Combine(folder, name);
        NewBook.In(book);
        var keys = Path.Combine(book, "book.yaml");
        File.AppendAllText(keys, $"\nshelf: {{ edition-of: panel-box, line: {line} }}\n");
        File.WriteAllText(Path.Combine(book, "copies.yaml"), $"copies: {{ {string.Join(", ", serials.Select(serial => $"\"{serial}\": {{}}"))} }}\n");
    }
}
