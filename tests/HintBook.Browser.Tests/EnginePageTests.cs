using HintBook.Browser.Tests.Engines;
using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using SixLabors.ImageSharp.Processing;

namespace HintBook.Browser.Tests;

// One page of every kind in the other engines: quiet, no wider than the window, and much as Chromium draws it.
public class EnginePageTests(ReadingRoom room, EngineRoom engines)
{
    // Of 255, the mean over all squares of a picture. Measured: the same page in two engines, each with its own face, up to 11; another page from 36.
    private const double MostUnlike = 18;

    public static TheoryData<string, string> Themes =>
    [
        .. from engine in new[] { EngineRoom.Firefox, EngineRoom.WebKit }
           from theme in Circumstances.Themes
           select new TheoryDataRow<string, string>(engine, theme),
    ];

    public static TheoryData<string, string> OtherScripts =>
    [
        .. from engine in new[] { EngineRoom.Firefox, EngineRoom.WebKit }
           from language in new[] { "ar", "ja" }
           select new TheoryDataRow<string, string>(engine, language),
    ];

    [Theory]
    [MemberData(nameof(Themes))]
    public async Task Every_kind_of_page_is_quiet_and_fits_the_narrowest_window(string engine, string theme)
    {
        var circumstances = new Circumstances(Theme: theme);
        var site = room.Shelf[SmallBook.Title, circumstances];
        await using var visitor = await engines.Seat(engine, site, circumstances);
        await visitor.Tab.Resize(320, 640);
        var wide = new List<string>();
        foreach (var page in site.KindsOfPages)
        {
            await visitor.Open(page);
            await visitor.OpenAll();
            Assert.NotEqual("", await visitor.Heading());
            wide.AddRange(await TooWide(visitor, page));
        }

        Complaint.None(wide);
        Complaint.None(await visitor.Tab.Console());
    }

    [Theory]
    [MemberData(nameof(EngineRoom.Names), MemberType = typeof(EngineRoom))]
    public async Task A_message_and_a_wide_text_would_be_noticed(string engine)
    {
        await using var visitor = await engines.Seat(engine, room.Shelf.Small, new());
        await visitor.OpenFront();
        // WebKit lets a driver's script load what it likes, and Firefox doesn't count what it says among the page's: each notices one of these.
        await visitor.Value("new Image().src = 'https://elsewhere.example/a.jpg'");
        await visitor.Value("console.warn('elsewhere.example')");
        await visitor.Value("document.querySelector('h1').textContent = 'x'.repeat(200)");
        await visitor.Value("document.querySelector('h1').style.overflowWrap = 'normal'");

        await Wait.Until(async () => (await visitor.Tab.Console()).Any(line => line.Contains("elsewhere.example", StringComparison.Ordinal)), "the complaint");
        Assert.NotEmpty(await TooWide(visitor, "front"));
    }

    [Theory]
    [MemberData(nameof(Themes))]
    public async Task Front_page_and_step_look_much_as_in_Chromium(string engine, string theme)
    {
        // One theme is looked at in the dark as well: how a browser takes the reader's wish is the same in all of them.
        foreach (var dark in theme == Pages.Theme.Default ? (bool[])[false, true] : [false])
        {
            var circumstances = new Circumstances(Theme: theme, Dark: dark);
            var site = room.Shelf[SmallBook.Title, circumstances];
            await using var visitor = await engines.Seat(engine, site, circumstances);
            await using var reader = await room.Seat(circumstances);
            byte[]? before = null;
            foreach (var page in new[] { "index.html", site.FullestStagePage })
            {
                await visitor.Open(page);
                await reader.Open(page);
                // A picture that is loaded only when it shows may come after the page is there.
                await visitor.Tab.Await(
                    """
                    const shown = [...document.images].filter(each => each.checkVisibility());
                    await Promise.all(shown.map(each => { each.loading = 'eager'; return each.decode(); }));
                    """);
                await reader.LoadPictures();
                var (here, there) = (await visitor.Tab.Screenshot(), await reader.Page.ScreenshotAsync());

                Assert.InRange(Unlike(here, there), 0, MostUnlike);
                if (before is not null)
                    Assert.InRange(Unlike(before, there), MostUnlike * 1.5, 255);
                before = here;
            }
        }
    }

    [Theory]
    [MemberData(nameof(OtherScripts))]
    public async Task Arabic_and_Japanese_run_as_they_should(string engine, string language)
    {
        var circumstances = new Circumstances(Language: language, Theme: "workshop", Locale: language);
        var site = room.Shelf[SmallBook.Title, circumstances];
        await using var visitor = await engines.Seat(engine, site, circumstances);
        await visitor.Tab.Resize(320, 640);
        await visitor.Open(site.FullestStagePage);
        await visitor.OpenAll();

        // The mark before the words of a fold stands where a line begins.
        var gap = await visitor.Value(
            """
            (() => {
              const fold = document.querySelector('.nudge > summary');
              return fold.getBoundingClientRect().left - fold.firstElementChild.getBoundingClientRect().left;
            })()
            """);
        Assert.Equal(language == "ar" ? "rtl" : "ltr", await visitor.Text("getComputedStyle(document.body).direction"));
        Assert.InRange(gap.GetDouble(), -400, language == "ar" ? 1 : -16);
        Assert.Equal("normal", await visitor.Text("getComputedStyle(document.querySelector('.sign')).fontStyle"));
        Complaint.None([.. await TooWide(visitor, language), .. await visitor.Tab.Console()]);
    }

    private static async Task<IReadOnlyCollection<string>> TooWide(Visitor visitor, string page) =>
    [
        .. (await visitor.Value(
            """
            [...document.body.querySelectorAll('*')]
              .filter(each => each.checkVisibility() && !each.closest('.skip, svg'))
              .filter(each => each.getBoundingClientRect().right > innerWidth + 0.5 || each.getBoundingClientRect().left < -0.5)
              .map(each => each.outerHTML.slice(0, 120))
              .concat(document.documentElement.scrollWidth > innerWidth ? ['the page'] : [])
            """)).EnumerateArray().Select(each => $"{page}: {each}"),
    ];

    // Squares of ten pixels: letters and edges that are a little to the side don't count, another colour or a line more does.
    private static double Unlike(byte[] one, byte[] other)
    {
        var (first, second) = (Squares(one), Squares(other));
        return first.Zip(second, (a, b) => (Math.Abs(a.R - b.R) + Math.Abs(a.G - b.G) + Math.Abs(a.B - b.B)) / 3.0).Average();
    }

    private static Rgb24[] Squares(byte[] png)
    {
        using var picture = Image.Load<Rgb24>(png);
        picture.Mutate(each => each.Resize(39, 84, KnownResamplers.Box));
        var squares = new Rgb24[39 * 84];
        picture.CopyPixelDataTo(squares);
        return squares;
    }
}
