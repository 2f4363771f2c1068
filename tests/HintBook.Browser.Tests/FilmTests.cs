using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests;

// A film of six seconds that isn't cut, of which a page shows the part from 0:02 to 0:03. Where it can't be made the tests are
// skipped.
public class FilmTests(ReadingRoom room)
{
    private static readonly Circumstances FromAStick = new(Source: Source.File);

    [Fact]
    public async Task A_film_that_is_not_cut_is_held_to_its_part()
    {
        using var site = WithFilm(nameof(A_film_that_is_not_cut_is_held_to_its_part));
        await using var reader = await room.Seat(site, FromAStick);
        await reader.OpenStage("plover");
        await reader.OpenAllByHand();

        Assert.InRange(await At(reader, "video.load(); await when('loadeddata')"), 1.9, 3);
        Assert.InRange(await At(reader, "await moveTo(5)"), 1.9, 3.05);
        Assert.InRange(await At(reader, "await moveTo(0.5)"), 1.9, 3.05);
        // Played on from just before the end it stops there, whatever the browser itself would do.
        Assert.InRange(await At(reader, "await moveTo(2.7); await video.play(); await when('pause')"), 2.9, 3.4);
        // Played once more it starts again.
        Assert.InRange(await At(reader, "await video.play(); await when('timeupdate')"), 1.9, 2.9);
    }

    [Fact]
    public async Task The_whole_film_on_the_solution_page_is_not_held()
    {
        using var site = WithFilm(nameof(The_whole_film_on_the_solution_page_is_not_held));
        await using var reader = await room.Seat(site, FromAStick);
        await reader.Open("solution.html");
        await reader.OpenAllByHand();

        Assert.InRange(await At(reader, "video.load(); await when('loadeddata'); await moveTo(5)"), 4.9, 5.1);
    }

    // Where the first film of the page stands after something was done to it.
    private static Task<double> At(Reader reader, string act) => reader.Page.EvaluateAsync<double>(
        $$"""
        async () => {
          const video = document.querySelector("video");
          const when = name => new Promise(done => video.addEventListener(name, done, { once: true }));
          const moveTo = async time => {
            const there = when("seeked");
            video.currentTime = time;
            await there;
            while (video.seeking) await when("seeked");
          };
          video.muted = true;
          {{act}};
          return video.currentTime;
        }
        """);

    private PublishedSite WithFilm(string test)
    {
        var book = room.Shelf.SmallBookFor(test);
        Film.AddTo(book);
        return PublishedSite.Of(test, book, book + ", published");
    }
}
