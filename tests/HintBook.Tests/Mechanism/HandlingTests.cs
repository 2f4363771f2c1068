using HintBook.Books;
using HintBook.Mechanism;

namespace HintBook.Tests.Mechanism;

/// <summary>What hands can do: take a thing from where it is, get at what lies behind something. Rules of handling are common practice, no source.</summary>
public class HandlingTests
{
    [Fact]
    public void A_key_that_is_stuck_in_the_lock_does_not_jump_back_into_the_hand()
    {
        var book = Key().Move("put in teeth up", "key", "key=teeth-up").Move("put in teeth down", "key", "key=teeth-down").Build();
        Assert.IsType<Claim.Refuted>(Solving.Of(book).NoDeadEnds);
    }

    [Fact]
    public void A_thing_is_given_out_of_a_slot_that_the_needs_name()
    {
        var book = Key().Move("put in teeth up", "key", "key=teeth-up").Move("put in teeth down", "key", "key=teeth-down")
            .Move("take it out", "any(key=teeth-up; key=teeth-down)", "key").Build();
        Assert.IsType<Claim.Proved>(Solving.Of(book).NoDeadEnds);
    }

    [Fact]
    public void Where_a_thing_is_elsewhere_it_stays_and_the_rest_of_the_move_happens()
    {
        var book = new BoxBuilder().Thing("key", "lock", "lock").Part("lamp", "dark", "lit").Stage("light", "", "lamp=lit, key").Goal("lamp=lit").Build();
        var solution = Solving.Of(book);
        Assert.Equal(["light"], Assert.IsType<Claim.Proved>(solution.Opens).Way.Select(step => step.Says));
        Assert.IsType<Claim.Refuted>(Solving.Of(book with { Goal = BoxBuilder.MoveOf("", "key", "").Needs }).Opens);
    }

    [Fact]
    public void A_change_to_in_hand_takes_from_anywhere_but_from_what_is_used_up()
    {
        var book = new BoxBuilder().Thing("key", "lock", "lock").Stage("pull", "", "key=in-hand").Goal("key").Build();
        Assert.IsType<Claim.Proved>(Solving.Of(book).Opens);
        var burnt = new BoxBuilder().Thing("match", Thing.InHand).Part("lamp", "dark", "lit").Stage("light", "match", "lamp=lit, match=used-up")
            .Stage("again", "lamp=lit", "match=in-hand").Goal("lamp=lit, match").Build();
        Assert.IsType<Claim.Refuted>(Solving.Of(burnt).Opens);
    }

    [Fact]
    public void What_was_put_back_can_be_given_again()
    {
        var book = new BoxBuilder().Part("door", "shut", "open").Thing("key").Part("lid", "shut", "open")
            .Stage("take", "", "key").Move("hide it", "key", "key=hidden").Stage("lid", "key", "lid=open").Goal("lid=open").Build();
        Assert.IsType<Claim.Proved>(Solving.Of(book).NoDeadEnds);
    }

    [Theory]
    [InlineData("door=open, key", true)]
    [InlineData("key", false)]
    public void A_stage_may_open_the_door_and_take_what_lies_behind_it_in_one_move(string does, bool opens)
    {
        var book = Door().Stage("reach in", "", does).Goal("key").Build();
        Assert.Equal(opens ? "proved" : "refuted", Solving.Of(book).Opens.Word);
    }

    [Fact]
    public void What_only_a_reaction_opens_after_the_act_does_not_help_it()
    {
        var book = Door().Part("bolt", "in", "out").Reaction("bolt=out", "door=open").Stage("pull and take", "", "bolt=out, key").Goal("key").Build();
        Assert.IsType<Claim.Refuted>(Solving.Of(book).Opens);
    }

    [Fact]
    public void A_move_from_outside_asks_for_nothing_that_lies_before()
    {
        var book = Door().Move("pull the string", "", "key", outside: true).Stage("look", "key", "").Goal("key").Build();
        Assert.Equal(["pull the string"], Assert.IsType<Claim.Proved>(Solving.Of(book).Opens).Way.Select(step => step.Says));
    }

    [Fact]
    public void A_reaction_asks_for_nothing_that_lies_before()
    {
        var book = Door().Part("flap", "shut", "open").Reaction("flap=open", "key").Stage("chute", "", "flap=open").Goal("key").Build();
        Assert.IsType<Claim.Proved>(Solving.Of(book).Opens);
    }

