using System.Diagnostics;
using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using HintBook.Tests.Photos;
using HintBook.Tests.Reading;
using HintBook.Workbench;
using HintBook.Workbench.Guarding;
using HintBook.Workbench.Showing;

namespace HintBook.Tests.Workbench;

/// <summary>Photos, clips, publishing and the rest over the wire: what is taken, and what is refused with a sentence.</summary>
public sealed class ShowAnswersTests : IAsyncLifetime
{
    private const string Lid = "stages/01-the-lid.md";

    private readonly BookOnDisk book = new();
    private readonly HttpClient client = new();
    private WorkbenchServer bench = null!;

    private string Text => File.ReadAllText(Path.Combine(book.Path, Lid));

    public async ValueTask InitializeAsync()
    {
        bench = await WorkbenchServer.Open(book.Path);
        client.DefaultRequestHeaders.Add("Origin", bench.Address.GetLeftPart(UriPartial.Authority));
    }

    public async ValueTask DisposeAsync()
    {
        await bench.DisposeAsync();
        client.Dispose();
        book.Dispose();
    }

    [Fact]
    public async Task A_photo_comes_with_its_entry()
    {
        using var answer = await Add(Lid, "clue", "DSC_0042.jpg", Shots.Jpeg(60, 40, orientation: 6));

        Assert.Equal(HttpStatusCode.NoContent, answer.StatusCode);
        Assert.Contains("photos: { clue: the-lid-clue.jpg }\n", Text, StringComparison.Ordinal);
        using var image = SixLabors.ImageSharp.Image.Load(File.ReadAllBytes(Path.Combine(book.Path, "photos", "the-lid-clue.jpg")));
        Assert.Equal((40, 60), (image.Width, image.Height));
        Assert.Single(Directory.GetFiles(Path.Combine(book.Path, "photos")));
    }

    [Theory]
    [InlineData("../../evil", "clue", HttpStatusCode.NotFound)]
    [InlineData("book.yaml", "clue", HttpStatusCode.NotFound)]
    [InlineData("stages/99-none.md", "clue", HttpStatusCode.Conflict)]
    [InlineData("stages/../book.yaml", "clue", HttpStatusCode.Conflict)]
    [InlineData(Lid, "front", HttpStatusCode.NotFound)]
    public async Task A_photo_for_no_step_is_refused_and_nothing_is_kept(string name, string place, HttpStatusCode expected)
    {
        using var answer = await Add(name, place, "lid.jpg", Shots.Jpeg(60, 40));

        Assert.Equal(expected, answer.StatusCode);
        Assert.False(Directory.Exists(Path.Combine(book.Path, "photos")));
    }

    [Theory]
    [InlineData("..%2F..%2Fetc%2Fhostname")]
    [InlineData("book.yaml")]
    [InlineData("photos%2F..%2Fbook.yaml")]
    [InlineData("photos%2Flink.jpg")]
    [InlineData("clips%2F.hidden.mp4")]
    public async Task No_other_file_is_shown_as_a_photo_or_film(string name)
    {
        book.With("photos/lid.jpg", Shots.Jpeg(6, 4)).With("clips/.hidden.mp4", "x").WithLink("photos/link.jpg", Path.Combine(book.Path, "book.yaml"));
        using var good = await client.GetAsync($"{bench.Address}media?name=photos%2Flid.jpg");

        using var answer = await client.GetAsync($"{bench.Address}media?name={name}");

        Assert.Equal((HttpStatusCode.OK, HttpStatusCode.NotFound), (good.StatusCode, answer.StatusCode));
    }

