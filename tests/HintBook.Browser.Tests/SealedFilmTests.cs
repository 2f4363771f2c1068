using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests;

// The clip of a step on a sealed site. Where a film can't be made the tests are skipped.
public sealed class SealedFilmTests(ReadingRoom room) : IDisposable
{
    private const string Said = "Look under the table.";
    private SealedSmallBook? book;

    public void Dispose() => book?.Dispose();

    [Theory]
    [InlineData(Source.Http)]
    [InlineData(Source.File)]
    public async Task A_sealed_clip_plays_with_its_captions_and_can_be_moved_in(Source source)
    {
        await using var reader = await room.Seat(Sealed($"sealed film, {source}"), new(Source: source));
        await book!.Scan(reader, "plover", book.CardOf("plover"));
        await OpenAnswer(reader);
        Assert.Null(await reader.Page.Locator("video").First.GetAttributeAsync("src"));
        await reader.Page.Locator("[data-film-open]").First.ClickAsync();
        await reader.Page.WaitForFunctionAsync(
            "() => { const video = document.querySelector('video'); return video.textTracks[0]?.cues?.length === 1 && video.readyState >= 2; }");

        var played = await reader.Page.EvaluateAsync<System.Text.Json.JsonElement>(
            """
            async () => {
              const video = document.querySelector("video"), track = video.textTracks[0];
              video.pause();
              const moved = new Promise(done => video.addEventListener("seeked", done, { once: true }));
              video.currentTime = 0.5;
              await moved;
              return {
                seconds: video.duration, at: video.currentTime, source: video.src.slice(0, 5), controls: video.controls,
                cues: [...track.cues].map(cue => cue.text), line: track.cues[0].line, mode: track.mode,
              };
            }
            """);

        Assert.InRange(played.GetProperty("seconds").GetDouble(), 0.8, 1.2);
        Assert.InRange(played.GetProperty("at").GetDouble(), 0.4, 0.6);
        Assert.Equal("blob:", played.GetProperty("source").GetString());
        Assert.Equal([Said], played.GetProperty("cues").EnumerateArray().Select(cue => cue.GetString()));
        Assert.Equal("showing", played.GetProperty("mode").GetString());
        Assert.Equal(0, played.GetProperty("line").GetInt32());
        Assert.True(played.GetProperty("controls").GetBoolean());
        Complaint.None(reader.Network.Complaints);
    }

    [Fact]
    public async Task Another_steps_card_opens_no_film()
    {
        await using var reader = await room.Seat(Sealed("sealed film, another card"), new());
        await book!.Scan(reader, "heron", book.CardOf("heron"));
        await reader.OpenStage("plover");
        await Assertions.Expect(reader.Page.Locator("[data-locked] [role=status]")).ToContainTextAsync("doesn't open this page");
        await reader.OpenAll();

        Assert.Equal(0, await reader.Page.Locator("video").CountAsync());
    }

    [Fact]
    public async Task A_clip_that_was_seen_once_plays_without_a_network()
    {
        await using var reader = await room.Seat(Sealed("sealed film, offline"), new());
        await book!.Scan(reader, "plover", book.BoxCard);
        await Assertions.Expect(reader.Page.Locator("html[data-kept=kept]")).ToBeAttachedAsync();
        await Play(reader);
        await reader.Until(
            """
            async () => {
              const [name, , count] = document.querySelector("video").dataset.sealedFilm.split(" "), last = `p/${name}-${count - 1}.js`;
              return (await caches.keys()).length > 0 && !!await caches.match(new URL(last, location.href));
            }
            """);

        book!.Site.Server.CutAfter(0);
        await reader.OpenStage("plover");
        await Assertions.Expect(reader.Page.Locator("html[data-opened]")).ToBeAttachedAsync();
        await Play(reader);
    }

    [Fact]
    public async Task A_clip_that_does_not_come_is_told_and_can_be_tried_again()
    {
        await using var reader = await room.Seat(Sealed("sealed film, gone"), new());
        await book!.Scan(reader, "plover", book.BoxCard);
        await OpenAnswer(reader);
        var name = (await reader.Page.Locator("video").First.GetAttributeAsync("data-sealed-film"))!.Split(' ')[0];
        var segment = Path.Combine(book!.Site.Folder, "p", $"{name}-0.js");
        File.Move(segment, segment + ".away");
        await reader.Page.Locator("[data-film-open]").First.ClickAsync();
        await Assertions.Expect(reader.Page.Locator("figure.film [role=status]").First).ToContainTextAsync("The film didn't come");

        File.Move(segment + ".away", segment);
        await Play(reader);
    }

    private static async Task Play(Reader reader)
    {
        await OpenAnswer(reader);
        await reader.Page.Locator("[data-film-open]").First.ClickAsync();
        await reader.Page.WaitForFunctionAsync("() => document.querySelector('video').readyState >= 2");
    }

    // The answer asks once more; the fold that does so comes out of the sealed piece.
    private static async Task OpenAnswer(Reader reader)
    {
        await reader.OpenAll();
        await reader.Page.WaitForSelectorAsync("video", new() { State = WaitForSelectorState.Attached });
        await reader.OpenAll();
    }

    private PublishedSite Sealed(string test)
    {
        book = SealedSmallBook.Of(room, test, folder =>
        {
            Film.AddTo(folder);
            File.WriteAllText(Path.Combine(folder, "clips", "film.en.vtt"), $"WEBVTT\n\n00:02.100 --> 00:02.900 line:0\n{Said}\n");
        });
        return book.Site;
    }
}
