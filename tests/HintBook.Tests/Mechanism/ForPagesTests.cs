using CsCheck;
using HintBook.Books;
using HintBook.Mechanism;

namespace HintBook.Tests.Mechanism;

/// <summary>What pages are told is what <c>solve</c> says, without the counts.</summary>
public class ForPagesTests
{
    [Fact]
    public void Pages_are_told_the_same_of_boxes_of_every_kind() => RandomBoxes.Any.Sample(Compare, iter: 500, print: BookText.Of);

    [Fact]
    public void Pages_are_told_the_same_of_boxes_with_a_dial_of_many_positions() => RandomBoxes.Dials.Sample(Compare, iter: 300, print: BookText.Of);

    [Fact]
    public void Pages_are_told_the_same_of_boxes_that_only_gain() => RandomBoxes.Gaining.Sample(Compare, iter: 500, print: BookText.Of);

    private static void Compare(Book book)
    {
        var (pages, all) = (Solver.ForPages(Explored.Explore(book, SolveLimits.Default, stop: TestContext.Current.CancellationToken)), Solving.Of(book));
        Assert.Equal(Said(all), Said(pages));
        Assert.Equal(all.Stages.Select(Said), pages.Stages.Select(Said));
        Assert.Equal(all.Findings.Select(f => $"{f}"), pages.Findings.Select(f => $"{f}"));
        Assert.False(pages.Orders.Exact || pages.Widest.Exact);
    }

    private static string Said(Solution s) =>
        $"{s.Opens.Word} {s.Shortest.Word} {s.NoDeadEnds.Word} {s.NoOtherShortcuts.Word}: "
        + $"{string.Join(" ", s.Bottlenecks)}; {string.Join(" ", s.Shortcuts.Select(c => c.Without))}";

    private static string Said(StageAnswer s) =>
        $"{s.Id} {s.Reachable.Word} {s.Exact} "
        + $"{string.Join(" ", s.CertainBefore)}; {string.Join(" ", s.Facts)}; {string.Join(" ", s.Attained)}";
}
