using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using HintBook.Checking;
using HintBook.Publishing;
using HintBook.Tests.Photos;
using HintBook.Tests.Photos.Films;

namespace HintBook.Tests.Publishing.Films;

/// <summary>A translation may have photos and clips of its own; they are looked at and published like those of the book.</summary>
public class FilmsOfLanguagesTests
{
    [Fact]
    public void A_translations_own_photos_and_clips_are_published_and_its_chapters_have_its_titles()
    {
        using var desk = InFrench("clip: { file: film.fr.mp4, from: 0:20, to: 0:30 }\nphotos: { answer: { file: fr.jpg, alt: Le couvercle } }");
        Film(desk, "film.mp4", 60);
        Film(desk, "film.fr.mp4", 40);
        Photo(desk, "fr.jpg");

        var report = desk.Published().Report;

        Assert.Equal(1, report.Photos);
        var english = Page(desk, "solution.html");
        var french = Page(desk, "fr/solution.html");
        Assert.Equal(2, Directory.GetFiles(Path.Combine(desk.Site, "films"), "*.mp4").Length);
        Assert.Single(french.QuerySelectorAll("img[alt='Le couvercle']"));
        Assert.Equal("0:05 The picture on the lid", english.QuerySelector(".chapters li")!.TextContent);
        Assert.Equal("0:20 L’image du couvercle", french.QuerySelector(".chapters li")!.TextContent);
        Assert.Contains("The picture on the lid", Track(desk, "", english), StringComparison.Ordinal);
        Assert.Contains("L’image du couvercle", Track(desk, "fr/", french), StringComparison.Ordinal);
        Assert.Equal("0:20 L’image du couvercle\n", File.ReadAllText(Path.Combine(desk.Output, "print", "chapters-film.fr.mp4.fr.txt")));
    }

    [Fact]
    public void Mistakes_in_them_are_told()
    {
        using var desk = InFrench("clip: { file: film.mp4, from: 1:20, to: 1:30 }\nphotos: { answer: { file: fr.jpg, alt: Le couvercle } }");
        Film(desk, "film.mp4", 60);
        File.WriteAllText(Path.Combine(Directory.CreateDirectory(Path.Combine(desk.Book, "photos")).FullName, "fr.jpg"), "no picture");

        var errors = Assert.IsType<Rejected>(desk.Publish()).Findings.All.Where(finding => finding.IsError).ToArray();

        Assert.Equal(
            [("HB5101", "stages/fr/02-the-number.md"), ("HB5201", "stages/fr/02-the-number.md")],
            errors.Select(error => (error.Code.Id, error.At.File.Path)).Order());
    }

    [Fact]
    public void What_a_translation_has_from_the_book_is_told_once()
    {
        using var desk = InFrench("minutes: 10");
        Film(desk, "film.mp4", 10);

        Assert.Single(Check.Run(desk.Book).Findings.All, finding => finding.Code.Id == "HB5201");
    }

    [Fact]
    public void Two_films_of_the_same_content_have_captions_and_chapters_of_their_own()
    {
        using var desk = new BookAndOutput();
        Film(desk, "film.mp4", 60);
        Film(desk, "copy.mp4", 60);
        File.WriteAllText(Path.Combine(desk.Book, "clips", "film.en.vtt"), "WEBVTT\n\n00:06.000 --> 00:07.000\nTurn it.\n");
        File.WriteAllText(Path.Combine(desk.Book, "clips", "copy.en.vtt"), "WEBVTT\n\n00:06.000 --> 00:07.000\nPull it.\n");
        desk.Change("stages/02-the-number.md", "minutes: 10", "minutes: 10\nclip: { file: film.mp4, from: 0:05, to: 0:10 }");
        desk.Change("stages/03-the-lid.md", "title:", "clip: { file: copy.mp4, from: 0:05, to: 0:10 }\ntitle:");

        desk.Published();

        var solution = Page(desk, "solution.html");
        Assert.Equal(["0:05 The lid", "0:05 The picture on the lid"], solution.QuerySelectorAll(".chapters li").Select(chapter => chapter.TextContent));
        string[] texts = [.. solution.QuerySelectorAll("track").Select(track => File.ReadAllText(Path.Combine(desk.Site, track.GetAttribute("src")!)))];
        Assert.Equal(6, texts.Length);
        Assert.Equal(3, texts.Count(text => text.Contains("Turn it.") || text.Contains("The picture on the lid")));
        Assert.Single(Directory.GetFiles(Path.Combine(desk.Site, "films"), "*.mp4"));
    }

    // Somebody else holds it: Linux lets a process keep its own files to itself so, as Windows does for all.
    [Fact]
    public void A_film_that_cannot_be_opened_hides_no_other_finding()
    {
        using var desk = new BookAndOutput();
        Film(desk, "film.mp4", 60);
        desk.Change("stages/02-the-number.md", "minutes: 10", "minutes: 10\nclip: { file: film.mp4, from: 0:05, to: 0:10 }");
        desk.Change("stages/02-the-number.md", "# Nudge", "# Nudge\nThe wooden heart.\n");
        using var held = new FileStream(Path.Combine(desk.Book, "clips", "film.mp4"), FileMode.Open, FileAccess.ReadWrite, FileShare.None);

        var told = Check.Run(desk.Book).Findings.All.Where(finding => finding.IsError).Select(finding => finding.Code.Id);

        Assert.Equal(["HB1004", "HB3101"], told.Order(StringComparer.Ordinal));
    }

    private static BookAndOutput InFrench(string keys)
    {
        var desk = new BookAndOutput();
        desk.Change("book.yaml", "language: en", "language: en\nlanguages: [ fr ]");
        desk.Change("stages/02-the-number.md", "minutes: 10", "minutes: 10\nclip: { file: film.mp4, from: 0:05, to: 0:15 }");
        Write(desk, "book.fr.yaml", "title: Ma première boîte\n");
        Write(
            desk,
            "stages/fr/02-the-number.md",
            $"---\ntitle: L’image du couvercle\nsign: Un signe.\n{keys}\n---\n# Nudge\nRegardez.\n\n# Clue\nComptez.\n\n# Answer\nTournez 0420.\n");
        return desk;
    }

    private static void Film(BookAndOutput desk, string name, int seconds) =>
        File.WriteAllBytes(
            Path.Combine(Directory.CreateDirectory(Path.Combine(desk.Book, "clips")).FullName, name), Mp4.Of(TimeSpan.FromSeconds(seconds)));

    private static void Photo(BookAndOutput desk, string name) =>
        File.WriteAllBytes(Path.Combine(Directory.CreateDirectory(Path.Combine(desk.Book, "photos")).FullName, name), Shots.Jpeg(800, 600));

    private static void Write(BookAndOutput desk, string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(desk.Book, path))!);
        File.WriteAllText(Path.Combine(desk.Book, path), text);
    }

    private static string Track(BookAndOutput desk, string folder, IHtmlDocument page) =>
        File.ReadAllText(Path.GetFullPath(Path.Combine(desk.Site, folder, page.QuerySelector("track[kind=chapters]")!.GetAttribute("src")!)));

    private static IHtmlDocument Page(BookAndOutput desk, string file) => new HtmlParser().ParseDocument(File.ReadAllText(Path.Combine(desk.Site, file)));
}
