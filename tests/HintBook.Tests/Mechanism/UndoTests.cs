using HintBook.Books;
using HintBook.Mechanism;

namespace HintBook.Tests.Mechanism;

/// <summary>What an <c>undo</c> means. Rules of handling are common practice, no source.</summary>
public class UndoTests
{
    [Fact]
    public void Stages_are_done_again_where_putting_back_needs_it()
    {
        var book = new BoxBuilder().Part("door", "shut", "open").Thing("key").Behind("key", "door=open").Part("lid", "shut", "open")
            .Move("shut the door", "door=open", "door=shut")
            .Stage("door", "", "door=open").Stage("key", "", "key", undo: BoxBuilder.Undo("key"))
            .Stage("lid", "key, door=shut", "lid=open", undo: BoxBuilder.Undo("", "lid=shut")).Goal("lid=open").Build();
        Assert.Equal(["undo “lid”", "door", "undo “key”", "shut the door"], Proved(book).Plan.Select(step => step.Says));
    }

    [Fact]
    public void An_undo_waits_for_its_needs()
    {
        var book = new BoxBuilder().Free("tilt", "", "upright", "on-its-back").Part("lid", "shut", "open")
            .Stage("lid", "", "lid=open", undo: BoxBuilder.Undo("", "lid=shut", needs: "tilt=on-its-back")).Goal("lid=open").Build();
        Assert.Equal(["tilt: on-its-back", "undo “lid”", "tilt: upright"], Proved(book).Plan.Select(step => step.Says));
    }

    [Fact]
    public void Put_back_takes_from_the_hand()
    {
        var book = new BoxBuilder().Thing("clip", Thing.Hidden, "dial").Stage("find", "", "clip", undo: BoxBuilder.Undo("clip"))
            .Stage("place", "clip", "clip=dial").Goal("clip=dial").Build();
        Assert.IsType<Claim.Refuted>(Solving.Reset(book).Possible);
    }

    [Fact]
    public void Put_back_brings_again_what_the_stage_itself_used_up()
    {
        var book = new BoxBuilder().Thing("wax", Thing.InHand).Part("seal", "broken", "closed")
            .Stage("seal", "wax", "seal=closed, wax=used-up", undo: BoxBuilder.Undo("wax", "seal=broken")).Goal("seal=closed").Build();
        Assert.Empty(Proved(book).Replaces);
    }

    [Fact]
    public void A_list_is_one_act_with_reactions_after_each_step()
    {
        var book = new BoxBuilder().Part("door", "shut", "open").Part("catch", "held", "loose").Reaction("door=open", "catch=loose")
            .Thing("key").Behind("key", "catch=loose")
            .Stage("key", "", "door=open, catch=loose, key", undo: BoxBuilder.Undos(
                BoxBuilder.UndoStep("key"),
                BoxBuilder.UndoStep("", "door=shut"),
                BoxBuilder.UndoStep("", "catch=held")))
            .Goal("key").Build();
        var plan = Proved(book).Plan;
        Assert.Equal([0, 1, 2], plan.Select(step => step.Part));
    }

    [Fact]
    public void Nothing_comes_between_the_steps_of_a_list()
    {
        var book = new BoxBuilder().Free("tilt", "", "upright", "on-its-back").Part("lid", "shut", "open").Part("pin", "in", "out")
            .Stage("open", "", "lid=open, pin=out", undo: BoxBuilder.Undos(
                BoxBuilder.UndoStep("", "pin=in", needs: "tilt=on-its-back"),
                BoxBuilder.UndoStep("", "lid=shut", needs: "tilt=upright")))
            .Goal("lid=open").Build();
        Assert.IsType<Claim.Refuted>(Solving.Reset(book).Possible);
    }

    [Fact]
    public void An_undo_begins_only_where_all_moves_of_its_stage_left_things()
    {
        var told = new BoxBuilder()
            .Fact("rhyme")
            .Part("lid", "shut", "open")
            .Stage("read", "lid=shut", "rhyme=known", undo: BoxBuilder.Undo("", "lid=shut"), optional: true)
            .Stage("lid", "", "lid=open")
            .Goal("lid=open")
            .Build();
        Assert.IsType<Claim.Refuted>(Solving.Reset(told).Possible);
        Assert.Equal("refuted", Solving.Reset(told, reduce: false).Possible.Word);
    }

    [Fact]
    public void What_never_goes_back_does_not_refute_that_the_rest_can_be_put_back()
    {
        var book = new BoxBuilder().Part("seal", "whole", "broken").Part("lid", "shut", "open")
            .Stage("seal", "", "seal=broken", undo: BoxBuilder.Never("the seal is broken for good"))
            .Stage("lid", "seal=broken", "lid=open", undo: BoxBuilder.Undo("", "lid=shut")).Goal("lid=open").Build();
        Assert.Equal(["undo “lid”"], Proved(book).Plan.Select(step => step.Says));
    }

    [Fact]
    public void A_new_thing_goes_where_it_can_be_got_at()
    {
        var book = new BoxBuilder().Part("door", "shut", "open").Thing("wax").Behind("wax", "door=open").Part("seal", "broken", "closed")
            .Move("open the door", "", "door=open").Move("shut the door", "", "door=shut")
            .Stage("wax", "", "wax")
            .Stage("seal", "wax, door=shut", "seal=closed, wax=used-up", undo: BoxBuilder.Undo("", "seal=broken"))
            .Goal("seal=closed")
            .Build();
        var says = Proved(book).Plan.Select(step => step.Says).ToList();
        Assert.Equal(["open the door", "replace wax", "shut the door"], says.Where(step => step != "undo “seal”"));
    }

    [Fact]
    public void Needs_that_contradict_where_the_stage_left_things_are_told()
    {
        var book = new BoxBuilder().Thing("wax").Stage("wax", "", "wax")
            .Stage("burn", "wax", "wax=used-up", undo: BoxBuilder.Undo("wax", needs: "wax")).Goal("wax=used-up").Build();
        var finding = Assert.Single(UndoCheck.Contradictions(book));
        Assert.Equal("HB2110", finding.Code.Id);
        Assert.Contains("then it is used-up", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Putting_back_what_the_stage_left_in_a_slot_is_told()
    {
        var book = new BoxBuilder()
            .Thing("clip", Thing.Hidden, "dial")
            .Stage("place", "", "clip=dial", undo: BoxBuilder.Undo("clip"))
            .Goal("clip=dial")
            .Build();
        Assert.Contains("{ clip: in-hand }", Assert.Single(UndoCheck.Contradictions(book)).Help, StringComparison.Ordinal);
        var mended = new BoxBuilder().Thing("clip", Thing.Hidden, "dial")
            .Stage("place", "", "clip=dial", undo: BoxBuilder.Undos(BoxBuilder.UndoStep("", "clip=in-hand"), BoxBuilder.UndoStep("clip")))
            .Goal("clip=dial")
            .Build();
        Assert.Empty(UndoCheck.Contradictions(mended));
        Assert.Equal(2, Proved(mended).Plan.Length);
    }

    private static ResetPlan Proved(Book book)
    {
        var plan = Solving.Reset(book);
        Assert.IsType<Claim.Proved>(plan.Possible);
        return plan;
    }
}
