using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Tests.Mechanism;

namespace HintBook.Tests.Pages.Walking;

/// <summary>Boxes that were drawn by chance, each the smallest that was found to break a law. Names are ids here.</summary>
public class FoundBoxesTests
{
    // Nobody certainly knows the anvil before it was tilted, and nothing comes before the first step that could stand in for it.
    [Fact]
    public void Where_no_stage_can_be_named_to_a_reader_the_maker_is_told_or_the_reader_arrives() => Keeps(Law.Arrives, AnUnseenPartInASign());

    [Fact]
    public void The_first_page_doesnt_name_a_part_inside_that_is_moved_at_will() => Keeps(Law.NamesNothingEarly, AnUnseenPartInASign());

    [Fact]
    public void A_reader_who_has_done_nothing_isnt_sent_to_a_stage_whose_sign_names_what_comes_later() =>
        Keeps(Law.EndsWithoutTelling, AChainAfterAnUnseenPart());

    // Who holds the second token can go on only by way of the first step and back; the pages lead to the second.
    [Fact]
    public void Where_not_every_state_was_looked_at_a_stage_that_gets_a_reader_unstuck_is_next() =>
        Keeps(Law.Arrives, TokensThatStick(), site => site.WithoutStates());

    // The survey throws: “a witness does not replay: at its end it isn't so that every stage has been open”.
    [Fact]
    public void A_box_with_a_reaction_that_waits_for_a_part_that_is_moved_at_will_is_surveyed_by_reduction() =>
        Keeps(Law.IsMade, AReactionThatWaits(), site => site.WithoutStates());

    private static void Keeps(Law law, Book book, Func<MadeSite, MadeSite>? made = null)
    {
        var site = MadeSite.Of(book);
        Assert.NotNull(site);
        var walker = Walker.Of(made is null ? site : made(site));
        Assert.NotNull(walker);
        Assert.Empty(walker.Breaches.Where(breach => breach.Law == law).Select(breach => breach.Says));
    }

    private static Book AnUnseenPartInASign() => Signed(
        new BoxBuilder()
            .Free("anvil", "", "upright", "lying")
            .Part("bobbin", "shut", "open").Part("caliper", "shut", "open").Part("cymbal", "in", "out").Part("doublet", "shut", "open")
            .Thing("ferrule").Thing("gusset").Fact("word")
            .Move("shut the bobbin", "bobbin=open", "bobbin=shut")
            .Reaction("gusset, bobbin=shut, anvil=lying", "cymbal=out")
            .Stage("one", "anvil=lying", "ferrule")
            .Stage("two", "ferrule", "bobbin=open, gusset")
            .Stage("three", [BoxBuilder.MoveOf("read", "", "word"), BoxBuilder.MoveOf("open", "word", "caliper=open", reversible: true)])
            .Stage("four", "gusset, bobbin=shut, caliper=open, cymbal=out", "doublet=open", undo: BoxBuilder.Undo("", "doublet=shut"))
            .Goal("doublet=open").Build(),
        ["bobbin", "doublet"],
        ["Sign 1. Look at the anvil.", "Sign 2. Look at the bobbin.", "Sign 3.", "Sign 4."]);

    private static Book AChainAfterAnUnseenPart() => Signed(
        new BoxBuilder()
            .Free("anvil", "", "upright", "lying")
            .Part("bobbin", "shut", "open").Part("caliper", "shut", "open").Part("cymbal", "shut", "open")
            .Part("doublet", "in", "out").Part("ferrule", "shut", "open")
            .Thing("gusset").Thing("gimlet")
            .Reaction("cymbal=open, anvil=lying", "doublet=out")
            .Stage("one", "anvil=lying", "gusset", reversible: true)
            .Stage("two", "gusset, anvil=lying", "bobbin=open, gimlet")
            .Stage("three", "gimlet", "caliper=open", after: "two", reversible: true)
            .Stage("four", "caliper=open", "cymbal=open", after: "three")
            .Stage("five", "cymbal=open, doublet=out", "ferrule=open", undo: BoxBuilder.Undo("", "ferrule=shut"))
            .Goal("ferrule=open").Build(),
        [],
        ["Sign 1. Look at the anvil.", "Sign 2.", "Sign 3. Look at the gimlet. Look at the gusset.", "Sign 4. Look at the caliper.",
            "Sign 5. Look at the cymbal."]);

    private static Book TokensThatStick()
    {
        var book = Signed(
            new BoxBuilder()
                .Part("anvil", "free", "full").Part("bellows", "shut", "open").Part("bobbin", "here", "there").Part("caliper", "shut", "open")
                .Part("cymbal", "a", "held", "b").Part("doublet", "a", "held", "b").Part("ferrule", "a", "held", "b")
                .Move("go there", "bobbin=here", "bobbin=there")
                .Move("the cymbal past the doublet", "cymbal=a, doublet=b", "cymbal=b, bellows=open")
                .Move("the doublet past the ferrule", "doublet=a, ferrule=b", "doublet=b, bellows=open")
                .Move("take the doublet", "doublet=a, bobbin=there", "doublet=held")
                .Move("take the ferrule", "ferrule=a, bobbin=there", "ferrule=held")
                .Move("lay the ferrule down", "ferrule=held, anvil=free", "ferrule=b")
                .Reaction("cymbal=b, doublet=b, ferrule=b", "bobbin=there")
                .Stage("one", "anvil=free", "cymbal=held, doublet=held, ferrule=held", reversible: true)
                .Stage("two", "bellows=open", "anvil=full, caliper=open", undo: BoxBuilder.Undo("", "caliper=shut, bellows=shut"))
                .Goal("caliper=open").Build(),
            ["anvil", "bobbin", "ferrule"],
            ["Sign 1. Look at the ferrule.", "Sign 2."]);
        var words = ImmutableDictionary<string, PositionDetails>.Empty
            .Add("a", new PositionDetails { Says = Dressing.Text("stands as number 1") })
            .Add("held", new PositionDetails { Says = Dressing.Text("stands as number 2") })
            .Add("b", new PositionDetails { Says = Dressing.Text("stands as number 3") });
        return book with
        {
            Box = book.Box with
            {
                Parts =
                [
                    .. book.Box.Parts.Select(part => part.Id.Value switch
                    {
                        "cymbal" => part with { Details = words.SetItem("a", words["a"] with { Seen = true }) },
                        "doublet" => part with { Details = words },
                        _ => part,
                    }),
                ],
            },
        };
    }

    private static Book AReactionThatWaits() => Signed(
        new BoxBuilder()
            .Free("anvil", "", "upright", "lying")
            .Part("bellows", "shut", "open").Part("bobbin", "in", "out").Part("caliper", "shut", "open").Part("cymbal", "shut", "open")
            .Thing("doublet")
            .Reaction("doublet, anvil=lying", "bobbin=out")
            .Stage("one", "", "bellows=open, doublet")
            .Stage("two", "", "cymbal=open", reversible: true)
            .Stage("three", "doublet, bobbin=out", "caliper=open", undo: BoxBuilder.Undo("", "caliper=shut"))
            .Goal("caliper=open").Build(),
        ["anvil"],
        ["Sign 1.", "Sign 2.", "Sign 3. Look at the bellows."]);

    private static Book Signed(Book book, string[] seen, string[] signs) => book with
    {
        Box = book.Box with { Parts = [.. book.Box.Parts.Select(part => part with { Seen = seen.Contains(part.Id.Value) })] },
        Stages = [.. book.Stages.Zip(signs, (stage, sign) => stage with { Title = Dressing.Text($"Step {stage.Id.Value}"), Sign = Dressing.Text(sign) })],
    };
}
