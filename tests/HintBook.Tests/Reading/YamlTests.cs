using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Tests.Reading;

/// <summary>YAML that can't be read, or that could be but must not: each is one finding at the right line.</summary>
public sealed class YamlTests : IDisposable
{
    private readonly BookOnDisk book = new();

    public void Dispose() => book.Dispose();

    [Theory]
    [InlineData("title: x\na: [x\nb: 1\n", "HB1101", 2)]
    [InlineData("title: x\na: { x: 1\nb: 1\n", "HB1101", 2)]
    [InlineData("title: \"x\ngoal: [ a ]\n", "HB1101", 1)]
    [InlineData("title: x\nnote: one: two\n", "HB1101", 2)]
    [InlineData("title: x\n goal: y\n", "HB1101", 2)]
    [InlineData("title: x\ngoal: y ]\n]\n", "HB1101", 3)]
    [InlineData("title: x\nparts:\n\troof: {}\n", "HB1102", 3)]
    [InlineData("title: x\nparts:\n  roof:\n\t positions: [ a ]\n", "HB1102", 4)]
    [InlineData("title: &t x\ngoal: [ *t ]\n", "HB1103", 2)]
    [InlineData("title: x\ngoal: &a [ *a ]\n", "HB1103", 2)]
    [InlineData("title: x\ngoal: [ a ]\ntitle: y\n", "HB1105", 3)]
    [InlineData("title: x\ngoal: [ a ]\n[ b ]: c\n", "HB1106", 3)]
    [InlineData("title: x\ngoal: [ a ]\n---\ntitle: y\n", "HB1107", 3)]
    public void A_mistake_is_said_with_its_line(string yaml, string code, int line)
    {
        var finding = Assert.Single(book.With("book.yaml", yaml).Findings().All, finding => finding.Code.Id.StartsWith("HB11", StringComparison.Ordinal));
        Assert.Equal((code, line), (finding.Code.Id, finding.Place().Line));
    }

    [Theory]
    [InlineData("[ a, [ b ] ]", "[ b ]")]
    [InlineData("[ { a: [ b ] } ]", "{ a: [ b ] }")]
    [InlineData("[ [] ]", "[]")]
    public void What_stands_in_brackets_ends_with_the_closing_one(string list, string last)
    {
        var map = Assert.IsType<YamlMap>(YamlFile.Read(new SourceFile("book.yaml", $"goal: {list} # a remark ]\n").Whole, []));
        var read = Assert.IsType<YamlList>(map.Entries[0].Value);
        Assert.Equal((list, last), (read.At.Text, read.Items[^1].At.Text));
    }

    [Fact]
    public void A_tab_far_away_is_not_blamed_for_another_mistake()
    {
        var finding = book.With("book.yaml", BookOnDisk.Keys + "welcome: |\n  a\n  \tb\n  c\n  d\ncare: one: two\n").Only();
        Assert.Equal(("HB1101", 10), (finding.Code.Id, finding.Place().Line));
    }

    [Fact]
    public void An_alias_bomb_is_refused_at_its_first_alias()
    {
        var bomb = "a0: &a0 [ x, x ]\n" + string.Concat(Enumerable.Range(1, 40).Select(i => $"a{i}: &a{i} [ *a{i - 1}, *a{i - 1} ]\n"));
        var findings = book.With("book.yaml", bomb).Findings().All;
        Assert.Equal(2, findings.First(finding => finding.Code.Id == "HB1103").Place().Line);
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{ a: ")]
    public void Thirty_thousand_levels_are_refused(string level) =>
        Assert.Equal(["HB1104"], book.With("book.yaml", "goal: " + string.Concat(Enumerable.Repeat(level, 30_000))).Codes());

    [Fact]
    public void Two_million_levels_are_refused_at_the_sixty_fifth()
    {
        var finding = book.With("book.yaml", "title: x\ngoal: " + new string('[', 2_000_000) + new string(']', 2_000_000) + "\n").Only();
        Assert.Equal(("HB1104", 2, 7 + 63), (finding.Code.Id, finding.Place().Line, finding.Place().Column));
    }

    [Fact]
    public void Ten_thousand_nested_lists_of_dashes_are_refused() =>
        Assert.Equal(["HB1104"], book.With("book.yaml", "title: x\ngoal:\n  " + string.Concat(Enumerable.Repeat("- ", 10_000)) + "x\n").Codes());

    [Fact]
    public void Sixty_levels_are_read() =>
        Assert.DoesNotContain("HB1104", book.With("book.yaml", "title: x\ngoal: " + new string('[', 60) + new string(']', 60) + "\n").Codes());

    [Theory]
    [InlineData("just words\n")]
    [InlineData("- a\n- b\n")]
    [InlineData("42\n")]
    public void A_book_that_isn_t_keys(string yaml) => Assert.Equal("HB1203", book.With("book.yaml", yaml).Only().Code.Id);

    [Theory]
    [InlineData("title:")]
    [InlineData("title: ~")]
    [InlineData("title: null")]
    public void A_key_without_a_value(string line) =>
        Assert.Equal("HB1204", book.With("book.yaml", BookOnDisk.Keys.Replace("title: The Tea Caddy", line, StringComparison.Ordinal)).Only().Code.Id);

    [Theory]
    [InlineData("minutes: 1e300")]
    [InlineData("minutes: -1e300")]
    [InlineData("minutes: NaN")]
    [InlineData("minutes: .inf")]
    [InlineData("minutes: 99999999999999999999")]
    [InlineData("minutes: 0")]
    [InlineData("minutes: 2.5")]
    [InlineData("minutes: \"15\"")]
    public void Numbers_out_of_bounds_are_said_and_do_no_harm(string line)
    {
        var finding = book.With("stages/01-the-lid.md", BookOnDisk.Stage($"gives: [ honey ]\n{line}")).Only();
        Assert.Equal(("HB1203", 5), (finding.Code.Id, finding.Place().Line));
    }

    [Fact]
    public void Lines_that_end_as_on_Windows_give_the_same_places()
    {
        var bad = "---\ntitle: The lid\nsing: x\nsign: x\ngives: [ honey ]\n---\n# Nudge\na\n# Clew\nb\n# Answer\nc\n";
        var unix = Places(bad);
        var windows = Places(bad.ReplaceLineEndings("\r\n"));
        Assert.Equal(unix, windows);
        Assert.Equal([("HB1201", 3, 1), ("HB1306", 9, 3)], unix);
    }

    private (string Code, int Line, int Column)[] Places(string stage) =>
    [
        .. from finding in book.With("stages/01-the-lid.md", stage).Findings().All
           let place = finding.Place()
           select (finding.Code.Id, place.Line, place.Column),
    ];
}
