using System.Net;
using System.Text;
using System.Text.Json;
using HintBook.Starting;
using HintBook.Tests.House;
using HintBook.Workbench;
using HintBook.Workbench.Choosing;

namespace HintBook.Tests.Workbench;

/// <summary>The page that asks which book to open.</summary>
public sealed class ChooserServerTests : IDisposable
{
    private readonly HttpClient client = new();
    private readonly string documents = Directory.CreateTempSubdirectory("hintbook-tests-").FullName;
    private readonly List<Uri> shown = [];
    private readonly Guests guests = Guests.Unwatched;

    public void Dispose()
    {
        client.Dispose();
        guests.Dispose();
        Directory.Delete(documents, recursive: true);
    }

    [Fact]
    public async Task Books_in_the_documents_are_listed_by_their_titles()
    {
        NewBook.In(Path.Combine(documents, "boxes", "first"));
        Book("second", "title: \"The Tin\"   # a remark");
        Book("third", "no title");
        Book(".hidden", "title: Hidden");
        Book(Path.Combine("one", "two", "three", "four"), "title: Too deep");
        await using var chooser = await Open();

        using var list = JsonDocument.Parse(await client.GetStringAsync(chooser.Address + "books"));

        Assert.Equal(
            ["My First Box", "The Tin", "third"],
            list.RootElement.GetProperty("books").EnumerateArray().Select(book => book.GetProperty("title").GetString()));
    }

    [Fact]
    public void A_folder_of_documents_that_is_not_there_has_no_books() => Assert.Empty(FoundBooks.In(Path.Combine(documents, "nowhere")));

    [Fact]
    public void A_pipe_in_a_books_place_is_listed_by_its_folder_and_not_waited_for()
    {
        Pipes.Make(Path.Combine(Directory.CreateDirectory(Path.Combine(documents, "odd")).FullName, "book.yaml"));

        Assert.Equal("odd", Assert.Single(FoundBooks.In(documents)).Title);
    }

    [Fact]
    public async Task A_book_that_is_chosen_is_opened_once_and_shown_each_time()
    {
        NewBook.In(Path.Combine(documents, "box"));
        await using var chooser = await Open();

        Assert.Equal(HttpStatusCode.OK, (await Choose(chooser, "box")).Status);
        Assert.Equal(HttpStatusCode.OK, (await Choose(chooser, Path.Combine(documents, "box", "book.yaml"))).Status);

        Assert.Equal(2, shown.Count);
        Assert.Single(shown.Distinct());
        Assert.Contains("\"begins\":false", await Seen(shown[0]), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_name_that_is_not_there_is_a_book_to_begin()
    {
        await using var chooser = await Open();

        Assert.Equal(HttpStatusCode.OK, (await Choose(chooser, "my-box")).Status);

        Assert.Contains("\"begins\":true", await Seen(Assert.Single(shown)), StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(documents));
    }

    [Theory]
    [InlineData("", "Which folder?")]
    [InlineData("full", "has no book in it")]
    [InlineData("nowhere/at/all", "There is no folder")]
    [InlineData("full/notes.txt", "has no book in it")]
    public async Task What_cannot_be_opened_is_answered_with_a_sentence(string path, string sentence)
    {
        Directory.CreateDirectory(Path.Combine(documents, "full"));
        File.WriteAllText(Path.Combine(documents, "full", "notes.txt"), "mine");
        await using var chooser = await Open();

        var (status, said) = await Choose(chooser, path);

        Assert.Equal(HttpStatusCode.Conflict, status);
        Assert.Contains(sentence, said, StringComparison.Ordinal);
        Assert.Empty(shown);
    }

    [Fact]
    public async Task Its_button_closes_everything()
    {
        await using var chooser = await Open();
        Assert.False(chooser.Closed.IsCompleted);

        Assert.Equal(HttpStatusCode.OK, (await Post(chooser, "close", "{}")).Status);

        await chooser.Closed;
    }

    [Theory]
    [InlineData("open")]
    [InlineData("close")]
    public async Task A_change_must_say_that_it_comes_from_here(string path)
    {
        await using var chooser = await Open();
        using var answer = await client.PostAsync(chooser.Address + path, new StringContent("{}"));

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.False(chooser.Closed.IsCompleted);
    }

    [Fact]
    public async Task Its_page_and_script_are_there_and_nothing_else_of_the_workbench()
    {
        await using var chooser = await Open();

        Assert.Contains("Begin a book", await client.GetStringAsync(chooser.Address), StringComparison.Ordinal);
        Assert.Contains("EventSource", await client.GetStringAsync(chooser.Address + "choose.js"), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await client.GetAsync(chooser.Address + "bench.html")).StatusCode);
    }

    [Fact]
    public async Task It_is_told_when_the_last_page_is_closed()
    {
        using var soon = new Guests(TimeSpan.FromMilliseconds(1));
        var (first, second) = (soon.Enter(), soon.Enter());
        first.Dispose();
        Assert.False(soon.Left.IsCompleted);

        second.Dispose();

        await soon.Left;
    }

    private void Book(string folder, string text)
    {
        var path = Directory.CreateDirectory(Path.Combine(documents, folder)).FullName;
        File.WriteAllText(Path.Combine(path, "book.yaml"), text);
    }

    private Task<ChooserServer> Open() => ChooserServer.Open(
        documents,
        address =>
        {
            shown.Add(address);
            return true;
        },
        guests);

    private Task<string> Seen(Uri bench) => client.GetStringAsync(bench + "look");

    private Task<(HttpStatusCode Status, string Said)> Choose(ChooserServer chooser, string path) =>
        Post(chooser, "open", JsonSerializer.Serialize(new { path }));

    private async Task<(HttpStatusCode Status, string Said)> Post(ChooserServer chooser, string path, string body)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, chooser.Address + path) { Content = new StringContent(body, Encoding.UTF8) };
        request.Headers.Add("Origin", chooser.Address.GetLeftPart(UriPartial.Authority));
        using var answer = await client.SendAsync(request);
        return (answer.StatusCode, await answer.Content.ReadAsStringAsync());
    }
}
