using System.Text.Json;
using HintBook.Books;
using HintBook.Photos.Films;
using HintBook.Tests.Books;
using HintBook.Tests.House;

namespace HintBook.Tests.Photos.Films;

// Chapters by somebody else's reading of W3C WebVTT: npm webvtt-parser 2.2.0, written by an editor of the specification.
public class ChaptersByAParserTests
{
    private const string Script =
        """
        const { WebVTTParser } = require(process.argv[1]);
        const read = new WebVTTParser().parse(require("fs").readFileSync(process.argv[2], "utf8"), "chapters");
        console.log(JSON.stringify({
          errors: read.errors.map(error => `${error.line}: ${error.message}`),
          cues: read.cues.map(cue => ({ id: cue.id, from: cue.startTime, to: cue.endTime, text: cue.tree.children.map(each => each.value).join("") })),
        }));
        """;

    public static TheoryData<string> Titles => ["The lid", "Salt & <pepper>", "a --> b", "🐝", "The\nlid", "&amp;", "العنوان", new string('x', 300), "-->"];

    [Theory]
    [MemberData(nameof(Titles))]
    public void A_chapter_is_read_with_its_times_and_its_title(string title)
    {
        var book = A.Book(
            A.Stage("lid") with { Title = A.Value(title), Clip = A.Clip("film.mp4", 136, 183) },
            A.Stage("jar") with { Clip = A.Clip("film.mp4", 3_725, null) });

        using var read = Read(Chapters.WebVtt(Chapters.List(book, "film.mp4", TimeSpan.FromSeconds(4_000.25))));

        Assert.Empty(read.RootElement.GetProperty("errors").EnumerateArray().Select(error => error.GetString()));
        Assert.Equal(
            [("1", 136, 183, title.ReplaceLineEndings(" ")), ("2", 3_725, 4_000.25, "jar-title")],
            read.RootElement.GetProperty("cues").EnumerateArray().Select(cue =>
                (cue.GetProperty("id").GetString(), cue.GetProperty("from").GetDouble(), cue.GetProperty("to").GetDouble(),
                    Unescaped(cue.GetProperty("text").GetString()!))));
    }

    // This parser takes "&amp" for the whole of "&amp;" and leaves the semicolon standing, which the specification (6.4, "consume an
    // HTML character reference") doesn't. No title here has a semicolon of its own behind such a letter.
    private static string Unescaped(string text) =>
        text.Replace("&;", "&", StringComparison.Ordinal).Replace("<;", "<", StringComparison.Ordinal).Replace(">;", ">", StringComparison.Ordinal);

    [Fact]
    public void A_mistake_would_be_noticed()
    {
        using var read = Read("WEBVTT\n\n1\n00:01.000 -> 00:02.000\nx\n");

        Assert.NotEmpty(read.RootElement.GetProperty("errors").EnumerateArray());
    }

    private static JsonDocument Read(string chapters)
    {
        var parser = Path.Combine(NpmPackage.Have("webvtt-parser", "2.2.0"), "parser.js");
        var file = Path.Combine(Directory.CreateTempSubdirectory("hintbook-vtt-").FullName, "chapters.vtt");
        File.WriteAllText(file, chapters);
        try
        {
            return JsonDocument.Parse(DebianProgram.Run(Path.GetDirectoryName(file)!, "node", "-e", Script, parser, file));
        }
        finally
        {
            Directory.Delete(Path.GetDirectoryName(file)!, recursive: true);
        }
    }
}
