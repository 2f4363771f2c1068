using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using HintBook.Books;
using HintBook.Sittings;
using HintBook.Sittings.Page;
using HintBook.Tests.Books;
using static HintBook.Tests.Sittings.SimulatedSittings;

namespace HintBook.Tests.Sittings;

/// <summary>The maker's page: what its plots show is what its tables say, measured by the marks of the plots themselves.</summary>
public sealed class SittingsPageTests
{
    private const StringComparison Sensitive = StringComparison.Ordinal;

    // Half the last digit that a picture's coordinates have.
    private const double Near = 0.02;

    private static readonly Stage[] Stages =
    [
        A.Stage("lid") with { Title = A.Value("The lid"), Minutes = 10 },
        A.Stage("well") with { Title = A.Value("The well & <its> “rope”") },
        A.Stage("tray") with { Title = A.Value("The tray") },
    ];

    private static readonly ImmutableArray<SatStage> Rows =
    [
        Row("Ann", "lid", 7), Row("Ann", "well", 12.5, HelpTaken.Clue), Row("Ann", "tray", 30, HelpTaken.Answer, remark: "stiff <b>"),
        Row("Ben", "lid", 9, HelpTaken.Nudge), Row("Ben", "well", null, HelpTaken.Nudge), Row("Ben", "tray", 41, HelpTaken.Answer, gaveUp: true),
        Row("Cleo", "lid", 7.5, HelpTaken.Answer), Row("Cleo", "well", 3, HelpTaken.Answer),
        Row("Dan", "lid", 22), Row("Eve", "lid", 8, HelpTaken.Clue), Row("Finn", "lid", 11, HelpTaken.Nudge),
    ];

    [Fact]
    public void The_page_is_well_formed_and_needs_nothing_from_elsewhere()
    {
        var text = Page(Rows);
        var page = XDocument.Parse(text);

        string[] forbidden = ["script", "link", "img", "a", "iframe"];
        Assert.DoesNotContain(page.Descendants(), element => forbidden.Contains(element.Name.LocalName));
        Assert.DoesNotContain("url(", text, Sensitive);
        Assert.DoesNotContain("@import", text, Sensitive);
        Assert.Equal(4, page.Descendants().Count(element => element.Name.LocalName == "svg"));
        Assert.All(
            page.Descendants().Where(element => element.Name.LocalName == "svg"),
            svg => Assert.Equal("http://www.w3.org/2000/svg", svg.Name.NamespaceName));
        var ids = page.Descendants().Attributes("id").Select(id => id.Value).ToArray();
        Assert.Equal(ids.Length, ids.Distinct(StringComparer.Ordinal).Count());
        Assert.All(
            page.Descendants().Attributes("aria-labelledby").SelectMany(names => names.Value.Split(' ')),
            name => Assert.Contains(name, ids));
        // A browser would take it for a tag that is never closed.
        Assert.DoesNotMatch(new Regex("<(?!meta|line|polyline|rect)[a-z]+[^>]*/>", RegexOptions.None, TimeSpan.FromSeconds(5)), text);
    }

    [Fact]
    public void The_same_sittings_give_the_same_page() => Assert.Equal(Page(Rows), Page(Rows));

    [Fact]
    public void A_dot_stands_at_its_minutes()
    {
        var plot = Plot("time");
        var minutes = ScaleAcross(plot);

        var dots = All(plot, "circle", "sitting").ToArray();

        Assert.Equal(
            ["Ann: 12.5 min", "Ann: 30 min", "Ann: 7 min", "Ben: 9 min", "Cleo: 3 min", "Cleo: 7.5 min", "Dan: 22 min", "Eve: 8 min", "Finn: 11 min"],
            dots.Select(Says).Order(StringComparer.Ordinal));
        Assert.All(dots, dot => Assert.Equal(MinutesIn(Says(dot)), minutes(Number(dot, "cx")), Near));
    }

    [Fact]
    public void Box_and_middle_of_a_stage_stand_where_its_table_says()
    {
        var plot = Plot("time");
        var minutes = ScaleAcross(plot);
        var row = Table("Minutes for each stage")[0];

        // Of 7, 7.5, 8, 9, 11 and 22 by hand: the middle is 8.5, the quarters are 7.625 and 10.5 (definition 7); six times hold the middle within their ends.
        Assert.Equal(["1 The lid", "6", "8.5", "7.6–10.5", "7–22", "10", "7, 7.5, 8, 9, 11, 22"], row);
        var box = All(plot, "rect", "half").First();
        Assert.Equal(7.625, minutes(Number(box, "x")), Near);
        Assert.Equal(10.5, minutes(Number(box, "x") + Number(box, "width")), Near);
        Assert.Equal(8.5, minutes(Number(All(plot, "line", "median").First(), "x1")), Near);
        var sure = Assert.Single(All(plot, "line", "sure"));
        Assert.Equal((7, 22), (Math.Round(minutes(Number(sure, "x1"))), Math.Round(minutes(Number(sure, "x2")))));
    }

