using System.Globalization;
using System.Xml.Linq;
using HintBook.Books;
using HintBook.Text;
using static HintBook.Sittings.Page.Html;

namespace HintBook.Sittings.Page;

/// <summary>
/// What sittings tell, as one page with plots for the maker: it needs no network and no script, and names all that readers should find out for themselves.
/// </summary>
public static class SittingsPage
{
    private const int MostTimes = TimePlot.MostDots;

    /// <summary>The page, HTML that is XML as well. The same input gives the same text.</summary>
    /// <param name="book">The book.</param>
    /// <param name="sittings">What its sittings tell.</param>
    public static string Write(Book book, BoxSittings sittings)
    {
        var title = $"Sittings: {book.Title}";
        return Document(new("html",
            new XAttribute("lang", "en"),
            new XElement("head",
                new XElement("meta", new XAttribute("charset", "utf-8")),
                new XElement("meta", new XAttribute("name", "viewport"), new XAttribute("content", "width=device-width, initial-scale=1")),
                new XElement("meta", new XAttribute("name", "robots"), new XAttribute("content", "noindex, nofollow")),
                new XElement("title", title),
                new XElement("style", PageStyle.Css)),
            new XElement("body", new XElement("main",
                new XElement("h1", title),
                Paragraph("For the maker: this page names every stage, and isn’t part of the site.", "quiet"),
                sittings.Whole is { } whole
                    ? Sections(book, sittings, whole)
                    : Paragraph(
                        "Nobody’s sitting is noted yet. Write who, stage, minutes, help and remarks into sittings/*.csv, a row for each person and stage.")))));
    }

    private static IEnumerable<XElement> Sections(Book book, BoxSittings sittings, WholeBox whole)
    {
        var titles = new Titles(book);
        return
        [
            Paragraph($"Noted: {Words.Count(sittings.People, "person", "people")}, {Words.Count(book.Sittings.Length, "row")}."),
            .. Rewrites(sittings, titles),
            .. Whole(sittings, whole, titles),
            .. Times(sittings, book, titles),
            .. Help(sittings, titles),
            .. Trail(sittings, titles),
            .. Lines(book),
            .. Remarks(sittings, titles),
        ];
    }

    private static IEnumerable<XElement> Rewrites(BoxSittings sittings, Titles titles) =>
    [
        new("h2", "Rewrite first"),
        sittings.Rewrites.IsEmpty
            ? Paragraph("No step of help was read by three people or more of whom half had to go on to the next one.")
            : new("ol", sittings.Rewrites.Select(each => new XElement("li",
                titles.Of(each.Stage), $": {SittingWords.Advice(each.Step)} ({SittingWords.Say(each.WentOn)})."))),
    ];

    private static IEnumerable<XElement> Whole(BoxSittings sittings, WholeBox whole, Titles titles) =>
    [
        new("h2", "The whole box"),
        Paragraph(
            $"Opened {Words.Grouped(whole.Runs)} times by chance, each stage taking one of its times (seed {WholeBox.Seed}); where fewer than three were "
            + "noted, a guess stands for them. Stages that nobody needs are left out."),
        Table(
            "How long the whole box takes",
            [new("for", false), new("one of ten within"), new("half within"), new("nine of ten within")],
            [Spread("one solver", whole.Alone), Spread("several, who work at whatever is open", whole.Together)]),
        Paragraph(string.Create(
            CultureInfo.InvariantCulture,
            $"The longest chain by its means: {whole.Expected.Mean:0} minutes, give or take {whole.Expected.Deviation:0}. Several solvers wait for its "
            + $"stages.")),
        Table(
            "How often each stage is on the longest chain",
            [new("stage", false), new("of all runs"), new("on the chain by its means", false)],
            sittings.Way.Zip(whole.Critical).Select((each, number) => new object[]
            {
                titles.Numbered(each.First.Stage), SittingWords.PerCent(each.Second), whole.Chain.Contains(number) ? "yes" : "no",
            })),
    ];

    private static object[] Spread(string who, (double Tenth, double Half, double NineTenths) minutes) =>
        [who, SittingWords.Length(minutes.Tenth), SittingWords.Length(minutes.Half), SittingWords.Length(minutes.NineTenths)];

    private static IEnumerable<XElement> Times(BoxSittings sittings, Book book, Titles titles) =>
    [
        new("h2", "Time for each stage"),
        Figure(
            "Time for each stage",
            TimePlot.Draw(sittings.Stages, book.Sittings.ToLookup(row => row.Stage)),
            "Each dot is a sitting. The box reaches from the quarter to the three quarters, the thick line stands at the middle. "
            + "The line below the box holds the middle of all people, in 95 of 100 cases. Who gave up isn’t counted. "
            + (sittings.Stages.Any(each => each.Times.Length > MostTimes) ? $"Of stages with more than {MostTimes} times no dots are drawn. " : "")
            + (sittings.Stages.Any(each => each.Minutes is { Bounds: null }) ? SittingWords.FewTimes : "")),
        Table(
            "Minutes for each stage",
            [new("stage", false), new("times"), new("middle"), new("half of them"), new("middle of all people"), new("your guess"), new("each", false)],
            sittings.Stages.Select(each => new object[]
            {
                titles.Numbered(each.Stage),
                each.Times.Length,
                each.Minutes is { } minutes ? SittingWords.Number(minutes.Median) : "",
                each.Minutes is { } spread ? SittingWords.Between(spread.Quarter, spread.ThreeQuarters) : "",
                each.Minutes?.Bounds is { } bounds ? SittingWords.Between(bounds.Low, bounds.High) : "",
                each.Stage.Minutes is { } guess ? SittingWords.Number(guess) : "",
                each.Times.Length > MostTimes ? "too many" : string.Join(", ", each.Times.Order().Select(SittingWords.Number)),
            })),
    ];

