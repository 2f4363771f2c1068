using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests;

// WCAG 2.2, 1.4.10 Reflow: no scrolling sideways at 320 CSS pixels; 1.4.4: nor with text at twice its size.
public class WidthTests(ReadingRoom room)
{
    public static TheoryData<string, Circumstances> Books =>
    [
        .. from book in Shelf.Names select new TheoryDataRow<string, Circumstances>(book, new()),
        .. from theme in Circumstances.Themes
           where theme != Pages.Theme.Default
           select new TheoryDataRow<string, Circumstances>(SmallBook.Title, new(Theme: theme)),
        new TheoryDataRow<string, Circumstances>(SmallBook.Title, Circumstances.FromTheRight),
    ];

    [Theory]
    [MemberData(nameof(Books), DisableDiscoveryEnumeration = true)]
    public async Task Nothing_scrolls_sideways_at_320_pixels_nor_with_text_at_twice_its_size(string book, Circumstances circumstances)
    {
        var site = room.Shelf[book, circumstances];
        await using var reader = await room.Seat(site, circumstances, new ViewportSize { Width = 320, Height = 640 });
        var wide = new List<string>();
        foreach (var page in site.Pages)
        {
            await reader.Open(page);
            await Look($"{page} closed");
            await reader.OpenAll();
            await Look($"{page} opened");
            await reader.Page.EvaluateAsync(
                """
                () => {
                  const root = document.documentElement;
                  root.style.fontSize = 2 * parseFloat(getComputedStyle(root).fontSize) + 'px';
                }
                """);
            await Look($"{page} opened, large");
            await reader.Page.EvaluateAsync("() => { for (const each of document.querySelectorAll('details')) each.open = false; }");
            await Look($"{page} closed, large");
        }

        Complaint.None(wide);

        // Machines have other fonts: what fits must not hang on the face.
        async Task Look(string state)
        {
            foreach (var face in Face.All)
            {
                await face.On(reader);
                wide.AddRange(await TooWide(reader, $"{state}, in {face.Name}"));
            }
        }
    }

    [Theory]
    [InlineData(1, 1.2)]
    [InlineData(2, 0.85)]
    public async Task A_simulated_face_is_as_wide_as_it_says(int face, double width)
    {
        await using var reader = await room.Seat(new Circumstances());
        await reader.OpenFront();
        var own = await WidthOfLine(reader);

        await Face.All[face].On(reader);

        Assert.Equal(width, await WidthOfLine(reader) / own, 0.03);
    }

    [Fact]
    public async Task A_text_that_is_too_wide_would_be_noticed()
    {
        await using var reader = await room.Seat(new Circumstances(), new ViewportSize { Width = 320, Height = 640 });
        await reader.OpenFront();
        await reader.Page.EvaluateAsync("() => document.querySelector('h1').style.whiteSpace = 'nowrap'");
        await reader.Page.EvaluateAsync("() => document.querySelector('h1').textContent = 'The Bird Table with a very long title'");

        Assert.NotEmpty(await TooWide(reader, "front"));
    }

    // A line of ordinary text: letters of all widths, and spaces.
    private static Task<double> WidthOfLine(Reader reader) => reader.Page.EvaluateAsync<double>(
        """
        () => {
          const line = document.body.appendChild(document.createElement('p'));
          line.style.cssText = 'position: absolute; white-space: nowrap';
          line.textContent = 'Turn the roof to the left until you hear the pin fall, then lift the tray out';
          const width = line.getBoundingClientRect().width;
          line.remove();
          return width;
        }
        """);

    // Whatever is drawn past the right or left edge, also where an ancestor cuts it off.
    internal static async Task<IEnumerable<string>> TooWide(Reader reader, string page)
    {
        var elements = await reader.Page.EvaluateAsync<string[]>(
            """
            () => {
              const leaves = box => box.right > innerWidth + 0.5 || box.left < -0.5;
              const cuts = each => each.scrollWidth > each.clientWidth + 1 && each.clientWidth > 0 && getComputedStyle(each).overflowX !== 'visible';
              const width = document.documentElement.scrollWidth;
              return [...document.body.querySelectorAll('*')]
                .filter(each => each.checkVisibility() && !each.closest('.skip, svg'))
                .filter(each => leaves(each.getBoundingClientRect()) || cuts(each))
                .map(each => each.outerHTML.slice(0, 120))
                .concat(width > innerWidth ? [`the page is ${width} px wide`] : []);
            }
            """);
        return elements.Select(element => $"{page}: {element}");
    }
}
