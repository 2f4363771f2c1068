using System.Numerics;
using HintBook.Books;
using HintBook.Mechanism;

namespace HintBook.Tests.Mechanism;

public class LargeBoxesTests
{
    [Theory]
    [InlineData(24)]
    [InlineData(60)]
    [InlineData(200)]
    public void Independent_parts_behind_a_gate_do_not_multiply(int parts)
    {
        var solution = Solving.Of(LargeBoxes.Gated(parts), plainly: 0);
        Assert.IsType<Claim.Proved>(solution.Opens);
        Assert.Equal(parts + 2, Assert.IsType<Claim.Proved>(solution.Shortest).Way.Length);
        Assert.IsType<Claim.Proved>(solution.NoDeadEnds);
        Assert.All(solution.Stages, stage => Assert.True(stage.Exact));
        Assert.Equal((parts, true), (solution.Widest.Count, solution.Widest.Exact));
        Assert.Equal(new Orders(Factorial(parts), Exact: true), solution.Orders);
        Assert.InRange(solution.States, 1, 9_999);
    }

    [Theory]
    [InlineData(24)]
    [InlineData(60)]
    [InlineData(200)]
    public void Free_parts_behind_a_gate_do_not_multiply(int parts)
    {
        var solution = Solving.Of(LargeBoxes.GatedFree(parts), plainly: 0);
        Assert.Equal(parts + 2, Assert.IsType<Claim.Proved>(solution.Shortest).Way.Length);
        Assert.IsType<Claim.Proved>(solution.NoDeadEnds);
        Assert.InRange(solution.States, 1, 9_999);
    }

    [Fact]
    public void A_true_to_life_book_gets_all_answers()
    {
        var solution = Solving.Of(LargeBoxes.TrueToLife(60, 40), plainly: 0);
        Assert.IsType<Claim.Proved>(solution.Opens);
        Assert.IsType<Claim.Proved>(solution.NoDeadEnds);
        Assert.All(solution.Stages, stage => Assert.True(stage.Exact));
        Assert.InRange(solution.States, 1, 9_999);
    }

    [Theory]
    [InlineData(24)]
    [InlineData(200)]
    public void Parts_that_can_be_shut_again_do_not_multiply(int parts)
    {
        var solution = AllProved(LargeBoxes.Shutting(parts), shortest: parts);
        Assert.Equal((parts, true), (solution.Widest.Count, solution.Widest.Exact));
        Assert.Equal(new Orders(Factorial(parts), Exact: true), solution.Orders);
    }

    [Theory]
    [InlineData(30)]
    [InlineData(200)]
    public void Drawers_that_can_be_pushed_in_again_do_not_multiply(int drawers)
    {
        var solution = AllProved(LargeBoxes.Drawers(drawers), shortest: 2 * drawers);
        Assert.Equal(new Orders(BigInteger.One, Exact: true), solution.Orders);
    }

    // Seven moves a room (door, key, shut the door, drawer, dial, coin, tray), and two tilts for each pair of rooms, since each needs the trays of the
    // pair before.
    [Theory]
    [InlineData(6)]
    [InlineData(30)]
    public void Rooms_with_doors_that_must_be_shut_again_get_all_answers(int rooms) => AllProved(LargeBoxes.Rooms(rooms), shortest: 8 * rooms);

    [Theory]
    [InlineData(4)]
    [InlineData(5)]
    public void Dials_turned_step_by_step_add_up(int dials) =>
        AllProved(LargeBoxes.Dials(dials), 1 + Enumerable.Range(0, dials).Select(LargeBoxes.DialSetting).Sum(n => Math.Min(n, 60 - n)), reset: "refuted");

    // A rook's walk from a corner meets every other square once: as many steps as there are other squares.
    [Fact]
    public void A_walk_over_all_squares_takes_as_many_steps_as_there_are_squares() => AllProved(LargeBoxes.Visits(5), shortest: 25, reset: "refuted");

    [Fact]
    public void A_box_whose_acts_can_all_be_taken_back_is_put_back_without_looking_at_its_states()
    {
        var plan = Solving.Reset(LargeBoxes.Tree(21), plainly: 0);
        Assert.Equal("proved", plan.Possible.Word);
        Assert.InRange(plan.States, 1, 29_999);
    }

    [Fact]
    public void Two_thousand_parts_are_no_trouble()
    {
        var limits = SolveLimits.Default with { Time = TimeSpan.FromSeconds(3) };
        var solution = Solver.Solve(LargeBoxes.Gated(2000), limits, null, TestContext.Current.CancellationToken);
        Assert.NotEqual("refuted", solution.Opens.Word);
    }

    private static Solution AllProved(Book book, int shortest, string reset = "proved")
    {
        var solution = Solving.Of(book, plainly: 0);
        Assert.Equal(shortest, Assert.IsType<Claim.Proved>(solution.Shortest).Way.Length);
        Assert.IsType<Claim.Proved>(solution.NoDeadEnds);
        Assert.IsType<Claim.Proved>(solution.NoOtherShortcuts);
        Assert.All(solution.Stages, stage => Assert.True(stage is { Exact: true, Reachable: Claim.Proved }));
        Assert.InRange(solution.States, 1, 9_999);
        Assert.Equal(reset, Solving.Reset(book, plainly: 0).Possible.Word);
        return solution;
    }

    private static BigInteger Factorial(int n) => Enumerable.Range(1, n).Aggregate(BigInteger.One, (product, i) => product * i);
}
