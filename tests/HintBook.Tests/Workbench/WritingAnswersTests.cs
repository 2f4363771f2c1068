using System.Net;
using System.Text;
using HintBook.Tests.Reading;
using HintBook.Workbench;

namespace HintBook.Tests.Workbench;

/// <summary>Forms, steps and new books over the wire: what can't be meant is refused, and nothing outside the book is touched.</summary>
public sealed class WritingAnswersTests : IDisposable
{
    private const string Lid = "stages/01-the-lid.md";

    // “1”, “00:00:01,000 --> 00:00:04,000” and “Open the lid”, each on a line.
    private const string Said = """{ "name": "said.srt", "captions": "MQowMDowMDowMSwwMDAgLS0+IDAwOjAwOjA0LDAwMApPcGVuIHRoZSBsaWQK" """;

    private readonly BookOnDisk book = new();
    private readonly HttpClient client = new();

    public void Dispose()
    {
        client.Dispose();
        book.Dispose();
    }

    [Theory]
    [InlineData("entry?name=book.yaml", "")]
    [InlineData("entry?name=book.yaml", "[]")]
    [InlineData("entry?name=book.yaml", "{}")]
    [InlineData("entry?name=book.yaml", """{ "path": [] }""")]
    [InlineData("entry?name=book.yaml", """{ "path": [null], "value": "x" }""")]
    [InlineData("entry?name=book.yaml", """{ "path": "title", "value": "x" }""")]
    [InlineData("entry?name=..%2Foutside.yaml", """{ "path": ["title"], "value": "x" }""")]
    [InlineData("entry?name=%2Fetc%2Fhostname", """{ "path": ["title"], "value": "x" }""")]
    [InlineData("compare", """{ "mine": 1 }""")]
    [InlineData("stages/ask", "null")]
    [InlineData("stages/do", """{ "do": null }""")]
    [InlineData("stages/do", """{ "do": "rename", "stage": null }""")]
    [InlineData("draft/ask", "null")]
    [InlineData("draft/do", """{ "name": "said.srt" }""")]
    [InlineData("begin", "not json")]
    public async Task What_cannot_be_read_is_refused(string path, string body)
    {
        await using var bench = await WorkbenchServer.Open(book.Path);
        var before = File.ReadAllText(Path.Combine(book.Path, "book.yaml"));

        Assert.Equal(HttpStatusCode.BadRequest, await Post(bench, path, body));

        Assert.Equal(before, File.ReadAllText(Path.Combine(book.Path, "book.yaml")));
    }

    [Theory]
    [InlineData("entry?name=book.yaml", """{ "path": ["things", "../x"], "fresh": true }""")]
    [InlineData("entry?name=book.yaml", """{ "path": ["things", "honey"], "fresh": true }""")]
    [InlineData("stages/do", """{ "do": "rename", "stage": "the-lid", "to": "../../x" }""")]
    [InlineData("stages/do", """{ "do": "rename", "stage": "nobody", "to": "x" }""")]
    [InlineData("stages/do", """{ "do": "explode", "stage": "the-lid" }""")]
    [InlineData("stages/do", """{ "do": "new", "title": "…" }""")]
    [InlineData("draft/do", """{ "name": "said.srt", "captions": "###" }""")]
    [InlineData("draft/do", """{ "name": "said.srt", "captions": "V2hhdCBpcyBzYWlk" }""")]
    [InlineData("draft/do", Said + """, "chapters": "no time" }""")]
    [InlineData("draft/do", Said + """, "film": "gone.mp4" }""")]
    [InlineData("draft/do", Said + """, "film": "../book.yaml" }""")]
    [InlineData("stages/back", "{}")]
    [InlineData("begin", """{ "title": "x", "maker": "y", "language": "en" }""")]
    public async Task What_cannot_be_done_is_answered_with_a_sentence(string path, string body)
    {
        await using var bench = await WorkbenchServer.Open(book.Path);

        Assert.Equal(HttpStatusCode.Conflict, await Post(bench, path, body));

        Assert.Equal(["book.yaml", Lid], Files());
    }