    [Fact]
    public async Task A_photo_of_any_size_is_read_no_further_than_a_photo_may_be()
    {
        using var body = new StreamContent(Stream.Null);
        body.Headers.ContentLength = 65L * 1024 * 1024;
        using var request = new HttpRequestMessage(HttpMethod.Post, $"{bench.Address}photo?name={Lid}&place=clue&as=big.jpg") { Content = body };
        request.Headers.ExpectContinue = true;

        using var answer = await client.SendAsync(request);

        Assert.Contains("64 MB at most", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-1, "here")]
    [InlineData(101, "here")]
    [InlineData(50, " ")]
    public async Task A_mark_beside_the_photo_or_without_words_is_refused(double x, string says)
    {
        using var added = await Add(Lid, "clue", "lid.jpg", Shots.Jpeg(60, 40));
        var was = new ShownPhoto("clue", 0, "lid.jpg", null, []);

        using var answer = await client.PutAsJsonAsync($"{bench.Address}photo", new { name = Lid, was, now = was with { Marks = [new(x, 50, says)] } });

        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.DoesNotContain("marks", Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_mark_is_written()
    {
        using var added = await Add(Lid, "clue", "lid.jpg", Shots.Jpeg(60, 40));
        var was = new ShownPhoto("clue", 0, "lid.jpg", null, []);

        using var answer = await client.PutAsJsonAsync($"{bench.Address}photo", new { name = Lid, was, now = was with { Marks = [new(41, 63, "the catch")] } });

        Assert.Equal(HttpStatusCode.NoContent, answer.StatusCode);
        Assert.Contains("clue: { file: lid.jpg, marks: [ { at: [ 41, 63 ], says: the catch } ] }", Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("soon", null)]
    [InlineData("0:01", "later")]
    [InlineData("1:2:3:4", null)]
    public async Task A_time_that_is_none_is_refused_with_what_to_write(string from, string? to)
    {
        using var answer = await client.PutAsJsonAsync($"{bench.Address}clip", new { name = Lid, now = new ShownClip("a.mp4", from, to) });

        Assert.Contains("such as 2:16", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.DoesNotContain("clip", Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("photo")]
    [InlineData("clip")]
    public async Task What_is_no_json_is_refused(string path)
    {
        using var answer = await client.PutAsync($"{bench.Address}{path}", new StringContent("[1,"));

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Theory]
    [InlineData("""{"sheets":"napkin"}""")]
    [InlineData("""{"papers":["poster"]}""")]
    [InlineData("""{"papers":[]}""")]
    [InlineData("null")]
    public async Task What_cannot_be_made_is_refused(string body)
    {
        using var answer = await client.PostAsync($"{bench.Address}make", new StringContent(body));

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.False(Directory.Exists(Path.Combine(book.Path, "published")));
    }

    [Fact]
    public async Task A_publish_is_the_one_of_the_verb_and_its_end_is_told()
    {
        using var begun = await client.PostAsync($"{bench.Address}make", new StringContent("{}"));
        Assert.Equal(HttpStatusCode.Accepted, begun.StatusCode);

        var end = await Ended();

        Assert.True(end.GetProperty("done").GetBoolean(), end.ToString());
        var elsewhere = Directory.CreateTempSubdirectory("hintbook-").FullName;
        var verb = HintBook.Publishing.Pipeline.Publish(book.Path, new() { Output = elsewhere });
        Assert.IsType<HintBook.Publishing.Published>(verb);
        Assert.Equal(FilesIn(Path.Combine(elsewhere, "site")), FilesIn(Path.Combine(book.Path, "published", "site")));
        Directory.Delete(elsewhere, recursive: true);
    }

    [Fact]
    public async Task What_a_reader_knows_is_told_for_a_step_of_the_book_alone()
    {
        await Looked();
        using var none = await client.GetAsync($"{bench.Address}known?name=book.yaml");
        using var known = JsonDocument.Parse(await client.GetStringAsync($"{bench.Address}known?name={Lid}"));

        Assert.Equal(HttpStatusCode.NotFound, none.StatusCode);
        Assert.Contains("honey", known.RootElement.GetProperty("spoilers").ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_second_workbench_knows_of_the_first_and_a_third_of_none()
    {
        await using (var second = await WorkbenchServer.Open(book.Path))
            Assert.True(second.HasAnother);
        await bench.DisposeAsync();

        bench = await WorkbenchServer.Open(book.Path);

        Assert.False(bench.HasAnother);
        Assert.Equal(["book.yaml", "stages"], Directory.EnumerateFileSystemEntries(book.Path).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    // What a program leaves behind that was killed is a file that nobody holds.
    [Fact]
    public void A_lock_that_was_left_behind_counts_for_nothing_and_none_is_left_behind()
    {
        var before = Locks();
        string left;
        using (var mine = BookLock.Take(book.Path + "-other"))
        {
            left = Assert.Single(Locks().Except(before));
            Assert.False(mine.IsTaken);
        }

        Assert.False(File.Exists(left));
        File.WriteAllText(left, "");
        using (var again = BookLock.Take(book.Path + "-other"))
            Assert.False(again.IsTaken);
        Assert.False(File.Exists(left));

        static string[] Locks() => Directory.GetFiles(Path.GetTempPath(), "hintbook-workbench-*.lock");
    }

    [Fact]
    public void A_book_of_ones_own_can_be_written_and_nothing_is_left_in_it()
    {
        Assert.True(BookAccess.CanWrite(book.Path));
        Assert.Equal(2, Directory.EnumerateFileSystemEntries(book.Path).Count());
    }

    private Task<HttpResponseMessage> Add(string name, string place, string file, byte[] photo) =>
        client.PostAsync($"{bench.Address}photo?name={Uri.EscapeDataString(name)}&place={place}&as={file}", new ByteArrayContent(photo));

    private static string[] FilesIn(string folder) =>
    [
        .. Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(folder, file))
            .Order(StringComparer.Ordinal),
    ];

    private async Task<JsonElement> Ended()
    {
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(60));
        await using var told = await client.GetStreamAsync($"{bench.Address}making", patience.Token);
        using var lines = new StreamReader(told);
        while (await lines.ReadLineAsync(patience.Token) is { } line)
        {
            if (!line.StartsWith("data: ", StringComparison.Ordinal))
                continue;
            var state = JsonDocument.Parse(line["data: ".Length..]).RootElement;
            if (state.GetProperty("done").ValueKind != JsonValueKind.Null)
                return state;
        }

        throw new UnreachableException("The workbench was closed.");
    }

    private async Task Looked()
    {
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(60));
        await using var told = await client.GetStreamAsync($"{bench.Address}looks", patience.Token);
        using var lines = new StreamReader(told);
        while (await lines.ReadLineAsync(patience.Token) is { } line && line != "data: 1")
        {
            // The first look comes when it comes.
        }
    }
}
