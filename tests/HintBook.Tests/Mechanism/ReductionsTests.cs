using CsCheck;
using HintBook.Books;
using HintBook.Mechanism.Answers;
using HintBook.Mechanism.Model;
using HintBook.Mechanism.Packed;
using HintBook.Mechanism.Reduced;

namespace HintBook.Tests.Mechanism;

/// <summary>What a reduced exploration says is what the whole graph says.</summary>
public class ReductionsTests
{
    [Fact]
    public void Boxes_of_every_kind_keep_their_answers() => RandomBoxes.Any.Sample(book => Compare(book), iter: 2000, print: BookText.Of);

    [Fact]
    public void Boxes_with_a_dial_of_many_positions_keep_their_answers() => RandomBoxes.Dials.Sample(book => Compare(book), iter: 1000, print: BookText.Of);

    [Fact]
    public void Boxes_that_go_one_way_keep_their_answers() => RandomBoxes.OneWay.Sample(book => Compare(book), iter: 2000, print: BookText.Of);

    [Fact]
    public void Boxes_that_only_gain_keep_their_answers_without_being_explored() => RandomBoxes.Gaining.Sample(
        book =>
        {
            var machine = Compiler.Compile(book);
            var reduced = new FreeParts(machine, new Moves(machine), FreeParts.NoActs, FreeParts.NoActs).Reduced;
            Assert.True(Monotone.Only(reduced, new DeleteRelaxation(reduced)));
            Compare(book);
        },
        iter: 2000,
        print: BookText.Of);

    [Fact]
    public void Boxes_that_only_gain_keep_their_answers_when_explored_thriftily() =>
        RandomBoxes.Gaining.Sample(book => Compare(book, monotone: false), iter: 1000, print: BookText.Of);

    [Fact]
    public void Boxes_that_go_one_way_keep_their_answers_when_explored_thriftily() =>
        RandomBoxes.OneWay.Sample(book => Compare(book, monotone: false), iter: 1000, print: BookText.Of);

    [Fact]
    public void Cabinets_keep_their_answers()
    {
        var (all, gaining) = (0, 0);
        RandomCabinets.Any.Sample(
            book =>
            {
                if (Compare(book) is not { } reduced)
                    return;
                Interlocked.Increment(ref all);
                if (reduced.Tour is not null)
                    Interlocked.Increment(ref gaining);
            },
            iter: 2000,
            print: BookText.Of);
        Assert.InRange(all, 1000, int.MaxValue);
        Assert.InRange(gaining, 300, all - 300);
    }

    [Fact]
    public void Cabinets_keep_their_answers_when_explored_thriftily() =>
        RandomCabinets.Any.Sample(book => Compare(book, monotone: false), iter: 1000, print: BookText.Of);

    [Fact]
    public void What_can_be_taken_back_step_by_step_can_be_put_back_from_everywhere()
    {
        var proved = 0;
        RandomCabinets.Any.Sample(
            book =>
            {
                var machine = Compiler.Compile(book);
                var back = ResetMachine.Build(book, machine, [.. machine.Start]);
                ulong[] attainable = [.. new WaitingReasons(machine).Attainable, .. Enumerable.Repeat(1UL, back.Variables.Length - machine.Variables.Length)];
                if (!new TakenBack(machine, back, attainable).All() || new NaiveExplorer(book).AllGoBack(3000) is not { } goesBack)
                    return;
                Assert.True(goesBack);
                Interlocked.Increment(ref proved);
            },
            iter: 2000,
            print: BookText.Of);
        Assert.InRange(proved, 50, int.MaxValue);
    }

    [Fact]
    public void A_thing_that_must_be_left_where_it_is_hidden_is_a_dead_end_once_it_is_taken() => Compare(
        new BoxBuilder().Thing("key", HintBook.Books.Thing.Hidden, "slot").Part("lid", "shut", "open")
            .Move("take", "", "key").Move("put", "key", "key=slot").Move("draw", "key=slot", "key=in-hand")
            .Stage("lid", "key=hidden", "lid=open").Goal("lid=open").Build());

    [Fact]
    public void A_part_that_never_comes_back_to_its_first_position_is_a_dead_end_where_that_is_wanted() => Compare(
        new BoxBuilder().Part("p", "a", "b", "c").Part("lid", "shut", "open").Move("to b", "", "p=b").Move("to c", "", "p=c")
            .Stage("lid", "p=a", "lid=open").Goal("lid=open").Build());

