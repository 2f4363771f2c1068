using AngleSharp.Html.Parser;
using HintBook.Tests.Photos.Films;

namespace HintBook.Tests.Publishing;

public class FilmTests
{
    [Fact]
    public void A_film_is_copied_whole_under_a_name_that_says_nothing_and_its_page_plays_the_part()
    {
        using var desk = new Desktop();
        var film = Mp4.Of(TimeSpan.FromMinutes(2));
        Directory.CreateDirectory(Path.Combine(desk.Book, "clips"));
        File.WriteAllBytes(Path.Combine(desk.Book, "clips", "wooden-heart.mp4"), film);
        desk.Change("stages/02-the-number.md", "minutes: 10", "minutes: 10\nclip: { file: wooden-heart.mp4, from: 0:05, to: 1:02 }");

        desk.Published();

        var copied = Assert.Single(Directory.GetFiles(Path.Combine(desk.Site, "films"), "*.mp4"));
        Assert.Equal(film, File.ReadAllBytes(copied));
        Assert.Matches("^[0-9a-f]{16}\\.mp4$", Path.GetFileName(copied));
        var parser = new HtmlParser();
        var name = $"films/{Path.GetFileName(copied)}";
        var videos = Directory.GetFiles(desk.Site, "*.html").SelectMany(page => parser.ParseDocument(File.ReadAllText(page)).QuerySelectorAll("video"));
        Assert.Equal([name, $"{name}#t=5,62", $"{name}#t=5,62"], videos.Select(video => video.GetAttribute("src")!).Order(StringComparer.Ordinal));
        var solution = parser.ParseDocument(File.ReadAllText(Path.Combine(desk.Site, "solution.html")));
        Assert.Equal(["0:05 The picture on the lid"], solution.QuerySelectorAll(".chapters li").Select(chapter => chapter.TextContent));
        Assert.StartsWith("WEBVTT\n", File.ReadAllText(Path.Combine(desk.Site, solution.QuerySelector("track")!.GetAttribute("src")!)), StringComparison.Ordinal);
        Assert.Equal("0:05 The picture on the lid\n", File.ReadAllText(Path.Combine(desk.Output, "print", "chapters-wooden-heart.mp4.txt")));
    }
}
