using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Text.RegularExpressions;
using CsCheck;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Mechanism;
using HintBook.Pages;
using HintBook.Tests.Books;
using HintBook.Tests.House;
using HintBook.Tests.Mechanism;

namespace HintBook.Tests.Pages;

/// <summary>The way back as it is printed. Rules of handling are common practice, no source.</summary>
public partial class ResetListTests
{
    // Drawn and planned once for all laws.
    private static readonly Lazy<ImmutableArray<(Book Book, ResetPlan Plan)>> Boxes = new(Draw);

    [Fact]
    public void The_printed_lines_carry_every_box_back() => Hold(ResetLaws.CarriedOut);

    [Fact]
    public void Every_undo_and_every_note_stands_exactly_once() => Hold(ResetLaws.EachOnce);

    [Fact]
    public void A_note_stands_behind_the_line_that_puts_back_the_last_of_what_its_stage_moved() => Hold(ResetLaws.NotesInPlace);

    [Fact]
    public void Cautions_of_a_stage_stand_under_each_heading_where_it_is_put_back_made_again_or_spoken_of() => Hold(ResetLaws.CautionsFirst);

    [Fact]
    public void Headings_leave_no_gap() => Hold(ResetLaws.NoGaps);

    // The names and positions of these boxes are their ids, so that what a label says can be read back.
    [Fact]
    public void A_label_says_what_its_line_moves()
    {
        var words = Theme.BuiltIn(Theme.Default).Theme.Words["en"];
        Hold((book, _, list) =>
        {
            var printed = new ResetWords(book, words);
            return Lines(list).Where(line => !line.Labels.IsEmpty && line.Says is null)
                .Where(line => !ReadBack(book, printed.Of(line)).SequenceEqual(line.Labels))
                .Select(line => $"“{printed.Of(line)}” for {string.Join(", ", line.Labels)}")
                .FirstOrDefault();
        });
    }

    [Fact]
    public void A_dial_that_is_turned_position_by_position_is_told_once_with_where_it_ends()
    {
        var book = new BoxBuilder().Dial("dial", round: false, "a", "b", "c", "d").Part("lid", "shut", "open")
            .Stage("lid", "dial=d", "lid=open", undo: BoxBuilder.Undo("", "lid=shut")).Goal("lid=open").Build();
        var plan = Surveyor.Survey(book, whole: true).Survey!.WayBack;

        Assert.True(plan.Plan.Count(step => step.Kind == StepKind.FreeMove) > 1);
        var turned = Assert.Single(Lines(ResetList.Build(book, plan)), line => line.Labels.Any(label => label.Name == "dial"));
        Assert.Equal("a", Assert.Single(turned.Labels).Position);
    }

    [Fact]
    public void The_photo_of_a_position_stands_with_the_line_that_brings_a_part_there()
    {
        var built = new BoxBuilder().Part("lid", "shut", "open").Stage("lid", "", "lid=open", undo: BoxBuilder.Undo("", "lid=shut")).Goal("lid=open").Build();
        var shut = new PositionDetails { Says = A.Value("closed"), Photo = A.Photo("shut.jpg", Place.Position, "The lid, closed.") };
        var book = built with { Box = built.Box with { Parts = [built.Box.Parts[0] with { Details = built.Box.Parts[0].Details.Add("shut", shut) }] } };
        var survey = Surveyor.Survey(book, whole: true).Survey;

        var page = Sites.Parse(Sites.Pages(Sites.Plan(book, survey))["reset.html"]);

        Assert.Equal("The lid, closed.", page.QuerySelector(".tasks li:has(input) img")?.GetAttribute("alt"));
    }

    [Fact]
    public void The_boxes_of_the_laws_have_enough_to_do()
    {
        var steps = Boxes.Value.Sum(box => box.Plan.Plan.Length);
        var lines = Boxes.Value.SelectMany(box => Lines(ResetList.Build(box.Book, box.Plan))).ToArray();

        Assert.InRange(steps, 2_000, int.MaxValue);
        Assert.InRange(lines.Count(line => !line.Named.IsEmpty), 100, int.MaxValue);
        Assert.InRange(lines.Count(line => !line.IsOnlyHow) - steps, 100, int.MaxValue);
    }

    [Fact]
    public void The_example_keeps_every_law()
    {
        var examined = Assert.IsType<Sound>(HintBook.Checking.Check.Run(Repository.Example)).Examined;

        Assert.Null(ResetLaws.Broken(examined.Book, examined.Survey.WayBack));
    }

