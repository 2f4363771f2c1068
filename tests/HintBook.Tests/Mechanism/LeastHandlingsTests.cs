using CsCheck;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Mechanism.Model;
using HintBook.Mechanism.Tours;

namespace HintBook.Tests.Mechanism;

/// <summary>No test walk is shorter than its bound says, and on small boxes the bound is near the shortest one.</summary>
public class LeastHandlingsTests
{
    // The naive tour takes its time over more.
    private const int MostPairs = 20_000;
    private const int MostStates = 4_000;

    [Fact]
    public void No_walk_that_trying_everything_finds_is_shorter_than_the_bound()
    {
        var (boxes, exact, bounds, lengths) = (0, 0, 0, 0);
        var door = new System.Threading.Lock();
        Gen.OneOf(RandomBoxes.Any, RandomBoxes.OneWay, RandomBoxes.Returning).Where(book => !book.Box.Parts.Any(part => part.Turns)).Sample(
            book =>
            {
                var naive = new NaiveExplorer(book, 100, toTheGoal: true);
                if (naive.GaveUp || naive.ShortestTour(MostPairs) is not (> 0 and var shortest) || BoundOf(book) is not { } bound)
                    return;
                Assert.InRange(bound, 0, shortest);
                lock (door)
                {
                    boxes++;
                    exact += bound == shortest ? 1 : 0;
                    (bounds, lengths) = (bounds + bound, lengths + shortest);
                }
            },
            iter: 400,
            print: BookText.Of);
        Assert.InRange(boxes, 40, int.MaxValue);
        Assert.InRange((double)lengths / bounds, 1, 1.1);
        Assert.True(exact > boxes / 2, $"{exact} of {boxes} bounds are exact");
    }

    private static int? BoundOf(Book book)
    {
        var compiled = Compiler.Compile(book);
        var machine = new TourMachine(book, compiled, new Stepper(compiled).Start()!);
        var states = new TourStates(machine);
        states.NumberOf(machine.Start);
        var budget = new Budget(SolveLimits.Default, TimeProvider.System, progress: null, TestContext.Current.CancellationToken);
        if (TourGraph.Of(states, MostStates, budget) is not { } graph)
            return null;
        var possible = new bool[machine.Duties.Length];
        foreach (var edge in graph.Edges.SelectMany(edges => edges))
            TourMachine.Mark(edge.Deed, possible);
        return LeastHandlings.Of(machine, TourPlanner.Wanted(machine, possible), home: true, budget);
    }
}
