using CsCheck;
using HintBook.Books;
using HintBook.Mechanism;

namespace HintBook.Tests.Mechanism;

/// <summary>A thousand small boxes, and many more in a soak: every answer equals that of a second, simple explorer, with reductions and without.</summary>
public class AgainstTheNaiveExplorerTests
{
    // The naive explorer takes its time over more.
    private const int MostStates = 3000;

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Boxes_of_every_kind_give_the_same_answers(bool reduce) =>
        RandomBoxes.Any.Sample(book => Compare(book, reduce), iter: 250, print: BookText.Of);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Boxes_that_go_one_way_give_the_same_answers(bool reduce) =>
        RandomBoxes.OneWay.Sample(book => Compare(book, reduce), iter: 250, print: BookText.Of);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Boxes_with_a_dial_of_many_positions_give_the_same_answers(bool reduce)
    {
        var answers = 0;
        RandomBoxes.Dials.Sample(
            book =>
            {
                var naive = new NaiveExplorer(book, MostStates);
                if (naive.GaveUp)
                    return;
                Compare(book, naive, reduce);
                Interlocked.Increment(ref answers);
            },
            iter: 150,
            print: BookText.Of);
        Assert.InRange(answers, 100, int.MaxValue);
    }

    [Fact]
    public void Cabinets_give_the_same_answers() => RandomCabinets.Any.Sample(book => Compare(book, reduce: true), iter: 500, print: BookText.Of);

    [Fact]
    public void Boxes_with_alike_things_give_the_same_answers() =>
        RandomAlike.Any.Sample(book => Compare(book, reduce: true), iter: 500, print: BookText.Of);

    [Fact]
    public void Small_boxes_that_are_looked_at_plainly_give_the_same_answers() =>
        RandomBoxes.Any.Sample(book => Compare(book, reduce: true, plainly: SolveLimits.FewStates), iter: 250, print: BookText.Of);

    private static void Compare(Book book, bool reduce, int plainly = 0) => Compare(book, new NaiveExplorer(book), reduce, plainly);

    private static void Compare(Book book, NaiveExplorer naive, bool reduce, int plainly = 0)
    {
        var solution = Solving.Of(book, reduce, plainly);
        if (naive.Unrest)
        {
            Assert.Contains(solution.Findings, f => f.Code.Id is "HB2120" or "HB2121");
            return;
        }

        Assert.DoesNotContain(solution.Findings, f => f.Code.Id is "HB2120" or "HB2121");
        Assert.Equal(naive.Shortest is null ? "refuted" : "proved", solution.Opens.Word);
        if (naive.Shortest is { } moves)
            Assert.Equal(moves, Assert.IsType<Claim.Proved>(solution.Shortest).Way.Length);
        foreach (var stage in solution.Stages)
            Assert.Equal(naive.Reachable(stage.Id) ? "proved" : "refuted", stage.Reachable.Word);
        Assert.Equal(
            Impossible(book, naive),
            solution.NeverPossible.Where(s => s.Kind is StepKind.StageMove or StepKind.BookMove).Select(s => (s.Stage, s.Move)));
        var deadEnd = naive.ShortestDeadEnd();
        Assert.Equal(deadEnd, solution.DeadEnds.IsEmpty ? null : solution.DeadEnds[0].Length);
        CompareCertain(book, naive, solution);
        if (naive.Shortest is not null)
            CompareShortcuts(book, naive, solution);
        Assert.Equal((naive.Widest(), true), (solution.Widest.Count, solution.Widest.Exact));
        if (naive.Orders(2000) is { } orders)
            Assert.Equal(new Orders(orders, Exact: true), solution.Orders);
    }

    private static IEnumerable<(string?, int)> Impossible(Book book, NaiveExplorer naive) =>
        book.Stages.SelectMany(s => Enumerable.Range(0, s.Moves.Length).Select(m => ((string?)s.Id.Value, m)))
            .Concat(Enumerable.Range(0, book.Box.Moves.Length).Select(m => ((string?)null, m)))
            .Where(move => !naive.Possible(move.Item1, move.m));

    private static void CompareCertain(Book book, NaiveExplorer naive, Solution solution)
    {
        foreach (var stage in solution.Stages.Where(s => s.Reachable is Claim.Proved))
        {
            Assert.True(stage.Exact);
            Assert.Equal(book.Stages.Where(s => s.Id.Value != stage.Id && Certain(naive, s, stage.Id)).Select(s => s.Id.Value), stage.CertainBefore);
            var positions =
                from n in book.Box.Names
                from p in naive.Telling(n)
                where naive.PositionIsCertain(n.Id.Value, p, stage.Id)
                select new Placed(n.Id.Value, p);
            Assert.Equal(positions.Order(Comparer<Placed>.Create(Order)), stage.Attained.Order(Comparer<Placed>.Create(Order)));
        }

        if (naive.Shortest is not null)
            Assert.Equal(book.Stages.Where(s => Certain(naive, s, null)).Select(s => s.Id.Value), solution.Bottlenecks);
    }

    private static void CompareShortcuts(Book book, NaiveExplorer naive, Solution solution)
    {
        var expected = book.Stages.Where(s => !s.Optional).Select(s => (s.Id.Value, Moves: naive.ShortestWithout(s.Id.Value))).Where(s => s.Moves is not null);
        Assert.Equal(expected.Select(s => s.Value), solution.Shortcuts.Select(s => s.Without));
        Assert.IsType<Claim.Proved>(solution.NoOtherShortcuts);
    }

    private static bool Certain(NaiveExplorer naive, Stage stage, string? before) =>
        Enumerable.Range(0, stage.Moves.Length).All(m => naive.ActIsCertain($"{stage.Id.Value}/{m}", before));

    private static int Order(Placed left, Placed right) => string.CompareOrdinal($"{left.Name} {left.Position}", $"{right.Name} {right.Position}");
}
