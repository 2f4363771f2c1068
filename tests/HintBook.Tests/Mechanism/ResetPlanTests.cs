using System.Text.Json;
using CsCheck;
using HintBook.Books;
using HintBook.Mechanism;

namespace HintBook.Tests.Mechanism;

public class ResetPlanTests
{
    [Fact]
    public void A_box_is_put_back_in_reverse()
    {
        var book = new BoxBuilder().Part("lid", "shut", "open").Part("drawer", "shut", "open")
            .Stage("lid", "", "lid=open", undo: BoxBuilder.Undo("", "lid=shut"))
            .Stage("drawer", "lid=open", "drawer=open", reversible: true).Goal("drawer=open").Build();
        var plan = Reset(book);
        Assert.IsType<Claim.Proved>(plan.Possible);
        Assert.Equal(["back: drawer", "undo “lid”"], plan.Plan.Select(s => s.Says));
        Assert.Equal(2, plan.Bound);
    }

    [Fact]
    public void What_is_used_up_for_good_must_be_replaced()
    {
        var book = new BoxBuilder().Thing("match", Thing.InHand).Part("lamp", "dark", "lit")
            .Stage("lamp", "match", "lamp=lit, match=used-up", undo: BoxBuilder.Undo("", "lamp=dark")).Goal("lamp=lit").Build();
        var plan = Reset(book);
        Assert.Equal(["match"], plan.Replaces);
        Assert.Contains(plan.Findings, f => f.Code.Id == "HB2302");
    }

    [Fact]
    public void A_part_that_nothing_puts_back_is_named()
    {
        var book = new BoxBuilder().Part("seal", "whole", "broken").Stage("seal", "", "seal=broken").Goal("seal=broken").Build();
        var plan = Reset(book);
        Assert.Equal("It waits for “seal” to be whole, which nothing in the book gives.", Assert.IsType<Claim.Refuted>(plan.Possible).Why);
        Assert.Contains(plan.Findings, f => f.Code.Id == "HB2301");
    }

    [Fact]
    public void A_box_that_never_opens_has_no_plan() =>
        Assert.Contains(Reset(new BoxBuilder().Part("lid", "shut", "open").Goal("lid=open").Build()).Findings, f => f.Code.Id == "HB2303");

    [Fact]
    public void A_reaction_that_would_happen_again_is_planned_around()
    {
        var book = new BoxBuilder().Free("dial", "", "south", "north").Part("tray", "held", "released").Thing("card")
            .Reaction("dial=north", "tray=released")
            .Stage("card", "tray=released", "card=in-hand", undo: BoxBuilder.Undo("card", "tray=held")).Goal("card").Build();
        Assert.Equal(["dial: south", "undo “card”"], Reset(book).Plan.Select(s => s.Says));
    }

    // Chinese rings go back on in as many moves as they came off (they are one path; computed by brute force).
    [Theory]
    [InlineData(5, 21)]
    [InlineData(8, 170)]
    public void Rings_go_back_in_as_many_moves(int rings, int moves)
    {
        var plan = Reset(Boxes.ChineseRings(rings));
        Assert.Equal((moves, moves), (plan.Plan.Length, plan.Bound));
    }

    [Fact]
    public void A_true_to_life_book_has_a_plan_near_its_bound()
    {
        var plan = Reset(LargeBoxes.TrueToLife(60, 40));
        Assert.NotEmpty(plan.Plan);
        Assert.InRange(plan.Plan.Length, plan.Bound, plan.Bound * 12 / 10);
    }

    [Fact]
    public void One_plan_may_be_proved_to_put_back_any_state_of_a_large_box() =>
        Assert.IsType<Claim.Proved>(Reset(LargeBoxes.TrueToLife(60, 40, gated: false)).Possible);

    [Fact]
    public void Every_plan_replays_on_thousands_of_boxes() => Replays(RandomBoxes.Any, 1000);

    [Fact]
    public void Every_plan_replays_on_boxes_with_a_dial_of_many_positions() => Replays(RandomBoxes.Dials, 300);

    [Fact]
    public void A_plan_found_thriftily_is_as_possible_as_one_found_among_all_states() => IsAsPossible(RandomBoxes.Any, 1000);

    [Fact]
    public void A_plan_for_a_box_with_a_dial_is_as_possible_found_thriftily() => IsAsPossible(RandomBoxes.Dials, 300);

    [Fact]
    public void The_json_has_the_promised_shape()
    {
        using var json = JsonDocument.Parse(SolutionJson.Write(Reset(Boxes.ChineseRings(3))));
        Assert.Equal(["possible", "plan", "replaces", "bound", "claims"], json.RootElement.EnumerateObject().Select(p => p.Name));
    }

    private static void Replays(Gen<Book> boxes, int iter) => boxes.Sample(
        book =>
        {
            var plan = Reset(book);
            var replayer = new Replayer(book);
            Assert.Null(replayer.Follow(plan.From));
            Assert.Null(replayer.Follow(plan.Plan));
            return plan.Possible is not Claim.Proved || replayer.Shipped;
        },
        iter: iter,
        print: BookText.Of);

    private static void IsAsPossible(Gen<Book> boxes, int iter) => boxes.Sample(
        book =>
        {
            var (exploration, whole) = (Reset(book), Reset(book, reduce: false));
            Assert.Equal(whole.Possible.Word, exploration.Possible.Word);
            if (whole.Possible is Claim.Proved)
                Assert.InRange(whole.Bound, exploration.Bound, exploration.Plan.Length);
        },
        iter: iter,
        print: BookText.Of);

    private static ResetPlan Reset(Book book, bool reduce = true) =>
        ResetPlan.Find(book, SolveLimits.Default with { Reduce = reduce, Time = TimeSpan.FromMinutes(5) }, null, TestContext.Current.CancellationToken);
}
