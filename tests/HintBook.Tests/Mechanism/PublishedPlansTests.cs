using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Mechanism.Model;

namespace HintBook.Tests.Mechanism;

/// <summary>Planning problems with published lengths of their shortest plans, or of which a formula is known.</summary>
public class PublishedPlansTests
{
    // International Planning Competition 1998, domain Gripper, prob01 to prob03 with 4, 6 and 8 balls: 11, 17 and 23 (from memory). Each ball is picked
    // and dropped, and for each two balls there is a way there, and one back but for the last: 3n - 1 for an even n.
    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    [InlineData(6)]
    [InlineData(8)]
    public void Balls_are_carried_in_three_steps_each_less_one(int balls) => Assert.Equal((3 * balls) - 1, ShortestOf(Plans.Gripper(balls)));

    // The domain Ferry of the planning collections. Aboard, across, ashore and back for each car, but for the last way back: 4n - 1.
    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(6)]
    public void Cars_are_ferried_in_four_steps_each_less_one(int cars) => Assert.Equal((4 * cars) - 1, ShortestOf(Plans.Ferry(cars)));

    // International Planning Competition 2000, domain Blocks, problems 4-0, 4-1, 4-2 and 5-0; lengths from memory. A block that is moved takes two steps.
    [Theory]
    [InlineData("a b c d", "dcba", 6)]
    [InlineData("bcad", "dcab", 10)]
    [InlineData("a cb d", "abcd", 6)]
    [InlineData("ceba d", "aebdc", 12)]
    public void Blocks_are_stacked_in_the_published_number_of_steps(string first, string wanted, int steps) =>
        Assert.Equal(steps, ShortestOf(Plans.Blocks(first, wanted)));

    // OEIS A000262, ways to put n blocks into stacks: 1, 1, 3, 13, 73, 501. With one of n in the hand, the others stand in as many ways: a(n) + n a(n-1).
    [Theory]
    [InlineData("ab", 3, 1)]
    [InlineData("abc", 13, 3)]
    [InlineData("abcd", 73, 13)]
    [InlineData("abcde", 501, 73)]
    public void Blocks_stand_in_the_published_number_of_ways(string tower, int ways, int waysOfOneLess)
    {
        var graph = Solving.GraphOf(Compiler.Compile(Plans.Blocks(tower, string.Concat(tower.Reverse()))));
        Assert.Equal(ways + (tower.Length * waysOfOneLess), graph.Count);
    }

    // International Planning Competition 2011, domain VisitAll, whole boards. From a corner no field need be seen twice: n^2 - 1 (from memory, too).
    [Theory]
    [InlineData(2, 3)]
    [InlineData(3, 8)]
    [InlineData(4, 15)]
    public void A_board_is_visited_from_its_corner_without_a_field_seen_twice(int side, int steps) =>
        Assert.Equal(steps, ShortestOf(Plans.VisitAll(side, start: 0)));

    // Coloured as a chessboard, three by three has four fields of the colour in the middle of a side and five of the other: one field must be seen twice.
    [Fact]
    public void A_board_of_an_odd_side_takes_one_step_more_from_the_middle_of_a_side() => Assert.Equal(9, ShortestOf(Plans.VisitAll(3, start: 1)));

    // OEIS A092113, stacks of n pancakes by the number of turns they need; the last column is A058986, the pancake numbers 1, 3, 4, 5, 7.
    [Theory]
    [InlineData(2, new[] { 1, 1 })]
    [InlineData(3, new[] { 1, 2, 2, 1 })]
    [InlineData(4, new[] { 1, 3, 6, 11, 3 })]
    [InlineData(5, new[] { 1, 4, 12, 35, 48, 20 })]
    [InlineData(6, new[] { 1, 5, 20, 79, 199, 281, 133, 2 })]
    public void Pancakes_are_sorted_in_the_published_numbers_of_turns(int count, int[] stacks)
    {
        var layers = Solving.GraphOf(Compiler.Compile(Plans.Pancakes(count))).Layers;
        Assert.Equal(stacks, layers.Zip(layers.Skip(1), (first, end) => end - first).Where(number => number > 0));
    }

    // Lucas's game (MathWorld, "Frogs and Toads"): n (n + 2) moves.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Frogs_and_toads_change_sides_in_the_published_number_of_moves(int each) =>
        Assert.Equal(each * (each + 2), ShortestOf(Plans.FrogsAndToads(each)));

    // Nobody goes back: two frogs that go one behind the other stand before a wall of toads.
    [Fact]
    public void Frogs_get_stuck_behind_each_other() =>
        Assert.Equal(2, Assert.IsType<Claim.Refuted>(Solving.Of(Plans.FrogsAndToads(2)).NoDeadEnds).Witness.Length);

    // Guarini's problem (1512): 16 single moves. The eight outer fields are a ring for a knight, and each of the four goes half round it.
    [Fact]
    public void Four_knights_change_sides_in_sixteen_moves() => Assert.Equal(16, ShortestOf(Plans.Knights()));

    // Through the files that an author would write.
    private static int ShortestOf(Book book) => Assert.IsType<Claim.Proved>(Solving.Of(WrittenBook.ReadBack(book)).Shortest).Way.Length;
}
