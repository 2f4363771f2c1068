using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Mechanism.Answers;
using HintBook.Mechanism.Model;
using HintBook.Text;

namespace HintBook.Tests.Mechanism;

public class VerdictsTests
{
    [Fact]
    public void All_five_claims_are_always_said()
    {
        Assert.Equal(["opens", "stuck", "reset", "codes", "leaks"], Verdicts.Of(null, Standing.Unasked, Standing.Unasked).Select(verdict => verdict.Id));
        Assert.All(Verdicts.Of(null, Standing.Unasked, Standing.Unasked), verdict => Assert.Equal(BookVerdict.NotProved, verdict.Status));
    }

    [Fact]
    public void A_box_with_a_way_back_is_proved_on_every_line()
    {
        var text = Verdicts.Write(Of(Lid(BoxBuilder.Undo("", "lid=shut"))));
        Assert.Equal(5, text.TrimEnd().Split((char)10).Count(line => line.StartsWith("proved ", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_book_with_no_way_back_is_refuted_where_it_is_said()
    {
        var reset = Of(Lid(null)).Single(verdict => verdict.Id == "reset");
        Assert.Equal((BookVerdict.Refuted, false), (reset.Status, reset.IsProved));
        Assert.Contains("“lid” to be shut", reset.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_box_that_never_opens_leaves_people_stuck_and_says_so()
    {
        var solution = Solving.Of(new BoxBuilder().Part("lid", "shut", "open").Stage("lid", "lid=open", "").Goal("lid=open").Build());
        Assert.Equal("the box can't be opened at all", Assert.IsType<Claim.Refuted>(solution.NoDeadEnds).Why);
        Assert.True(solution.AnyRefuted);
    }

    [Fact]
    public void What_a_limit_leaves_open_is_a_warning_that_names_what_makes_it_hard()
    {
        var solution = Solver.Solve(Boxes.ChineseRings(100), SolveLimits.Default with { States = 10_000 }, null, TestContext.Current.CancellationToken);
        var finding = Assert.Single(solution.Findings, finding => finding.Code.Id == "HB2192");
        Assert.Contains("10,000 states were not enough", finding.Message, StringComparison.Ordinal);
        Assert.Contains("“r", finding.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void The_limits_of_nobody_count_no_time() => Assert.Equal(TimeSpan.MaxValue, SolveLimits.Default.Time);

    [Fact]
    public void Every_claim_in_the_json_has_its_status_and_its_reason()
    {
        using var json = JsonDocument.Parse(SolutionJson.Write(Solving.Of(Lid(null))));
        var claims = json.RootElement.GetProperty("claims");
        Assert.Equal(["opens", "shortest", "noDeadEnds", "noOtherShortcuts", "widest", "orders"], claims.EnumerateObject().Select(claim => claim.Name));
        Assert.All(claims.EnumerateObject(), claim => Assert.Equal("proved", claim.Value.GetProperty("status").GetString()));
        Assert.Equal(1, claims.GetProperty("shortest").GetProperty("bound").GetInt32());
    }

    [Fact]
    public void That_nobody_gets_stuck_is_a_warning_where_it_is_not_proved()
    {
        var book = Lid(null);
        var machine = Compiler.Compile(book);
        var solution = Solving.Of(book) with { NoDeadEnds = new Claim.NotProved("it has more than 10 states") };
        var finding = Assert.Single(SolutionFindings.Collect(machine, new WaitingReasons(machine), solution), finding => finding.Code.Id == "HB2133");
        Assert.Contains("it has more than 10 states", finding.Message, StringComparison.Ordinal);
    }

    // 2,100 things take 4,200 bits, more than a state has; the reactions keep the box from being looked through without states.
    [Fact]
    public void Above_the_limits_of_size_a_warning_stays_a_warning()
    {
        var box = new BoxBuilder().Part("bolt", "out", "in").Part("lamp", "dark", "glow", "lit").Part("lid", "shut", "open")
            .Move("push the bolt", "", "bolt=in", reversible: true)
            .Move("both at once", "bolt=in, bolt=out", "lid=open")
            .Reaction("bolt=in, lamp=dark", "lamp=glow")
            .Reaction("lamp=glow", "lamp=lit")
            .Reaction("bolt=out", "lamp=dark")
            .Stage("lid", "", "lid=open", undo: BoxBuilder.Undo("", "lid=shut"))
            .Goal("lid=open");
        for (var i = 0; i < 2_100; i++)
            box.Thing(string.Create(CultureInfo.InvariantCulture, $"t{i}"));
        var (survey, findings) = Surveyor.Survey(box.Build(), whole: true);
        Assert.Equal(["HB2192", "HB2207"], findings.All.Where(finding => finding.Code.Id is not "HB2205" && finding.Code.Severity > Severity.Note)
            .Select(finding => finding.Code.Id).Order());
        Assert.False(findings.AnyError);
        Assert.Equal("it isn't known whether the box opens", Assert.IsType<Claim.NotProved>(survey?.WayBack.Possible).Why);
    }

    private static ImmutableArray<BookVerdict> Of(Book book) =>
        Verdicts.Of(Surveyor.Survey(book, whole: true).Survey, Standing.Proved, Standing.Against(0));

    private static Book Lid(Undo? undo) => new BoxBuilder().Part("lid", "shut", "open").Stage("lid", "", "lid=open", undo: undo).Goal("lid=open").Build();
}