    private static IEnumerable<XElement> Help(BoxSittings sittings, Titles titles) =>
    [
        new("h2", "Who needed which step of help"),
        new(
            "ul",
            new XAttribute("class", "key"),
            HelpPlot.Steps.Select(step => new XElement("li", new XElement("i", new XAttribute("class", step.Kind)), step.Name))),
        Figure(
            "Who needed which step of help",
            HelpPlot.Draw(sittings.Stages),
            "From top to bottom: nudge, clue, answer, gave up; each of all who were at the stage."),
        Table(
            "People and the help they took",
            [new("stage", false), new("people"), .. HelpPlot.Steps.Select(step => new Column(step.Name)), new("of those who read the nudge went on", false)],
            sittings.Stages.Select(each => (object[])
            [
                titles.Numbered(each.Stage), each.People, .. HelpPlot.Of(each).Select(did => (object)did),
                each.WentOnToClue.Of == 0 ? "" : SittingWords.Say(each.WentOnToClue),
            ])),
    ];

    private static IEnumerable<XElement> Trail(BoxSittings sittings, Titles titles) =>
    [
        new("h2", "Difficulty along the trail"),
        Figure(
            "Difficulty along the trail",
            TrailPlot.Draw(sittings.Stages),
            "Above: the middle of the minutes at each stage, and from quarter to quarter. Below: how many read the answer, "
            + "and between which bounds the share of all people lies in 95 of 100 cases."),
        Table(
            "Minutes and answers along the trail",
            [new("stage", false), new("minutes"), new("half of them"), new("read the answer", false)],
            sittings.Stages.Select(each => new object[]
            {
                titles.Numbered(each.Stage),
                each.Minutes is { } minutes ? SittingWords.Number(minutes.Median) : "",
                each.Minutes is { } spread ? SittingWords.Between(spread.Quarter, spread.ThreeQuarters) : "",
                each.People == 0 ? "nobody was here" : SittingWords.Say(each.ReadAnswer),
            })),
    ];

    private static IEnumerable<XElement> Lines(Book book)
    {
        var (lines, all) = SittingLine.Of(book, LinesPlot.MostLines);
        yield return new("h2", "Each sitting over time");
        if (lines.IsEmpty)
        {
            yield return Paragraph("No row says who it is about, so the sittings can’t be told apart.");
            yield break;
        }

        yield return Figure(
            "Each sitting over time",
            LinesPlot.Draw(lines),
            "A line for each sitting goes up with every stage that is done, in the order of the rows; a cross stands where somebody gave up. "
            + (lines.Any(line => line.Untimed > 0) ? "A stage without a time adds nothing to a line’s minutes. " : "")
            + (all > lines.Length ? $"Of {Words.Grouped(all)} sittings the first {lines.Length} are drawn and listed." : ""));
        yield return Table(
            "The sittings",
            [new("who", false), new("stages done"), new("minutes"), new("without a time"), new("stage, at which minute", false)],
            lines.Select(line => new object[]
            {
                line.Who, line.Done, SittingWords.Number(line.Minutes), line.Untimed,
                string.Join(", ", line.Steps.Select(step => $"{step.Stage} at {SittingWords.Number(step.Minutes)}{(step.GaveUp ? " (gave up)" : "")}")),
            }));
    }

    private static IEnumerable<XElement> Remarks(BoxSittings sittings, Titles titles)
    {
        if (sittings.Stages.All(each => each.Remarks.IsEmpty))
            yield break;
        yield return new("h2", "What was remarked");
        foreach (var each in sittings.Stages.Where(each => !each.Remarks.IsEmpty))
        {
            yield return new("h3", titles.Numbered(each.Stage));
            yield return new("ul", each.Remarks.CountBy(remark => remark, StringComparer.Ordinal).Select(remark => new XElement("li",
                new XElement("span", new XAttribute("dir", "auto"), remark.Key),
                remark.Value > 1 ? $" ({Words.Count(remark.Value, "time")})" : null)));
        }
    }

    private static XElement Figure(string name, XElement plot, string caption) =>
        new("figure", Wide($"Plot: {name}", plot), new XElement("figcaption", caption));

    private static XElement Paragraph(string text, string? kind = null) => new("p", kind is null ? null : new XAttribute("class", kind), text);

    /// <summary>Titles of stages in the book's language.</summary>
    private sealed class Titles(Book book)
    {
        private readonly Dictionary<string, int> numbers = book.Stages.Index().ToDictionary(each => each.Item.Id.Value, each => each.Index + 1);

        public XElement Of(Stage stage) => new("span", new XAttribute("lang", book.Language.Value), new XAttribute("dir", "auto"), stage.Title.Value);

        public object[] Numbered(Stage stage) => [$"{numbers[stage.Id.Value]} ", Of(stage)];
    }
}
