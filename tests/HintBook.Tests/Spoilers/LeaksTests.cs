using HintBook.Mechanism;
using HintBook.Spoilers;
using HintBook.Tests.Reading;
using HintBook.Text;

namespace HintBook.Tests.Spoilers;

/// <summary>What may be said where: the table of the room's README, row by row.</summary>
public class LeaksTests
{
    [Theory]
    [InlineData("title", "The brass bee")]
    [InlineData("welcome", "Find the brass bee.")]
    [InlineData("address", "https://alder-row.example/brass-bee/")]
    [InlineData("cautions", "[ { kind: magnets, note: The brass bee is a magnet. } ]")]
    public void Outside_only_what_shows_on_the_closed_box_is_named(string key, string text) =>
        Assert.Equal(["HB3101 brass bee"], Said(Cellar(book: $"{key}: {text}")).Select(Short), StringComparer.OrdinalIgnoreCase);

    [Fact]
    public void What_is_seen_may_be_named_anywhere() => Assert.Empty(Said(Cellar(book: "welcome: Look at the copper hatch.")));

    [Theory]
    [InlineData("shut: { says: over the brass bee, seen: true }", true)]
    [InlineData("shut: { says: over the brass bee, seen: false }", false)]
    [InlineData("shut: over the brass bee", true)]
    public void The_words_of_a_position_that_shows_on_the_closed_box_stand_outside(string position, bool told)
    {
        var keys = $"hatch: {{ positions: {{ {position}, open: up }}, seen: true }}";
        Assert.Equal(told ? ["HB3101"] : [], Codes(Cellar(hatch: keys)));
    }

    [Theory]
    [InlineData("sign", "A brass bee shines.")]
    [InlineData("nudge", "Think of the brass bee.")]
    [InlineData("clue", "The brass bee lies behind it.")]
    public void What_a_stage_gives_is_for_its_answer(string place, string text) =>
        Assert.Equal(["HB3101"], Codes(Cellar(first: new() { [place] = text })));

    [Fact]
    public void What_is_certain_before_a_stage_may_be_named_in_its_title_and_sign() =>
        Assert.Empty(Said(Cellar(second: new() { ["sign"] = "You hold the brass bee.", ["nudge"] = "The brass bee hums." })));

    [Fact]
    public void A_part_that_the_stage_moves_may_be_named_in_the_clue_but_not_in_the_nudge()
    {
        Assert.Empty(Said(Cellar(second: new() { ["clue"] = "The velvet bolt is near." })));
        Assert.Equal(["HB3101"], Codes(Cellar(second: new() { ["nudge"] = "The velvet bolt is near." })));
    }

    [Theory]
    [InlineData("Set 4711 on it.")]
    [InlineData("Set four, seven, one, one.")]
    public void The_clue_keeps_the_code_back(string clue) =>
        Assert.Equal(["HB3101"], Codes(Cellar(second: new() { ["clue"] = clue })));

    [Fact]
    public void What_another_branch_gives_is_a_secret_and_a_way_round_it_is_told()
    {
        var finding = Assert.Single(Said(Cellar(third: new() { ["nudge"] = "Use the brass bee." })));

        Assert.Equal("HB3101", finding.Code.Id);
        Assert.Equal("brass bee", finding.At.Text);
        Assert.Equal(
            "The nudge of “The attic” mentions “brass bee”. It becomes known in “The hatch”, and “The attic” is open from the start.",
            finding.Message);
    }

    [Fact]
    public void Words_that_may_be_a_name_turned_round_are_a_warning() =>
        Assert.Equal(["HB3102"], Codes(Cellar(first: new() { ["nudge"] = "Think of a bee made of brass." })));

    [Fact]
    public void Every_mention_is_told_where_it_stands() =>
        Assert.Equal(
            ["brass bee", "Brass Bees"],
            Said(Cellar(first: new() { ["nudge"] = "A brass bee hums. Brass Bees do." })).Select(finding => finding.At.Text));

    [Fact]
    public void A_likely_mention_hides_no_sure_one() =>
        Assert.Contains("HB3101", Codes(Cellar(first: new() { ["nudge"] = "A bee made of brass. It is the brass bee." })));

    [Fact]
    public void Twenty_mentions_of_a_secret_in_one_text_are_enough() =>
        Assert.Equal(20, Codes(Cellar(first: new() { ["nudge"] = string.Concat(Enumerable.Repeat("A brass bee hums. ", 20_000)) })).Length);

