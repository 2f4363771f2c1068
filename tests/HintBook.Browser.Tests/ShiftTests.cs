using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests;

// Nothing on a page moves while it loads: a cumulative layout shift of 0 (W3C WICG, Layout Instability).
public class ShiftTests(ReadingRoom room)
{
    public static TheoryData<string, Circumstances> Loads =>
    [
        .. from theme in Circumstances.Themes
           from look in Circumstances.LooksIn(theme)
           select new TheoryDataRow<string, Circumstances>(SmallBook.Title, look),
        .. from book in Shelf.Names.Except([SmallBook.Title]) select new TheoryDataRow<string, Circumstances>(book, new()),
    ];

    [Theory]
    [MemberData(nameof(Loads), DisableDiscoveryEnumeration = true)]
    public async Task Nothing_moves_while_a_page_loads(string book, Circumstances circumstances)
    {
        var site = room.Shelf[book, circumstances];
        await using var reader = await room.Seat(site, circumstances);
        var moved = new List<string>();
        foreach (var page in book == SmallBook.Title ? site.KindsOfPages : site.Pages)
        {
            await reader.Open(page);
            await reader.LoadPictures();
            moved.AddRange((await Shifts(reader)).Select(shift => $"{page}: {shift}"));
        }

        Complaint.None(moved);
    }

    // A page that comes slowly may be drawn when a link has begun and its words haven't come: the text before it must not move when they do.
    [Theory]
    [MemberData(nameof(Loads), DisableDiscoveryEnumeration = true)]
    public async Task The_words_of_a_link_move_no_text_before_it(string book, Circumstances circumstances)
    {
        var site = room.Shelf[book, circumstances];
        await using var reader = await room.Seat(site, circumstances);
        var moved = new List<string>();
        foreach (var page in site.KindsOfPages)
        {
            await reader.Open(page);
            await reader.OpenAll();
            moved.AddRange((await MovedByLinks(reader)).Select(text => $"{page}: {text}"));
        }

        Complaint.None(moved);
    }

    [Fact]
    public async Task Something_that_moves_would_be_noticed()
    {
        await using var reader = await room.Seat(new Circumstances());
        await reader.OpenFront();
        await Shifts(reader);

        await reader.Page.EvaluateAsync("() => { document.querySelector('h1').style.marginTop = '200px'; }");

        Assert.NotEmpty(await Shifts(reader));
    }

    private static Task<string[]> MovedByLinks(Reader reader) => reader.Page.EvaluateAsync<string[]>(
        """
        () => {
          const top = node => {
            const range = document.createRange();
            range.selectNodeContents(node);
            return range.getClientRects()[0]?.top;
          };
          const moved = [];
          for (const link of document.querySelectorAll('a')) {
            const before = link.previousSibling;
            if (before?.nodeType !== Node.TEXT_NODE || !before.data.trim()) continue;
            const words = [...link.childNodes];
            const whole = top(before);
            link.replaceChildren();
            const begun = top(before);
            link.replaceChildren(...words);
            if (whole !== begun) moved.push(`${before.data.trim()} from ${begun} to ${whole}`);
          }
          return moved;
        }
        """);

    // A shift is recorded when the frame after it is drawn.
    private static Task<string[]> Shifts(Reader reader) => reader.Page.EvaluateAsync<string[]>(
        """
        async () => {
          const shifts = [];
          const watch = new PerformanceObserver(list => shifts.push(...list.getEntries()));
          watch.observe({ type: 'layout-shift', buffered: true });
          for (let frame = 0; frame < 3; frame++) await new Promise(done => requestAnimationFrame(() => setTimeout(done)));
          shifts.push(...watch.takeRecords());
          const rect = ({ x, y, width, height }) => [x, y, width, height].join(' ');
          const told = source =>
            `${source.node?.outerHTML ?? source.node?.textContent} from ${rect(source.previousRect)} to ${rect(source.currentRect)}`;
          return shifts.map(shift => `${shift.value}: ` + shift.sources.map(told).join('; '));
        }
        """);
}
