using System.Text;
using AngleSharp.Html.Parser;

namespace HintBook.Tests.Publishing;

public class FilmTests
{
    [Fact]
    public void A_film_is_copied_whole_under_a_name_that_says_nothing_and_its_page_plays_the_part()
    {
        using var desk = new Desktop();
        var film = Encoding.ASCII.GetBytes("not a film, but the same bytes must arrive");
        Directory.CreateDirectory(Path.Combine(desk.Book, "clips"));
        File.WriteAllBytes(Path.Combine(desk.Book, "clips", "wooden-heart.mp4"), film);
        desk.Change("stages/02-the-number.md", "minutes: 10", "minutes: 10\nclip: { file: wooden-heart.mp4, from: 0:05, to: 1:02 }");

        desk.Published();

        var copied = Assert.Single(Directory.GetFiles(Path.Combine(desk.Site, "films")));
        Assert.Equal(film, File.ReadAllBytes(copied));
        Assert.Matches("^[0-9a-f]{16}\\.mp4$", Path.GetFileName(copied));
        var parser = new HtmlParser();
        var videos = Directory.GetFiles(desk.Site, "*.html").SelectMany(page => parser.ParseDocument(File.ReadAllText(page)).QuerySelectorAll("video"));
        Assert.All(videos, video => Assert.Equal($"films/{Path.GetFileName(copied)}#t=5,62", video.GetAttribute("src")));
        Assert.NotEmpty(videos);
    }
}