    [Fact]
    public void A_thing_is_put_back_before_its_door_is_shut_however_the_undo_is_written()
    {
        var book = new BoxBuilder().Part("door", "shut", "open").Thing("key").Behind("key", "door=open")
            .Stage("door", "", "door=open, key", undo: BoxBuilder.Undo("key", "door=shut")).Goal("key").Build();

        Assert.Equal(["Put back where it was found: key.", "Back to “shut”: door."], Printed(book));
    }

    [Fact]
    public void A_sentence_that_would_shut_the_door_too_early_comes_after_what_it_does_not_name()
    {
        var undo = BoxBuilder.Undos(BoxBuilder.UndoStep("key", "door=shut") with { Says = "Push the door until it clicks." });
        var book = new BoxBuilder().Part("door", "shut", "open").Thing("key").Behind("key", "door=open")
            .Stage("door", "", "door=open, key", undo: undo).Goal("key").Build();

        Assert.Equal(["Put back where it was found: key.", "Push the door until it clicks."], Printed(book));
    }

    [Fact]
    public void A_spring_decides_the_order_too()
    {
        // While the dial stands at north, the tray jumps out again.
        var book = new BoxBuilder().Part("tray", "in", "out").Part("dial", "south", "north").Reaction("dial=north", "tray=out")
            .Stage("dial", "", "dial=north", undo: BoxBuilder.Undo("", "tray=in, dial=south")).Goal("tray=out").Build();

        Assert.Equal(["Back to “south”: dial.", "Back to “in”: tray."], Printed(book));
    }

    [Fact]
    public void What_can_only_be_done_at_once_is_one_line()
    {
        var book = new BoxBuilder().Part("left", "shut", "open").Part("right", "shut", "open").Behind("left", "right=shut").Behind("right", "left=shut")
            .Stage("both", "", "left=open, right=open", undo: BoxBuilder.Undo("", "left=shut, right=shut")).Goal("left=open").Build();

        Assert.Equal(["Back to “shut”: left. Back to “shut”: right."], Printed(book));
    }

    [Fact]
    public void What_the_sentence_names_needs_no_line_and_what_it_does_not_name_has_one_above_it()
    {
        Assert.Equal(["Put back: brass bee (in the queen cell).", "Head first, wings upward."], Printed(Box("Head first, wings upward.")));
        Assert.Equal(["Lay the brass bees back in."], Printed(Box("Lay the brass bees back in.")));

        static Book Box(string says)
        {
            var undo = BoxBuilder.Undos(BoxBuilder.UndoStep("bee") with { Says = says });
            var book = new BoxBuilder().Thing("bee").Stage("cell", "", "bee", undo: undo).Goal("bee").Build();
            return book with { Box = book.Box with { Things = [book.Box.Things[0] with { Name = "brass bee", Place = "in the queen cell" }] } };
        }
    }

    [Fact]
    public void A_stage_that_is_made_again_says_so_and_handling_stands_by_its_name()
    {
        var book = new BoxBuilder().Part("door", "shut", "open").Thing("key").Behind("key", "door=open").Part("lid", "shut", "open")
            .Move("shut the door", "door=open", "door=shut")
            .Stage("door", "", "door=open").Stage("key", "", "key", undo: BoxBuilder.Undo("key"))
            .Stage("lid", "key, door=shut", "lid=open", undo: BoxBuilder.Undo("", "lid=shut")).Goal("lid=open").Build();

        Assert.Equal(["Back to “shut”: lid.", "Once more: door.", "Put back where it was found: key.", "Shut the door."], Printed(book));
        Assert.Equal(["lid", "door", "key"], List(book).Select(entry => entry.Stage?.Id.Value));
    }

    [Fact]
    public void A_note_of_a_stage_that_moves_nothing_stands_with_what_it_needs()
    {
        var book = new BoxBuilder().Part("drawer", "shut", "open").Thing("key").Behind("key", "drawer=open").Fact("fits")
            .Stage("drawer", "", "drawer=open, key", undo: BoxBuilder.Undo("key", "drawer=shut"))
            .Stage("herring", "key", "fits", optional: true).Goal("drawer=open").Build();
        book = book with { Stages = book.Stages.SetItem(1, book.Stages[1] with { Reset = A.Prose("For the next to wonder at.") }) };
        var items = Assert.Single(List(book)).Items;

        Assert.Equal("key", Assert.IsType<ResetLine>(items[0]).Labels[0].Name);
        Assert.Equal("herring", Assert.IsType<ResetNote>(items[1]).Stage.Id.Value);
        Assert.Equal("drawer", Assert.IsType<ResetLine>(items[2]).Labels[0].Name);
    }

