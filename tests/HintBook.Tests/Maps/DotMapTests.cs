using System.Diagnostics;
using System.Text;
using System.Xml;
using System.Xml.Linq;
using HintBook.Maps;
using HintBook.Tests.House;
using static HintBook.Tests.Maps.MapBooks;

namespace HintBook.Tests.Maps;

/// <summary>Read by Graphviz itself (Debian's package graphviz).</summary>
public class DotMapTests
{
    [Fact]
    public void A_map_is_one_line_a_stage_and_one_line_an_arrow() =>
        Assert.Equal(
            """
            digraph stages {
              graph [label="Box", labelloc=t, fontname="sans-serif"];
              node [shape=box, style=rounded, fontname="sans-serif"];
              s1 [label="1  The roof"];
              s2 [label="2  The \"jar\" &amp; more", peripheries=2];
              s1 -> s2 [style=dashed];
            }

            """,
            DotMap.Write(new("Box", [new(1, "The roof", StageKind.Ordinary), new(2, "The \"jar\" & more", StageKind.Goal)], [new(1, 2, true)])));

    [Fact]
    public void The_spoiler_free_form_has_none_of_the_words() =>
        Assert.All(AwkwardWords, word => Assert.DoesNotContain(word, DotMap.Write(Awkward, spoilerFree: true), StringComparison.OrdinalIgnoreCase));

    [Fact]
    public void Graphviz_finds_every_stage_and_every_arrow()
    {
        var lines = Dot("plain", DotMap.Write(Awkward)).Split('\n');
        Assert.Equal(6, lines.Count(line => line.StartsWith("node ", StringComparison.Ordinal)));
        Assert.Equal(
            Awkward.Edges.Select(edge => $"s{edge.From} s{edge.To}").Order(),
            lines.Where(line => line.StartsWith("edge ", StringComparison.Ordinal)).Select(line => string.Join(' ', line.Split(' ')[1..3])).Order());
    }

    [Fact]
    public void Graphviz_shows_every_title_as_the_author_wrote_it()
    {
        using var reader = XmlReader.Create(new StringReader(Dot("svg", DotMap.Write(Awkward))), new() { DtdProcessing = DtdProcessing.Ignore });
        var shown = XDocument.Load(reader).Descendants().Where(e => e.Name.LocalName == "g" && e.Attribute("class")?.Value == "node")
            .Select(node => string.Join(' ', node.Elements().Where(e => e.Name.LocalName == "text").Select(e => e.Value.Replace('\u00A0', ' ').TrimEnd())));
        Assert.Equal(Awkward.Nodes.Select(stage => $"{stage.Number}  {stage.Title.ReplaceLineEndings(" ")}").Order(), shown.Order());
    }

    private static string Dot(string format, string text)
    {
        DebianProgram.Have("dot", "graphviz");
        using var dot = Process.Start(new ProcessStartInfo("dot", ["-T" + format])
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            StandardInputEncoding = new UTF8Encoding(false),
            StandardOutputEncoding = Encoding.UTF8,
        })!;
        dot.StandardInput.Write(text);
        dot.StandardInput.Close();
        var output = dot.StandardOutput.ReadToEnd();
        dot.WaitForExit();
        Assert.Equal(0, dot.ExitCode);
        return output;
    }
}
