using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using HintBook.Maps;
using static HintBook.Tests.Maps.MapBooks;

namespace HintBook.Tests.Maps;

/// <summary>
/// The part of Mermaid's flowchart grammar that a map uses, from memory of its documentation: node shapes, quoted text with
/// entity codes, and two kinds of arrows.
/// </summary>
public partial class MermaidMapTests
{
    [Fact]
    public void A_map_is_one_line_a_stage_and_one_line_an_arrow() =>
        Assert.Equal(
            """
            flowchart TB
              s1("1  The roof")
              s2[["2  The #34;jar#34;"]]
              s1 --> s2
              s2 -.-> s1

            """,
            MermaidMap.Write(new(
                "Box", [new(1, "The roof", StageKind.Ordinary), new(2, "The \"jar\"", StageKind.Goal)], [new(1, 2, false), new(2, 1, true)])));

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Every_line_is_a_stage_or_an_arrow(bool spoilerFree)
    {
        var lines = MermaidMap.Write(Awkward, spoilerFree).TrimEnd('\n').Split('\n');
        Assert.Equal("flowchart TB", lines[0]);
        Assert.All(lines[1..7], line => Assert.Matches(StageLine, line));
        Assert.All(lines[7..], line => Assert.Matches(ArrowLine, line));
        Assert.Equal(Awkward.Edges.Length, lines.Length - 7);
    }

    [Fact]
    public void Titles_come_back_from_their_entity_codes() =>
        Assert.Equal(
            Awkward.Nodes.Select(stage => $"{stage.Number}  {stage.Title.ReplaceLineEndings(" ")}"),
            MermaidMap.Write(Awkward).Split('\n')[1..7].Select(line => Code.Replace(
                StageLine.Match(line).Groups["text"].Value,
                code => new Rune(int.Parse(code.Groups["number"].Value, CultureInfo.InvariantCulture)).ToString())));

    [Fact]
    public void The_spoiler_free_form_has_none_of_the_words() =>
        Assert.All(AwkwardWords, word => Assert.DoesNotContain(word, MermaidMap.Write(Awkward, spoilerFree: true), StringComparison.OrdinalIgnoreCase));

    [GeneratedRegex(
        """^  s[0-9]{1,9}(?<open>\(\[|\(|\{\{|\[/|\[\[)"(?<text>([^"`<>&*_\[\]{}()|\\#;]|#[0-9]{1,9};){1,999})"(\]\)|\)|\}\}|/\]|\]\])$""",
        RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex StageLine { get; }

    [GeneratedRegex("^  s[0-9]{1,9} (-->|-\\.->) s[0-9]{1,9}$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex ArrowLine { get; }

    [GeneratedRegex("#(?<number>[0-9]{1,9});", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Code { get; }
}
