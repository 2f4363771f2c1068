using System.Collections.Immutable;
using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using HintBook.Audit;
using HintBook.Audit.Sealed;
using HintBook.Publishing;
using HintBook.Publishing.Films;
using HintBook.Sealing;
using HintBook.Starting.Edition;
using HintBook.Tests.House;
using HintBook.Tests.Photos.Films;

namespace HintBook.Tests.Publishing;

/// <summary>A sealed book with clips in, a whole site out: each clip opens with what opens its step, and lies nowhere else.</summary>
public sealed class SealedFilmsTests : IDisposable
{
    private const string Id = "the-practice-box";
    private const string Said = "Set the wheels.";

    private readonly BookAndOutput desk = new();
    private readonly string address;

    public SealedFilmsTests()
    {
        var yaml = Path.Combine(desk.Book, "book.yaml");
        string[] others = ["id:", "address:"];
        var lines = File.ReadAllLines(yaml).Where(line => !others.Any(key => line.StartsWith(key, StringComparison.Ordinal)));
        address = $"\nid: {Id}\naddress: https://made.home.arpa/\n";
        File.WriteAllText(yaml, string.Join('\n', lines) + address);
        Directory.CreateDirectory(Clips);
    }

    public void Dispose() => desk.Dispose();

    [Fact]
    public void A_clip_and_what_is_said_in_it_are_those_of_an_open_site_and_open_with_their_steps_card()
    {
        var options = desk.Options with { FilmTools = TwoClips() };
        desk.Published(options);
        var open = Directory.GetFiles(Path.Combine(desk.Site, "films"));
        byte[][] films = [.. open.Where(file => file.EndsWith(".mp4", StringComparison.Ordinal)).Select(File.ReadAllBytes)];
        string[] captions = [.. open.Where(file => file.EndsWith(".en.vtt", StringComparison.Ordinal)).Select(File.ReadAllText)];
        SealIt();

        var names = desk.Published(options).Book!.Addresses.Names;

        Assert.False(Directory.Exists(Path.Combine(desk.Site, "films")));
        var (panel, lid) = (Shown(names["the-number"][0]), Shown(names["the-lid"][0]));
        Assert.Contains(panel.Film, films);
        Assert.Contains(lid.Film, films);
        Assert.NotEqual(panel.Film, lid.Film);
        Assert.Contains(panel.Captions, captions);
        Assert.Contains(Said, panel.Captions, StringComparison.Ordinal);
        Assert.DoesNotContain(Said, lid.Captions, StringComparison.Ordinal);
    }

    [Fact]
    public void The_card_of_another_step_finds_no_key_of_the_clip_and_nothing_names_its_file()
    {
        var options = desk.Options with { FilmTools = TwoClips() };
        SealIt();
        var names = desk.Published(options).Book!.Addresses.Names;
        var (page, other) = (names["the-number"][0], names["the-lid"][0]);
        var file = NameOf(page);

        Assert.Null(CardOf(other).Piece(page, "answer"));
        // The names and keys stand in sealed pieces alone.
        Assert.All(
            Directory.EnumerateFiles(desk.Site, "*", SearchOption.AllDirectories)
                .Where(each => !Path.GetFileName(each).StartsWith(file, StringComparison.Ordinal)).Select(File.ReadAllText),
            text => Assert.DoesNotContain(file, text, StringComparison.Ordinal));
    }

    [Fact]
    public void The_solution_page_has_each_clip_with_its_step_and_the_whole_film_nowhere()
    {
        var options = desk.Options with { FilmTools = TwoClips() };
        SealIt();
        desk.Published(options);

        var whole = File.ReadAllBytes(Path.Combine(Clips, "film.mp4")).Length;
        var sealedBytes = Directory.EnumerateFiles(Path.Combine(desk.Site, "p")).Sum(file => new FileInfo(file).Length);
        Assert.DoesNotContain("<video", File.ReadAllText(Path.Combine(desk.Site, "solution.html")), StringComparison.Ordinal);
        Assert.InRange(sealedBytes, whole / 4, whole * 4 / 3);
    }

    [Fact]
    public void Two_publishes_give_the_same_bytes()
    {
        var options = desk.Options with { FilmTools = TwoClips() };
        SealIt();
        desk.Published(options);
        var before = BookAndOutput.Tree(desk.Site);

        desk.Published(options);

        Assert.Equal(before, BookAndOutput.Tree(desk.Site));
    }

    [Fact]
    public void A_film_that_is_its_steps_own_is_sealed_whole_where_nothing_can_be_cut()
    {
        File.WriteAllBytes(Path.Combine(Clips, "panel.mp4"), Mp4.Of(TimeSpan.FromSeconds(10)));
        Clip("stages/02-the-number.md", "clip: { file: panel.mp4, from: 0:00 }");
        SealIt();

        var names = desk.Published().Book!.Addresses.Names;

        Assert.Equal(Mp4.Of(TimeSpan.FromSeconds(10)).Length, Shown(names["the-number"][0]).Film.Length);
        Assert.False(Directory.Exists(Path.Combine(desk.Site, "films")));
    }

