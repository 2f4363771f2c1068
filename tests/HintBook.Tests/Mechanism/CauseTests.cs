using System.Globalization;
using HintBook.Tests.Reading;
using HintBook.Text;

namespace HintBook.Tests.Mechanism;

/// <summary>Why something can't be reached: the cause first, then the way to it, and what to write at the link that is wrong.</summary>
public class CauseTests
{
    [Fact]
    public void What_nothing_gives_stands_before_the_way_to_it()
    {
        var goal = Goal(new BoxBuilder().Part("lid", "shut", "open").Part("tray", "in", "out").Stage("tray", "lid=open", "tray=out").Goal("tray=out"));
        Assert.Equal(
            "The goal can't be reached. Nothing in the book gives “lid” to be open. "
            + "The way to it: “tray” to be out comes from “tray”, which waits for “lid” to be open.",
            goal.Message);
        Assert.Equal("Write “does: { lid: open }” in a stage or a move that can be made, or take it out of what “tray” asks for.", goal.Help);
    }

    [Fact]
    public void A_long_way_is_cut_in_the_middle_and_never_at_the_cause()
    {
        var box = new BoxBuilder();
        for (var i = 0; i <= 40; i++)
            box.Part(Name(i), "shut", "open");
        for (var i = 0; i < 40; i++)
            box.Stage($"open {Name(i)}", $"{Name(i + 1)}=open", $"{Name(i)}=open");
        var why = Goal(box.Goal("p0=open")).Message;
        Assert.Contains("Nothing in the book gives “p40” to be open.", why, StringComparison.Ordinal);
        Assert.Contains("; …; ", why, StringComparison.Ordinal);
        Assert.EndsWith("that comes from “open p39”, which waits for “p40” to be open.", why, StringComparison.Ordinal);

        static string Name(int i) => string.Create(CultureInfo.InvariantCulture, $"p{i}");
    }

    [Fact]
    public void The_help_for_a_circle_names_what_asks_for_it() => Assert.Equal(
        "Let something else give “drawer” to be open or “key” in hand, or take that out of what “drawer-opens” or “key-found” asks for.",
        Goal(new BoxBuilder().Part("drawer", "shut", "open").Thing("key")
            .Stage("drawer-opens", "key", "drawer=open").Stage("key-found", "drawer=open", "key=in-hand").Goal("drawer=open")).Help);

    [Fact]
    public void What_is_never_so_at_the_same_time_names_what_ends_it()
    {
        var goal = Goal(new BoxBuilder().Thing("spoon").Part("tray", "in", "out")
            .Stage("lid", "", "spoon").Stage("tray", "spoon", "tray=out, spoon=used-up").Goal("tray=out, spoon"));
        Assert.EndsWith("“tray” to be out and “spoon” in hand, which are never so at the same time.", goal.Message, StringComparison.Ordinal);
        Assert.StartsWith("Look at “tray”", goal.Help, StringComparison.Ordinal);
    }

    // The stage gives the key, so it would do if the key had been found before: that is no reason.
    [Fact]
    public void A_door_that_nothing_opens_is_no_circle_of_what_lies_behind_it()
    {
        var goal = Goal(new BoxBuilder().Part("door", "shut", "open").Thing("key").Behind("key", "door=open").Stage("find", "", "key").Goal("key"));
        Assert.StartsWith("The goal can't be reached. Nothing in the book gives “door” to be open.", goal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_way_back_of_a_move_waits_for_is_told()
    {
        var goal = Goal(new BoxBuilder().Part("lid", "shut", "open").Part("latch", "down", "up")
            .Move("shut the lid", "lid=open, latch=up", "lid=shut", reversible: true).Goal("lid=open"));
        Assert.Equal(
            "The goal can't be reached. Nothing in the book gives “latch” to be up. "
            + "The way to it: “lid” to be open comes from “back: shut the lid”, which waits for “latch” to be up.",
            goal.Message);
    }

    [Fact]
    public void What_only_the_way_back_of_a_move_gives_is_given()
    {
        using var book = new BookOnDisk();
        book.With("book.yaml", "title: The Tea Caddy\ngoal: [ honey ]\nparts: { lid: { positions: { shut: shut, open: open } } }\nthings: { honey: {} }\n"
                + "moves: [ { name: shut the lid, needs: [ { lid: open } ], does: { lid: shut }, reversible: true } ]\n")
            .With("stages/01-the-lid.md", BookOnDisk.Stage("needs: [ { lid: open } ]\ngives: [ honey ]\nundo: { put-back: [ honey ] }"));
        Assert.Empty(book.Codes());
    }

    [Fact]
    public void What_nothing_gives_is_told_once_with_all_that_follows()
    {
        using var book = new BookOnDisk();
        book.With("book.yaml", "title: The Tea Caddy\ngoal: [ honey ]\nparts: { lid: { positions: [ shut, open ] } }\n"
                + "things: { honey: { behind: { lid: open } } }\nmoves: [ { name: shake it, needs: [ { lid: open } ], does: { honey: hidden } } ]\n")
            .With("stages/01-the-lid.md", BookOnDisk.Stage("needs: [ { lid: open } ]\ngives: [ honey ]"));
        var finding = Assert.Single(book.Findings().All, finding => finding.Code.Severity > Severity.Note);
        Assert.Equal("HB2204", finding.Code.Id);
        Assert.Equal(
            [
                "It is needed here as well.", "It is needed here as well.", "So the goal can't be reached.", "So no hand ever gets at this.",
                "So this never happens.", "So this stage can't be reached.",
            ],
            finding.Related.Select(related => related.Message));
    }

    private static Finding Goal(BoxBuilder box) => Assert.Single(Solving.Of(box.Build()).Findings, finding => finding.Code.Id == "HB2201");
}
