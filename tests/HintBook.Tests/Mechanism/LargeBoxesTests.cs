using System.Numerics;
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
        var solution = Solving.Of(LargeBoxes.Gated(parts));
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
        var solution = Solving.Of(LargeBoxes.GatedFree(parts));
        Assert.Equal(parts + 2, Assert.IsType<Claim.Proved>(solution.Shortest).Way.Length);
        Assert.IsType<Claim.Proved>(solution.NoDeadEnds);
        Assert.InRange(solution.States, 1, 9_999);
    }

    [Fact]
    public void A_true_to_life_book_gets_all_answers()
    {
        var solution = Solving.Of(LargeBoxes.TrueToLife(60, 40));
        Assert.IsType<Claim.Proved>(solution.Opens);
        Assert.IsType<Claim.Proved>(solution.NoDeadEnds);
        Assert.All(solution.Stages, stage => Assert.True(stage.Exact));
        Assert.InRange(solution.States, 1, 9_999);
    }

    [Fact]
    public void Two_thousand_parts_are_no_trouble()
    {
        var limits = SolveLimits.Default with { Time = TimeSpan.FromSeconds(3) };
        var solution = Solver.Solve(LargeBoxes.Gated(2000), limits, null, TestContext.Current.CancellationToken);
        Assert.NotEqual("refuted", solution.Opens.Word);
    }

    private static BigInteger Factorial(int n) => Enumerable.Range(1, n).Aggregate(BigInteger.One, (product, i) => product * i);
}
