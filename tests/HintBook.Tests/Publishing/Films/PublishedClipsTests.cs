using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using HintBook.Publishing;
using HintBook.Publishing.Films;
using HintBook.Tests.House;
using HintBook.Tests.Photos.Films;
using HintBook.Text;

namespace HintBook.Tests.Publishing.Films;

/// <summary>What of a film goes out: its parts on the pages of their stages, the whole on the solution page, and of each what belongs to it.</summary>
public class PublishedClipsTests
{
    private const string Captions =
        """
        WEBVTT

        NOTE the heart lies under the lid

        00:00.500 --> 00:01.200
        Turn it over.

        00:02.500 --> 00:03.000 line:0
        Set the <b>wheels</b>.

        00:04.100 --> 00:05.000
        Here is the wooden heart.

        """;

    [Fact]
    public void A_clip_is_cut_out_of_its_film_and_only_the_solution_page_has_the_whole()
    {
        using var desk = Desk(out var tools);

        var report = desk.Published(desk.Options with { FilmTools = tools }).Report;

        Assert.Equal(new CutClips(2, 2), report.Clips);
        Assert.DoesNotContain(report.Findings.All, finding => finding.Code.Id == "HB5208");
        var films = Directory.GetFiles(Path.Combine(desk.Site, "films"), "*.mp4").Select(file => $"films/{Path.GetFileName(file)}").ToArray();
        Assert.Equal(3, films.Length);
        var solution = Page(desk, "solution.html");
        var whole = solution.QuerySelector("video")!.GetAttribute("src")!;
        var clips = solution.QuerySelectorAll("video").Skip(1).Select(video => video.GetAttribute("src")!).ToArray();
        Assert.Equal(films.Order(StringComparer.Ordinal), clips.Append(whole).Order(StringComparer.Ordinal));
        var elsewhere = Directory.GetFiles(desk.Site, "*.html").Where(file => Path.GetFileName(file) != "solution.html").ToArray();
        Assert.All(elsewhere, file => Assert.DoesNotContain(whole, File.ReadAllText(file), StringComparison.Ordinal));
        Assert.Equal(clips, elsewhere.SelectMany(file => Page(desk, file).QuerySelectorAll("video")).Select(video => video.GetAttribute("src")!).Order(
            Comparer<string>.Create((one, other) => Array.IndexOf(clips, one) - Array.IndexOf(clips, other))));
    }

    // The first clip begins at the key frame at 0:02: half a second of it is left out.
    [Fact]
    public void A_clip_has_the_captions_of_its_part_at_their_own_times_and_nobody_gets_the_notes()
    {
        using var desk = Desk(out var tools);

        desk.Published(desk.Options with { FilmTools = tools });

        var texts = Directory.GetFiles(Path.Combine(desk.Site, "films"), "*.en.vtt").Select(File.ReadAllText)
            .Where(text => !text.Contains("picture on the lid"));
        Assert.Contains("WEBVTT\n\n00:00:00.500 --> 00:00:01.000 line:0\nSet the <b>wheels</b>.\n", texts);
        Assert.Contains("WEBVTT\n\n00:00:00.100 --> 00:00:01.000\nHere is the wooden heart.\n", texts);
        Assert.All(texts, text => Assert.DoesNotContain("lies under", text, StringComparison.Ordinal));
    }

    [Fact]
    public void Where_nothing_cuts_the_captions_still_are_those_of_the_part_and_a_warning_says_that_the_film_is_whole()
    {
        using var desk = Desk(out _);

        var report = desk.Published().Report;

        Assert.Equal(default, report.Clips);
        Assert.Equal(Severity.Warning, Assert.Single(report.Findings.All, finding => finding.Code.Id == "HB5208").Code.Severity);
        var page = Directory.GetFiles(desk.Site, "*.html").Select(file => Page(desk, file))
            .Where(page => page.QuerySelector("html")!.HasAttribute("data-page"))
            .Single(page => page.QuerySelector("video")?.GetAttribute("src")!.EndsWith("#t=1.5,3.4") == true);
        var captions = page.QuerySelector("track")!.GetAttribute("src")!;
        Assert.Equal(
            "WEBVTT\n\n00:00:02.500 --> 00:00:03.000 line:0\nSet the <b>wheels</b>.\n", File.ReadAllText(Path.Combine(desk.Site, captions)));
    }

    [Fact]
    public void A_clip_is_cut_once_and_comes_from_the_cache_afterwards()
    {
        using var desk = Desk(out var tools);
        var options = desk.Options with { FilmTools = tools };
        desk.Published(options);
        var before = BookAndOutput.Tree(desk.Site);

        Assert.Equal(new CutClips(2, 0), desk.Published(options).Report.Clips);
        Assert.Equal(before, BookAndOutput.Tree(desk.Site));

        desk.Change("stages/02-the-number.md", "to: 3.4", "to: 3.2");
        Assert.Equal(new CutClips(2, 1), desk.Published(options).Report.Clips);
    }

    [Fact]
    public void A_cache_that_was_tampered_with_is_a_miss()
    {
        using var desk = Desk(out var tools);
        var options = desk.Options with { FilmTools = tools };
        desk.Published(options);
        var before = BookAndOutput.Tree(desk.Site);
        File.AppendAllText(Directory.GetFiles(Path.Combine(desk.Output, ".hintbook", "cache"), "*.mp4")[0], "more");
        desk.ForgetLastPublish();

        Assert.Equal(new CutClips(2, 1), desk.Published(options).Report.Clips);
        Assert.Equal(before, BookAndOutput.Tree(desk.Site));
    }

    [Fact]
    public void A_clip_that_cannot_be_cut_stops_the_publish_with_a_finding()
    {
        using var desk = Desk(out var tools);
        File.WriteAllBytes(Path.Combine(desk.Book, "clips", "film.mp4"), Mp4.Of(TimeSpan.FromSeconds(6)));

        var rejected = Assert.IsType<Rejected>(desk.Publish(desk.Options with { FilmTools = tools }));

        Assert.Equal(["HB5209", "HB5209"], rejected.Findings.All.Where(finding => finding.IsError).Select(finding => finding.Code.Id));
    }

    private static BookAndOutput Desk(out FilmTools tools)
    {
        using var film = ToldFilm.Of("film.mp4");
        DebianProgram.Have("ffprobe", "ffmpeg");
        tools = FilmTools.OnPath()!;
        var desk = new BookAndOutput();
        Directory.CreateDirectory(Path.Combine(desk.Book, "clips"));
        File.Copy(film.Path, Path.Combine(desk.Book, "clips", "film.mp4"));
        File.WriteAllText(Path.Combine(desk.Book, "clips", "film.en.vtt"), Captions.ReplaceLineEndings("\n"));
        desk.Change("stages/02-the-number.md", "minutes: 10", "minutes: 10\nclip: { file: film.mp4, from: 1.5, to: 3.4 }");
        desk.Change("stages/03-the-lid.md", "title:", "clip: { file: film.mp4, from: 4, to: 6 }\ntitle:");
        return desk;
    }

    private static IHtmlDocument Page(BookAndOutput desk, string file) => new HtmlParser().ParseDocument(File.ReadAllText(Path.Combine(desk.Site, file)));
}
