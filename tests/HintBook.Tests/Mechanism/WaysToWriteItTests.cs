using HintBook.Books;
using HintBook.Mechanism;

namespace HintBook.Tests.Mechanism;

/// <summary>The devices that makers build, each written in the book's own words, with what must be found out about it.</summary>
public class WaysToWriteItTests
{
    [Fact]
    public void A_latent_condition_counts_only_once_another_part_is_closed()
    {
        var book = new BoxBuilder().Free("shutter", "", "open", "closed").Free("dial", "", "south", "north").Part("tray", "held", "released")
            .Reaction("dial=north, shutter=closed", "tray=released")
            .Stage("tray", "tray=released", "").Goal("tray=released").Build();
        Assert.Equal(2, Shortest(book));
        Assert.Equal([new Placed("dial", "north"), new Placed("shutter", "closed"), new Placed("tray", "released")],
            Solving.Of(book).Stages[0].Attained.OrderBy(p => p.Name, StringComparer.Ordinal));
    }

    [Fact]
    public void A_release_that_happens_by_itself_sets_off_the_next()
    {
        var book = new BoxBuilder().Part("bolt", "in", "out").Part("spring", "cocked", "sprung").Part("door", "shut", "open")
            .Reaction("bolt=out", "spring=sprung").Reaction("spring=sprung", "door=open")
            .Stage("pull-the-bolt", "", "bolt=out").Goal("door=open").Build();
        Assert.Equal(1, Shortest(book));
    }

    [Fact]
    public void Power_must_be_cut_before_a_part_moves_again()
    {
        var book = new BoxBuilder().Free("power", "", "off", "on").Part("magnet", "loose", "holding").Part("drawer", "shut", "open")
            .Reaction("power=on", "magnet=holding").Reaction("power=off", "magnet=loose")
            .Part("lamp", "dark", "seen")
            .Stage("see-the-lamp", "power=on", "lamp=seen").Stage("drawer", "lamp=seen, magnet=loose", "drawer=open").Goal("drawer=open").Build();
        Assert.Equal(["power: on", "see-the-lamp", "power: off", "drawer"], Way(book));
    }

    [Fact]
    public void A_dummy_front_comes_off_and_leads_nowhere()
    {
        var book = new BoxBuilder().Part("front", "on", "off").Part("back", "on", "off")
            .Stage("front", "", "front=off", optional: true).Stage("back", "", "back=off").Goal("back=off").Build();
        var solution = Solving.Of(book);
        Assert.Equal(["back"], solution.Bottlenecks);
        Assert.Empty(solution.Shortcuts);
    }

    [Fact]
    public void The_whole_box_must_lie_on_its_back()
    {
        var book = new BoxBuilder().Free("tilt", "", "upright", "on-its-back").Part("pin", "in", "out").Part("lid", "shut", "open")
            .Stage("pin", "tilt=on-its-back", "pin=out").Stage("lid", "pin=out, tilt=upright", "lid=open").Goal("lid=open").Build();
        Assert.Equal(4, Shortest(book));
    }

    [Fact]
    public void Something_captive_is_worked_out_by_movements()
    {
        var book = new BoxBuilder().Part("ball", "a", "b", "c", "out").Thing("key")
            .Move("roll to b", "ball=a", "ball=b", reversible: true).Move("roll to c", "ball=b", "ball=c", reversible: true)
            .Move("drop out", "ball=c", "ball=out").Stage("key", "ball=out", "key=in-hand").Goal("key").Build();
        Assert.Equal(4, Shortest(book));
    }

    [Fact]
    public void Tokens_are_placed_in_order_and_with_a_direction()
    {
        var book = new BoxBuilder().Part("one", "away", "up", "down").Part("two", "away", "up", "down").Part("lid", "shut", "open");
        foreach (var way in new[] { "up", "down" })
        {
            book.Move($"one {way}", "one=away, two=away", $"one={way}", reversible: true);
            book.Move($"two {way}", $"two=away, one=up/down", $"two={way}", reversible: true);
        }

        Assert.Equal(["one up", "two down", "lid"], Way(book.Stage("lid", "one=up, two=down", "lid=open").Goal("lid=open").Build()));
    }

    [Fact]
    public void A_key_works_one_way_round_and_not_the_other()
    {
        var book = new BoxBuilder().Thing("key", Thing.InHand, "teeth-up", "teeth-down").Part("lid", "shut", "open")
            .Move("put in teeth up", "key", "key=teeth-up", reversible: true).Move("put in teeth down", "key", "key=teeth-down", reversible: true)
            .Stage("lid", "key=teeth-down", "lid=open").Goal("lid=open").Build();
        Assert.Equal(["put in teeth down", "lid"], Way(book));
        Assert.IsType<Claim.Proved>(Solving.Of(book).NoDeadEnds);
    }

    [Fact]
    public void A_part_must_be_closed_again()
    {
        var book = new BoxBuilder().Free("door", "", "shut", "open").Thing("key").Part("drawer", "shut", "open")
            .Stage("key", "door=open", "key=in-hand").Stage("drawer", "door=shut, key", "drawer=open").Goal("drawer=open").Build();
        Assert.Equal(["door: open", "key", "door: shut", "drawer"], Way(book));
    }

    [Fact]
    public void A_thing_used_up_does_not_come_again()
    {
        var book = new BoxBuilder().Thing("wax").Part("seal", "off", "on").Part("candle", "short", "long")
            .Stage("wax", "", "wax=in-hand")
            .Stage("seal", "wax", "wax=used-up, seal=on")
            .Stage("candle", "wax", "wax=used-up, candle=long")
            .Goal("seal=on, candle=long")
            .Build();
        Assert.IsType<Claim.Refuted>(Solving.Of(book).Opens);
    }

    private static int Shortest(Book book) => Way(book).Count();

    private static IEnumerable<string> Way(Book book) => Assert.IsType<Claim.Proved>(Solving.Of(book).Shortest).Way.Select(step => step.Says);
}
