using System.Text.RegularExpressions;

namespace HintBook.Browser.Tests.Reading;

/// <summary>How a test waits for the page that a reader is on the way to.</summary>
internal static class Arrival
{
    /// <summary>How long a test waits for what must happen, in milliseconds. Only a test that fails waits so long; a busy machine takes some of it.</summary>
    public const int Patience = 60_000;

    private const int Glance = 5_000;

    /// <summary>Waits until a page is there as a whole.</summary>
    /// <remarks>
    /// Not by <c>WaitForURLAsync</c>: it looks at the address first and listens for the arrival only then, while another thread
    /// receives the browser's events. An arrival between the two is missed, and it waits in vain (playwright-dotnet, issue 3364).
    /// Here the driver is asked for the address, and the load state is looked at and listened for under one lock.
    /// </remarks>
    /// <param name="page">The window.</param>
    /// <param name="address">The end of the page's address. Only its end: a browser writes the letters of a file's address in a way of its own.</param>
    public static Task Arrive(this IPage page, string address) => page.ArriveAt(new Regex($"/{Regex.Escape(address)}$"));

    /// <summary>The same for a whole address, as the browser writes it.</summary>
    public static Task ArriveAt(this IPage page, string address) => page.ArriveAt(new Regex($"^{Regex.Escape(address)}$"));

    private static async Task ArriveAt(this IPage page, Regex address)
    {
        await Assertions.Expect(page).ToHaveURLAsync(address, new() { Timeout = Patience });
        await page.Whole();
    }

    /// <summary>Waits until the page at which a window has arrived is there as a whole.</summary>
    public static async Task Whole(this IPage page)
    {
        // On a busy machine the event was missed all the same in one run (2026-11-29), so the page itself is asked from time to time.
        for (var glances = Patience / Glance; ; glances--)
        {
            try
            {
                await page.WaitForLoadStateAsync(LoadState.Load, new() { Timeout = Glance });
                return;
            }
            catch (TimeoutException) when (glances > 1)
            {
                if (await page.EvaluateAsync<string>("document.readyState") is "complete")
                    return;
            }
        }
    }
}