    [Fact]
    public void A_note_of_a_stage_that_needs_an_open_door_stands_before_it_is_shut()
    {
        var book = new BoxBuilder().Part("door", "shut", "open").Fact("title")
            .Stage("door", "", "door=open", undo: BoxBuilder.Undo("", "door=shut"))
            .Stage("shelf", "door=open", "title").Goal("title=known").Build();
        book = book with { Stages = book.Stages.SetItem(1, book.Stages[1] with { Reset = A.Prose("Stand the book on its shelf.") }) };

        Assert.Equal([typeof(ResetNote), typeof(ResetLine)], List(book).SelectMany(entry => entry.Items).Select(item => item.GetType()));
    }

    [Fact]
    public void A_note_that_belongs_to_no_step_comes_last_under_its_own_title()
    {
        var book = new BoxBuilder().Part("lid", "shut", "open").Fact("rhyme")
            .Stage("rhyme", "", "rhyme").Stage("lid", "", "lid=open", undo: BoxBuilder.Undo("", "lid=shut")).Goal("lid=open").Build();
        book = book with { Stages = book.Stages.SetItem(0, book.Stages[0] with { Reset = A.Prose("Whistle.") }) };

        Assert.Equal(["lid", "rhyme"], List(book).Select(entry => entry.Stage?.Id.Value));
    }

    [Fact]
    public void Why_something_never_goes_back_is_a_note()
    {
        var book = new BoxBuilder().Part("seal", "whole", "broken").Part("lid", "shut", "open")
            .Stage("seal", "", "seal=broken", undo: BoxBuilder.Never("The seal is broken for good."))
            .Stage("lid", "seal=broken", "lid=open", undo: BoxBuilder.Undo("", "lid=shut")).Goal("lid=open").Build();

        Assert.Equal("The seal is broken for good.", Assert.IsType<ResetNote>(List(book)[^1].Items.Single()).Says);
    }

    [Fact]
    public void Dangers_of_a_stage_whose_parts_others_put_back_stand_where_those_are_moved()
    {
        var book = new BoxBuilder().Part("tray", "in", "out").Part("lid", "shut", "open").Move("push the tray in", "", "tray=in")
            .Stage("lid", "", "lid=open", undo: BoxBuilder.Undo("", "lid=shut")).Stage("tray", "", "tray=out").Goal("tray=out, lid=open").Build();
        book = book with { Stages = book.Stages.SetItem(1, book.Stages[1] with { Cautions = [A.Caution(CautionKind.Force, "It springs.")] }) };
        var pushed = List(book).Single(entry => entry.Items.OfType<ResetLine>().Any(line => line.Step?.Kind == StepKind.BookMove));

        Assert.Equal("It springs.", Assert.Single(pushed.Cautions).Note);
    }

    [Fact]
    public void A_sentence_that_names_a_part_stands_between_what_goes_back_and_what_is_shut()
    {
        var undo = BoxBuilder.Undos(BoxBuilder.UndoStep("key", "cap=shut, lid=shut") with { Says = "Push the lid down." });
        var book = new BoxBuilder().Part("lid", "shut", "open").Part("cap", "shut", "open").Thing("key")
            .Stage("lid", "", "lid=open, cap=open, key", undo: undo).Goal("key").Build();

        Assert.Equal(["Put back where it was found: key.", "Push the lid down.", "Back to “shut”: cap."], Printed(book));
    }

    // What stands on the page is the list, line for line, with its cautions above it: in every theme, without a script and in print.
    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void The_page_prints_the_list_as_it_is(string theme)
    {
        var examined = Assert.IsType<Sound>(HintBook.Checking.Check.Run(Repository.Example)).Examined;
        var plan = Sites.Plan(examined.Book, examined.Survey) with { Proofs = examined.Proofs };
        var page = Sites.Parse(Sites.Texts(Site.Build(plan, Theme.BuiltIn(theme).Theme).Site.Files)["reset.html"]);
        var words = new ResetWords(examined.Book, Theme.BuiltIn(theme).Theme.Words["en"]);
        var list = ResetList.Build(examined.Book, examined.Survey.WayBack);
        var entries = page.QuerySelectorAll(".steps > li").ToArray();

        Assert.Equal(list.Select(entry => entry.Stage?.Title.Value), entries.Select(entry => entry.QuerySelector("h2")?.TextContent));
        Assert.Equal(list.Select(entry => entry.Cautions.Length), entries.Select(entry => entry.QuerySelectorAll(".cautions li").Length));
        Assert.All(entries.Where(entry => entry.QuerySelector(".cautions") is not null), entry =>
            Assert.Equal(["H2", "DIV", "UL"], entry.Children.Select(child => child.TagName)));
        Assert.Equal(
            list.SelectMany(entry => entry.Items).Select(item => item is ResetLine line ? words.Of(line) : ((ResetNote)item).Text?.Markdown.Trim()),
            page.QuerySelectorAll(".tasks > li").Select(item => item.TextContent.Trim()));
        var ticks = page.QuerySelectorAll("[data-tick]").Select(box => box.GetAttribute("data-tick")).ToArray();
        Assert.Equal(Lines(list).Length, ticks.Distinct().Count());
    }

