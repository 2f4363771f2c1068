using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Tests.Books;
using static HintBook.Tests.Mechanism.Graph.Boxes;

namespace HintBook.Tests.Mechanism.Graph;

public class SurveyTests
{
    [Fact]
    public void A_chain_opens_link_by_link()
    {
        var survey = Survey(Book([Stage("a"), Stage("b", Known("a")), Stage("c", Known("b"))]));
        Assert.Equal(("", "a", "b"), (survey.OpensAfter("a"), survey.OpensAfter("b"), survey.OpensAfter("c")));
        Assert.Equal("a b", survey.CertainBefore("c"));
        Assert.Equal(["a"], survey.First);
        Assert.Equal([0, 1, 2], new[] { "a", "b", "c" }.Select(id => survey.Stages[id].Layer));
        Assert.IsType<Claim.Proved>(survey.Opens);
    }

    [Fact]
    public void Only_the_nearest_stages_are_named()
    {
        var survey = Survey(Book([Stage("a"), Stage("b", Known("a")), Stage("c", Known("a"), Known("b"))]));
        Assert.Equal("b", survey.OpensAfter("c"));
        Assert.Equal("a b", survey.CertainBefore("c"));
    }

    [Fact]
    public void Branches_join()
    {
        var survey = Survey(Book([Stage("a"), Stage("b"), Stage("c", Known("a"), Known("b"))]));
        Assert.Equal("a; b", survey.OpensAfter("c"));
        Assert.Equal(["a", "b"], survey.First);
    }

    [Fact]
    public void Alternatives_are_one_group_and_none_of_them_is_certain()
    {
        var survey = Survey(Book([Stage("a"), Stage("b"), Stage("c", Any("a", "b"))]));
        Assert.Equal("a|b", survey.OpensAfter("c"));
        Assert.Equal("", survey.CertainBefore("c"));
    }

    [Fact]
    public void Alternatives_of_several_needs_pair_up()
    {
        var survey = Survey(Book([Stage("a"), Stage("b"), Stage("c"), Stage("d", AnyOf([Known("a"), Known("b")], [Known("c")]))]));
        Assert.Equal("a|c; b|c", survey.OpensAfter("d"));
        Assert.Equal(1, survey.Stages["d"].Layer);
    }

    [Fact]
    public void After_orders_where_no_part_does()
    {
        var survey = Survey(Book([Stage("a"), Stage("b") with { After = [A.Value("a")] }]));
        Assert.Equal("a", survey.OpensAfter("b"));
    }

    [Fact]
    public void What_the_box_does_by_itself_is_followed_to_the_stage_behind_it()
    {
        var book = Book([Stage("a"), Stage("b", Known("third"))], "first", "second", "third");
        var survey = Survey(book with
        {
            Box = book.Box with
            {
                Reactions =
                [
                    new([Known("second")], [Learns("third")], A.Somewhere),
                    new([Known("first")], [Learns("second")], A.Somewhere),
                    new([Known("a")], [Learns("first")], A.Somewhere),
                ],
            },
        });
        Assert.Equal("a", survey.OpensAfter("b"));
    }

    [Fact]
    public void A_free_part_goes_to_any_of_its_positions_once_its_needs_hold()
    {
        var book = Book([Stage("a"), Stage("b", A.Condition("tray", "out")), Stage("c", A.Condition("lid", "open"))]);
        var survey = Survey(book with
        {
            Box = book.Box with
            {
                Parts = [A.Part("tray", "in", "half", "out") with { Free = true, Needs = [Known("a")] }, A.Part("lid", "shut", "open") with { Free = true }],
            },
        });
        Assert.Equal(("a", ""), (survey.OpensAfter("b"), survey.OpensAfter("c")));
    }

    [Fact]
    public void A_stage_of_several_moves_opens_with_the_first_that_can_be_made_and_is_done_after_all()
    {
        var several = Stage("c") with
        {
            Moves =
            [
                new Move { Name = A.Value("one"), Needs = [Known("a")], Changes = [Learns("half")] },
                new Move { Name = A.Value("two"), Needs = [Known("b"), Known("half")], Changes = [Learns("c")] },
            ],
        };
        var survey = Survey(Book([Stage("a"), Stage("b"), several, Stage("d", Known("c"))], "half"));
        Assert.Equal("a", survey.OpensAfter("c"));
        Assert.Equal("c", survey.OpensAfter("d"));
        Assert.Equal("a b c", survey.CertainBefore("d"));
    }

    [Fact]
    public void Either_position_will_do()
    {
        var opens = A.Stage("a", A.Change("lid", "ajar"));
        var book = Book([opens, Stage("b", A.Condition("lid", "ajar", "off"))]);
        Assert.Equal("a", Survey(book with { Box = book.Box with { Parts = [A.Part("lid", "shut", "ajar", "off")] } }).OpensAfter("b"));
    }

    [Fact]
    public void Ten_pairs_of_alternatives_are_ten_groups()
    {
        var pairs = Enumerable.Range(0, 10).Select(i => (Left: $"l{i}", Right: $"r{i}")).ToArray();
        var survey = Survey(Book(
        [
            .. pairs.SelectMany(pair => new[] { Stage(pair.Left), Stage(pair.Right) }),
            Stage("end", [.. pairs.Select(pair => Any(pair.Left, pair.Right))]),
        ]));
        Assert.Equal(string.Join("; ", pairs.Select(pair => $"{pair.Left}|{pair.Right}")), survey.OpensAfter("end"));
        Assert.DoesNotContain("end", survey.First);
    }

    [Fact]
    public void Alternatives_beyond_all_measure_leave_groups_that_are_true()
    {
        var names = Enumerable.Range(0, 120).Select(i => $"s{i}").ToArray();
        var alternatives = names.Chunk(30).Select(chunk => chunk.Select(Known).ToImmutableArray()).ToArray();
        var survey = Survey(Book([.. names.Select(name => Stage(name)), Stage("end", AnyOf(alternatives))]));
        Assert.NotEmpty(survey.Stages["end"].OpensAfter);
        Assert.All(survey.Stages["end"].OpensAfter, group => Assert.Equal(4, group.Select(id => int.Parse(id[1..]) / 30).Distinct().Count()));
    }

    [Fact]
    public void A_stage_out_of_reach_is_said_to_be() =>
        Assert.False(Survey(Book([Stage("a"), Stage("b", Known("b"))])).Stages["b"].Reachable);

    [Fact]
    public void A_long_chain_is_surveyed_link_by_link()
    {
        var stages = Enumerable.Range(0, 2000).Select(i => i == 0 ? Stage("s0") : Stage($"s{i}", Known($"s{i - 1}"))).ToArray();
        var (survey, findings) = Surveyor.Survey(Book(stages), whole: true);
        Assert.Empty(findings.All);
        Assert.Equal(1999, survey!.Stages["s1999"].Layer);
        Assert.Equal("s1998", survey.OpensAfter("s1999"));
        Assert.Equal(1999, survey.Stages["s1999"].CertainBefore.Count);
    }

    [Fact]
    public void A_last_stage_that_needs_two_thousand_others_names_them_all()
    {
        var stages = Enumerable.Range(0, 2000).Select(i => Stage($"s{i}")).ToArray();
        var survey = Survey(Book([.. stages, Stage("end", [.. stages.Select(stage => Known(stage.Id.Value))])]));
        Assert.Equal(2000, survey.Stages["end"].OpensAfter.Length);
    }
}
