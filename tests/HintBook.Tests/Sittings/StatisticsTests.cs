using System.Collections.Immutable;
using HintBook.Sittings;

namespace HintBook.Tests.Sittings;

/// <summary>What few people can tell of many, held against published values and against samples whose truth is known.</summary>
public sealed class StatisticsTests
{
    private const int Samples = 4000;

    // Wilson 1927: the bounds are the shares p for which (share − p)² = z² p (1 − p) / n.
    [Theory]
    [InlineData(0, 1)]
    [InlineData(0, 10)]
    [InlineData(9, 10)]
    [InlineData(15, 25)]
    [InlineData(130, 400)]
    public void The_bounds_of_a_share_solve_Wilsons_equation(int did, int of)
    {
        var (low, high) = new Proportion(did, of).Bounds;

        Assert.All(new[] { low, high }.Where(bound => bound is > 0 and < 1), bound =>
            Assert.Equal(1.959964 * 1.959964 * bound * (1 - bound) / of, Math.Pow(((double)did / of) - bound, 2), 6));
        Assert.InRange((double)did / of, low, high);
    }

    // 0 of 10: upper bound 0.2775; 15 of 25: 0.4074 to 0.7660 (score interval as statistics packages print it; values from memory).
    [Theory]
    [InlineData(0, 10, 0, 0.2775)]
    [InlineData(10, 10, 0.7225, 1)]
    [InlineData(15, 25, 0.4074, 0.7660)]
    public void The_bounds_of_a_share_are_those_of_other_programs(int did, int of, double low, double high)
    {
        var bounds = new Proportion(did, of).Bounds;

        Assert.Equal(low, bounds.Low, 4);
        Assert.Equal(high, bounds.High, 4);
    }

    // The sign test's critical values at 5 %, two-sided: 0 for n = 6 to 8, 1 for 9 to 11, 2 for 12 to 14, 3 for 15, 5 for 20, 7 for 25, 9 for 30
    // (as in Conover, Practical Nonparametric Statistics; from memory). The bounds are the next values from either end.
    [Theory]
    [InlineData(6, 1)]
    [InlineData(8, 1)]
    [InlineData(9, 2)]
    [InlineData(11, 2)]
    [InlineData(12, 3)]
    [InlineData(15, 4)]
    [InlineData(20, 6)]
    [InlineData(25, 8)]
    [InlineData(30, 10)]
    public void The_bounds_of_a_median_are_those_of_the_sign_test(int count, int from) =>
        Assert.Equal((from, count + 1 - from), MiddleMinutes.Of(Enumerable.Range(1, count).Select(number => (double)number))!.Bounds);

    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    public void So_few_times_have_no_bounds(int count) => Assert.Null(MiddleMinutes.Of(Enumerable.Repeat(3.0, count))!.Bounds);

    // Hyndman and Fan 1996, definition 7, which for 1 to 10 gives 3.25, 5.5 and 7.75 (computed by hand).
    [Fact]
    public void Quarters_lie_between_the_two_nearest_times()
    {
        var middle = MiddleMinutes.Of([10, 1, 9, 2, 8, 3, 7, 4, 6, 5])!;

        Assert.Equal((3.25, 5.5, 7.75), (middle.Quarter, middle.Median, middle.ThreeQuarters));
    }

    [Fact]
    public void The_bounds_of_a_share_hold_as_often_as_they_say()
    {
        var dice = new Dice(7);
        var held = 0;
        for (var sample = 0; sample < Samples; sample++)
        {
            var (low, high) = new Proportion(Enumerable.Range(0, 20).Count(_ => dice.Share() < 0.3), 20).Bounds;
            held += low <= 0.3 && 0.3 <= high ? 1 : 0;
        }

        // The score interval holds in 95 of 100 cases on average over the shares; at one share it may differ by two.
        Assert.InRange((double)held / Samples, 0.93, 0.99);
    }

    [Fact]
    public void The_bounds_of_a_median_hold_at_least_as_often_as_they_say()
    {
        var dice = new Dice(11);
        var held = 0;
        for (var sample = 0; sample < Samples; sample++)
        {
            // Times without memory of ten minutes on average have the median 10 ln 2.
            var (low, high) = MiddleMinutes.Of(Enumerable.Range(0, 12).Select(_ => -10 * Math.Log(1 - dice.Share())))!.Bounds!.Value;
            held += low <= 10 * Math.Log(2) && 10 * Math.Log(2) <= high ? 1 : 0;
        }

        Assert.InRange((double)held / Samples, 0.95, 1);
    }

    // SplitMix64 with the seed 1234567 (as published with its source by S. Vigna and in Rosetta Code; values from memory).
    [Fact]
    public void Chance_is_a_published_generator()
    {
        var dice = new Dice(1234567);

        Assert.Equal([6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431], Enumerable.Range(0, 4).Select(_ => dice.Next()));
    }

    // B. W. Taylor, Introduction to Management Science, chapter 8: the arcs 1-2:7 1-3:10 2-4:6 3-4:5 3-5:4 4-5:3 5-6:2; 20 weeks along 1-3-4-5-6.
    [Fact]
    public void The_longest_chain_is_that_of_a_published_network()
    {
        (int From, int To, double Weeks)[] arcs = [(1, 2, 7), (1, 3, 10), (2, 4, 6), (3, 4, 5), (3, 5, 4), (4, 5, 3), (5, 6, 2)];
        ImmutableArray<Timed> tasks =
        [
            .. arcs.Select(arc => new Timed($"{arc.From}-{arc.To}",
                [.. arcs.Index().Where(before => before.Item.To == arc.From).Select(before => ImmutableArray.Create(before.Index))])),
        ];
        var (finish, waited) = (new double[7], new int[7]);

        var weeks = new Schedule(tasks).Run([.. arcs.Select(arc => arc.Weeks)], finish, waited);

        Assert.Equal(20, weeks);
        Assert.Equal(["1-3", "3-4", "4-5", "5-6"], Schedule.ChainOf(finish, waited).Select(task => tasks[task].Name));
    }

    // Malcolm and others 1959: (a + 4 m + b) / 6 and ((b − a) / 6)².
    [Fact]
    public void Three_guesses_make_a_mean_and_a_variance()
    {
        var estimate = new Estimate(2, 4, 12);

        Assert.Equal((5, 100.0 / 36), (estimate.Mean, estimate.Variance));
    }

    [Fact]
    public void Of_two_ways_to_a_stage_the_faster_one_opens_it()
    {
        ImmutableArray<Timed> tasks = [new("slow", []), new("fast", []), new("last", [[0, 1]])];
        var (finish, waited) = (new double[3], new int[3]);

        new Schedule(tasks).Run([10, 3, 2], finish, waited);

        Assert.Equal((5, 1), (finish[2], waited[2]));
    }

    // Three stages one after the other, each ten minutes at most two ways: alone and together take the same.
    [Fact]
    public void A_chain_takes_as_long_alone_as_together_and_the_same_each_time()
    {
        ImmutableArray<Timed> tasks = [new("one", []), new("two", [[0]]), new("three", [[1]])];
        ImmutableArray<StageTime> times = [.. Enumerable.Repeat(new StageTime([10, 20, 30], default), 3)];

        var (once, again) = (WholeBox.Of(tasks, times, 2000), WholeBox.Of(tasks, times, 2000));

        Assert.Equal(once.Alone, once.Together);
        Assert.Equal(60, once.Alone.Half);
        Assert.Equal(60, once.Expected.Mean);
        Assert.Equal([1.0, 1, 1], once.Critical);
        Assert.Equal((once.Alone, once.Together), (again.Alone, again.Together));
    }
}
