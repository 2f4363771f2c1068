namespace HintBook.Tests.Reading;

/// <summary>The steps of help in a stage's text.</summary>
public sealed class TiersTests : IDisposable
{
    private const string FrontMatter = "---\ntitle: t\nsign: s\ngives: [ honey ]\n---\n";

    private readonly BookOnDisk book = new();

    public void Dispose() => book.Dispose();

    [Theory]
    [InlineData("# Nudge\na\n# Clue\nb\n# Answer\nc\n", "")]
    [InlineData("# nudge\na\n# CLUE #\nb\n\nAnswer\n======\nc\n# Reset\nd\n", "")]
    [InlineData("# Nudge\na\n```\n# Not a heading\n```\n# Clue\n> # Nor this\n# Answer\nc\n## Nor that\n", "")]
    [InlineData("", "HB1302 HB1302 HB1302")]
    [InlineData("# Nudge\na\n# Answer\nc\n", "HB1302")]
    [InlineData("# Nudge\n\n# Clue\nb\n# Answer\nc\n", "HB1303")]
    [InlineData("# Nudge\na\n# Answer\nc\n# Clue\nb\n", "HB1304")]
    [InlineData("# Clue\nb\n# Nudge\n\n# Answer\nc\n", "HB1303 HB1304")]
    [InlineData("# Nudge\na\n# Clue\nb\n# Nudge\na\n# Answer\nc\n", "HB1305")]
    [InlineData("# Nudge\na\n# Hint\nb\n# Clue\nb\n# Answer\nc\n", "HB1306")]
    [InlineData("# Nudge\na\n#\nb\n# Clue\nb\n# Answer\nc\n", "HB1306")]
    [InlineData("Hello.\n# Nudge\na\n# Clue\nb\n# Answer\nc\n", "HB1307")]
    [InlineData("   \n\n# Nudge\na\n# Clue\nb\n# Answer\nc\n", "")]
    public void In_Markdown(string body, string codes)
    {
        book.With("stages/01-the-lid.md", FrontMatter + body);
        Assert.Equal(codes, string.Join(' ', book.Codes().Order(StringComparer.Ordinal)));
    }

    [Theory]
    [InlineData("nudge: a\nclue: b\nanswer: c\n", "")]
    [InlineData("nudge: a\nclue: b\n", "HB1302")]
    [InlineData("nudge:\nclue: b\nanswer: c\n", "HB1204")]
    [InlineData("nudge: ''\nclue: b\nanswer: c\n", "HB1203")]
    [InlineData("nudge: [ a ]\nclue: b\nanswer: c\n", "HB1203")]
    public void As_keys(string keys, string codes)
    {
        book.Without("stages/01-the-lid.md").With("stages/01-the-lid.yaml", $"title: t\nsign: s\ngives: [ honey ]\n{keys}");
        Assert.Equal(codes, string.Join(' ', book.Codes()));
    }

    [Fact]
    public void A_second_heading_points_to_the_first()
    {
        var finding = book.With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]") + "# Nudge\nagain\n").Only();
        Assert.Equal("Nudge", Assert.Single(finding.Related).At.Text);
        Assert.NotEqual(finding.At, finding.Related[0].At);
    }

    [Fact]
    public void Text_keeps_its_place_in_the_file()
    {
        var nudge = book.With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]").ReplaceLineEndings("\r\n")).Read().Book!.Stages[0].Nudge;
        Assert.Equal(("Look up.", nudge.Markdown), (nudge.At.Text, nudge.At.Text));
    }

    // CommonMark 0.31.2, section 4.6: a block of HTML of kind 2 begins with <!-- and ends with the line that has -->.
    [Theory]
    [InlineData("<!-- mine -->\nyours", "yours")]
    [InlineData("yours\n\n<!-- mine\n\n# Clue\nmine too\n-->", "yours")]
    [InlineData("one\n\n<!-- mine -->\n\ntwo", "one\n\n\n\ntwo")]
    [InlineData("yours <!-- shown -->", "yours <!-- shown -->")]
    [InlineData("<!-- shown --> yours", "<!-- shown --> yours")]
    [InlineData("```\n<!-- shown -->\n```", "```\n<!-- shown -->\n```")]
    public void A_remark_on_lines_of_its_own_is_the_makers_alone(string written, string read)
    {
        book.With("stages/01-the-lid.md", $"{FrontMatter}<!-- before it all -->\n# Nudge\n{written}\n# Clue\nb\n# Answer\nc\n");
        var nudge = book.Read().Book!.Stages[0].Nudge;

        Assert.Equal(nudge.At.Text.Length, nudge.Markdown.Length);
        Assert.Equal(read, string.Join('\n', nudge.Markdown.Split('\n').Select(line => line.TrimEnd())).Trim('\n'));
    }

    [Fact]
    public void A_step_that_is_only_a_remark_is_empty()
    {
        book.With("stages/01-the-lid.md", FrontMatter + "# Nudge\n<!-- mine -->\n# Clue\nb\n# Answer\nc\n");

        Assert.Equal("HB1303", book.Only().Code.Id);
    }

    [Fact]
    public void An_indented_first_line_stays_indented()
    {
        book.With("stages/01-the-lid.md", FrontMatter + "# Nudge\n\n    code\n# Clue\nb\n# Answer\nc\n");
        var nudge = book.Read().Book!.Stages[0].Nudge;
        Assert.Equal("    code", nudge.Markdown);
    }

    [Theory]
    [InlineData("- ", 10_000)]
    [InlineData("- ", 50_000)]
    [InlineData("> ", 1_000_000)]
    [InlineData(">", 1_000_000)]
    [InlineData("1. ", 1_000_000)]
    [InlineData("- > * ", 500_000)]
    public void Lists_within_lists_without_end_are_survived(string level, int levels)
    {
        book.With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]") + string.Concat(Enumerable.Repeat(level, levels)) + "x\n");
        var finding = book.Only();
        Assert.Equal(("HB1311", 14), (finding.Code.Id, finding.Place().Line));
    }

    [Theory]
    [InlineData("title: t\nsign: s\n", "doesn't start with its keys")]
    [InlineData("---\ntitle: t\nsign: s\n# Nudge\na\n", "have no end")]
    public void A_file_without_its_keys(string text, string said)
    {
        var finding = Assert.Single(book.With("stages/02-two.md", text).Findings().All);
        Assert.Equal("HB1301", finding.Code.Id);
        Assert.Contains(said, finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("from: 3:00\n  to: 2:59")]
    [InlineData("from: 180\n  to: 3:00")]
    [InlineData("from: 1:00:00\n  to: 59:59.999")]
    public void A_clip_that_runs_backwards_is_pointed_at_its_end(string times)
    {
        var finding = book.With("clips/a.mp4", "").With("stages/01-the-lid.md", BookOnDisk.Stage($"gives: [ honey ]\nclip:\n  file: a.mp4\n  {times}")).Only();
        Assert.Equal(("HB1313", 8, 7), (finding.Code.Id, finding.Place().Line, finding.Place().Column));
    }
}