    [Fact]
    public void A_film_of_more_than_24_MiB_is_told_with_what_to_do_and_nothing_is_published()
    {
        File.WriteAllBytes(Path.Combine(Clips, "panel.mp4"), [.. Mp4.Of(TimeSpan.FromSeconds(10)), .. new byte[SealedFile.MostOfFilm]]);
        Clip("stages/02-the-number.md", "clip: { file: panel.mp4, from: 0:00 }");
        SealIt();

        var told = Assert.Single(Assert.IsType<Rejected>(desk.Publish()).Findings.All, finding => finding.Code.Id == "HB8221");

        Assert.Contains("has 25 MiB", told.Message, StringComparison.Ordinal);
        Assert.Contains("Shorten the clip", told.Help, StringComparison.Ordinal);
        Assert.False(Directory.Exists(desk.Site));
    }

    [Fact]
    public void The_audit_tells_a_segment_that_is_gone_and_one_that_was_exchanged()
    {
        File.WriteAllBytes(Path.Combine(Clips, "panel.mp4"), [.. Mp4.Of(TimeSpan.FromSeconds(10)), .. new byte[3 << 20]]);
        Clip("stages/02-the-number.md", "clip: { file: panel.mp4, from: 0:00 }");
        SealIt();
        var published = desk.Published();
        string[] segments = [.. Directory.GetFiles(Path.Combine(desk.Site, "p"), "*-?.js").Order(StringComparer.Ordinal)];
        Assert.Equal(4, segments.Length);

        var second = File.ReadAllText(segments[1]);
        File.WriteAllText(segments[1], File.ReadAllText(segments[2]).Replace("-2\"", "-1\"", StringComparison.Ordinal));
        Assert.Contains(Audited(published), fault => fault.File == $"p/{Path.GetFileName(segments[1])}");

        File.WriteAllText(segments[1], second);
        Assert.Empty(Audited(published));
        File.Delete(segments[^1]);
        Assert.Contains(Audited(published), fault => fault.File == $"p/{Path.GetFileName(segments[^1])}");
    }

    private static BookSecret Secret { get; } = new([.. Enumerable.Range(0, BookSecret.Length).Select(each => (byte)each)]);

    private string Clips => Path.Combine(desk.Book, "clips");

    private ImmutableArray<AuditFault> Audited(Published published) =>
        SealedAudit.Run(desk.Site, null, SealedCardTable.Of(published.Book!)!).Faults;

    private FilmTools TwoClips()
    {
        using var film = ToldFilm.Of("film.mp4");
        DebianProgram.Have("ffprobe", "ffmpeg");
        File.Copy(film.Path, Path.Combine(Clips, "film.mp4"));
        File.WriteAllText(Path.Combine(Clips, "film.en.vtt"), $"WEBVTT\n\n00:02.500 --> 00:03.000 line:0\n{Said}\n\n00:04.100 --> 00:05.000\nHere it is.\n");
        Clip("stages/02-the-number.md", "clip: { file: film.mp4, from: 1.5, to: 3.4 }");
        Clip("stages/03-the-lid.md", "clip: { file: film.mp4, from: 4, to: 6 }");
        return FilmTools.OnPath()!;
    }

    private void Clip(string stage, string clip) => desk.Change(stage, "title:", $"{clip}\ntitle:");

    private void SealIt()
    {
        desk.Change("book.yaml", address, address + "sealed: true\n");
        File.WriteAllText(Path.Combine(desk.Book, "copies.yaml"), "copies:\n  \"001\": { sold: true }\n");
        Assert.Null(new SealedEdition(desk.Book, Id).Complete(["001"], () => Secret, new Random(7).Next).Why);
    }

    private CardInHand CardOf(string page)
    {
        var edition = new SealedEdition(desk.Book, Id);
        return new(desk.Site, edition.Codes!.OfPage(edition.Read().Kept!["001"]!, page));
    }

    private (byte[] Film, string Captions) Shown(string page)
    {
        var card = CardOf(page);
        var video = VideoOf(card, page);
        var track = video.QuerySelector("[data-sealed-captions]")?.GetAttribute("data-sealed-captions");
        return (card.File(video.GetAttribute("data-sealed-film")!), track is null ? "" : Encoding.UTF8.GetString(card.File(track)));
    }

    private string NameOf(string page) => VideoOf(CardOf(page), page).GetAttribute("data-sealed-film")!.Split(' ')[0];

    private static IElement VideoOf(CardInHand card, string page) => new HtmlParser().ParseDocument(card.Piece(page, "answer")!).QuerySelector("video")!;
}
