using System.Text.Json;
using HintBook.Books;
using HintBook.Mechanism;

namespace HintBook.Tests.Mechanism;

public class SolverTests
{
    [Fact]
    public void A_key_behind_the_lock_it_opens_is_explained_as_a_circle()
    {
        var book = new BoxBuilder().Part("drawer", "shut", "open").Thing("key")
            .Stage("drawer-opens", "key", "drawer=open").Stage("key-found", "drawer=open", "key=in-hand").Goal("drawer=open").Build();
        var solution = Solving.Of(book);
        var refuted = Assert.IsType<Claim.Refuted>(solution.Opens);
        Assert.Equal(
            "Each of these is behind the lock that it opens: “drawer” ← “key” ← “drawer”. "
            + "The way to it: “drawer” to be open comes from “drawer-opens”, which waits for “key” in hand; "
            + "that comes from “key-found”, which again waits for “drawer” to be open.",
            refuted.Why);
        Assert.Equal(["HB2201", "HB2202"], solution.Findings.Select(f => f.Code.Id));
    }

    [Fact]
    public void Needs_that_contradict_make_a_move_that_is_never_possible()
    {
        var book = Simple().Move("both", "lid=shut, lid=open", "lid=open").Goal("lid=open").Build();
        var solution = Solving.Of(book);
        Assert.Equal("both", Assert.Single(solution.NeverPossible).Says);
        Assert.Contains(solution.Findings, f => f.Code.Id == "HB2207");
    }

    [Fact]
    public void A_goal_that_is_true_at_the_start_is_a_finding() =>
        Assert.Contains(Solving.Of(Simple().Goal("lid=shut").Build()).Findings, f => f.Code.Id == "HB2206");

    [Fact]
    public void Positions_that_do_not_exist_never_hold() =>
        Assert.IsType<Claim.Refuted>(Solving.Of(Simple().Goal("lid=ajar").Build()).Opens);

    [Fact]
    public void A_thing_used_up_too_early_is_a_dead_end_with_the_move_that_closed_the_door()
    {
        var book = new BoxBuilder().Thing("match", Thing.InHand).Part("lamp", "dark", "lit").Part("fire", "cold", "warm")
            .Stage("lamp", "match", "lamp=lit, match=used-up").Stage("fire", "match", "fire=warm, match=used-up", optional: true).Goal("lamp=lit").Build();
        var solution = Solving.Of(book);
        Assert.Equal("fire", Assert.Single(solution.DeadEnds).Single().Says);
        Assert.Contains(solution.Findings, f => f.Code.Id == "HB2131");
    }

    [Fact]
    public void A_dead_end_that_an_undo_gets_out_of_is_only_a_warning()
    {
        var book = new BoxBuilder().Thing("match", Thing.InHand).Part("lamp", "dark", "lit").Part("fire", "cold", "warm")
            .Stage("lamp", "match", "lamp=lit, match=used-up")
            .Stage("fire", "match", "fire=warm, match=used-up", optional: true, undo: BoxBuilder.Undo("match", "fire=cold")).Goal("lamp=lit").Build();
        Assert.Contains(Solving.Of(book).Findings, f => f.Code.Id == "HB2132");
    }

    [Fact]
    public void A_stage_that_can_be_left_out_is_a_shortcut_with_its_way()
    {
        var book = Simple().Part("drawer", "shut", "open").Stage("drawer", "", "drawer=open").Goal("lid=open").Build();
        var solution = Solving.Of(book);
        var shortcut = Assert.Single(solution.Shortcuts);
        var finding = Assert.Single(solution.Findings, f => f.Code.Id == "HB2140");
        Assert.Equal("The box opens without “drawer”: “lid” goes round it (lid).", finding.Message);
        Assert.Equal("This move goes round it.", Assert.Single(finding.Related).Message);
        Assert.Equal(("drawer", "lid"), (shortcut.Without, shortcut.Path.Single().Says));
    }

    [Fact]
    public void Reactions_that_go_round_for_ever_are_shown()
    {
        var book = Simple()
            .Part("light", "off", "on")
            .Reaction("lid=open, light=off", "light=on")
            .Reaction("lid=open, light=on", "light=off")
            .Goal("lid=open")
            .Build();
        var finding = Assert.Single(Solving.Of(book).Findings, f => f.Code.Id == "HB2120");
        Assert.Equal(
            "After lid the box never comes to rest: the reaction “light: on” and the reaction “light: off” "
            + "set each other off again and again (lid: open, light: off).",
            finding.Message);
        Assert.Equal("This is the reaction “light: off”.", Assert.Single(finding.Related).Message);
    }

