using System.Text;

namespace HintBook.Maps;

/// <summary>Writes a map in DOT, the language of Graphviz (its grammar: "The DOT Language" in Graphviz's documentation).</summary>
public static class DotMap
{
    /// <summary>The graph as a DOT text, with lines ended by <c>\n</c>. The same map gives the same text.</summary>
    /// <param name="map">What to write.</param>
    /// <param name="spoilerFree">Numbers and arrows only, every stage in the same shape.</param>
    public static string Write(StageMap map, bool spoilerFree = false)
    {
        var dot = new StringBuilder("digraph stages {\n");
        if (!spoilerFree)
            dot.Append($"  graph [label={Quoted([Wrapping.Clean(map.Title)])}, labelloc=t, fontname=\"sans-serif\"];\n");
        dot.Append("  node [shape=box, style=rounded, fontname=\"sans-serif\"];\n");
        foreach (var stage in map.Nodes)
        {
            var label = Label.Of(stage, spoilerFree);
            dot.Append(spoilerFree
                ? $"  s{stage.Number} [label={Quoted([label.Number])}];\n"
                : $"  s{stage.Number} [label={Quoted([$"{label.Number}  {label.Lines[0]}", .. label.Lines.Skip(1)])}{Look(stage.Kind)}];\n");
        }

        foreach (var edge in map.Edges)
            dot.Append($"  s{edge.From} -> s{edge.To}{(edge.OneOfSeveral ? " [style=dashed]" : "")};\n");
        return dot.Append("}\n").ToString();
    }

    private static string Look(StageKind kind) => kind switch
    {
        StageKind.Optional => ", style=\"rounded,dashed\"",
        StageKind.RedHerring => ", shape=octagon, style=solid",
        StageKind.Unreachable => ", style=dotted",
        StageKind.Goal => ", peripheries=2",
        _ => "",
    };

    // In a quoted label the quote ends it, the backslash begins an escape, and the ampersand begins an HTML entity.
    private static string Quoted(IEnumerable<string> lines) =>
        $"\"{string.Join("\\n", lines.Select(line => line.Replace("\\", "\\\\").Replace("\"", "\\\"").Replace("&", "&amp;")))}\"";
}
