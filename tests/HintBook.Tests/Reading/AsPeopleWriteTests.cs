using System.Collections.Immutable;
using HintBook.Text;

namespace HintBook.Tests.Reading;

/// <summary>Keys as people write them who have never heard of YAML: each slip is named, with the line as it should be.</summary>
public sealed class AsPeopleWriteTests : IDisposable
{
    private const string Keys = "title: The Tea Caddy\ngoal: [ honey ]\nparts: { lid: { positions: [ shut, open ] } }\n"
        + "things: { honey: {}, brass-key: { name: key of brass }, log-book: {} }\n"
        + BookOnDisk.WayBack;

    private readonly BookOnDisk book = new();

    public AsPeopleWriteTests() => book.With("book.yaml", Keys);

    public void Dispose() => book.Dispose();

    [Theory]
    [InlineData("sign: The lid has lock #2 with four wheels.", "#2 with four wheels.", "Write instead: \"The lid has lock #2 with four wheels.\"")]
    [InlineData("sign: The lid has lock # 2", "# 2", "Write instead: \"The lid has lock # 2\"")]
    [InlineData("sign: Say \"no\" to #2", "#2", "Write instead: 'Say \"no\" to #2'")]
    public void What_a_remark_cuts_off_a_text_is_told_with_the_text_in_quotes(string line, string cut, string help)
    {
        var finding = Only(line);
        Assert.Equal(("HB1108", cut), (finding.Code.Id, finding.At.Text));
        Assert.StartsWith(help, finding.Help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("sign: It is shut.  # looked at it again in May")]
    [InlineData("sign: \"Lock #2\" # the small one")]
    [InlineData("sign: Lock#2")]
    [InlineData("# a line of its own\nsign: It is shut.")]
    public void A_remark_that_stands_off_and_a_quoted_text_are_left_alone(string line) => Assert.Empty(Of(line));

    [Fact]
    public void A_text_that_is_a_remark_as_a_whole_is_told_as_one()
    {
        var finding = Only("sign: #2 is shut.");
        Assert.Equal("HB1204", finding.Code.Id);
        Assert.Contains("quotes", finding.Help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("needs: brass-key and log-book", "needs: [ brass-key, log-book ]")]
    [InlineData("needs: brass key, log book", "needs: [ brass-key, log-book ]")]
    [InlineData("needs: brass-key & log-book", "needs: [ brass-key, log-book ]")]
    [InlineData("needs: brass-key", "needs: [ brass-key ]")]
    [InlineData("needs:\n  • brass-key\n  • log-book", "needs: [ brass-key, log-book ]")]
    [InlineData("needs: { lid: open }", "needs: [ { lid: open } ]")]
    [InlineData("needs:\n  lid: open", "needs: [ { lid: open } ]")]
    public void Names_that_stand_in_a_text_are_told_as_the_list_to_write(string keys, string instead)
    {
        var finding = Only($"sign: It is shut.\n{keys}");
        Assert.Equal(("HB1203", $"Write instead: {instead}"), (finding.Code.Id, finding.Help));
    }

    [Theory]
    [InlineData("sign:It is shut.", "Write instead: sign: It is shut.")]
    [InlineData("sign: The lid: it is shut.", "Write instead: sign: \"The lid: it is shut.\"")]
    [InlineData("sign: \"Lid\" stands on it.", "Write instead: sign: '\"Lid\" stands on it.'")]
    [InlineData("sign: 'You don't know.'", "Write instead: sign: \"You don't know.\"")]
    [InlineData("sign: It is shut.\nphotos:\n  clue: card.jpg\n    alt: The lid", "Write both in braces: clue: { file: card.jpg, alt: … }")]
    [InlineData("sign: It is shut.\nphotos:\n  clue: card.jpg   # as it was\n    alt: The lid", "Write both in braces: clue: { file: card.jpg, alt: … }")]
    [InlineData("sign: @home", "If this is a text, write instead: sign: \"@home\"")]
    [InlineData("sign: It is shut.\nneeds: lid: open", "Write instead: needs: [ { lid: open } ]")]
    [InlineData("sign: It is shut.\ndoes: lid: open", "Write instead: does: { lid: open }")]
    public void A_slip_that_breaks_a_rule_is_told_with_the_line_to_write(string keys, string instead)
    {
        var finding = Only(keys);
        Assert.Equal(("HB1101", instead), (finding.Code.Id, finding.Help));
    }

    [Fact]
    public void A_missing_space_is_told_at_its_own_line()
    {
        var finding = Only("title:The lid\nsign: It is shut.", title: "");
        Assert.Equal(("HB1101", 2, "title:The lid"), (finding.Code.Id, finding.Place().Line, finding.At.Text));
    }

    [Fact]
    public void A_line_that_stands_too_far_in_is_told_beside_the_one_above_it()
    {
        var finding = Only("  sign: It is shut.", title: "title: The lid\n");
        Assert.Equal(("HB1101", 3, "sign"), (finding.Code.Id, finding.Place().Line, finding.At.Text));
        Assert.Equal("Begin both in the same column.", finding.Help);
    }

    [Theory]
    [InlineData("undo:\n  put-back: [ honey ]\n says: Lay it back.   # how", "says", "it has 1 space before it, and “put-back” above it has 2")]
    [InlineData("moves:\n  - name: lift it\n   does: { lid: open }   # how", "does", "it has 3 spaces before it, and “name” above it has 4")]
    public void A_line_in_a_column_of_its_own_is_told_as_that_and_not_by_the_remark_behind_it(string keys, string at, string columns)
    {
        var finding = Only($"sign: It is shut.   # so far\n{keys}");
        Assert.Equal(("HB1101", at), (finding.Code.Id, finding.At.Text));
        Assert.Contains(columns, finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_danger_in_the_place_of_its_entry_is_told_once_with_the_entry()
    {
        var finding = Only("sign: It is shut.\ncautions:\n  - small-parts: The pin is small.");
        Assert.Equal(
            ("HB1201", "Write instead: kind: small-parts, and below it “note:” with what you want to say about it"), (finding.Code.Id, finding.Help));
    }

    [Fact]
    public void Values_without_their_braces_and_names_are_told_once_with_an_example()
    {
        book.With("photos/lid.jpg", "x");
        var finding = Only("sign: It is shut.\nphotos: { answer: { file: lid.jpg, marks: [ 41, 63, the catch ] } }");
        Assert.Equal(("HB1203", "Write instead: [ { at: [ 41, 63 ], says: the catch } ], for example."), (finding.Code.Id, finding.Help));
    }

    [Fact]
    public void A_file_that_is_named_with_its_folder_is_told_with_its_name_alone()
    {
        book.With("photos/lid.jpg", "x").With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]\nphotos: { clue: photos/lid.jpg }"));
        Assert.Contains(book.Findings().All, finding => finding.Help == "Write instead: lid.jpg");
    }

    [Fact]
    public void A_remark_that_cuts_off_a_bracket_is_told_as_the_remark()
    {
        var finding = Only("sign: It is shut.\ncautions: [ { kind: heavy, note: box #2 } ]");
        Assert.Equal(("HB1101", "#2 } ]"), (finding.Code.Id, finding.At.Text));
    }

    [Theory]
    [InlineData("sign: !Look at the lid.", "!Look")]
    [InlineData("sign: &Sons stands on it.", "&Sons")]
    [InlineData("sign: !Look, the lid is up.", "!Look,")]
    public void A_sign_that_YAML_would_swallow_is_told(string line, string at)
    {
        var finding = Only(line);
        Assert.Equal(("HB1111", at), (finding.Code.Id, finding.At.Text));
    }

    [Fact]
    public void A_line_of_a_text_that_begins_in_the_first_column_leaves_its_neighbours_alone()
    {
        var finding = Only("sign: It is\nshut and has a lock.\nminutes: 5");
        Assert.Equal(("HB1101", 4, "shut and has a lock."), (finding.Code.Id, finding.Place().Line, finding.At.Text));
    }

    [Theory]
    [InlineData("needs: [ the key of brass ]", "Write instead: brass-key")]
    [InlineData("needs: the key of brass, honey", "Write instead: needs: [ brass-key, honey ]")]
    [InlineData("needs: [ log\u2011book ]", "Write instead: log-book")]
    [InlineData("does: lid open", "Write instead: does: { lid: open }")]
    [InlineData("minutes: 15 min", "Write instead: minutes: 15")]
    [InlineData("optional: yes", "Write instead: optional: true")]
    [InlineData("photos: lid.jpg", "Write instead: photos: { answer: lid.jpg }")]
    [InlineData("clip: film.mp4", "Write instead: clip: { file: film.mp4 }")]
    [InlineData("also: x", "Allowed here: ")]
    public void A_value_of_another_kind_is_told_with_the_line_to_write(string line, string instead) =>
        Assert.StartsWith(instead, Only($"sign: It is shut.\n{line}").Help, StringComparison.Ordinal);

    [Theory]
    [InlineData("undo: { put-back: [ honey ], says: Fold it, twice }", "HB1201", "twice", "Write instead: says: \"Fold it, twice\"")]
    [InlineData("undo: { put-back: [ honey ]; says: Fold it }", "HB1201", "; says", "Write a comma in place of the “;”.")]
    [InlineData("does: { lid = open }", "HB1207", "lid = open", "Write instead: lid: open")]
    [InlineData("undo: { put-back: [ honey ]", "HB1101", "{", "Write a “}” where what it opens ends.")]
    [InlineData("undo:\n  put-back: [ honey ]\n says: Fold it.", "HB1101", "says", "Begin it in the same column")]
    [InlineData("// a remark", "HB1101", "// a remark", "Write instead: # a remark")]
    [InlineData("minutes： 5", "HB1101", "minutes： 5", "Write instead: minutes: 5")]
    public void A_slip_between_signs_is_told_at_its_place(string line, string code, string at, string help)
    {
        var finding = Only($"sign: It is shut.\n{line}");
        Assert.Equal((code, at), (finding.Code.Id, finding.At.Text));
        Assert.Contains(help, finding.Help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Titel: The Tea Caddy")]
    [InlineData("Title: The Tea Caddy")]
    public void A_key_that_is_nearly_there_is_not_missed_as_well(string line)
    {
        book.With("book.yaml", Keys.Replace("title: The Tea Caddy", line, StringComparison.Ordinal) + "format: 2\n");
        Assert.Equal("Write instead: title", Assert.Single(book.Read().Findings.All).Help);
    }

    [Fact]
    public void What_should_stand_below_a_key_and_begins_in_its_column_is_told_and_the_key_is_not()
    {
        book.With("book.yaml", BookOnDisk.Keys + "parts:\nlid: { positions: [ shut, open ] }\ntray: { positions: [ in, out ] }\n");
        var findings = book.Read().Findings.All;
        Assert.Equal(["lid", "tray"], findings.Select(finding => finding.At.Text));
        Assert.All(findings, finding => Assert.Contains("belongs to “parts”", finding.Help, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("## Clue")]
    [InlineData("#Clue")]
    [InlineData("**Clue**")]
    [InlineData("Clue:")]
    public void A_line_that_should_be_a_heading_is_told_at_its_place(string line)
    {
        book.With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]").Replace("# Clue", line, StringComparison.Ordinal));
        var finding = Assert.Single(book.Read().Findings.All);
        Assert.Equal(("HB1302", line, "Write instead: # Clue"), (finding.Code.Id, finding.At.Text, finding.Help));
    }

    [Fact]
    public void Headings_of_other_words_are_told_with_the_steps_that_are_missing()
    {
        var text = BookOnDisk.Stage("gives: [ honey ]")
            .Replace("# Nudge", "# Hint", StringComparison.Ordinal).Replace("# Answer", "# Solution", StringComparison.Ordinal);
        var findings = book.With("stages/01-the-lid.md", text).Read().Findings.All;
        Assert.Equal([("HB1306", "Hint"), ("HB1306", "Solution")], findings.Select(finding => (finding.Code.Id, finding.At.Text)));
        Assert.StartsWith("Write instead: # Nudge.", findings[0].Help, StringComparison.Ordinal);
        Assert.StartsWith("Write instead: # Answer.", findings[1].Help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("stages/3 The Tray.docx", "“03-the-tray.md”")]
    [InlineData("stages/3_the_tray.txt", "“03-the_tray.md”")]
    public void A_file_that_would_be_a_stage_but_for_its_name_is_told_first(string file, string right)
    {
        var finding = book.With(file, BookOnDisk.Stage()).With("stages/01-the-lid.md", "no keys").Findings().All[0];
        Assert.Equal("HB1308", finding.Code.Id);
        Assert.Contains(right, finding.Help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("needs: whatever it is that the reader may have found under the lid", "[ honey, { lid: open } ]")]
    [InlineData("does: open the lid", "{ lid: open }")]
    public void What_is_wanted_is_explained_with_the_books_own_names(string line, string example)
    {
        var finding = Only($"sign: It is shut.\n{line}");
        Assert.Contains(example, $"{finding.Message} {finding.Help}", StringComparison.Ordinal);
        Assert.DoesNotContain("hive-tool", $"{finding.Message} {finding.Help}", StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("photos: { clue: card.jpg }", "photos:")]
    [InlineData("clip: { file: film.mp4, from: 2:16 }", "clip:")]
    [InlineData("sign: It is shut.", "sign:")]
    [InlineData("  minutes: 5", "minutes:")]
    public void An_entry_among_the_text_is_told(string line, string at)
    {
        book.With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]") + $"\n{line}\n");
        var finding = Assert.Single(book.Read().Findings.All);
        Assert.Equal(("HB1317", at), (finding.Code.Id, finding.At.Text));
    }

    [Theory]
    [InlineData("Answer: 5173")]
    [InlineData("One thing: look up.")]
    [InlineData("```\nsign: a drawing\n```")]
    [InlineData("the clue: look up")]
    public void A_sentence_is_no_entry(string text)
    {
        book.With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]") + $"\n{text}\n");
        Assert.Empty(book.Read().Findings.All);
    }

    [Fact]
    public void An_entry_above_the_first_heading_is_told_once_and_as_an_entry()
    {
        book.With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]").Replace("# Nudge", "minutes: 5\n# Nudge", StringComparison.Ordinal));
        var finding = Assert.Single(book.Read().Findings.All);
        Assert.Equal(("HB1307", "Move it up between the two lines “---”."), (finding.Code.Id, finding.Help));
    }

    [Fact]
    public void A_photo_and_a_film_that_nothing_uses_are_noted()
    {
        book.With("photos/lid.jpg", "x").With("photos/more/cup.jpg", "x").With("clips/film.mp4", "x").With("clips/film.en.vtt", "x");
        Assert.Equal(
            ["clips/film.en.vtt", "clips/film.mp4", "photos/lid.jpg", "photos/more/cup.jpg"],
            book.Read().Findings.All.Where(finding => finding.Code.Id == "HB1010").Select(finding => finding.At.File.Path));
    }

    [Fact]
    public void Files_that_are_used_and_captions_beside_a_film_are_not_noted()
    {
        book.With("photos/lid.jpg", "x").With("clips/film.mp4", "x").With("clips/film.en.vtt", "x")
            .With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]\nphotos: { clue: lid.jpg }\nclip: { file: film.mp4, from: 0:10 }"));
        Assert.Empty(book.Read().Findings.All);
    }

    [Fact]
    public void A_stage_with_a_wrong_ending_is_told_before_all_else()
    {
        book.With("stages/01-the-lid.md", "no keys").With("stages/02-the-tray.md.txt", BookOnDisk.Stage());
        Assert.Equal("HB1316", book.Findings().All[0].Code.Id);
    }

    private Finding Only(string keys, string title = "title: The lid\n") => Assert.Single(Of(keys, title));

    private ImmutableArray<Finding> Of(string keys, string title = "title: The lid\n") =>
        book.With("stages/01-the-lid.md", $"---\n{title}{keys}\n---\n{BookOnDisk.Help}").Read().Findings.All;
}
