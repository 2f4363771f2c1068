using Deque.AxeCore.Commons;
using HintBook.Browser.Tests.Reading;
using HintBook.Tests.House;

namespace HintBook.Browser.Tests;

// The machine-checkable part of WCAG 2.0, 2.1 and 2.2 at levels A and AA, by axe-core.
public class AccessTests(ReadingRoom room)
{
    private static readonly string Axe = new BundledAxeScriptProvider().GetScript();

    [Theory]
    [MemberData(nameof(Circumstances.Looks), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task No_page_closed_or_opened_breaks_a_rule(string book, Circumstances circumstances)
    {
        var site = room.Shelf[book, circumstances];
        await using var reader = await room.Seat(site, circumstances);
        var broken = new List<string>();
        var kinds = site.KindsOfPages.ToHashSet();
        foreach (var page in ReadsEveryPage(circumstances) ? site.Pages : kinds)
        {
            await reader.Open(page);
            // What shows of a closed page is the same on every page of its kind.
            if (Soak.IsOn || kinds.Contains(page))
                broken.AddRange(await Broken(reader, $"{page} closed"));
            await reader.OpenAll();
            broken.AddRange(await Broken(reader, $"{page} opened"));
        }

        Complaint.None(broken);
    }

    [Fact]
    public async Task A_broken_rule_would_be_noticed()
    {
        await using var reader = await room.Seat(new Circumstances());
        await reader.OpenFront();
        await reader.Page.EvaluateAsync("() => document.images[0].removeAttribute('alt')");

        Assert.Contains(await Broken(reader, "front"), broken => broken.Contains("image-alt", StringComparison.Ordinal));
    }

    // Another theme or look changes no page more than another of its kind.
    private static bool ReadsEveryPage(Circumstances circumstances) =>
        Soak.IsOn || (circumstances.Theme == Pages.Theme.Default && circumstances is { Phone: true, Language: "en" });

    // The Playwright package of axe-core opens a tab for every run, to sum up frames; our pages have none. Once in a page, axe-core stays there.
    /// <summary>The rules that a page breaks as it is now.</summary>
    internal static async Task<IEnumerable<string>> Broken(Reader reader, string page) => (await Broken(reader.Page)).Select(rule => $"{page}: {rule}");

    /// <summary>The rules that a document breaks as it is now.</summary>
    internal static async Task<string[]> Broken(IPage page)
    {
        if (!await page.EvaluateAsync<bool>("() => 'axe' in window"))
            await page.EvaluateAsync(Axe);
        return await page.EvaluateAsync<string[]>(
            """
            async () => {
              const found = await axe.run(document, {
                runOnly: { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] },
                resultTypes: ['violations'],
              });
              if (!found.passes.length) return ['axe-core has checked nothing'];
              return found.violations.flatMap(rule => rule.nodes.map(node => `${rule.id}: ${node.html} ${node.failureSummary}`));
            }
            """);
    }
}
