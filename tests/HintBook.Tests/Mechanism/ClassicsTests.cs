using System.Collections.Immutable;
using System.Numerics;
using HintBook.Mechanism;
using HintBook.Mechanism.Model;
using HintBook.Mechanism.Packed;

namespace HintBook.Tests.Mechanism;

public class ClassicsTests
{
    // OEIS A000975, fewest single moves that free n Chinese rings (MathWorld, "Baguenaudier").
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 2)]
    [InlineData(3, 5)]
    [InlineData(4, 10)]
    [InlineData(5, 21)]
    [InlineData(6, 42)]
    [InlineData(7, 85)]
    [InlineData(8, 170)]
    [InlineData(9, 341)]
    [InlineData(10, 682)]
    [InlineData(11, 1365)]
    [InlineData(12, 2730)]
    public void Rings_open_in_the_published_number_of_moves(int rings, int moves) =>
        Assert.Equal(moves, ShortestOf(Boxes.ChineseRings(rings)));

    // OEIS A051049, the same with the two end rings moved together counted as one (MathWorld, "Baguenaudier").
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 1)]
    [InlineData(3, 4)]
    [InlineData(4, 7)]
    [InlineData(5, 16)]
    [InlineData(6, 31)]
    [InlineData(7, 64)]
    [InlineData(8, 127)]
    [InlineData(9, 256)]
    [InlineData(10, 511)]
    public void Rings_with_pairs_open_in_the_published_number_of_moves(int rings, int moves) =>
        Assert.Equal(moves, ShortestOf(Boxes.ChineseRings(rings, pairs: true)));

    // 2^n - 1 moves over 3^n states (classical; confirmed on a public planning collection, see the house's list of values).
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    public void Hanoi_takes_two_to_the_n_less_one_moves(int discs)
    {
        var graph = GraphOf(Boxes.Hanoi(discs));
        Assert.Equal((int)Math.Pow(3, discs), graph.Count);
        Assert.Equal((1 << discs) - 1, ShortestOf(Boxes.Hanoi(discs)));
    }

    // Frame and Stewart's numbers for four pegs (from memory).
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 3)]
    [InlineData(3, 5)]
    [InlineData(4, 9)]
    [InlineData(5, 13)]
    [InlineData(6, 17)]
    public void Hanoi_with_four_pegs_takes_fewer(int discs, int moves) =>
        Assert.Equal(moves, ShortestOf(Boxes.Hanoi(discs, pegs: 4)));

    // OEIS A089473: states by depth with the blank in a corner; 181,440 in all, the farthest 31 moves away.
    [Fact]
    public void The_eight_puzzle_has_the_published_number_of_states_at_every_depth()
    {
        int[] published =
        [
            1, 2, 4, 8, 16, 20, 39, 62, 116, 152, 286, 396, 748, 1024, 1893, 2512, 4485, 5638, 9529, 10878, 16993, 17110, 23952, 20224,
            24047, 15578, 14560, 6274, 3910, 760, 221, 2,
        ];
        Assert.Equal(published, DepthsOf(GraphOf(Boxes.EightPuzzle(blank: 8))));
    }

    // OEIS A089474 (centre: 30 deep, 148 states there) and A089483 (middle of a side: 31 deep, 2 states there).
    [Theory]
    [InlineData(4, 30, 148)]
    [InlineData(1, 31, 2)]
    public void The_eight_puzzle_is_as_deep_from_other_places(int blank, int depth, int states)
    {
        var depths = DepthsOf(GraphOf(Boxes.EightPuzzle(blank)));
        Assert.Equal((depth, states), (depths.Length - 1, depths[^1]));
    }

    // A textbook exercise: 10 allowed states, 7 crossings, 2 shortest plans.
    [Fact]
    public void Wolf_goat_and_cabbage_cross_in_seven()
    {
        var graph = GraphOf(Boxes.WolfGoatCabbage());
        Assert.Equal(10, graph.Count);
        Assert.Equal(7, ShortestOf(Boxes.WolfGoatCabbage()));
        Assert.Equal(2, ShortestWays(graph));
    }

    // Calvin University, R. Pruim's course page: 11 crossings, 4 solutions; four of each can't cross in a boat for two.
    [Fact]
    public void Three_missionaries_and_cannibals_cross_in_eleven()
    {
        Assert.Equal(11, ShortestOf(Boxes.Missionaries(3)));
        Assert.Equal(4, ShortestWays(GraphOf(Boxes.Missionaries(3))));
    }

    [Fact]
    public void Four_missionaries_and_cannibals_never_cross() =>
        Assert.IsType<Claim.Refuted>(Solving.Of(Boxes.Missionaries(4)).Opens);

    // Well known; from memory, computed by brute force too.
    [Fact]
    public void Jugs_measure_four()
    {
        Assert.Equal(6, ShortestOf(Boxes.Jugs([5, 3], [0, 0], tap: true, "j0=4")));
        Assert.Equal(7, ShortestOf(Boxes.Jugs([8, 5, 3], [8, 0, 0], tap: false, "j0=4, j1=4")));
        Assert.Equal(16, GraphOf(Boxes.Jugs([5, 3], [0, 0], tap: true, "j0=4")).Count);
    }

    // Sussman's anomaly with a hand that picks up, puts down, stacks and unstacks: six steps (from memory).
    [Fact]
    public void Sussmans_anomaly_takes_six() => Assert.Equal(6, ShortestOf(Boxes.Sussman()));

    // Lengauer and Tarjan 1979, the example graph, as the Boost test "dominator_tree_test.cpp" has it.
    [Theory]
    [InlineData("A", "")]
    [InlineData("B", "")]
    [InlineData("C", "")]
    [InlineData("D", "")]
    [InlineData("E", "")]
    [InlineData("H", "")]
    [InlineData("I", "")]
    [InlineData("K", "")]
    [InlineData("F", "C")]
    [InlineData("G", "C")]
    [InlineData("J", "C G")]
    [InlineData("L", "D")]
    public void What_is_certain_before_a_room_are_its_dominators(string room, string dominators)
    {
        var arrows = "RA RB RC AD BA BD BE CF CG DL EH FI GI GJ HE HK IK JI KR KI LH".Split(' ')
            .Select(a => (a[..1], a[1..])).ToImmutableArray();
        var solution = Solving.Of(Boxes.Walk("R", arrows, "K"));
        var stage = solution.Stages.Single(s => s.Id == room);
        Assert.True(stage.Exact);
        Assert.Equal(dominators, string.Join(' ', stage.CertainBefore));
    }

    // OEIS A046873, linear extensions of the lattice of subsets.
    [Theory]
    [InlineData(0, "1")]
    [InlineData(1, "1")]
    [InlineData(2, "2")]
    [InlineData(3, "48")]
    [InlineData(4, "1680384")]
    public void A_lattice_of_subsets_opens_in_the_published_number_of_orders(int n, string orders)
    {
        var solution = Solving.Of(Boxes.Order(1 << n, (below, above) => below != above && (below & above) == below));
        Assert.Equal(new Orders(BigInteger.Parse(orders), Exact: true), solution.Orders);
    }

    // OEIS A000111, linear extensions of the zigzag poset (Stanley, ch. 3, problem 23).
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 1)]
    [InlineData(3, 2)]
    [InlineData(4, 5)]
    [InlineData(5, 16)]
    [InlineData(6, 61)]
    [InlineData(7, 272)]
    [InlineData(8, 1385)]
    public void A_fence_opens_in_the_published_number_of_orders(int n, int orders)
    {
        var solution = Solving.Of(Boxes.Order(n, (below, above) => below % 2 == 0 && Math.Abs(below - above) == 1));
        Assert.Equal(new Orders(orders, Exact: true), solution.Orders);
    }

    // Two chains of n: C(2n, n), computed by brute force too.
    [Theory]
    [InlineData(1, 2)]
    [InlineData(2, 6)]
    [InlineData(3, 20)]
    [InlineData(4, 70)]
    [InlineData(5, 252)]
    [InlineData(6, 924)]
    public void Two_chains_interleave_in_the_binomial_number_of_orders(int n, int orders)
    {
        var solution = Solving.Of(Boxes.Order(2 * n, (below, above) => below + 1 == above && above != n));
        Assert.Equal(new Orders(orders, Exact: true), solution.Orders);
    }

    // Sperner's theorem (OEIS A001405): the widest level of the lattice of subsets.
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 2)]
    [InlineData(3, 3)]
    [InlineData(4, 6)]
    public void The_widest_moment_of_a_lattice_is_its_middle_level(int n, int width)
    {
        var widest = Solving.Of(Boxes.Order(1 << n, (below, above) => below != above && (below & above) == below)).Widest;
        Assert.Equal((width, true), (widest.Count, widest.Exact));
    }

    // Through the files that an author would write.
    private static int ShortestOf(HintBook.Books.Book book) => Assert.IsType<Claim.Proved>(Solving.Of(WrittenBook.ReadBack(book)).Shortest).Way.Length;

    private static StateGraph GraphOf(HintBook.Books.Book book) => Solving.GraphOf(Compiler.Compile(book));

    private static int[] DepthsOf(StateGraph graph) => [.. graph.Layers.Zip(graph.Layers.Skip(1), (first, end) => end - first)];

    private static BigInteger ShortestWays(StateGraph graph)
    {
        var ways = new BigInteger[graph.Count];
        ways[0] = 1;
        for (var state = 0; state < graph.Count; state++)
        {
            if (graph.Solved[state])
                return ways[state];
            var depth = graph.Depth(state);
            for (var e = graph.From[state]; e < graph.From[state + 1]; e++)
            {
                if (graph.Depth(graph.To[e]) == depth + 1)
                    ways[graph.To[e]] += ways[state];
            }
        }

        return 0;
    }
}
