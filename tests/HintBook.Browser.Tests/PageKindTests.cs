using HintBook.Browser.Tests.Reading;
using UglyToad.PdfPig;

namespace HintBook.Browser.Tests;

// Pages that the other books don't have: a shelf, a film, many questions of “Where am I?”, sixty steps. Whatever is asked of all pages is asked of these.
public class PageKindTests(ReadingRoom room)
{
    public static TheoryData<string> Themes => [.. Circumstances.Themes];

    [Theory]
    [MemberData(nameof(Themes))]
    public async Task No_page_breaks_a_rule_by_day_by_night_or_in_forced_colours(string theme)
    {
        var books = room.Shelf.Pair(theme);
        await using var reader = await Seat(theme);
        var broken = new List<string>();
        foreach (var page in books.Pages)
        {
            await reader.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light, ForcedColors = ForcedColors.None });
            await Open(reader, page);
            // What a theme hides it hides on every page.
            if (theme == Pages.Theme.Default)
                broken.AddRange(await AccessTests.Broken(reader, $"{page} closed"));
            await reader.OpenAll();
            broken.AddRange(await AccessTests.Broken(reader, $"{page} opened"));
            await reader.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
            broken.AddRange(await AccessTests.Broken(reader, $"{page} opened, dark"));
            // The browser paints texts in the system's colours then, and goes on telling the page's own: their contrast isn't to be measured.
            await reader.Page.EmulateMediaAsync(new() { ForcedColors = ForcedColors.Active });
            broken.AddRange((await WithoutEdge(reader)).Select(control => $"{page}, forced colours: {control} has no edge."));
        }

        Complaint.None(broken);
    }

    [Theory]
    [MemberData(nameof(Themes))]
    public async Task Nothing_scrolls_sideways_at_320_pixels(string theme)
    {
        var books = room.Shelf.Pair(theme);
        await using var reader = await Seat(theme, new() { Width = 320, Height = 640 });
        var wide = new List<string>();
        foreach (var page in books.Pages)
        {
            await Open(reader, page);
            wide.AddRange(await WidthTests.TooWide(reader, $"{page} closed"));
            await reader.OpenAll();
            wide.AddRange(await WidthTests.TooWide(reader, $"{page} opened"));
        }

        Complaint.None(wide);
    }

    [Theory]
    [MemberData(nameof(Themes))]
    public async Task The_keyboard_reaches_all_that_can_be_used_and_shows_where_it_is(string theme)
    {
        var books = room.Shelf.Pair(theme);
        await using var reader = await Seat(theme);
        var missed = new List<string>();
        foreach (var page in books.Pages)
        {
            await Open(reader, page);
            missed.AddRange((await NotReached(reader)).Select(control => $"{page}: {control}"));
        }

        Complaint.None(missed);
    }

    [Theory]
    [MemberData(nameof(Themes))]
    public async Task Printed_no_sheet_is_empty_and_nothing_is_cut_off(string theme)
    {
        var books = room.Shelf.Pair(theme);
        await using var reader = await Seat(theme, new() { Width = 680, Height = 1009 });
        var wrong = new List<string>();
        foreach (var page in books.Pages)
        {
            await reader.Page.EmulateMediaAsync(new() { Media = Media.Screen });
            await Open(reader, page);
            await reader.OpenAll();
            await reader.LoadPictures();
            await reader.Page.EmulateMediaAsync(new() { Media = Media.Print });
            wrong.AddRange(await WidthTests.TooWide(reader, page));
            using var sheets = PdfDocument.Open(await reader.Page.PdfAsync(new()
            {
                Format = "A4",
                Margin = new() { Top = "15mm", Right = "15mm", Bottom = "15mm", Left = "15mm" },
            }));
            wrong.AddRange(sheets.GetPages().Where(sheet => sheet.Letters.Count == 0).Select(sheet => $"{page}: sheet {sheet.Number} is empty."));
        }

        Complaint.None(wrong);
    }

    [Fact]
    public void These_pages_are_there()
    {
        var pages = room.Shelf.Pair(Pages.Theme.Default).Pages;

        string[] wanted =
        [
            "bird-table/solution.html", "index.html",
            "long-box/index.html", "long-box/reset.html", "long-box/solution.html", "long-box/where.html",
        ];
        Assert.Empty(wanted.Except(pages));
        Assert.InRange(pages.Count, 10, 14);
    }

    [Fact]
    public async Task What_the_keyboard_cannot_reach_or_does_not_show_would_be_noticed()
    {
        await using var reader = await Seat(Pages.Theme.Default);
        await Open(reader, "index.html");
        await reader.Page.EvaluateAsync("() => { document.querySelector('.boxes a').tabIndex = -1; }");
        Assert.Single(await NotReached(reader));
        await Open(reader, "index.html");
        await reader.Page.EvaluateAsync("() => { document.querySelector('.boxes a').style.outline = 'none'; }");
        Assert.Single(await NotReached(reader));
    }

    private async Task Open(Reader reader, string page) => await reader.Page.GotoAsync(room.Shelf.Pair(reader.Theme).Address + page);

    private Task<Reader> Seat(string theme, ViewportSize? size = null) => room.Seat(new Circumstances(Theme: theme), size);

    // In forced colours a ground is gone: what is pressed shows by a border, a line below it or the mark of its list.
    private static Task<string[]> WithoutEdge(Reader reader) => reader.Page.EvaluateAsync<string[]>(
        """
        () => [...document.querySelectorAll('button, a')].filter(control => control.checkVisibility() && !control.closest('.skip')).filter(control => {
          const edged = each => {
            const style = getComputedStyle(each);
            return parseFloat(style.borderBottomWidth) > 0 && style.borderBottomStyle !== 'none' || style.textDecorationLine.includes('underline');
          };
          return !edged(control) && ![...control.querySelectorAll('*')].some(edged) && !edged(control.parentElement);
        }).map(control => control.outerHTML.slice(0, 120))
        """);

    // Everything that can be used is met by the Tab key once, and has a ring around it then.
    private static async Task<string[]> NotReached(Reader reader)
    {
        var presses = await reader.Page.EvaluateAsync<int>(
            """
            () => {
              const all = [...document.querySelectorAll('a[href], button, input, summary, video[controls]')]
                .filter(each => each.checkVisibility({ opacityProperty: true, visibilityProperty: true }) && !each.closest('[inert]'));
              globalThis.waiting = new Set(all);
              globalThis.ringless = new Set();
              document.addEventListener('focusin', ({ target }) => {
                waiting.delete(target);
                const { outlineStyle, outlineWidth } = getComputedStyle(target);
                if (outlineStyle === 'none' || parseFloat(outlineWidth) < 1) ringless.add(target);
              });
              return all.length + 12 * document.querySelectorAll('video').length;
            }
            """);
        for (var press = 0; press < presses; press++)
            await reader.Page.Keyboard.PressAsync("Tab");
        return await reader.Page.EvaluateAsync<string[]>(
            """
            () => [
              ...[...waiting].map(each => `never reached: ${each.outerHTML.slice(0, 120)}`),
              ...[...ringless].map(each => `has no ring: ${each.outerHTML.slice(0, 120)}`),
            ]
            """);
    }
}
