using System.Globalization;

namespace HintBook.Tests.Pages.Walking;

/// <summary>How many links a reader follows to their stage.</summary>
public class TapsTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(60, 10, 5.0)]
    [InlineData(60, 20, 3.8)]
    public void In_a_straight_box_some_parts_that_are_seen_are_enough(int stages, int seen, double most)
    {
        var site = MadeSite.Of(WalkedBoxes.Straight(stages, seen));
        Assert.NotNull(site);
        var walker = Walker.Of(site);
        Assert.NotNull(walker);
        Assert.Empty(walker.Breaches);
        Assert.Empty(walker.Lost);

        var average = SeededWalk.Weights(walker.Standings).Sum(pair => pair.Value * walker.Taps[pair.Key]);
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{stages} stages, {seen} parts seen: {average:0.00} on average, {walker.Taps.Values.Max()} at most, {walker.Pages} pages"));
        Assert.InRange(average, 1, most);
    }

    // A program of its own in another language needed 3.58 on average and 5 at most, on 65 pages.
    [Fact]
    public void In_two_rows_of_steps_the_one_that_is_wanted_is_found()
    {
        var site = MadeSite.Of(WalkedBoxes.TwoRows(10, 5));
        Assert.NotNull(site);
        var walker = Walker.Of(site);
        Assert.NotNull(walker);
        Assert.Empty(walker.Breaches);
        Assert.Empty(walker.Lost);

        var taps = walker.TapsToWanted.Values;
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{taps.Count()} wishes, {taps.Count(each => each is null)} unfound, ")
            + string.Create(CultureInfo.InvariantCulture, $"{taps.Average():0.00} on average, {taps.Max()} at most, {walker.Pages} pages"));
        Assert.Equal(200, taps.Count());
        Assert.DoesNotContain(null, taps);
        Assert.InRange(taps.Max() ?? 0, 2, 6);
    }
}
