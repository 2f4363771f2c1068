using System.Text.RegularExpressions;
using CsCheck;
using HintBook.Text;

namespace HintBook.Tests.Text;

public partial class FindingsTextTests
{
    private static readonly SourceFile Stage = new("stages/04-the-smoker.md", "---\ntitle: The smoker\nneed: [ card ]\n---\n");

    [Fact]
    public void A_finding_shows_its_place_its_line_and_what_to_write_instead() =>
        Assert.Equal(
            """
            stages/04-the-smoker.md, line 3 · error HB1101
                ►need◄: [ card ]
              Nothing reads the key “need”.
              Write instead: needs


            """,
            FindingsText.Write(Findings.Of([Say.At(Say.Wrong, Stage, "need", "Nothing reads the key “need”.", "Write instead: needs")])));

    [Fact]
    public void Related_places_come_before_the_help() =>
        Assert.Equal(
            """
            stages/04-the-smoker.md, line 3 · warning HB2102
                need: [ ►card◄ ]
              The card is needed twice.
              Line 2: It is needed here as well.
                ►title◄: The smoker
              book.yaml, line 1: It is declared here.
                ►card◄: {}
              Say it once.


            """,
            FindingsText.Write(Findings.Of([Say.At(Say.Odd, Stage, "card", "The card is needed twice.", "Say it once.") with
            {
                Related =
                [
                    new(Say.Place(Stage, "title"), "It is needed here as well."),
                    new(Say.Place(new("book.yaml", "card: {}"), "card"), "It is declared here."),
                ],
            }])));

    [Fact]
    public void Long_sentences_are_broken_at_words_before_column_80() =>
        Assert.Equal(
            """
            stages/04-the-smoker.md, line 3 · error HB1101
                ►need◄: [ card ]
              One two three four five six seven eight nine ten eleven twelve thirteen a bit
              more.


            """,
            FindingsText.Write(Findings.Of(
                [Say.At(Say.Wrong, Stage, "need", "One two three four five six seven eight nine ten eleven twelve thirteen a bit more.")])));

    [Theory]
    [InlineData("one two", 7, "one two")]
    [InlineData("one two", 6, "one|two")]
    [InlineData("one   two", 3, "one|two")]
    [InlineData("a\nb\r\nc", 80, "a b c")]
    [InlineData("longer a", 3, "longer|a")]
    [InlineData("蜂蜜の巣箱", 6, "蜂蜜の|巣箱")]
    [InlineData("蜂蜜。巣箱", 4, "蜂|蜜。|巣箱")]
    [InlineData("", 5, "")]
    public void Text_is_broken_as_a_terminal_shows_it(string text, int columns, string lines) =>
        Assert.Equal(lines, string.Join('|', TerminalText.Wrapped(text, columns)));

    [Fact]
    public void No_line_of_words_that_fit_is_wider_than_the_terminal_and_no_word_is_lost() =>
        Gen.OneOf("bee", "🐝", "蜂蜜", "cafe\u0301", "a-rather-long-word", "\t", "\n", "\e[31m").Array[0, 60].Sample(words =>
        {
            var text = string.Join(' ', words);
            var lines = TerminalText.Wrapped(text, 20).ToArray();
            Assert.All(lines, line => Assert.InRange(TerminalText.Columns(line), 0, 20));
            Assert.Equal(Bare(TerminalText.Shown(text.ReplaceLineEndings(" "))), Bare(string.Concat(lines)));
        });

