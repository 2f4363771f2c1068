using CsCheck;
using System.Collections.Immutable;
using HintBook.Print.Booklets;

namespace HintBook.Tests.Print;

/// <summary>The order of a booklet's entries, for any entries that must be kept apart.</summary>
public class ShuffleTests
{
    private const double Page = 100;

    private static readonly Gen<(double[] Heights, bool[] Apart)> Any =
        Gen.Select(Gen.Double[5, 250].Array[1, 30], Gen.Double[0, 1]).SelectMany((heights, share) =>
            Gen.Double[0, 1].Array[heights.Length * heights.Length].Select(drawn => (heights, drawn.Select(each => each < share).ToArray())));

    [Fact]
    public void What_must_be_kept_apart_is_on_no_page_together_and_on_no_two_that_follow_each_other() => Any.Sample((heights, apart) =>
    {
        var pages = Pages(Order(heights, apart));
        for (var page = 0; page < pages.Count; page++)
        {
            int[] seen = [.. pages[page].Concat(page + 1 < pages.Count ? pages[page + 1] : []).Distinct()];
            Assert.DoesNotContain(
                from one in seen from other in seen where one != other && AreApart(apart, heights.Length, one, other) select (one, other),
                _ => true);
        }
    });

    [Fact]
    public void Every_entry_is_there_once_and_fits() => Any.Sample((heights, apart) =>
    {
        var order = Order(heights, apart);
        Assert.Equal(Enumerable.Range(0, heights.Length), order.SelectMany(group => group.Entries).Order());
        Assert.All(order, group => Assert.True(group.Pages > 1 || group.Entries.Sum(entry => heights[entry]) <= Page + 1e-9));
        Assert.Equal(0, order[0].Entries[0]);
    });

    [Fact]
    public void The_same_entries_give_the_same_order() => Any.Sample((heights, apart) =>
        Assert.Equal(Order(heights, apart).SelectMany(group => group.Entries), Order(heights, apart).SelectMany(group => group.Entries)));

    [Fact]
    public void Where_nothing_need_be_kept_apart_no_page_is_empty() =>
        Assert.DoesNotContain(Order([.. Enumerable.Repeat(30.0, 40)], new bool[1600]), group => group.Entries.IsEmpty);

    private static ImmutableArray<PageGroup> Order(double[] heights, bool[] apart) => Shuffle.Order(
        [.. heights],
        [.. heights.Select(height => (int)Math.Ceiling(height / Page))],
        (one, other) => one != other && AreApart(apart, heights.Length, one, other),
        first: 0,
        Page,
        "a seed");

    private static bool AreApart(bool[] apart, int count, int one, int other) => apart[(Math.Min(one, other) * count) + Math.Max(one, other)];

    private static List<ImmutableArray<int>> Pages(ImmutableArray<PageGroup> order) =>
        [.. order.SelectMany(group => Enumerable.Repeat(group.Entries, group.Pages))];
}