    [Fact]
    public void Reactions_that_disagree_are_shown()
    {
        var book = Simple().Part("ball", "here", "left", "right")
            .Reaction("lid=open, ball=here", "ball=left").Reaction("lid=open, ball=here", "ball=right").Goal("lid=open").Build();
        Assert.Contains(
            "which of the reaction “ball: left” and the reaction “ball: right” happens first",
            Assert.Single(Solving.Of(book).Findings, f => f.Code.Id == "HB2121").Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_lock_with_few_settings_is_opened_by_trying_and_what_that_skips_is_said()
    {
        var book = Clued(wheels: 2);
        var solution = Solving.Of(book);
        var trying = Assert.Single(solution.ByTrying);
        Assert.Contains(solution.Findings, f => f.Code.Id == "HB2150");
        Assert.Equal((100, 300.0), ((int)trying.Settings, trying.Seconds));
        Assert.Equal(["read-the-clue"], trying.Skips);
    }

    [Fact]
    public void A_lock_with_more_settings_than_patience_skips_nothing()
    {
        var trying = Assert.Single(Solving.Of(Clued(wheels: 4)).ByTrying);
        Assert.Equal((10_000, 30_000.0), ((int)trying.Settings, trying.Seconds));
        Assert.Empty(trying.Skips);
    }

    // Chinese rings again: 100 of them have 2^100 states, more than 10^30.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void What_is_too_large_ends_in_not_proved(bool reduce)
    {
        var limits = new SolveLimits(64L << 20, TimeSpan.FromSeconds(2), Reduce: reduce);
        var solution = Solver.Solve(Boxes.ChineseRings(100), limits, null, TestContext.Current.CancellationToken);
        Assert.IsType<Claim.NotProved>(solution.Opens);
        Assert.Contains(solution.Findings, f => f.Code.Id == "HB2192");
    }

    [Fact]
    public void Stopping_ends_in_not_proved()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        var solution = Solver.Solve(Boxes.ChineseRings(16), SolveLimits.Default, null, stopped.Token);
        Assert.Equal("it was stopped", Assert.IsType<Claim.NotProved>(solution.Opens).Why);
    }

    [Fact]
    public void Sixty_five_positions_are_refused_with_a_reason()
    {
        var box = new BoxBuilder().Part("dial", [.. Enumerable.Range(0, 65).Select(i => $"n{i}")]);
        for (var i = 0; i < 65; i++)
            box.Move($"to {i}", "", $"dial=n{i}");
        var book = box.Goal("dial=n1").Build();
        var solution = Solving.Of(book);
        Assert.Contains("64 are the most", Assert.IsType<Claim.NotProved>(solution.Opens).Why, StringComparison.Ordinal);
        Assert.Contains(solution.Findings, f => f.Code.Id == "HB2191");
    }

    [Fact]
    public void The_json_has_the_promised_shape()
    {
        using var json = JsonDocument.Parse(SolutionJson.Write(Solving.Of(Clued(wheels: 2))));
        Assert.Equal(
            [
                "opens", "shortest", "stages", "deadEnds", "shortcuts", "byTrying", "bottlenecks",
                "widest", "orders", "states", "looked", "explored", "claims", "seconds",
            ],
            json.RootElement.EnumerateObject().Select(p => p.Name));
        Assert.Equal("proved", json.RootElement.GetProperty("opens").GetString());
        Assert.Equal(
            ["read the clue", "set the lock"],
            json.RootElement.GetProperty("shortest").EnumerateArray().Select(e => e.GetString()!.Replace('-', ' ')));
        Assert.Equal("1", json.RootElement.GetProperty("orders").GetString());
    }

    private static BoxBuilder Simple() => new BoxBuilder().Part("lid", "shut", "open").Stage("lid", "", "lid=open");

    private static Book Clued(int wheels) => new BoxBuilder().Code("number", wheels).Part("lid", "shut", "open")
        .Stage("read-the-clue", "", "number=known").Stage("set-the-lock", "number", "lid=open").Goal("lid=open").Build();
}
