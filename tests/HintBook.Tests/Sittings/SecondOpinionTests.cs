using System.Collections.Immutable;
using HintBook.Sittings;
using HintBook.Tests.Books;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;

namespace HintBook.Tests.Sittings;

/// <summary>What few people tell of many, beside MathNet.Numerics 5.0.0, beside published worked examples, and for people of whom the truth is known.</summary>
public sealed class SecondOpinionTests
{
    private const int Samples = 3000;

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(40)]
    [InlineData(1001)]
    public void Middle_and_quarters_are_those_of_another_library(int count)
    {
        var dice = new Dice((ulong)count);
        double[] times = [.. Enumerable.Range(0, count).Select(_ => 60 * dice.Share())];

        var middle = MiddleMinutes.Of(times)!;

        double[] theirs = [.. new[] { 0.25, 0.5, 0.75 }.Select(share => times.QuantileCustom(share, QuantileDefinition.R7))];
        Assert.Equal(theirs[0], middle.Quarter, 9);
        Assert.Equal(theirs[1], middle.Median, 9);
        Assert.Equal(theirs[2], middle.ThreeQuarters, 9);
    }

    // The bounds are the k-th times from both ends, k the largest number for which fewer than k heads of n coins have a chance of at most 2.5 in 100.
    [Fact]
    public void The_bounds_of_a_median_are_those_that_another_library_finds_by_coins()
    {
        for (var count = 1; count <= 500; count++)
        {
            var coins = new Binomial(0.5, count);
            var from = Enumerable.Range(1, count).LastOrDefault(k => coins.CumulativeDistribution(k - 1) <= 0.025);

            var bounds = MiddleMinutes.Of(Enumerable.Range(1, count).Select(number => (double)number))!.Bounds;

            Assert.Equal(from == 0 ? null : (from, count + 1.0 - from), bounds);
        }
    }

    // R. G. Newcombe, Statistics in Medicine 17, 1998, table I, method 3 (score without a correction); values from memory.
    [Theory]
    [InlineData(81, 263, 0.2553, 0.3662)]
    [InlineData(15, 148, 0.0624, 0.1605)]
    [InlineData(0, 20, 0, 0.1611)]
    [InlineData(1, 29, 0.0061, 0.1718)]
    public void The_bounds_of_a_share_are_those_of_published_worked_examples(int did, int of, double low, double high)
    {
        var bounds = new Proportion(did, of).Bounds;

        Assert.Equal(low, bounds.Low, 4);
        Assert.Equal(high, bounds.High, 4);
    }

    // The score interval inverts the test of a share against the normal distribution: at either bound that test gives 5 in 100.
    [Theory]
    [InlineData(9, 10)]
    [InlineData(3, 40)]
    [InlineData(130, 400)]
    public void At_the_bounds_of_a_share_another_librarys_test_gives_five_in_a_hundred(int did, int of)
    {
        var (low, high) = new Proportion(did, of).Bounds;

        Assert.All(new[] { low, high }, bound =>
            Assert.Equal(0.05, 2 * Normal.CDF(0, 1, -Math.Abs(((double)did / of) - bound) / Math.Sqrt(bound * (1 - bound) / of)), 9));
    }

    // The exact chance that the bounds hold, by the binomial distribution: on average over the shares it is 95 in 100 (Brown, Cai and DasGupta, Statistical
    // Science 16, 2001), and near the ends single shares go down to about 83.
    [Theory]
    [InlineData(5)]
    [InlineData(10)]
    [InlineData(25)]
    public void The_bounds_of_a_share_hold_on_average_as_often_as_they_say(int people)
    {
        double[] held =
        [
            .. Enumerable.Range(1, 999).Select(thousandths => thousandths / 1000.0).Select(share =>
                Enumerable.Range(0, people + 1)
                    .Where(did => new Proportion(did, people).Bounds is var (low, high) && low <= share && share <= high)
                    .Sum(did => Binomial.PMF(share, people, did))),
        ];

        Assert.InRange(held.Average(), 0.945, 0.965);
        Assert.True(held.Min() > 0.82, $"{held.Min()}");
    }

    [Theory]
    [InlineData(6)]
    [InlineData(15)]
    [InlineData(40)]
    public void Sittings_with_a_known_truth_have_it_between_their_bounds_as_often_as_they_say(int people)
    {
        var dice = new Dice((ulong)people);
        var (middles, shares) = (0, 0);
        for (var sample = 0; sample < Samples; sample++)
        {
            var told = StageSittings.Of(SimulatedSittings.Book([.. SimulatedSittings.At("lid", people, dice)], A.Stage("lid")))[0];
            middles += told.Minutes!.Bounds is var (low, high) && low <= SimulatedSittings.Median && SimulatedSittings.Median <= high ? 1 : 0;
            shares += told.WentOnToClue.Bounds is var (least, most) && least <= SimulatedSittings.NeedTheClue && SimulatedSittings.NeedTheClue <= most ? 1 : 0;
        }

        // Three standard deviations of so many samples are 0.012.
        Assert.InRange((double)middles / Samples, 0.95 - 0.012, 1);
        Assert.InRange((double)shares / Samples, 0.93, 0.99);
    }

    [Fact]
    public void An_author_who_guesses_right_is_contradicted_in_five_of_a_hundred_cases_at_most()
    {
        var dice = new Dice(3);
        var stage = A.Stage("lid") with { Minutes = (int)SimulatedSittings.Median, MinutesAt = A.Somewhere };

        var contradicted = Enumerable.Range(0, Samples).Count(_ =>
            SittingNotes.In(SimulatedSittings.Book([.. SimulatedSittings.At("lid", 12, dice)], stage)).Any(note => note.Code == SittingNotes.GuessCode));

        Assert.InRange((double)contradicted / Samples, 0.001, 0.05);
    }

    [Fact]
    public void An_author_who_guesses_half_of_the_truth_is_contradicted_by_forty_sittings_nearly_always()
    {
        var dice = new Dice(4);
        var stage = A.Stage("lid") with { Minutes = (int)SimulatedSittings.Median / 2, MinutesAt = A.Somewhere };

        var contradicted = Enumerable.Range(0, 500).Count(_ =>
            SittingNotes.In(SimulatedSittings.Book([.. SimulatedSittings.At("lid", 40, dice)], stage)).Any(note => note.Code == SittingNotes.GuessCode));

        Assert.InRange(contradicted, 490, 500);
    }

    // A triangle from 5 to 20 with its top at 10; the percentiles of the whole box are those of its one stage.
    [Fact]
    public void Guesses_are_drawn_as_another_library_draws_them()
    {
        var whole = WholeBox.Of([new("lid", [])], [new([], new(5, 10, 20))], 200_000);

        Assert.Equal(Triangular.InvCDF(5, 20, 10, 0.1), whole.Alone.Tenth, 0.06);
        Assert.Equal(Triangular.InvCDF(5, 20, 10, 0.5), whole.Alone.Half, 0.06);
        Assert.Equal(Triangular.InvCDF(5, 20, 10, 0.9), whole.Alone.NineTenths, 0.06);
    }

    // Of so many stages one after the other the sum is nearly normal: mean and variance of a triangle are (a+b+c)/3 and (a²+b²+c²−ab−ac−bc)/18.
    [Fact]
    public void The_time_of_many_stages_has_the_percentiles_of_the_normal_distribution()
    {
        const int stages = 60;
        ImmutableArray<Timed> tasks = [.. Enumerable.Range(0, stages).Select(number => new Timed($"{number}", number == 0 ? [] : [[number - 1]]))];
        var one = new Triangular(5, 20, 10);

        var whole = WholeBox.Of(tasks, [.. Enumerable.Repeat(new StageTime([], new(5, 10, 20)), stages)], 20_000);

        var sum = new Normal(stages * one.Mean, Math.Sqrt(stages * one.Variance));
        Assert.InRange(whole.Together.Tenth, sum.InverseCumulativeDistribution(0.09), sum.InverseCumulativeDistribution(0.11));
        Assert.InRange(whole.Together.Half, sum.InverseCumulativeDistribution(0.48), sum.InverseCumulativeDistribution(0.52));
        Assert.InRange(whole.Together.NineTenths, sum.InverseCumulativeDistribution(0.89), sum.InverseCumulativeDistribution(0.91));
    }

    // Two ways side by side, one of 2 minutes, one of 1, 2 or 3: it is longer in a third of all cases. Equal ones count for the first.
    [Fact]
    public void A_stage_is_on_the_longest_chain_as_often_as_it_is_the_longer_one()
    {
        ImmutableArray<Timed> tasks = [new("even", []), new("uneven", []), new("last", [[0], [1]])];
        ImmutableArray<StageTime> times = [new([2, 2, 2], default), new([1, 2, 3], default), new([5, 5, 5], default)];

        var whole = WholeBox.Of(tasks, times, 60_000);

        Assert.InRange(whole.Critical[0], (2 / 3.0) - 0.01, (2 / 3.0) + 0.01);
        Assert.InRange(whole.Critical[1], (1 / 3.0) - 0.01, (1 / 3.0) + 0.01);
        Assert.Equal(1, whole.Critical[2]);
        Assert.Equal((7, 7, 8), whole.Together);
    }
}
