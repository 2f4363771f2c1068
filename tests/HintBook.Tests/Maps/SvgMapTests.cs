using System.Globalization;
using System.Xml.Linq;
using HintBook.Maps;
using HintBook.Pages;
using static HintBook.Tests.Maps.MapBooks;

namespace HintBook.Tests.Maps;

public class SvgMapTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static readonly string[] Placeholders = ["{book}", "{stage}", "{stages}"];

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_picture_is_well_formed_and_asks_for_nothing(bool spoilerFree)
    {
        var text = SvgMap.Write(Awkward, English, spoilerFree);
        var svg = XDocument.Parse(text).Root!;
        Assert.Equal(Svg + "svg", svg.Name);
        string[] drawn = ["svg", "title", "desc", "defs", "marker", "path", "rect", "g", "text"];
        Assert.All(svg.DescendantsAndSelf(), element => Assert.Contains(element.Name.LocalName, drawn));
        Assert.DoesNotContain(
            svg.DescendantsAndSelf().Attributes(),
            attribute => attribute.Name.LocalName is "href" or "style" || attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        Assert.DoesNotContain("\r", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" \n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Screen_readers_get_a_name_and_the_map_in_words()
    {
        var svg = XDocument.Parse(SvgMap.Write(Awkward, English)).Root!;
        Assert.Equal("img", svg.Attribute("role")!.Value);
        var named = svg.Attribute("aria-labelledby")!.Value.Split(' ');
        Assert.Equal(named, svg.Elements().Take(2).Select(e => e.Attribute("id")!.Value));
        Assert.Equal(
            "Each box is a stage; arrows lead from a stage to those that it opens. Broken arrows: one of them is enough. "
            + "Open from the start: 1. 2 after 1. 3 after 1. 4 after 4. 5 after one of 2 or 3. 6 after 5.",
            svg.Element(Svg + "desc")!.Value);
    }

    [Fact]
    public void Every_stage_stands_there_once_with_its_number_and_title()
    {
        var boxes = Boxes(SvgMap.Write(Awkward, English));
        Assert.Equal(Awkward.Nodes.Select(stage => $"{stage.Number}"), boxes.Select(box => box.Elements(Svg + "text").First().Value));
        Assert.Equal(
            Awkward.Nodes.Select(stage => stage.Title.ReplaceLineEndings(" ")),
            boxes.Select(box => string.Join(' ', box.Elements(Svg + "text").Skip(1).Select(line => line.Value))));
    }

    [Fact]
    public void Kinds_differ_in_shape_and_not_in_colour_alone()
    {
        var shapes = Boxes(SvgMap.Write(Awkward, English)).Take(5).Select(box => string.Join(' ', box.Elements()
            .Where(shape => shape.Name.LocalName is "rect" or "path")
            .Select(shape => $"{shape.Name.LocalName} {shape.Attribute("rx")?.Value} {shape.Attribute("stroke-dasharray")?.Value}")));
        Assert.Equal(5, shapes.Distinct().Count());
    }

    [Fact]
    public void The_legend_explains_what_is_met_and_nothing_else()
    {
        var plain = new StageMap("Box", [new(1, "a", StageKind.Ordinary), new(2, "b", StageKind.Ordinary)], [new(1, 2, false)]);
        Assert.Equal(["Box", "stage", "needed first"], Heading(SvgMap.Write(plain, English)));
        Assert.Equal(
            ["stage", "goal", "optional", "red herring", "can’t be reached", "needed first", "one of these is enough"],
            Heading(SvgMap.Write(Awkward, English)).TakeLast(7));
    }

    [Fact]
    public void The_words_are_those_of_the_theme()
    {
        var entries = Theme.BuiltIn(Theme.Default).Theme.Words["en"].Entries
            .Where(word => word.Key.StartsWith("map_", StringComparison.Ordinal) || word.Key is "list_comma" or "list_and" or "list_or").ToArray();
        var marked = entries.ToDictionary(word => word.Key, word => $"[{word.Key}] {string.Join(' ', Placeholders.Where(word.Value.Contains))}");
        var joined = Awkward with { Edges = [new(1, 6, false), new(2, 6, false), new(3, 6, false)] };
        var text = SvgMap.Write(Awkward, MapWords.Of(marked)) + SvgMap.Write(joined, MapWords.Of(marked), spoilerFree: true);
        Assert.All(marked.Keys, key => Assert.Contains($"[{key}]", text, StringComparison.Ordinal));
        Assert.All(Placeholders, name => Assert.DoesNotContain(name, text, StringComparison.Ordinal));
    }

    [Fact]
    public void The_spoiler_free_form_shows_numbers_alone()
    {
        var text = SvgMap.Write(Awkward, English, spoilerFree: true);
        var svg = XDocument.Parse(text).Root!;
        Assert.Equal(Enumerable.Range(1, 6), svg.Descendants(Svg + "text").Select(e => int.Parse(e.Value, CultureInfo.InvariantCulture)).Order());
        Assert.All(AwkwardWords, word => Assert.DoesNotContain(word, text, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void The_spoiler_free_form_depends_on_the_numbers_and_arrows_alone()
    {
        var other = Awkward with { Title = "x", Nodes = [.. Awkward.Nodes.Select(stage => stage with { Title = "y", Kind = StageKind.Ordinary })] };
        Assert.Equal(SvgMap.Write(other, English, spoilerFree: true), SvgMap.Write(Awkward, English, spoilerFree: true));
    }

    [Fact]
    public void A_book_without_stages_is_still_a_picture() =>
        Assert.Equal(Svg + "svg", XDocument.Parse(SvgMap.Write(new("Box", [], []), English)).Root!.Name);

    [Fact]
    public void Two_thousand_stages_are_drawn_with_every_arrow()
    {
        var map = new StageMap(
            "Box",
            [.. Enumerable.Range(1, 2000).Select(i => new StageNode(i, $"Stage {i}", StageKind.Ordinary))],
            [.. Enumerable.Range(2, 1999).SelectMany(i => new[] { i / 2, Math.Max(1, i - 7) }.Distinct().Select(from => new StageEdge(from, i, false)))]);
        var svg = XDocument.Parse(SvgMap.Write(map, English)).Root!;
        var arrowsOfTheLegend = 1;
        Assert.Equal(map.Edges.Length + arrowsOfTheLegend, svg.Descendants(Svg + "path").Count(path => path.Attribute("marker-end") is not null));
        Assert.Equal(2000, Boxes(svg.ToString()).Length);
    }

    private static XElement[] Boxes(string svg) =>
        [.. XDocument.Parse(svg).Root!.Elements(Svg + "g").Where(group => group.Elements(Svg + "text").Any())];

    private static IEnumerable<string> Heading(string svg) => XDocument.Parse(svg).Root!.Elements(Svg + "text").Select(text => text.Value);
}
