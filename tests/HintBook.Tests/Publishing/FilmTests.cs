using System.Text;
using AngleSharp.Html.Parser;
using HintBook.Publishing;
using HintBook.Tests.Photos.Films;

namespace HintBook.Tests.Publishing;

public class FilmTests
{
    [Fact]
    public void A_film_is_copied_whole_under_a_name_that_says_nothing_and_its_page_plays_the_part()
    {
        using var desk = WithFilm();

        desk.Published();

        var copied = Assert.Single(Directory.GetFiles(Path.Combine(desk.Site, "films"), "*.mp4"));
        // The box for what a maker adds (udta, ISO/IEC 14496-12, 8.10.1) is an empty one now (free, 8.1.2).
        Assert.Equal(
            Encoding.Latin1.GetString(Mp4.Of(TimeSpan.FromMinutes(2))).Replace("udta", "free", StringComparison.Ordinal),
            Encoding.Latin1.GetString(File.ReadAllBytes(copied)));
        Assert.Matches("^[0-9a-f]{16}\\.mp4$", Path.GetFileName(copied));
        var parser = new HtmlParser();
        var name = $"films/{Path.GetFileName(copied)}";
        var videos = Directory.GetFiles(desk.Site, "*.html").SelectMany(page => parser.ParseDocument(File.ReadAllText(page)).QuerySelectorAll("video"));
        Assert.Equal([name, $"{name}#t=5,62", $"{name}#t=5,62"], videos.Select(video => video.GetAttribute("src")!).Order(StringComparer.Ordinal));
        var solution = parser.ParseDocument(File.ReadAllText(Path.Combine(desk.Site, "solution.html")));
        Assert.Equal(["0:05 The picture on the lid"], solution.QuerySelectorAll(".chapters li").Select(chapter => chapter.TextContent));
        var track = solution.QuerySelector("track")!.GetAttribute("src")!;
        Assert.StartsWith("WEBVTT\n", File.ReadAllText(Path.Combine(desk.Site, track)), StringComparison.Ordinal);
        Assert.Equal("0:05 The picture on the lid\n", File.ReadAllText(Path.Combine(desk.Output, "print", "chapters-wooden-heart.mp4.txt")));
    }

    // W3C WebVTT: captions are text tracks of a film; a player shows the one that is marked as default.
    [Fact]
    public void Captions_beside_a_film_go_along_and_those_in_the_books_language_are_shown()
    {
        using var desk = WithFilm();
        Write(desk, "wooden-heart.en.vtt", "WEBVTT\n\n00:05.000 --> 00:09.000\nTurn it over.\n");
        Write(desk, "wooden-heart.de.vtt", "WEBVTT\n\n00:05.000 --> 00:09.000\nDrehen Sie es um.\n");
        Write(desk, "another.en.vtt", "WEBVTT\n");

        desk.Published();

        var tracks = Directory.GetFiles(desk.Site, "*.html")
            .SelectMany(page => new HtmlParser().ParseDocument(File.ReadAllText(page)).QuerySelectorAll("figure.film track[kind=captions]"))
            .ToArray();
        // On the page of the stage, and on the solution page in the whole film and in its part. The part has captions of its own.
        Assert.Equal(6, tracks.Length);
        Assert.Equal(
            [("de", "Deutsch", false), ("en", "English", true)],
            tracks.Select(track => (track.GetAttribute("srclang")!, track.GetAttribute("label")!, track.HasAttribute("default"))).Distinct().Order());
        Assert.Equal(4, tracks.Select(track => track.GetAttribute("src")).Distinct().Count());
        Assert.All(tracks, track =>
            Assert.StartsWith("WEBVTT", File.ReadAllText(Path.Combine(desk.Site, track.GetAttribute("src")!)), StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_said_stands_below_a_film_and_in_a_script_for_a_memory_stick_and_a_part_has_only_its_own()
    {
        using var desk = WithFilm();
        Write(desk, "wooden-heart.en.vtt", "WEBVTT\n\n00:05.000 --> 00:09.000\nTurn it <b>over</b>.\n\n01:10.000 --> 01:12.000\n“Well done.”\n");

        desk.Published();

        string[][] said =
        [
            .. Directory.GetFiles(desk.Site, "*.html").Order(StringComparer.Ordinal)
                .SelectMany(page => new HtmlParser().ParseDocument(File.ReadAllText(page)).QuerySelectorAll("details .transcript [lang=en]"))
                .Select(transcript => transcript.QuerySelectorAll("p").Select(line => line.TextContent).ToArray())
                .OrderBy(lines => lines.Length),
        ];
        Assert.Equal([["Turn it over."], ["Turn it over."], ["Turn it over.", "“Well done.”"]], said);
        var scripts = Directory.GetFiles(Path.Combine(desk.Site, "films"), "*.vtt.js").Select(File.ReadAllText).ToArray();
        Assert.Equal(2, scripts.Length);
        Assert.All(scripts, script => Assert.Matches("^hintbookCaptions\\(\"[0-9a-f]{16}\\.en\\.vtt\", \"WEBVTT[ -~]*\"\\);\n$", script));
    }

    [Theory]
    [InlineData("1\n00:00:05,000 --> 00:00:09,000\nTurn it over.\n")]
    [InlineData("WEBVTTX\n")]
    [InlineData("")]
    public void Captions_that_no_player_can_read_are_told_before_anything_is_published(string captions)
    {
        using var desk = WithFilm();
        Write(desk, "wooden-heart.en.vtt", captions);

        var rejected = Assert.IsType<Rejected>(desk.Publish());

        Assert.Equal("HB5205", Assert.Single(rejected.Findings.All, finding => finding.IsError).Code.Id);
    }

    private static BookAndOutput WithFilm()
    {
        var desk = new BookAndOutput();
        Directory.CreateDirectory(Path.Combine(desk.Book, "clips"));
        File.WriteAllBytes(Path.Combine(desk.Book, "clips", "wooden-heart.mp4"), Mp4.Of(TimeSpan.FromMinutes(2)));
        desk.Change("stages/02-the-number.md", "minutes: 10", "minutes: 10\nclip: { file: wooden-heart.mp4, from: 0:05, to: 1:02 }");
        return desk;
    }

    private static void Write(BookAndOutput desk, string name, string text) => File.WriteAllText(Path.Combine(desk.Book, "clips", name), text);
}
