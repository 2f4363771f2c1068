using CsCheck;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Mechanism.Places;
using HintBook.Text;

namespace HintBook.Tests.Mechanism.Places;

/// <summary>“Where am I?” as identification. Laws that the finished pages must keep are tried with a program of their own, in Pages/Walking.</summary>
public class PlaceTreeTests(ITestOutputHelper output)
{
    [Fact]
    public void Every_place_of_a_box_ends_at_a_next_stage_or_among_those_that_nothing_tells_apart() =>
        RandomBoxes.Any.Sample(
            book =>
            {
                if (Tree(book) is { } tree)
                    Assert.True(tree.Rates.Found >= 1 - 1e-9 || tree.Lost.Any() || !tree.Untold.IsEmpty, $"{tree.Rates}");
            },
            iter: 400);

    [Theory]
    [InlineData(10, 5.0, 7)]
    [InlineData(20, 3.8, 5)]
    public void A_straight_box_of_sixty_stages_takes_few_taps_if_parts_show(int visible, double average, int most)
    {
        var box = Straight(60, visible);
        var tree = Tree(box);

        output.WriteLine($"{visible} parts that show: {tree!.Rates}");
        Assert.Equal(1, tree.Rates.Found);
        Assert.InRange(tree.Rates.Taps, 1, average);
        Assert.InRange(tree.Rates.Most, 1, most);
    }

    [Fact]
    public void Where_two_ways_lead_in_and_nothing_shows_which_was_taken_nothing_tells_the_places_apart()
    {
        var lost = Assert.Single(Tree(TwoWays(shows: false))!.Lost);
        Assert.Equal(["door-in", "hatch-in"], lost.Select(stage => TwoWays(shows: false).Stages[stage].Id.Value));
        Assert.Empty(Tree(TwoWays(shows: true))!.Lost);
        Assert.Equal(1, Tree(TwoWays(shows: true))!.Rates.Found);
    }

    [Fact]
    public void A_part_inside_is_asked_about_where_it_can_be_seen_and_its_name_is_known()
    {
        Assert.DoesNotContain(Asked(""), asked => asked.StartsWith("board", StringComparison.Ordinal));
        Assert.Contains("board Is", Asked("lid=open"));
        Assert.True(Tree(Inside("lid=open"))!.Rates.Taps < Tree(Inside(""))!.Rates.Taps);

        static string[] Asked(string showsWhen) => Tree(Inside(showsWhen)) is { } tree
            ? [.. tree.Pages.SelectMany(page => page.Lines).Select(each => $"{tree.Machine.Variables[each.Line.Variable].Id} {each.Line.Says}")]
            : [];
    }

    [Fact]
    public void A_box_with_too_many_states_is_asked_by_what_is_proved_of_its_stages()
    {
        var tree = Tree(Straight(20, visible: 19, loose: 8));

        Assert.NotNull(tree);
        Assert.False(tree.Exact);
        Assert.All(tree.Pages, page => Assert.Empty(page.Signs));
        Assert.InRange(tree.Rates.Found, 0.2, 1);
    }

    [Fact]
    public void Of_a_box_that_opens_in_any_order_too_many_sets_of_stages_may_be_done() =>
        Assert.Equal((true, false), Surveyed(LargeBoxes.Gated(60)).Standings is { } known ? (known.All.IsEmpty, known.Exact) : default);

    private static PlaceTree? Tree(Book book) =>
        Surveyed(book) is { Standings: { } standings } survey ? PlaceTree.Build(standings, survey.Stages, _ => [], (_, _) => []) : null;

    private static Survey Surveyed(Book book)
    {
        var (survey, findings) = Surveyor.Survey(book, whole: true);
        Assert.True(survey is not null, string.Join("\n", findings.All.Select(finding => finding.Message)));
        return survey;
    }

    private static Book Straight(int stages, int visible, int loose = 0)
    {
        var box = new BoxBuilder();
        for (var bolt = 0; bolt < loose; bolt++)
            box.Free($"bolt{bolt}", "", "a", "b", "c", "d", "e", "f", "g", "h");
        for (var i = 1; i <= stages; i++)
            box.Fact($"f{i}");
        for (var part = 1; part <= visible; part++)
            box.Part($"p{part}", "shut", "open");
        for (var (i, part) = (1, 1); i <= stages; i++)
        {
            var opens = part <= visible && i == (int)Math.Round(part * (double)stages / (visible + 1));
            box.Stage($"s{i}", i == 1 ? "" : $"f{i - 1}", opens ? $"p{part++}=open, f{i}=known" : $"f{i}=known");
        }

        return Shown(box.Goal($"f{stages}").Build());
    }

    // A lid, a board under it that is pulled out half way and later all the way, and a row of thoughts before and after.
    private static Book Inside(string showsWhen)
    {
        var box = new BoxBuilder().Part("lid", "shut", "open").Part("board", "in", "half", "out");
        for (var i = 1; i <= 12; i++)
            box.Fact($"f{i}");
        box.Stage("s0", "", "lid=open, board=half, f1=known");
        for (var i = 1; i < 12; i++)
            box.Stage($"s{i}", $"f{i}", i == 6 ? "board=out, f7=known" : $"f{i + 1}=known");
        var book = box.Goal("f12").Build();
        var half = new PositionDetails { Says = new Located<string>("half way out", book.File.Top) };
        return book with
        {
            Box = book.Box with
            {
                Parts =
                [
                    book.Box.Parts[0] with { Seen = true },
                    book.Box.Parts[1] with { ShowsWhen = BoxBuilder.Conditions(showsWhen), Details = book.Box.Parts[1].Details.Add("half", half) },
                ],
            },
        };
    }

    private static Book TwoWays(bool shows)
    {
        var box = new BoxBuilder().Part("door", "shut", "open").Part("hatch", "shut", "open").Thing("jar")
            .Stage("door-opens", "", "door=open").Stage("door-in", "door=open", "jar")
            .Stage("hatch-opens", "", "hatch=open").Stage("hatch-in", "hatch=open", "jar")
            .Goal("jar").Build();
        return shows ? Shown(box) : box;
    }

    private static Book Shown(Book book) =>
        book with { Box = book.Box with { Parts = [.. book.Box.Parts.Select(part => part with { Seen = true })] } };
}