    [Theory]
    [InlineData("entry?name=book.yaml")]
    [InlineData("stages/do")]
    [InlineData("draft/do")]
    [InlineData("stages/back")]
    [InlineData("begin")]
    public async Task A_change_must_say_that_it_comes_from_here(string path)
    {
        await using var bench = await WorkbenchServer.Open(book.Path);
        using var answer = await client.PostAsync(bench.Address + path, new StringContent("{}"));

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Fact]
    public async Task Stages_behind_a_link_are_not_written()
    {
        using var elsewhere = new BookOnDisk();
        Directory.Delete(Path.Combine(book.Path, "stages"), recursive: true);
        book.WithLink("stages", Path.Combine(elsewhere.Path, "stages"));
        await using var bench = await WorkbenchServer.Open(book.Path);

        Assert.Equal(HttpStatusCode.Conflict, await Post(bench, "stages/do", """{ "do": "new", "title": "Another" }"""));

        Assert.Equal(HttpStatusCode.Conflict, await Post(bench, "draft/do", Said + "}"));

        Assert.Single(Directory.GetFiles(Path.Combine(elsewhere.Path, "stages")));
    }

    [Fact]
    public async Task A_second_draft_stands_behind_the_first_and_each_is_taken_back_by_itself()
    {
        await using var bench = await WorkbenchServer.Open(book.Path);
        Assert.Equal(HttpStatusCode.OK, await Post(bench, "draft/ask", Said + "}"));
        Assert.Equal(["book.yaml", Lid], Files());

        Assert.Equal(HttpStatusCode.OK, await Post(bench, "draft/do", Said + "}"));
        var first = File.ReadAllText(Path.Combine(book.Path, "stages", "02-film-0-01.md"));
        Assert.Equal(HttpStatusCode.OK, await Post(bench, "draft/do", Said + "}"));
        Assert.Equal(["book.yaml", Lid, "stages/02-film-0-01.md", "stages/03-film-0-01-2.md"], Files());
        Assert.Equal(first, File.ReadAllText(Path.Combine(book.Path, "stages", "02-film-0-01.md")));

        Assert.Equal(HttpStatusCode.OK, await Post(bench, "stages/back", "{}"));
        Assert.Equal(["book.yaml", Lid, "stages/02-film-0-01.md"], Files());
        Assert.Equal(HttpStatusCode.OK, await Post(bench, "stages/back", "{}"));
        Assert.Equal(["book.yaml", Lid], Files());
    }

    [Fact]
    public async Task Nothing_is_drafted_for_a_book_that_can_not_be_read()
    {
        File.WriteAllText(Path.Combine(book.Path, "book.yaml"), "- a list, and no keys\n");
        await using var bench = await WorkbenchServer.Open(book.Path);

        Assert.Equal(HttpStatusCode.Conflict, await Post(bench, "draft/do", Said + "}"));

        Assert.Equal(["book.yaml", Lid], Files());
    }

    [Theory]
    [InlineData("en", true, 0)]
    [InlineData("de", false, 2)]
    public async Task A_book_is_begun_in_a_folder_that_is_not_there(string language, bool sample, int mostErrors)
    {
        var folder = Path.Combine(book.Path, "new");
        await using var bench = await WorkbenchServer.Open(folder);

        var wish = $$"""{ "title": "The box: \"a\" # first", "maker": "Oak", "language": "{{language}}", "sample": {{(sample ? "true" : "false")}} }""";
        Assert.Equal(HttpStatusCode.OK, await Post(bench, "begin", wish));

        var read = HintBook.Reading.Reader.Read(folder);
        Assert.Equal(("The box: \"a\" # first", "Oak", language), (read.Book?.Title.Value, read.Book?.Maker?.Name.Value, read.Book?.Language.Value));
        // What nobody can guess is missing: a goal and a step.
        Assert.Equal(mostErrors, read.Findings.All.Count(finding => finding.IsError));
    }

    private IEnumerable<string> Files() => Directory.EnumerateFiles(book.Path, "*", SearchOption.AllDirectories)
        .Select(path => Path.GetRelativePath(book.Path, path).Replace('\\', '/')).Order(StringComparer.Ordinal);

    private async Task<HttpStatusCode> Post(WorkbenchServer bench, string path, string body)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, bench.Address + path) { Content = new StringContent(body, Encoding.UTF8) };
        request.Headers.Add("Origin", bench.Address.GetLeftPart(UriPartial.Authority));
        using var answer = await client.SendAsync(request);
        return answer.StatusCode;
    }
}