    [Fact]
    public void An_empty_line_follows_each_finding_and_no_line_ends_in_space()
    {
        var text = FindingsText.Write(Findings.Of([Say.At(Say.Wrong, Stage, "need"), Say.At(Say.Odd, Stage, "title")]));
        Assert.Contains("\n\nstages/", text, StringComparison.Ordinal);
        Assert.EndsWith("\n\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" \n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_concerns_a_file_as_such_has_no_line_to_show() =>
        Assert.Equal(
            "stages/x.md · error HB1101\n  It is so.\n\n",
            FindingsText.Write(Findings.Of([Say.At(Say.Wrong, SourceFile.Unread("stages/x.md"), "")])));

    [Fact]
    public void Nothing_to_say_is_nothing_written() => Assert.Equal("", FindingsText.Write(Findings.None));

    [Fact]
    public void Notes_are_left_out_unless_asked_for()
    {
        var findings = Findings.Of([Say.At(Say.Mild, Stage, "card")]);
        Assert.Equal("", FindingsText.Write(findings));
        Assert.Contains("note HB3103", FindingsText.Write(findings, withNotes: true), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_the_colours_the_text_is_the_same()
    {
        var findings = Findings.Of([Say.At(Say.Wrong, Stage, "need", help: "Write instead: needs")]);
        var coloured = FindingsText.Write(findings, colour: true);
        Assert.Contains("\e[1;31merror HB1101\e[0m", coloured, StringComparison.Ordinal);
        Assert.Contains("\e[1;31m►need◄\e[0m: [ card ]", coloured, StringComparison.Ordinal);
        Assert.Contains("\e[1;32mWrite instead:\e[0m needs", coloured, StringComparison.Ordinal);
        Assert.Equal(FindingsText.Write(findings), Colour.Replace(coloured, ""));
    }

    [Theory]
    [InlineData("\tdoes: x", "x", "    does: ►x◄")]
    [InlineData("a\tb", "\t", "a►    ◄b")]
    [InlineData("蜂蜜: 巣箱", "巣箱", "蜂蜜: ►巣箱◄")]
    [InlineData("🐝 bee", "🐝", "►🐝◄ bee")]
    [InlineData("one\n", "\n", "one►◄")]
    [InlineData("a: «b» #", "«b»", "a: ►«b»◄ #")]
    public void The_words_in_question_stand_between_two_marks(string line, string place, string shown) =>
        Assert.Equal(shown, Shown(Say.Place(new("book.yaml", line), place)));

    [Fact]
    public void A_place_of_several_lines_is_marked_to_the_end_of_the_first() =>
        Assert.Equal("a: ►one…◄", Shown(Say.Place(new("book.yaml", "a: one\n  two"), "one\n  two")));

    [Fact]
    public void A_mere_place_is_shown_by_the_marks_alone() =>
        Assert.Equal("a: ►◄[", Shown(new(new("book.yaml", "a: ["), 3, 3)));

    [Fact]
    public void Nothing_from_a_file_can_command_the_terminal() =>
        Assert.Equal("a\uFFFD[31mb\uFFFDc", TerminalText.Shown("a\e[31mb\u202Ec"));

    [Fact]
    public void A_long_line_is_cut_around_the_place() =>
        Gen.Select(Gen.Int[0, 400], Gen.Int[0, 400], Gen.OneOf("x", "蜂", "🐝", "\t")).Sample((before, after, letter) =>
        {
            var line = string.Concat(Enumerable.Repeat(letter, before)) + "HERE" + string.Concat(Enumerable.Repeat(letter, after));
            var excerpt = Excerpt.Of(Say.Place(new("book.yaml", line), "HERE"))!;
            Assert.Equal("HERE", excerpt.Marked);
            Assert.InRange(TerminalText.Columns(excerpt.Before + excerpt.Marked + excerpt.After), 4, Excerpt.Widest + 2);
            Assert.DoesNotContain("\uFFFD", excerpt.Before + excerpt.After, StringComparison.Ordinal);
        });

    [Fact]
    public void Words_too_long_for_a_line_are_cut_inside_of_the_marks()
    {
        var excerpt = Excerpt.Of(Say.Place(new("book.yaml", "a: " + new string('x', 300) + " b"), new string('x', 300)))!;
        Assert.Equal(("a: ", ""), (excerpt.Before, excerpt.After));
        Assert.EndsWith("x…", excerpt.Marked, StringComparison.Ordinal);
    }

    private static string? Shown(Span at) => Excerpt.Of(at) is { } excerpt
        ? $"{excerpt.Before}{Excerpt.Open}{excerpt.Marked}{Excerpt.Close}{excerpt.After}"
        : null;

    private static string Bare(string text) => text.Replace(" ", "", StringComparison.Ordinal);

    [GeneratedRegex(@"\e\[[0-9;]{0,9}m", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Colour { get; }
}
