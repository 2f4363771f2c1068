using CsCheck;
using HintBook.Books;
using HintBook.Maps;
using static HintBook.Tests.Maps.MapBooks;

namespace HintBook.Tests.Maps;

public class StageMapTests
{
    private static readonly Condition Honey = Needs("honey-jar");

    [Fact]
    public void Stages_are_numbered_in_the_author_s_order() =>
        Assert.Equal(
            [new(1, "Title of b", StageKind.Ordinary), new(2, "Title of a", StageKind.Ordinary)],
            StageMap.Build(Book(Honey, Stage("b"), Stage("a")), Survey(("a", []), ("b", []))).Nodes);

    [Fact]
    public void What_is_needed_and_what_is_one_of_several_are_told_apart() =>
        Assert.Equal(
            [new(1, 4, false), new(2, 4, true), new(3, 4, true)],
            StageMap.Build(
                Book(Honey, Stage("a"), Stage("b"), Stage("c"), Stage("d")),
                Survey(("a", []), ("b", []), ("c", []), ("d", [["b", "c"], ["a"], ["a", "b"]]))).Edges);

    [Fact]
    public void The_order_in_which_a_survey_names_stages_does_not_matter() =>
        Gen.Shuffle(new string[][] { ["a"], ["b", "c"], ["c", "a"] }).Sample(groups =>
            StageMap.Build(Book(Honey, Stage("a"), Stage("b"), Stage("c"), Stage("d")), Survey(("d", groups)))
                .Edges.SequenceEqual([new(1, 4, false), new(2, 4, true), new(3, 4, true)]));

    [Fact]
    public void Names_that_are_no_stages_have_no_edges() =>
        Assert.Empty(StageMap.Build(Book(Honey, Stage("a")), Survey(("a", [["ghost"]]), ("ghost", [["a"]]))).Edges);

    [Fact]
    public void A_stage_stands_out_by_the_gravest_reason() =>
        Assert.Equal(
            [StageKind.Unreachable, StageKind.RedHerring, StageKind.Optional, StageKind.Goal],
            StageMap.Build(
                Book(
                    Honey,
                    Stage("lost") with { RedHerring = true },
                    Stage("herring") with { RedHerring = true, Optional = true },
                    Stage("extra") with { Optional = true },
                    Stage("last", Change("honey-jar", "in-hand")) with { Optional = true }),
                Survey(("lost", []), ("herring", []), ("extra", []), ("last", []))).Nodes.Select(stage => stage.Kind));

    [Theory]
    [InlineData("open", StageKind.Goal)]
    [InlineData("ajar", StageKind.Goal)]
    [InlineData("closed", StageKind.Ordinary)]
    public void A_goal_with_positions_is_attained_by_one_of_them(string position, StageKind kind) =>
        Assert.Equal(kind, StageMap.Build(Book(Needs("lid", "open", "ajar"), Stage("a", Change("lid", position))), Survey()).Nodes[0].Kind);

    [Fact]
    public void Where_the_box_opens_by_itself_the_stage_that_sets_it_off_is_the_goal()
    {
        var book = Book(Honey, Stage("a", Change("dial", "south")), Stage("b", Change("dial", "north")));
        var tray = new Reaction([Needs("dial", "north")], [Change("tray", "out")], default);
        var jar = new Reaction([Needs("tray", "out")], [Change("honey-jar", "in-hand")], default);
        Assert.Equal(
            [StageKind.Ordinary, StageKind.Goal],
            StageMap.Build(book with { Box = new() { Reactions = [jar, tray] } }, Survey()).Nodes.Select(stage => stage.Kind));
    }
}
