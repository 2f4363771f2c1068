using HintBook.Browser.Tests.Browsers;
using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;

[assembly: AssemblyFixture(typeof(ReadingRoom))]

namespace HintBook.Browser.Tests.Reading;

/// <summary>One browser and one shelf of published books for all tests. Every reader gets a profile of their own.</summary>
public sealed class ReadingRoom : IAsyncLifetime
{
    // The pages' servers and the driver's answers share the pool with tests that publish, and would wait behind them on a machine with few cores.
    private const int LeastThreads = 16;

    // For every profile Chromium opens a window of its own, with nobody to see it, and starts a process for the suggestions under its
    // address bar: a quarter of all the time these tests took. It obeys only the last list, so that the first names here are those
    // that Playwright switches off itself.
    private static readonly string[] SwitchedOff =
    [
        "AvoidUnnecessaryBeforeUnloadCheckSync", "DestroyProfileOnBrowserClose", "DialMediaRouteProvider", "GlobalMediaControls", "HttpsUpgrades",
        "LensOverlay", "MediaRouter", "PaintHolding", "ThirdPartyStoragePartitioning", "BlockOriginHeaderModificationOnRedirect",
        "AvoidCorsURLLoaderRestartOnRedirect", "Translate", "AutoDeElevate", "OptimizationHints", "NetworkTimeServiceQuerying", "AimEnabled",
        "WebUIOmniboxPopup", "WebUIOmniboxAimPopup",
    ];

    private IPlaywright? playwright;
    private IBrowser? browser;

    internal Shelf Shelf { get; } = new();

    public async ValueTask InitializeAsync()
    {
        ThreadPool.SetMinThreads(LeastThreads, LeastThreads);
        Assertions.SetDefaultExpectTimeout(Arrival.Patience);
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new()
        {
            Timeout = Arrival.Patience,
            ExecutablePath = BrowserSetup.Here(playwright.Chromium.ExecutablePath).Browser(),
            Args =
            [
                // Chromium refuses its sandbox to root; all that it opens here are our own pages.
                .. OperatingSystem.IsLinux() && Environment.IsPrivilegedProcess ? (string[])["--no-sandbox"] : [],
                "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
                $"--disable-features={string.Join(',', SwitchedOff)}",
            ],
        });
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
            await browser.DisposeAsync();
        playwright?.Dispose();
        Shelf.Dispose();
    }

    /// <summary>A reader who has never seen the small book.</summary>
    internal Task<Reader> Seat(Circumstances circumstances, ViewportSize? size = null) => Seat(Shelf[SmallBook.Title, circumstances], circumstances, size);

    /// <summary>A reader who has never seen the site.</summary>
    /// <param name="site">The site.</param>
    /// <param name="circumstances">How the reader comes to it.</param>
    /// <param name="size">The window, if it is none of the usual two.</param>
    /// <param name="density">How many of the screen's pixels make one of the page's.</param>
    internal Task<Reader> Seat(PublishedSite site, Circumstances circumstances, ViewportSize? size = null, float density = 1) =>
        Reader.Of(browser!, site, circumstances, size, density);

    /// <summary>A page of a profile of its own, for what isn't a published site.</summary>
    /// <param name="size">The window.</param>
    /// <param name="script">Whether scripts run.</param>
    internal async Task<IPage> Page(ViewportSize size, bool script = true)
    {
        var page = await browser!.NewPageAsync(new() { ViewportSize = size, ReducedMotion = ReducedMotion.Reduce, JavaScriptEnabled = script });
        page.Context.SetDefaultTimeout(Arrival.Patience);
        return page;
    }
}
