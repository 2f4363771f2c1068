using System.Numerics;
using CsCheck;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Mechanism.Answers;
using HintBook.Mechanism.Model;
using HintBook.Mechanism.Packed;

namespace HintBook.Tests.Mechanism;

/// <summary>Where things can be exchanged for each other, one state that stands for many says what all of them say.</summary>
public class SymmetryTests
{
    [Fact]
    public void Boxes_with_alike_things_keep_their_answers()
    {
        var (pairs, more, none) = (0, 0, 0);
        RandomAlike.Any.Sample(
            book =>
            {
                if (Compare(book) is { } largest)
                    Interlocked.Increment(ref largest == 0 ? ref none : ref largest == 2 ? ref pairs : ref more);
            },
            iter: 2000,
            print: BookText.Of);
        Assert.All([pairs, more, none], count => Assert.InRange(count, 100, int.MaxValue));
    }

    // Planning competition 1998, the "gripper" domain, problem 7: 16 balls from one room to another by a robot with two hands. Each trip there carries
    // two: 2 picks, 1 going, 2 drops; between two trips the robot goes back once. So 8 × 5 + 7 = 47 (by this formula; no list of plans was looked up). The
    // lid is one more.
    [Theory]
    [InlineData(4)]
    [InlineData(16)]
    public void A_gripper_carries_alike_balls_in_the_published_number_of_steps_and_few_states_are_looked_at(int balls)
    {
        var trips = balls / 2;
        var solution = Solving.Of(Boxes.Gripper(balls), plainly: 0);
        Assert.Equal((5 * trips) + (trips - 1) + 1, Assert.IsType<Claim.Proved>(solution.Shortest).Way.Length);
        Assert.IsType<Claim.Proved>(solution.NoDeadEnds);
        var lid = Assert.Single(solution.Stages);
        Assert.True(lid.Exact);
        // Whoever uses one hand alone has never filled the other.
        Assert.Equal([new Placed("robot", "b"), .. Enumerable.Range(0, balls).Select(i => new Placed($"ball{i}", "b"))], lid.Attained);
        Assert.Equal((1, true), (solution.Widest.Count, solution.Widest.Exact));
        Assert.Equal(new Orders(1, Exact: true), solution.Orders);
        Assert.InRange(solution.States, 1, 5_000);
    }

    // As far back as there, and the lid to shut.
    [Theory]
    [InlineData(4)]
    [InlineData(16)]
    public void A_gripper_puts_alike_balls_back_in_as_many_steps_and_few_states_are_looked_at(int balls)
    {
        var plan = Solving.Reset(Boxes.Gripper(balls), plainly: 0);
        Assert.IsType<Claim.Proved>(plan.Possible);
        Assert.Equal((3 * balls, 3 * balls), (plan.Plan.Length, plan.Bound));
        Assert.InRange(plan.States, 1, 5_000);
    }

    [Fact]
    public void Boxes_with_alike_things_are_put_back_in_as_many_steps()
    {
        var (proved, refuted) = (0, 0);
        RandomAlike.Any.Sample(
            book =>
            {
                var (fewer, whole) = (Solving.Reset(book, plainly: 0), Solving.Reset(book, reduce: false));
                Assert.Equal((whole.Possible.Word, whole.Plan.Length), (fewer.Possible.Word, fewer.Plan.Length));
                if (whole.Plan.IsEmpty)
                    return;
                Interlocked.Increment(ref whole.Possible is Claim.Proved ? ref proved : ref refuted);
                if (fewer.Possible is not Claim.Refuted { Witness: var opened })
                    return;
                var replayer = new Replayer(book);
                Assert.Null(replayer.Follow(opened));
                Assert.True(replayer.Solved);
            },
            iter: 1000,
            print: BookText.Of);
        Assert.All([proved, refuted], count => Assert.InRange(count, 20, int.MaxValue));
    }

    // No ball in a hand, one in either, or one in each, the others in either room; the robot in either room. The lid, once all lie in the second
    // room, is open or not, and from then on everything is as free as before.
    [Theory]
    [InlineData(4)]
    [InlineData(16)]
    public void The_states_that_others_stand_for_are_counted(int balls)
    {
        var shut = 2 * ((1L << balls) + (2L * balls * (1L << (balls - 1))) + ((long)balls * (balls - 1) * (1L << (balls - 2))));
        Assert.Equal(2 * shut, Solving.Of(Boxes.Gripper(balls), plainly: 0).BoxStates);
    }

    [Fact]
    public void What_a_stage_asks_of_one_thing_alone_tells_it_apart()
    {
        var box = new BoxBuilder();
        foreach (var id in new[] { "red", "green", "blue" })
            box.Part(id, "out", "in").Move($"put {id} in", "", $"{id}=in").Move($"take {id} out", $"{id}=in", $"{id}=out");
        var book = box.Part("lid", "shut", "open").Stage("lid", "red=in", "lid=open").Goal("lid=open").Build();
        Assert.Equal([["green", "blue"]], Classes(book));
    }