    [Fact]
    public void A_bar_of_help_is_as_long_as_its_share_of_people()
    {
        var plot = Plot("help");
        var share = ScaleAcross(plot);

        var table = Table("People and the help they took");

        Assert.Equal(["1 The lid", "6", "4", "2", "1", "0"], table[0][..6]);
        Assert.Equal(["2 The well & <its> “rope”", "3", "3", "2", "1", "0"], table[1][..6]);
        Assert.Equal(["3 The tray", "2", "2", "2", "2", "1"], table[2][..6]);
        foreach (var (step, kind) in new[] { "nudge", "clue", "answer", "gave-up" }.Index().Select(each => (each.Index, each.Item)))
        {
            var bars = All(plot, "rect", kind).ToArray();
            Assert.Equal(
                table.Select(row => 100 * double.Parse(row[step + 2], CultureInfo.InvariantCulture) / double.Parse(row[1], CultureInfo.InvariantCulture)),
                bars.Select(bar => share(Number(bar, "x") + Number(bar, "width"))),
                (wanted, drawn) => Math.Abs(wanted - drawn) < Near);
        }
    }

    [Fact]
    public void Along_the_trail_stand_the_middle_of_each_stage_and_the_share_that_read_the_answer()
    {
        var plot = Plot("trail");
        var marks = All(plot, "text", "mark beside").ToArray();
        var minutes = Scale(marks.Where(mark => !mark.Value.Contains('%', Sensitive)), "y", shift: -4);
        var shares = Scale(marks.Where(mark => mark.Value.Contains('%', Sensitive)), "y", shift: -4);

        Assert.Equal([8.5, 7.75, 30], All(plot, "circle", "middle").Select(dot => Math.Round(minutes(Number(dot, "cy")), 1)), (a, b) => Math.Abs(a - b) < 0.1);
        Assert.Equal([100 / 6.0, 100 / 3.0, 100], All(plot, "circle", "share").Select(dot => shares(Number(dot, "cy"))), (a, b) => Math.Abs(a - b) < Near);
        Assert.Equal(["1 of 6", "1 of 3", "2 of 2"], All(plot, "circle", "share").Select(Says));
    }

    [Fact]
    public void A_line_goes_up_when_a_stage_is_done_and_ends_with_a_cross_where_somebody_gave_up()
    {
        var plot = Plot("lines");
        var minutes = ScaleAcross(plot);
        var done = Scale(All(plot, "text", "mark beside"), "y", shift: -4);

        var ann = PointsOf(All(plot, "polyline", "line look-0").Single());
        var ben = PointsOf(All(plot, "polyline", "line look-1").Single());

        Assert.Equal([(0, 0), (7, 0), (7, 1), (19.5, 1), (19.5, 2), (49.5, 2), (49.5, 3)], ann);
        Assert.Equal([(0, 0), (9, 0), (9, 1), (9, 1), (9, 2), (50, 2)], ben);
        Assert.Equal(["Ben", "2", "50", "1", "1 at 9, 2 at 9, 3 at 50 (gave up)"], Table("The sittings")[1]);
        Assert.Equal(["Ann", "3", "49.5", "0", "1 at 7, 2 at 19.5, 3 at 49.5"], Table("The sittings")[0]);

        IEnumerable<(double, double)> PointsOf(XElement line) =>
            from point in line.Attribute("points")!.Value.Split(' ')
            let at = point.Split(',').Select(part => double.Parse(part, CultureInfo.InvariantCulture)).ToArray()
            select (Math.Round(minutes(at[0]), 1), Math.Round(done(at[1]), 1));
    }

    [Fact]
    public void What_an_author_wrote_stays_text()
    {
        var page = XDocument.Parse(Page([.. Rows, Row("Gail\u0001<i>", "lid", 5, remark: "a \uD800 lone half \u0007")]));

        Assert.Contains(page.Descendants("li"), item => item.Value == "stiff <b>");
        Assert.Contains(page.Descendants("li"), item => item.Value == "a \uFFFD lone half ");
        Assert.Contains(page.Descendants("th"), head => head.Value == "Gail<i>");
    }

    [Fact]
    public void What_several_people_remarked_in_the_same_words_stands_once()
    {
        var page = XDocument.Parse(Page([Row("Ann", "lid", 5, remark: "stiff"), Row("Ben", "lid", 5, remark: "dark"), Row("Cleo", "lid", 5, remark: "stiff")]));

        Assert.Equal(["stiff (2 times)", "dark"], page.Descendants("ul").Last().Elements("li").Select(item => item.Value));
    }

