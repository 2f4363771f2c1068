using CsCheck;
using HintBook.Mechanism.Tours;

namespace HintBook.Tests.Mechanism;

/// <summary>A linear programme's bound is proved, and rows that come later count as much as those that were there from the start.</summary>
public class LinearBoundTests
{
    private const int MostTaken = 3;

    // Columns with their costs, and rows that ask for sums of some of them.
    private static readonly Gen<(int[] Costs, (int Least, int[] By)[] Rows)> Programmes =
        from columns in Gen.Int[1, 5]
        from costs in Gen.Int[0, 4].Array[columns]
        from rows in Gen.Select(Gen.Int[-2, 3], Gen.Int[-1, 2].Array[columns]).Array[1, 6]
        select (costs, rows.Select(row => (row.Item1, row.Item2)).ToArray());

    [Theory]
    [InlineData(3, 2)]
    [InlineData(5, 3)]
    [InlineData(9, 5)]
    public void Half_of_each_corner_touches_all_edges_of_an_odd_circle(int corners, int rounded)
    {
        var programme = new LinearBound();
        int[] columns = [.. Enumerable.Range(0, corners).Select(_ => programme.Column(1))];
        for (var i = 0; i < corners; i++)
            programme.AtLeast(1, [(columns[i], 1), (columns[(i + 1) % corners], 1)]);

        Assert.True(programme.Solve());
        Assert.Equal(corners / 2.0, programme.Value, 6);
        Assert.Equal(rounded, programme.Least());
    }

    [Fact]
    public void No_whole_solution_costs_less_than_the_bound() => Programmes.Sample(each =>
    {
        var programme = Made(each.Costs, each.Rows, each.Rows.Length);

        Assert.True(programme.Solve());
        if (Cheapest(each.Costs, each.Rows) is { } cheapest)
            Assert.InRange(programme.Least(), 0, cheapest);
    });

    [Fact]
    public void A_row_that_comes_later_counts_as_much() => Programmes.Where(each => Cheapest(each.Costs, each.Rows) is not null).Sample(each =>
    {
        var (whole, grown) = (Made(each.Costs, each.Rows, each.Rows.Length), Made(each.Costs, each.Rows, each.Rows.Length / 2));
        whole.Solve();
        grown.Solve();
        foreach (var row in each.Rows.Skip(each.Rows.Length / 2))
        {
            Add(grown, row);
            grown.Solve();
        }

        Assert.Equal(whole.Value, grown.Value, 6);
        Assert.Equal(whole.Least(), grown.Least());
        var taken = grown.Columns();
        Assert.Equal(grown.Value, each.Costs.Select((cost, i) => cost * taken[i]).Sum(), 4);
        Assert.All(each.Rows, row => Assert.InRange(row.By.Select((by, i) => by * taken[i]).Sum(), row.Least - 1e-6, double.MaxValue));
    });

    private static LinearBound Made(int[] costs, (int Least, int[] By)[] rows, int count)
    {
        var programme = new LinearBound();
        foreach (var cost in costs)
            programme.Column(cost);
        foreach (var row in rows.Take(count))
            Add(programme, row);
        return programme;
    }

    private static void Add(LinearBound programme, (int Least, int[] By) row) => programme.AtLeast(row.Least, row.By.Select((by, i) => (i, by)));

    // All whole solutions up to some number of each column, one by one.
    private static int? Cheapest(int[] costs, (int Least, int[] By)[] rows)
    {
        int? cheapest = null;
        var taken = new int[costs.Length];
        for (var number = 0; number < Math.Pow(MostTaken + 1, costs.Length); number++)
        {
            for (var (i, rest) = (0, number); i < taken.Length; (i, rest) = (i + 1, rest / (MostTaken + 1)))
                taken[i] = rest % (MostTaken + 1);
            if (!rows.All(row => row.By.Select((by, i) => by * taken[i]).Sum() >= row.Least))
                continue;
            var cost = costs.Select((each, i) => each * taken[i]).Sum();
            cheapest = Math.Min(cheapest ?? cost, cost);
        }

        return cheapest;
    }
}