    [Fact]
    public void A_picture_that_tells_at_a_later_step_tells_at_an_earlier_one()
    {
        var book = Cellar(first: new() { ["photos"] = "{ nudge: { file: a.jpg, alt: A hatch. }, answer: { file: a.jpg, alt: A brass bee. } }" });
        book.With("photos/a.jpg", [1]);
        var finding = Assert.Single(Said(book));

        Assert.Equal("HB3102", finding.Code.Id);
        Assert.StartsWith("A photo in the nudge of “The hatch” shows “brass bee”, as its words in the answer say.", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_picture_tells_nothing_of_this_one()
    {
        var book = Cellar(first: new() { ["photos"] = "{ nudge: { file: a.jpg, alt: A hatch. }, answer: { file: b.jpg, alt: A brass bee. } }" });
        book.With("photos/a.jpg", [1]).With("photos/b.jpg", [2]);
        Assert.Empty(Said(book));
    }

    [Fact]
    public void The_title_of_a_later_stage_is_a_warning() =>
        Assert.Equal(["HB3104"], Codes(Cellar(first: new() { ["nudge"] = "Nothing is behind that velvet curtain." })));

    [Fact]
    public void A_photo_that_shows_a_secret_too_early_is_an_error()
    {
        var book = Cellar(first: new() { ["photos"] = "{ nudge: { file: a.jpg, alt: A hatch., shows: [ brass-bee ] } }" });
        book.With("photos/a.jpg", [1]);
        Assert.Equal(["HB3103"], Codes(book));
    }

    [Fact]
    public void The_words_for_a_photo_are_read_at_its_place()
    {
        const string photos =
            "{ nudge: { file: a.jpg, alt: A brass bee. }, answer: { file: a.jpg, alt: A brass bee., shows: [ brass-bee ] } }";
        var book = Cellar(first: new() { ["photos"] = photos });
        book.With("photos/a.jpg", [1]);
        Assert.Equal(["HB3101"], Codes(book));
    }

    [Fact]
    public void An_allowance_lets_a_mention_stand() =>
        Assert.Empty(Said(Cellar(first: new() { ["nudge"] = "Think of the brass bee.", ["allow"] = "[ { mention: brass bee, why: it is on the lid } ]" })));

    [Fact]
    public void An_allowance_of_the_book_holds_everywhere() =>
        Assert.Empty(Said(Cellar(book: "allow: [ { mention: \"4711\", why: it is painted on } ]\nwelcome: Number 4711.")));

    [Theory]
    [InlineData("brass bee", "Nothing needs the allowance for “brass bee”.")]
    [InlineData("silver fly", "“silver fly” names no secret of this book.")]
    public void An_allowance_that_nothing_uses_is_a_note(string mention, string message)
    {
        var finding = Assert.Single(Said(Cellar(book: $"allow: [ {{ mention: {mention}, why: who knows }} ]"), notes: true));

        Assert.Equal(("HB3302", message), (finding.Code.Id, finding.Message));
    }

    [Theory]
    [InlineData("Open the hatch.", "The answer of “The hatch” doesn't say that it gives “brass bee”.")]
    public void An_answer_that_leaves_a_thing_out_is_a_warning(string answer, string message)
    {
        var finding = Assert.Single(Said(Cellar(first: new() { ["answer"] = answer })));

        Assert.Equal(("HB3201", message), (finding.Code.Id, finding.Message));
    }

    [Fact]
    public void An_answer_that_leaves_the_code_out_is_a_warning() =>
        Assert.Equal(["HB3201"], Codes(Cellar(second: new() { ["answer"] = "Set the number and draw the velvet bolt." })));

    // The page prints the code where the working stands.
    [Fact]
    public void An_answer_that_shows_the_working_of_the_code_says_it() =>
        Assert.Empty(Codes(Cellar(second: new() { ["answer"] = "|\n  {{ working: bolt-number }}\n\n  Draw the velvet bolt." })));

    [Fact]
    public void HB3101_a_working_that_shows_a_code_too_early_is_a_leak()
    {
        var said = Said(Cellar(third: new() { ["answer"] = "|\n  Take the letter.\n\n  {{ working: bolt-number }}" }));

        Assert.Equal("{{ working: bolt-number }}", Assert.Single(said, finding => finding.Code.Id == "HB3101").At.Text);
    }

    [Fact]
    public void A_clue_that_repeats_the_nudge_is_a_note()
    {
        var book = Cellar(first: new()
        {
            ["nudge"] = "Look at where the light falls in the evening.",
            ["clue"] = "Look at where the light falls in the evening!",
        });
        Assert.Equal(["HB3202"], Codes(book, notes: true));
    }

    [Fact]
    public void A_known_name_covers_a_secret_that_is_part_of_it() =>
        Assert.Empty(Said(Cellar(book: "facts: { plate: { name: plate of the brass bee, seen: true } }\nwelcome: Read the plate of the brass bee.")));

    [Fact]
    public void Words_in_quotes_are_pointed_at_where_the_source_has_them()
    {
        var finding = Assert.Single(Said(Cellar(first: new() { ["sign"] = "\"A \\\"brass bee\\\" shines.\"" })));

        Assert.Equal("brass bee", finding.At.Text);
    }

    [Fact]
    public void A_name_too_everyday_to_look_for_is_said_in_a_note() =>
        Assert.Equal(["HB3301"], Codes(Cellar(book: "facts: { key: { red-herring: true } }"), notes: true));

    [Fact]
    public void A_code_too_short_to_look_for_is_said_with_what_would_be_looked_for()
    {
        var note = Assert.Single(Said(Cellar(answer: "7"), notes: true), finding => finding.Code.Id == "HB3301");
        Assert.Equal("“7” is too short, so nobody looks for it in the texts.", note.Message);
        Assert.EndsWith("Codes of two symbols or more are looked for, unless they are everyday words.", note.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void In_a_language_that_is_not_known_the_known_ones_are_named() => Assert.StartsWith(
        "Known are “en”, “de”, “fr”",
        Assert.Single(Said(Cellar(book: "language: eng"), notes: true), finding => finding.Code.Id == "HB3303").Help,
        StringComparison.Ordinal);

    [Fact]
    public void In_another_language_names_are_compared_as_written_and_that_is_said() =>
        Assert.Equal(["HB3303"], Codes(Cellar(book: "language: nl"), notes: true).Distinct());

    [Fact]
    public void The_example_keeps_its_secrets() => Assert.Empty(Said(Reader(Where.Example)));

    private static (HintBook.Books.Book, Survey) Reader(string path)
    {
        var (_, book, findings) = HintBook.Reading.Reader.Read(path);
        Assert.DoesNotContain(findings.All, finding => finding.IsError);
        var survey = Surveyor.Survey(book!, whole: true).Survey;
        Assert.NotNull(survey);
        return (book!, survey);
    }

    private static string Short(Finding finding) => $"{finding.Code.Id} {finding.At.Text.Replace('-', ' ')}";

    private static string[] Codes(BookOnDisk book, bool notes = false) => [.. Said(book, notes).Select(finding => finding.Code.Id)];

    private static Finding[] Said(BookOnDisk book, bool notes = false)
    {
        using (book)
            return Said(Reader(book.Path), notes);
    }

    private static Finding[] Said((HintBook.Books.Book Book, Survey Survey) read, bool notes = false) =>
        [.. Leaks.In(read.Book, read.Survey).Findings.Shown(notes)];

    // Two ways in: the hatch gives a brass bee, and with it a velvet bolt is drawn by a code; the attic needs neither.
    private static BookOnDisk Cellar(
        string book = "",
        Dictionary<string, string>? first = null,
        Dictionary<string, string>? second = null,
        Dictionary<string, string>? third = null,
        string answer = "4711",
        string hatch = "hatch: { positions: [ shut, open ], name: copper hatch, seen: true }")
    {
        var keys = new List<string>
        {
            "goal: [ { velvet-bolt: drawn }, old-letter ]",
            "parts: { " + hatch + ", velvet-bolt: { positions: [ shut, drawn ] } }",
            "things: { brass-bee: {}, old-letter: { name: oldest letter } }",
            "codes: { bolt-number: { answer: \"" + answer + "\", name: number of the bolt } }",
        };
        if (!book.Contains("title:", StringComparison.Ordinal))
            keys.Add("title: The Cellar");
        if (book.Length > 0)
            keys.Add(book);
        return new BookOnDisk().Without("stages/01-the-lid.md")
            .With("book.yaml", string.Join('\n', keys) + "\n")
            .With("stages/01-hatch.yaml", Stage("The hatch", "does: { hatch: open }\ngives: [ brass-bee ]", "Take the brass bee.", first))
            .With("stages/02-bolt.yaml", Stage(
                "Behind the velvet curtain",
                "moves: [ { name: read, needs: [ brass-bee ], gives: [ bolt-number ] }, "
                    + "{ name: set, needs: [ brass-bee, bolt-number ], does: { velvet-bolt: drawn } } ]",
                "Set 4711 and draw the velvet bolt.",
                second))
            .With("stages/03-attic.yaml", Stage("The attic", "gives: [ old-letter ]", "Take the letter.", third));
    }

    private static string Stage(string title, string keys, string answer, Dictionary<string, string>? changed)
    {
        var texts = new Dictionary<string, string> { ["sign"] = "It is shut.", ["nudge"] = "Think twice.", ["clue"] = "Look closer.", ["answer"] = answer };
        foreach (var (key, text) in changed ?? [])
            texts[key] = text;
        return $"title: {title}\n{keys}\n" + string.Concat(texts.Select(text => $"{text.Key}: {text.Value}\n"));
    }
}
