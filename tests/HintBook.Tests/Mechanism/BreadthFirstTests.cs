using CsCheck;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Mechanism.Model;
using HintBook.Mechanism.Packed;

namespace HintBook.Tests.Mechanism;

/// <summary>Exploring without the acts between states finds the same states at the same distances.</summary>
public class BreadthFirstTests
{
    [Fact]
    public void Rings_have_as_many_states_at_each_distance() => Compare(Boxes.ChineseRings(12));

    [Fact]
    public void The_tower_has_as_many_states_at_each_distance() => Compare(Boxes.Hanoi(8));

    // 181,440 states, the farthest 31 moves away: the same table that ClassicsTests holds against its source.
    [Fact]
    public void The_puzzle_has_as_many_states_at_each_distance()
    {
        var reach = Explored(Boxes.EightPuzzle(8));
        Assert.Equal((181_440, 32), (reach.Count, reach.Layers));
        Compare(Boxes.EightPuzzle(8));
    }

    [Fact]
    public void Boxes_of_every_kind_have_as_many_states_at_each_distance() => RandomBoxes.Any.Sample(Compare, iter: 1000, print: BookText.Of);

    [Fact]
    public void Boxes_with_a_dial_of_many_positions_have_as_many_states_at_each_distance() => RandomBoxes.Dials.Sample(Compare, iter: 300, print: BookText.Of);

    [Fact]
    public void Two_cores_find_the_same_way()
    {
        Book[] books =
        [
            LargeBoxes.Loose(18),
            Boxes.EightPuzzle(8, [8, 7, 6, 5, 4, 3, 2, 1, 0]),
            Boxes.EightPuzzle(0, [0, 8, 7, 6, 5, 4, 3, 2, 1]),
        ];
        foreach (var book in books)
        {
            var (one, two) = (Explored(book), Explored(book, cores: 2));
            Assert.Equal(Depths(one), Depths(two));
            Assert.Equal(one.WayToGoal(), two.WayToGoal());
        }
    }

    [Fact]
    public void It_ends_with_the_first_layer_that_is_solved()
    {
        var book = Boxes.Hanoi(5);
        var reach = BreadthFirst.Explore(Compiler.Compile(book), Solving.Budget(), untilSolved: true)!;
        Assert.Equal((31, 32), (reach.GoalDepth, reach.Layers));
    }

    [Fact]
    public void A_limit_says_so() =>
        Assert.Equal("it has more than 10000 states", BreadthFirst.Explore(Compiler.Compile(LargeBoxes.Loose(18)), Solving.Budget(), most: 10_000)!.Stopped);

    [Fact]
    public void A_set_of_numbers_is_a_set() => Gen.Select(Gen.Int[7, 40], Gen.Int[1, 300_000], Gen.ULong).Sample(
        (bits, count, seed) =>
        {
            var (seen, expected) = (new VisitedSet(bits), new HashSet<ulong>());
            var number = seed;
            for (var i = 0; i < count; i++)
            {
                number = unchecked((number * 6364136223846793005UL) + 1442695040888963407UL);
                var some = (number >> 24) & ((1UL << bits) - 1);
                var met = expected.Count >= seen.Room ? VisitedSet.Met.NoRoom : seen.Add(some);
                while (met == VisitedSet.Met.NoRoom)
                {
                    seen.Grow();
                    met = seen.Add(some);
                }

                if (expected.Add(some) != (met == VisitedSet.Met.First))
                    return false;
            }

            return expected.All(some => seen.Add(some) == VisitedSet.Met.Before);
        },
        iter: 30);

    private static BreadthFirst Explored(Book book, int cores = 1) => BreadthFirst.Explore(Compiler.Compile(book), Solving.Budget(), cores: cores)!;

    private static IEnumerable<int> Depths(BreadthFirst reach) => Enumerable.Range(0, reach.Layers).Select(reach.CountAt);

    private static void Compare(Book book)
    {
        var machine = Compiler.Compile(book);
        if (BreadthFirst.Explore(machine, Solving.Budget()) is not { } reach)
            return;
        var graph = Solving.GraphOf(machine);
        Assert.Equal(graph.Layers.Zip(graph.Layers.Skip(1), (first, end) => end - first).Where(count => count > 0), Depths(reach));
        var goal = Enumerable.Range(0, graph.Count).Where(state => graph.Solved[state]).Select(state => (int?)state).FirstOrDefault();
        Assert.Equal(goal is { } state ? graph.Depth(state) : -1, reach.GoalDepth);
        if (reach.WayToGoal() is not { } way)
            return;
        var replayer = new Replayer(book);
        Assert.Equal(reach.GoalDepth, way.Count);
        Assert.Null(replayer.Follow(way.Select(act => machine.Acts[act].Step)));
        Assert.True(replayer.Solved);
    }
}