    [Fact]
    public void What_lies_in_a_drawer_in_a_drawer_needs_both()
    {
        var book = new BoxBuilder()
            .Part("outer", "shut", "open")
            .Part("inner", "shut", "open")
            .Thing("ring")
            .Behind("inner", "outer=open")
            .Behind("ring", "inner=open")
            .Stage("outer", "", "outer=open")
            .Stage("inner", "", "inner=open")
            .Move("push it in", "outer=open", "outer=shut")
            .Stage("ring", "", "ring")
            .Goal("ring")
            .Build();
        Assert.Equal(["outer", "inner", "ring"], Assert.IsType<Claim.Proved>(Solving.Of(book).Shortest).Way.Select(step => step.Says));
    }

    [Fact]
    public void A_thing_in_the_hand_is_used_wherever_it_came_from()
    {
        var book = Door().Move("shut the door", "door=open", "door=shut").Part("lid", "shut", "open")
            .Stage("door", "", "door=open").Stage("key", "", "key").Stage("lid", "key, door=shut", "lid=open").Goal("lid=open").Build();
        Assert.Equal(["door", "key", "shut the door", "lid"], Assert.IsType<Claim.Proved>(Solving.Of(book).Shortest).Way.Select(step => step.Says));
    }

    [Fact]
    public void A_free_part_behind_a_door_moves_only_while_the_door_is_open()
    {
        var book = new BoxBuilder().Part("door", "shut", "open").Free("dial", "", "south", "north").Behind("dial", "door=open").Part("lid", "shut", "open")
            .Stage("door", "", "door=open").Stage("lid", "dial=north", "lid=open").Goal("lid=open").Build();
        Assert.Equal(["door", "dial: north", "lid"], Assert.IsType<Claim.Proved>(Solving.Of(book).Shortest).Way.Select(step => step.Says));
    }

    [Fact]
    public void Which_slot_to_name_is_told_where_a_stage_seems_to_have_meant_one()
    {
        var book = Key()
            .Move("put in teeth up", "key", "key=teeth-up")
            .Move("put in teeth down", "key", "key=teeth-down")
            .Move("take it out", "", "key")
            .Build();
        var finding = Assert.Single(Solving.Of(book).Findings, finding => finding.Code.Id == "HB2109");
        Assert.Contains("{ key: teeth-up }", finding.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void What_lies_behind_something_that_never_opens_is_told_with_the_reason()
    {
        var book = new BoxBuilder().Part("door", "shut", "open").Thing("key").Behind("key", "door=open").Stage("key", "", "key").Goal("key").Build();
        var finding = Assert.Single(Solving.Of(book).Findings, finding => finding.Code.Id == "HB2107");
        Assert.Contains("“door” to be open, which nothing in the book gives", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_move_that_takes_what_opens_by_itself_after_it_is_told_to_be_two_moves()
    {
        var book = new BoxBuilder().Part("bolt", "in", "out").Part("door", "shut", "open").Thing("key").Behind("key", "door=open")
            .Reaction("bolt=out", "door=open").Stage("bolt", "", "bolt=out, key").Goal("key").Build();
        var finding = Assert.Single(Solving.Of(book).Findings, finding => finding.Code.Id == "HB2107");
        Assert.Contains("{ name: take key, gives: [ key ] }", finding.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void Things_that_lie_behind_each_other_are_told_once()
    {
        var book = new BoxBuilder()
            .Part("a", "shut", "open")
            .Part("b", "shut", "open")
            .Behind("a", "b=open")
            .Behind("b", "a=open")
            .Stage("a", "", "a=open")
            .Goal("a=open")
            .Build();
        Assert.Single(NameCheck.Run(book), finding => finding.Code.Id == "HB2106");
    }

    [Theory]
    [InlineData("behind the door", true)]
    [InlineData("in the outdoor shed", false)]
    public void A_place_that_names_a_part_in_words_only_is_told(string place, bool told)
    {
        var book = new BoxBuilder().Part("door", "shut", "open").Thing("key").Stage("key", "", "key").Goal("key").Build();
        book = book with { Box = book.Box with { Things = [book.Box.Things[0] with { Place = place }] } };
        Assert.Equal(told ? ["HB2108"] : [], BehindCheck.OnlyInWords(book).Select(finding => finding.Code.Id));
        var said = book with { Box = book.Box with { Things = [book.Box.Things[0] with { Behind = [] }] } };
        Assert.Empty(BehindCheck.OnlyInWords(said));
    }

    private static BoxBuilder Door() => new BoxBuilder().Part("door", "shut", "open").Thing("key").Behind("key", "door=open");

    private static BoxBuilder Key() => new BoxBuilder().Thing("key", Thing.Hidden, "teeth-up", "teeth-down").Part("lid", "shut", "open")
        .Stage("foot", "", "key").Stage("lid", "key=teeth-down", "lid=open").Goal("lid=open");
}
