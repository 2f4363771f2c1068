using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests;

// Nothing on a page moves while it loads: a cumulative layout shift of 0 (W3C WICG, Layout Instability).
public class ShiftTests(ReadingRoom room)
{
    // Writes a shift as its size and what moved from where to where, in pixels.
    private const string Told =
        """
        const rect = ({ x, y, width, height }) => [x, y, width, height].join(' ');
        const moved = source => `${source.node?.outerHTML ?? source.node?.textContent} from ${rect(source.previousRect)} to ${rect(source.currentRect)}`;
        const told = shift => `${shift.value}: ` + shift.sources.map(moved).join('; ');
        """;

    public static TheoryData<string, Circumstances> Loads =>
    [
        .. from theme in Circumstances.Themes
           from look in Circumstances.LooksIn(theme)
           select new TheoryDataRow<string, Circumstances>(SmallBook.Title, look),
        .. from book in Shelf.Names.Except([SmallBook.Title]) select new TheoryDataRow<string, Circumstances>(book, new()),
    ];

    public static TheoryData<Circumstances> Looks => [.. from theme in Circumstances.Themes from look in Circumstances.LooksIn(theme) select look];

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

    // A page that comes slowly may be drawn wherever the browser stops reading: behind a tag, behind a text, behind the blank between two tags.
    [Theory]
    [MemberData(nameof(Looks), DisableDiscoveryEnumeration = true)]
    public async Task Nothing_moves_while_a_page_comes_in_pieces(Circumstances circumstances)
    {
        var site = room.Shelf[SmallBook.Title, circumstances];
        await using var reader = await room.Seat(site, circumstances);
        var moved = new List<string>();
        foreach (var page in site.KindsOfPages)
        {
            await reader.Open(page);
            moved.AddRange((await ShiftsInPieces(reader, site.Text(page))).Select(shift => $"{page}: {shift}"));
        }

        Complaint.None(moved);
    }

    [Fact]
    public async Task A_page_whose_end_moves_its_beginning_would_be_noticed()
    {
        var site = room.Shelf[SmallBook.Title, new()];
        await using var reader = await room.Seat(site, new());
        await reader.OpenFront();

        Assert.NotEmpty(await ShiftsInPieces(reader, "<p align='center'><b>First</b> <b>and second</b></p>"));
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

    // The page is built anew from its text, node by node as a parser does, and drawn after each; a drawing comes whole.
    private static Task<string[]> ShiftsInPieces(Reader reader, string page) => reader.Page.EvaluateAsync<string[]>(
        $$"""
        async page => {
          const shifts = [];
          let last;
          const drawn = () => new Promise(done => requestAnimationFrame(() => setTimeout(done)));
          const grow = async (to, from) => {
            for (const child of from.childNodes) {
              const whole = child.nodeName === 'svg';
              const copy = to.appendChild(child.cloneNode(whole));
              last = copy.outerHTML ?? copy.data;
              await drawn();
              if (!whole) await grow(copy, child);
            }
          };
          document.body.replaceChildren();
          await drawn();
          await drawn();
          {{Told}}
          const watch = new PerformanceObserver(list => shifts.push(...list.getEntries().map(entry => `with ${last.trim()} came ${told(entry)}`)));
          watch.observe({ type: 'layout-shift' });
          await grow(document.body, new DOMParser().parseFromString(page, 'text/html').body);
          await drawn();
          return shifts;
        }
        """,
        page);

    // A shift is recorded when the frame after it is drawn.
    private static Task<string[]> Shifts(Reader reader) => reader.Page.EvaluateAsync<string[]>(
        $$"""
        async () => {
          const shifts = [];
          const watch = new PerformanceObserver(list => shifts.push(...list.getEntries()));
          watch.observe({ type: 'layout-shift', buffered: true });
          for (let frame = 0; frame < 3; frame++) await new Promise(done => requestAnimationFrame(() => setTimeout(done)));
          shifts.push(...watch.takeRecords());
          {{Told}}
          return shifts.map(told);
        }
        """);
}