    [Fact]
    public void Ten_thousand_sittings_are_summed_up_and_not_drawn_one_by_one()
    {
        var dice = new Dice(5);

        var text = Page([.. SimulatedSittings.At("lid", 10_000, dice), .. SimulatedSittings.At("well", 10_000, dice)]);

        Assert.InRange(text.Length, 0, 200_000);
        Assert.Contains("Of 10,000 sittings the first 40 are drawn and listed.", text, Sensitive);
        Assert.Contains("Of stages with more than 200 times no dots are drawn.", text, Sensitive);
    }

    [Fact]
    public void One_sitting_has_its_page_and_says_how_little_it_tells()
    {
        var text = Page([Row("Ann", "lid", 0)]);

        Assert.Equal(4, XDocument.Parse(text).Descendants().Count(element => element.Name.LocalName == "svg"));
        Assert.Contains("Noted: 1 person, 1 row.", text, Sensitive);
        Assert.Contains("the middle one is a rough guide", text, Sensitive);
        Assert.DoesNotContain("NaN", text, Sensitive);
    }

    [Theory]
    [InlineData(0, 1, 1)]
    [InlineData(1, 1, 1)]
    [InlineData(6, 1, 6)]
    [InlineData(6.5, 2, 8)]
    [InlineData(31, 10, 40)]
    [InlineData(9999, 2000, 10_000)]
    public void A_scale_has_round_marks_and_reaches_what_it_must(double value, double step, double most)
    {
        var axis = Axis.Reaching(value, 100, 200);

        Assert.Equal((step, most), (axis.Step, axis.Most));
        Assert.Equal((100, 200), (axis.At(0), axis.At(most)));
        Assert.Equal(most, axis.Marks.Last());
    }

    [Fact]
    public void Where_there_is_one_way_several_solvers_wait_for_every_stage_of_it()
    {
        var book = Book(Rows, Stages);

        Assert.Contains(
            "There is one way, so several solvers wait for every stage of it.", SittingsText.Write(book, BoxSittings.Of(book, A.Chain(book), 500)), Sensitive);
    }

    [Fact]
    public void Without_sittings_the_page_says_how_to_note_them() => Assert.Contains("sittings/*.csv", Page([]), Sensitive);

    [Fact]
    public void Rows_that_name_nobody_are_counted_and_make_no_line() =>
        Assert.Contains("No row says who it is about", Page([Row("", "lid", 5)]), Sensitive);

    private static string Page(ImmutableArray<SatStage> rows)
    {
        var book = Book(rows, Stages);
        return SittingsPage.Write(book, BoxSittings.Of(book, A.Chain(book), 500));
    }

    private static XElement Plot(string id) => XDocument.Parse(Page(Rows)).Descendants()
        .Single(element => element.Name.LocalName == "svg" && element.Attribute("aria-labelledby")!.Value.StartsWith($"{id}-", Sensitive));

    private static string[][] Table(string caption) =>
    [
        .. XDocument.Parse(Page(Rows)).Descendants("table").Single(table => table.Element("caption")!.Value == caption)
            .Element("tbody")!.Elements("tr").Select(row => row.Elements().Select(cell => cell.Value).ToArray()),
    ];

    private static IEnumerable<XElement> All(XElement plot, string element, string kind) =>
        plot.Descendants().Where(each => each.Name.LocalName == element && each.Attribute("class")!.Value == kind);

    private static string Says(XElement dot) => dot.Elements().Single(each => each.Name.LocalName == "title").Value;

    private static double MinutesIn(string says) => double.Parse(says.Split(": ")[1].Replace(" min", "", Sensitive), CultureInfo.InvariantCulture);

    private static double Number(XElement element, string name) => double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    private static Func<double, double> ScaleAcross(XElement plot) =>
        Scale(All(plot, "text", "mark below").Where(mark => char.IsDigit(mark.Value[0])), "x");

    // What a place on a plot means, by its first and its last mark.
    private static Func<double, double> Scale(IEnumerable<XElement> marks, string direction, double shift = 0)
    {
        var all = marks.Where(mark => char.IsDigit(mark.Value[0]))
            .Select(mark => (At: Number(mark, direction) + shift, Value: double.Parse(mark.Value.TrimEnd('%', '\u00A0'), CultureInfo.InvariantCulture)))
            .ToArray();
        var (first, last) = (all[0], all[^1]);
        return place => first.Value + ((place - first.At) / (last.At - first.At) * (last.Value - first.Value));
    }
}
