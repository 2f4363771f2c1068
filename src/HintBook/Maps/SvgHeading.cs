using System.Collections.Immutable;
using System.Xml;

namespace HintBook.Maps;

/// <summary>The box's title and below it the legend, which explains what the map shows and nothing else.</summary>
internal sealed record SvgHeading(Extent Size, ImmutableArray<string> Title, ImmutableArray<(LegendEntry Entry, Point At)> Legend)
{
    private const double TitleSize = 20;
    private const double TitleLine = 26;
    private const double Row = 36;
    private const double Sample = 44;
    private const double Gap = 26;

    public static SvgHeading None { get; } = new(new(0, 0), [], []);

    public static SvgHeading Layout(StageMap map, MapWords words, double width)
    {
        var title = Wrapping.Lines(map.Title, width, text => Lettering.Width(text, TitleSize, bold: true));
        var legend = ImmutableArray.CreateBuilder<(LegendEntry Entry, Point At)>();
        var (left, top) = (0.0, (title.Length * TitleLine) + 12);
        foreach (var entry in LegendEntry.Used(map, words))
        {
            var wide = Sample + 8 + Lettering.Width(entry.Text, Label.FontSize);
            if (left > 0 && left + wide > width)
                (left, top) = (0, top + Row);
            legend.Add((entry, new(left, top)));
            left += wide + Gap;
        }

        return new(new(width, top + Row + 24), title, legend.ToImmutable());
    }

    public void Write(XmlWriter xml, double left, double top)
    {
        for (var line = 0; line < Title.Length; line++)
        {
            xml.Element(
                "text", Title[line], ("x", left), ("y", top + (line * TitleLine) + TitleSize), ("font-size", TitleSize), ("font-weight", "bold"));
        }

        foreach (var (entry, at) in Legend)
        {
            var (x, y) = (left + at.X, top + at.Y);
            if (entry.Kind is { } kind)
                SvgBox.Shape(xml, new(x, y + 2, Sample, 22), kind);
            else
                SvgArrow.Write(xml, SvgArrow.Path(new([new(x + 22, y), new(x + 22, y + 26)])), entry.OneOfSeveral);
            xml.Element("text", entry.Text, ("x", x + Sample + 8), ("y", y + 18));
        }
    }
}

/// <summary>One line of the legend: a kind of stage, or, without one, a kind of arrow.</summary>
internal sealed record LegendEntry(StageKind? Kind, bool OneOfSeveral, string Text)
{
    /// <summary>The entries for what a map shows.</summary>
    public static IEnumerable<LegendEntry> Used(StageMap map, MapWords words) => All(words).Where(entry => entry.Kind is { } kind
        ? map.Nodes.Any(stage => stage.Kind == kind)
        : map.Edges.Any(edge => edge.OneOfSeveral == entry.OneOfSeveral));

    private static LegendEntry[] All(MapWords words) =>
    [
        new(StageKind.Ordinary, false, words.Stage),
        new(StageKind.Goal, false, words.Goal),
        new(StageKind.Optional, false, words.Optional),
        new(StageKind.RedHerring, false, words.RedHerring),
        new(StageKind.Unreachable, false, words.Unreachable),
        new(null, false, words.Needed),
        new(null, true, words.OneEnough),
    ];
}
