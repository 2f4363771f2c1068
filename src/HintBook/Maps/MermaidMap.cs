using System.Text;

namespace HintBook.Maps;

/// <summary>Writes a map as a flowchart in Mermaid's language.</summary>
public static class MermaidMap
{
    /// <summary>The graph as a Mermaid text, with lines ended by <c>\n</c>. The same map gives the same text.</summary>
    /// <param name="map">What to write.</param>
    /// <param name="spoilerFree">Numbers and arrows only, every stage in the same shape.</param>
    public static string Write(StageMap map, bool spoilerFree = false)
    {
        var mermaid = new StringBuilder("flowchart TB\n");
        foreach (var stage in map.Nodes)
        {
            var (open, close) = spoilerFree ? ("(", ")") : Brackets(stage.Kind);
            var text = spoilerFree ? $"{stage.Number}" : $"{stage.Number}  {Escaped(Wrapping.Clean(stage.Title))}";
            mermaid.Append($"  s{stage.Number}{open}\"{text}\"{close}\n");
        }

        foreach (var edge in map.Edges)
            mermaid.Append($"  s{edge.From} {(edge.OneOfSeveral ? "-.->" : "-->")} s{edge.To}\n");
        return mermaid.ToString();
    }

    private static (string Open, string Close) Brackets(StageKind kind) => kind switch
    {
        StageKind.Optional => ("([", "])"),
        StageKind.RedHerring => ("{{", "}}"),
        StageKind.Unreachable => ("[/", "/]"),
        StageKind.Goal => ("[[", "]]"),
        _ => ("(", ")"),
    };

    // Mermaid reads quotes, Markdown and HTML inside a label; "#" and a decimal number stand for any character.
    private static string Escaped(string text) => string.Concat(text.EnumerateRunes().Select(rune =>
        !rune.IsAscii || Rune.IsLetterOrDigit(rune) || rune.Value is ' ' or ',' or '.' or '\'' or '!' or '?' or '-'
            ? rune.ToString()
            : $"#{rune.Value};"));
}