    private static ImmutableArray<ResetLine> Lines(IEnumerable<ResetEntry> list) => [.. list.SelectMany(entry => entry.Items).OfType<ResetLine>()];

    private static ImmutableArray<ResetEntry> List(Book book) => ResetList.Build(book, Solving.Reset(book));

    private static IEnumerable<Placed> ReadBack(Book book, string line)
    {
        foreach (Match label in Label().Matches(line))
        {
            var (name, position) = (label.Groups["name"].Value, label.Groups["position"].Value);
            var start = book.Box.Names.First(each => each.Id.Value == name).Positions[0];
            yield return new(name, label.Value[0] switch { 'B' => position.Replace(' ', '-'), 'T' => Thing.InHand, _ => start });
        }
    }

    [GeneratedRegex("(Back to “(?<position>.+?)”|Take in your hand|Put back where it was found|Used up, put in new): (?<name>\\w+)\\.")]
    private static partial Regex Label();

    private static IEnumerable<string> Printed(Book book)
    {
        var words = new ResetWords(book, Theme.BuiltIn(Theme.Default).Theme.Words["en"]);
        return Lines(List(book)).Select(words.Of);
    }

    private static void Hold(Func<Book, ResetPlan, ImmutableArray<ResetEntry>, string?> law)
    {
        foreach (var (book, plan) in Boxes.Value)
        {
            if (law(book, plan, ResetList.Build(book, plan)) is { } why)
                Assert.Fail($"{why}\n{BookText.Of(book)}");
        }
    }

    // Random boxes with something to say, as far as they have a plan.
    private static ImmutableArray<(Book Book, ResetPlan Plan)> Draw()
    {
        var drawn = new ConcurrentBag<(Book, ResetPlan)>();
        foreach (var boxes in new[] { RandomBoxes.Any, RandomBoxes.Returning })
            boxes.Select(Told).Sample(Add, iter: 600, print: BookText.Of);
        Assert.True(drawn.Count > 400, $"{drawn.Count} boxes with a plan");
        return [.. drawn];

        void Add(Book book)
        {
            if (Solving.Reset(book) is { Plan.IsEmpty: false } plan)
                drawn.Add((book, plan));
        }
    }

    // Sentences that name none, some or all of what they move; notes and cautions for some stages.
    private static Book Told(Book book)
    {
        var sentences = 0;
        return book with
        {
            Box = book.Box with { Moves = [.. book.Box.Moves.Select(Says)] },
            Stages =
            [
                .. book.Stages.Select((stage, number) => stage with
                {
                    Moves = [.. stage.Moves.Select(Says)],
                    Reset = number % 2 == 0 ? A.Prose($"Reset of {stage.Id}.") : null,
                    Cautions = number % 3 < 2 ? [A.Caution(CautionKind.Glass, $"Glass in {stage.Id}.")] : [],
                }),
            ],
        };

        Move Says(Move move) => move.Undo is not { } undo ? move : move with
        {
            Undo = undo with
            {
                Steps = [.. undo.Steps.Select(step => step with { Says = Sentence(step, sentences++) })],
                Never = undo.Never is null ? null : A.Value($"Never {sentences++}."),
            },
        };

        static string? Sentence(UndoStep step, int number)
        {
            var names = step.PutBack.Concat(step.Changes.Select(change => change.Name)).Select(name => name.Value).ToArray();
            return (number % 4) switch
            {
                0 => null,
                1 => $"Gently, {number}.",
                2 => $"Gently with {names.FirstOrDefault()}, {number}.",
                _ => $"Gently with {string.Join(" and ", names)}, {number}.",
            };
        }
    }
}