    [Fact]
    public void Parts_that_can_only_be_exchanged_together_are_no_class()
    {
        var box = new BoxBuilder();
        foreach (var i in Enumerable.Range(0, 6))
        {
            box.Part($"door{i}", "shut", "open").Part($"key{i}", "in", "out");
            box.Move($"take {i}", "", $"key{i}=out").Move($"open {i}", $"key{i}=out", $"door{i}=open");
        }

        var doors = string.Join(", ", Enumerable.Range(0, 6).Select(i => $"door{i}=open"));
        Assert.Empty(Classes(box.Part("lid", "shut", "open").Stage("lid", doors, "lid=open").Goal("lid=open").Build()));
    }

    private static IEnumerable<IEnumerable<string>> Classes(Book book)
    {
        var machine = Compiler.Compile(book);
        return Symmetry.Of(machine)?.Classes.Select(members => members.Select(member => machine.Variables[member].Id)) ?? [];
    }

    /// <summary>The size of the largest class, 0 if there is none; null where reactions don't settle, or no state stands for another.</summary>
    private static int? Compare(Book book)
    {
        var machine = Compiler.Compile(book);
        var (alike, budget) = (Symmetry.Of(machine), Solving.Budget());
        if (alike is null)
            return 0;
        var (whole, fewer) = (Exploration.Whole(machine, budget), Exploration.Whole(machine, budget, alike: alike));
        Assert.Equal(whole.Unrest is null, fewer.Unrest is null);
        if (whole.Unrest is not null)
            return null;
        Assert.Equal(new BigInteger(whole.Count), fewer.States);
        Compare(machine, alike, WholeGraph.Answer(whole, budget), WholeGraph.Answer(fewer, budget));

        var marked = Compiler.Compile(book, _ => true);
        var same = Assert.IsType<Symmetry>(Symmetry.Of(marked));
        Assert.Equal(alike.Classes.Select(members => members.Length), same.Classes.Select(members => members.Length));
        var (all, few) = (new OrderCounting(Exploration.Whole(marked, budget)), new OrderCounting(Exploration.Whole(marked, budget, alike: same)));
        Assert.Equal(all.Widest().Count, few.Widest().Count);
        Assert.Equal(all.Orders(budget), few.Orders(budget));
        return fewer.Count < whole.Count ? alike.Classes.Max(members => members.Length) : null;
    }

    private static void Compare(Machine machine, Symmetry alike, ExplorationResult whole, ExplorationResult fewer)
    {
        Assert.Equal((whole.Way?.Count, whole.AtLeast), (fewer.Way?.Count, fewer.AtLeast));
        Assert.Equal(whole.Possible, fewer.Possible);
        Assert.Equal(whole.WayToStage.Select(way => way?.Value.Count), fewer.WayToStage.Select(way => way?.Value.Count));
        Assert.True(fewer.Exact);
        if (fewer.Way is not null)
            Assert.True(Stepper.Holds(machine.Goal, Follow(machine, fewer.Way)));
        if (whole.DeadEnds!.Count < WholeGraph.MostDeadEnds)
        {
            var closing = whole.DeadEnds.GroupBy(way => alike.Images(way[^1])[0]).Select(ways => (ways.Key, ways.Min(way => way.Count)));
            Assert.Equal(closing.Order(), fewer.DeadEnds!.Select(way => (alike.Images(way[^1])[0], way.Count)).Order());
        }

        foreach (var way in fewer.DeadEnds!)
            Follow(machine, way);
        for (var s = 0; s < machine.StageActs.Length; s++)
        {
            if (whole.WayToStage[s] is null)
                continue;
            Assert.Equal(Said(machine, alike, whole.Before[s]), Said(machine, alike, fewer.Before[s]));
            Assert.Contains(machine.StageActs[s], act => Stepper.Holds(machine.Acts[act].When, Follow(machine, fewer.WayToStage[s]!.Value)));
        }

        if (whole.Way is not null)
            Assert.Equal(Said(machine, alike, whole.BeforeGoal), Said(machine, alike, fewer.BeforeGoal));
        foreach (var act in machine.StageActs.SelectMany(acts => acts))
        {
            var without = fewer.WayWithout(act);
            Assert.Equal(whole.WayWithout(act)?.Count, without?.Count);
            if (without is null)
                continue;
            Assert.DoesNotContain(act, without);
            Assert.True(Stepper.Holds(machine.Goal, Follow(machine, without)));
        }
    }

    // Acts that can be exchanged are not said to be certain.
    private static IEnumerable<int> Said(Machine machine, Symmetry alike, Bits certain) =>
        certain.Members().Where(n => n >= machine.Acts.Length || alike.Keeps(n));

    private static int[] Follow(Machine machine, List<int> way)
    {
        var stepper = new Stepper(machine);
        var state = stepper.Start();
        foreach (var act in way)
        {
            Assert.NotNull(state);
            Assert.True(Stepper.Holds(machine.Acts[act].When, state));
            state = stepper.After(act, state);
        }

        return Assert.IsType<int[]>(state);
    }
}
