using System.Diagnostics;
using HintBook.Browser.Tests.Engines;
using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;
using HintBook.Tests.House;

namespace HintBook.Browser.Tests;

// A film plays, with what is said in it below and beside it, also from a memory stick. MP4 with H.264, which every engine plays.
public class EngineFilmTests(ReadingRoom room, EngineRoom engines)
{
    private const string Said = "Now lift the lid a little.";

    public static TheoryData<string, Source> Everywhere =>
    [
        .. from engine in new[] { EngineRoom.Firefox, EngineRoom.WebKit }
           from source in Enum.GetValues<Source>()
           select new TheoryDataRow<string, Source>(engine, source),
    ];

    [Theory]
    [MemberData(nameof(Everywhere))]
    public async Task A_film_plays_with_captions_on_and_its_words_below(string engine, Source source)
    {
        using var site = WithFilm($"said, {engine}, {source}");
        await using var visitor = await engines.Seat(engine, site, new(Source: source));
        await visitor.OpenStage("plover");
        foreach (var tier in new[] { Words.Nudge, Words.Clue, Words.Answer })
            await visitor.Take(tier);
        Assert.DoesNotContain(Said, await visitor.Seen());

        // Without being played: a film is loaded when the reader asks for it, and its captions with it.
        await visitor.Value("document.querySelector('video').load()");
        await visitor.Value("document.querySelector('video').preload = 'auto'");
        await visitor.Until("document.querySelector('video').readyState >= 2");
        await visitor.Until("[...document.querySelector('video').textTracks].some(each => each.mode === 'showing' && each.cues && each.cues.length === 1)");
        const string Cue = "[...document.querySelector('video').textTracks].find(each => each.mode === 'showing').cues[0]";
        Assert.Equal(Said, await visitor.Text(Cue + ".text"));
        Assert.Equal("10 false 20 50 start", await visitor.Text($"(cue => [cue.line, cue.snapToLines, cue.position, cue.size, cue.align].join(' '))({Cue})"));
        await visitor.Press("What is said in the film");
        Assert.Contains(Said, await visitor.Seen());
        Complaint.None(await visitor.Tab.Console());
    }

    [Fact]
    public async Task Chromium_takes_the_captions_from_a_memory_stick_as_well()
    {
        using var site = WithFilm("said, Chromium");
        await using var reader = await room.Seat(site, new(Source: Source.File));
        await reader.OpenStage("plover");

        await reader.Page.WaitForFunctionAsync(
            "text => [...document.querySelector('video').textTracks].some(each => each.mode === 'showing' && each.cues?.[0]?.text === text)", Said);
    }

    [Theory]
    [MemberData(nameof(EngineRoom.Names), MemberType = typeof(EngineRoom))]
    public async Task Without_script_the_words_are_there_all_the_same(string engine)
    {
        using var site = WithFilm($"said without script, {engine}");
        await using var visitor = await engines.Seat(engine, site, new(Script: false, Source: Source.File));
        await visitor.OpenStage("plover");
        foreach (var tier in new[] { Words.Nudge, Words.Clue, Words.Answer })
            await visitor.Take(tier);

        await visitor.Press("What is said in the film");

        Assert.Contains(Said, await visitor.Seen());
    }

    private PublishedSite WithFilm(string test)
    {
        DebianProgram.Have("ffmpeg", "ffmpeg", () => DebianProgram.IsThere("ffmpeg"));
        var book = room.Shelf.SmallBookFor(test);
        var clips = Directory.CreateDirectory(Path.Combine(book, "clips")).FullName;
        string[] film = ["-f", "lavfi", "-i", "testsrc=size=160x120:rate=25:duration=3", "-c:v", "libx264", "-preset", "ultrafast", "-pix_fmt", "yuv420p"];
        using (var ffmpeg = Process.Start("ffmpeg", ["-nostdin", "-v", "error", .. film, Path.Combine(clips, "film.mp4")]))
            ffmpeg.WaitForExit();
        File.WriteAllText(Path.Combine(clips, "film.en.vtt"), $"WEBVTT\n\n00:00.500 --> 00:02.000 line:10% position:20% size:50% align:start\n{Said}\n");
        var stage = Path.Combine(book, "stages", "01-plover.md");
        var text = File.ReadAllText(stage).Replace("minutes: 5", "minutes: 5\nclip: { file: film.mp4, from: 0:00, to: 0:03 }", StringComparison.Ordinal);
        File.WriteAllText(stage, text);
        return PublishedSite.Of(test, book, book + ", published");
    }
}