    [Fact]
    public void A_circle_of_reactions_is_harmful_if_one_of_them_is() => Compare(
        new BoxBuilder().Part("w", "off", "on").Free("p", "", "a", "b", "c").Part("g1", "off", "on").Part("g2", "off", "on").Part("x", "a", "b").Fact("k")
            .Part("lid", "shut", "open").Move("w on", "", "w=on").Reaction("any(w=on; g1=on)", "g2=on, x=b").Reaction("any(p=b; g2=on)", "g1=on")
            .Stage("s1", "p=c", "k=known").Stage("lid", "x=a, k=known", "lid=open").Goal("lid=open").Build());

    [Fact]
    public void What_moving_a_part_gives_beside_is_certain_where_the_part_must_be_moved_back() => Compare(
        new BoxBuilder().Part("p", "a", "b").Part("h", "off", "on").Part("g", "off", "on").Fact("k").Part("lid", "shut", "open")
            .Move("to b", "", "p=b").Move("back", "p=b", "p=a, h=on").Reaction("h=on", "g=on")
            .Stage("s1", "p=b", "k=known").Stage("lid", "p=a, k=known", "lid=open").Goal("lid=open").Build());

    [Fact]
    public void What_moving_a_part_gives_beside_may_solve_the_box_before_it_is_trapped() => Compare(
        new BoxBuilder().Part("p", "a", "b").Part("h", "off", "on").Part("x", "a", "b").Fact("k")
            .Move("to b", "", "p=b").Move("back", "p=b", "p=a, h=on")
            .Stage("s1", "p=b", "k=known").Stage("trap", "p=a, k=known", "x=b").Goal("h=on, x=a").Build());

    [Fact]
    public void A_thing_that_a_reaction_takes_only_from_where_it_is_hidden_is_no_gain_elsewhere() => Compare(
        new BoxBuilder().Thing("t", "slot", "slot").Part("y", "a", "b").Free("p", "", "a", "b").Free("q", "", "a", "b").Part("lid", "shut", "open")
            .Reaction("q=b, y=b", "t").Reaction("p=b, y=b, t=slot/in-hand", "t")
            .Stage("s1", "p=a, q=a", "y=b").Stage("lid", "t", "lid=open").Goal("lid=open").Build());

    [Fact]
    public void Reactions_that_ask_for_different_positions_of_one_part_do_not_clash()
    {
        var book = new BoxBuilder().Free("tilt", "", "upright", "on-its-back").Part("ball", "left", "right")
            .Reaction("tilt=upright", "ball=left").Reaction("tilt=on-its-back", "ball=right").Goal("ball=right").Build();
        Assert.False(ReactionConflicts.Any(Compiler.Compile(book)));
    }

    private static ExplorationResult? Compare(Book book, bool monotone = true)
    {
        var machine = Compiler.Compile(book);
        var budget = Solving.Budget();
        if (ByReduction.Explore(machine, budget, monotone: monotone) is not { } reduced)
            return null;
        var whole = WholeGraph.Answer(Solving.GraphOf(machine), budget);
        Assert.Equal(whole.Way is null, reduced.Way is null);
        if (whole.Way is not null)
            Assert.InRange(whole.Way.Count, reduced.AtLeast, reduced.Way!.Count);
        Assert.Equal(whole.Possible, reduced.Possible);
        Assert.Equal(whole.WayToStage.Select(way => way is null), reduced.WayToStage.Select(way => way is null));
        Assert.Equal(whole.DeadEnds!.Count == 0, reduced.DeadEnds!.Count == 0);
        Assert.True(reduced.Exact);
        for (var s = 0; s < machine.StageActs.Length; s++)
        {
            if (whole.WayToStage[s] is not null)
                Assert.Equal(Said(machine, whole.Before[s]), Said(machine, reduced.Before[s]));
        }

        if (whole.Way is not null)
            Assert.Equal(Said(machine, whole.BeforeGoal), Said(machine, reduced.BeforeGoal));
        foreach (var act in machine.StageActs.SelectMany(acts => acts))
            Assert.Equal(whole.WayWithout(act) is null, reduced.WayWithout(act) is null);
        return reduced;
    }

    private static IEnumerable<int> Said(Machine machine, Bits certain) =>
        certain.Members().Where(n => n >= machine.Acts.Length || machine.Acts[n].Stage >= 0);
}
