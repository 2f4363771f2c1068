using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;
using HintBook.Starting;

namespace HintBook.Browser.Tests;

/// <summary>The workbench drafts steps from what is said in a film: told first, written all at once, and taken back.</summary>
public sealed class WorkbenchDraftTests(ReadingRoom room)
{
    private const string Captions = """
        1
        00:00:01,000 --> 00:00:04,000
        This is the sewing box. The lid is shut. Look at the brass thimble.

        2
        00:00:12,500 --> 00:00:16,000
        Turn the brass thimble to the left, and the lid comes up.

        3
        00:00:40,000 --> 00:00:46,000
        Lift the lid and turn the brass thimble once more.
        """;

    private const string Second = "stages/05-film-0-12.md";

    [Fact]
    public async Task Captions_become_steps_that_are_told_before_they_are_written_and_can_be_taken_back()
    {
        await using var bench = await OpenBench.On(room, WithFilm);
        var before = Stages(bench);
        await Choose(bench, "said.srt", Captions);

        await Says(bench, "0:12: a step without a title. Perhaps needs: lid, brass-thimble.");
        await Says(bench, "Often named, and not in book.yaml: brass-thimble.");
        await Says(bench, $"{Second} is made");
        Assert.Equal(before, Stages(bench));

        await bench.Page.Locator("#draft-do:enabled").ClickAsync();
        await bench.Opened("stages/04-film-0-01.md");
        Assert.Equal(3, Stages(bench).Length - before.Length);
        Assert.Contains("clip: { file: \"solution.mp4\", from: 0:12, to: 0:40 }", bench.Text(Second), StringComparison.Ordinal);
        Assert.Contains("0:12  Turn the brass thimble to the left", bench.Text(Second), StringComparison.Ordinal);
        Assert.All(before, file => Assert.Contains(file, Stages(bench)));

        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Take back: Draft 3 steps from “said.srt”" }).ClickAsync();
        await bench.Opened("book.yaml");
        Assert.Equal(before, Stages(bench));
    }

    [Fact]
    public async Task A_list_of_chapters_cuts_the_film_and_names_the_steps()
    {
        await using var bench = await OpenBench.On(room, WithFilm);
        await Choose(bench, "said.srt", Captions);
        await Says(bench, "a step without a title");

        await bench.Page.Locator("#draft-chapters").FillAsync("0:00 The closed box\n0:30 - Once more\nno time here");
        await Says(bench, "0:30: “Once more”.");
        await Says(bench, "lines 3 have no time");
        await bench.Page.Locator("#draft-film").SelectOptionAsync("");
        await Says(bench, "stages/05-once-more.md is made");
        await bench.Page.Locator("#draft-do:enabled").ClickAsync();

        await bench.Opened("stages/04-the-closed-box.md");
        Assert.Contains("title: \"Once more\"", bench.Text("stages/05-once-more.md"), StringComparison.Ordinal);
        Assert.Contains("# clip: { file: film.mp4, from: 0:30 }", bench.Text("stages/05-once-more.md"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Captions_without_times_are_told_in_a_sentence_and_nothing_can_be_written()
    {
        await using var bench = await OpenBench.On(room, WithFilm);
        var before = Stages(bench);
        await Choose(bench, "notes.vtt", "What is said, but never when.");

        await Says(bench, "“notes.vtt” has no captions with times.");
        Assert.True(await bench.Page.Locator("#draft-do").IsDisabledAsync());
        await bench.Page.Locator("#draft-leave").ClickAsync();
        Assert.Equal(before, Stages(bench));
    }

    // Its name is all that is asked of a film here; what is in it the check says.
    private static void WithFilm(string book)
    {
        NewBook.In(book);
        Directory.CreateDirectory(Path.Combine(book, "clips"));
        File.WriteAllBytes(Path.Combine(book, "clips", "solution.mp4"), new byte[64]);
    }

    private static async Task Choose(OpenBench bench, string name, string captions)
    {
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Draft steps from a film" }).ClickAsync();
        // What stood in its fields is taken out before the dialog shows.
        await bench.Page.Locator("#draft[open]").WaitForAsync();
        await bench.Page.Locator("#draft-captions").SetInputFilesAsync(
            new FilePayload { Name = name, MimeType = "text/plain", Buffer = System.Text.Encoding.UTF8.GetBytes(captions) });
    }

    private static Task Says(OpenBench bench, string words) => Assertions.Expect(bench.Page.Locator("#draft-says")).ToContainTextAsync(words);

    private static string[] Stages(OpenBench bench) =>
        [.. Directory.EnumerateFiles(Path.Combine(bench.Book, "stages")).Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal)];
}
