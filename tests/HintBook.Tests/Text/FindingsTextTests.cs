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
            error HB1101 stages/04-the-smoker.md:3:1: There is no key "need".
              3 | need: [ card ]
                | ^^^^
              help: Write "needs".

            """,
            FindingsText.Write(Findings.Of([Say.At(Say.Wrong, Stage, "need", "There is no key \"need\".", "Write \"needs\".")])));

    [Fact]
    public void Related_places_come_before_the_help() =>
        Assert.Equal(
            """
            warning HB2102 stages/04-the-smoker.md:3:9: The card is needed twice.
              3 | need: [ card ]
                |         ^^^^
              stages/04-the-smoker.md:2:1: It is needed here as well.
              2 | title: The smoker
                | ^^^^^
              help: Say it once.

            """,
            FindingsText.Write(Findings.Of([Say.At(Say.Odd, Stage, "card", "The card is needed twice.", "Say it once.") with
            {
                Related = [new(Say.Place(Stage, "title"), "It is needed here as well.")],
            }])));

    [Fact]
    public void An_empty_line_parts_findings_and_none_ends_in_space()
    {
        var text = FindingsText.Write(Findings.Of([Say.At(Say.Wrong, Stage, "need"), Say.At(Say.Odd, Stage, "title")]));
        Assert.Contains("\n\nerror", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" \n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_a_file_could_not_be_read_there_is_no_line_to_show() =>
        Assert.Equal(
            "error HB1101 stages/x.md:1:1: It is so.\n",
            FindingsText.Write(Findings.Of([Say.At(Say.Wrong, SourceFile.Unread("stages/x.md"), "")])));

    [Fact]
    public void Nothing_to_say_is_nothing_written() => Assert.Equal("", FindingsText.Write(Findings.None));

    [Fact]
    public void Notes_are_left_out_unless_asked_for()
    {
        var findings = Findings.Of([Say.At(Say.Mild, Stage, "card")]);
        Assert.Equal("", FindingsText.Write(findings));
        Assert.StartsWith("note HB3103", FindingsText.Write(findings, withNotes: true), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_the_colours_the_text_is_the_same()
    {
        var findings = Findings.Of([Say.At(Say.Wrong, Stage, "need", help: "Write \"needs\".")]);
        var coloured = FindingsText.Write(findings, colour: true);
        Assert.Contains("\e[1;31merror HB1101\e[0m", coloured, StringComparison.Ordinal);
        Assert.Equal(FindingsText.Write(findings), Colour.Replace(coloured, ""));
    }

    [Theory]
    [InlineData("\tdoes: x", "x", "    does: x", "          ^")]
    [InlineData("a\tb", "\t", "a    b", " ^^^^")]
    [InlineData("蜂蜜: 巣箱", "巣箱", "蜂蜜: 巣箱", "      ^^^^")]
    [InlineData("🐝 bee", "bee", "🐝 bee", "   ^^^")]
    [InlineData("cafe\u0301: x", "x", "cafe\u0301: x", "      ^")]
    [InlineData("one", "", "one", "^")]
    public void The_marks_stand_below_the_place_as_a_terminal_shows_it(string line, string place, string shown, string marks) =>
        Assert.Equal(new Excerpt(shown, marks), Excerpt.Of(Say.Place(new("book.yaml", line), place)));

    [Fact]
    public void A_place_of_several_lines_is_marked_to_the_end_of_the_first() =>
        Assert.Equal(new Excerpt("a: one", "   ^^^"), Excerpt.Of(Say.Place(new("book.yaml", "a: one\n  two"), "one\n  two")));

    [Fact]
    public void A_place_past_the_end_of_a_line_gets_one_mark() =>
        Assert.Equal(new Excerpt("a:", "  ^"), Excerpt.Of(Say.Place(new("book.yaml", "a:\nb"), "\n")));

    [Fact]
    public void Nothing_from_a_file_can_command_the_terminal() =>
        Assert.Equal("a\uFFFD[31mb\uFFFDc", TerminalText.Shown("a\e[31mb\u202Ec"));

    [Fact]
    public void A_long_line_is_cut_around_the_place() =>
        Gen.Select(Gen.Int[0, 400], Gen.Int[0, 400], Gen.OneOf("x", "蜂", "🐝", "\t")).Sample((before, after, letter) =>
        {
            var line = string.Concat(Enumerable.Repeat(letter, before)) + "HERE" + string.Concat(Enumerable.Repeat(letter, after));
            var excerpt = Excerpt.Of(Say.Place(new("book.yaml", line), "HERE"))!;
            var indent = excerpt.Marks.Length - 4;
            Assert.Equal("^^^^", excerpt.Marks[indent..]);
            Assert.Equal(indent, TerminalText.Columns(excerpt.Line.AsSpan(0, excerpt.Line.IndexOf("HERE", StringComparison.Ordinal))));
            Assert.InRange(TerminalText.Columns(excerpt.Line), 1, Excerpt.Widest + 2);
            Assert.DoesNotContain("\uFFFD", excerpt.Line, StringComparison.Ordinal);
        });

    [GeneratedRegex(@"\e\[[0-9;]{0,9}m", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Colour { get; }
}
