using System.Text;
using HintBook.Text;

namespace HintBook.Maps;

/// <summary>The map in words, for those who don't see it. Numbers and our own words only: nothing that the author wrote, titles aside.</summary>
internal static class Description
{
    public static string Title(StageMap map, bool spoilerFree) => spoilerFree
        ? $"Map of {Words.Count(map.Nodes.Length, "stage")}"
        : $"Map of {Wrapping.Clean(map.Title)}, {Words.Count(map.Nodes.Length, "stage")}";

    /// <summary>Which stages open which, by number.</summary>
    public static string Of(StageMap map)
    {
        var before = map.Edges.ToLookup(edge => edge.To);
        var text = new StringBuilder("Each box is a stage; arrows lead from a stage to those that it opens.");
        if (map.Edges.Any(edge => edge.OneOfSeveral))
            text.Append(" Broken arrows: one of them is enough.");
        var first = map.Nodes.Where(stage => !before.Contains(stage.Number)).Select(stage => $"{stage.Number}").ToArray();
        text.Append($" Open from the start: {Words.List(first)}.");
        foreach (var stage in map.Nodes.Where(stage => before.Contains(stage.Number)))
        {
            var all = before[stage.Number].Where(edge => !edge.OneOfSeveral).Select(edge => $"{edge.From}").ToArray();
            var some = before[stage.Number].Where(edge => edge.OneOfSeveral).Select(edge => $"{edge.From}").ToArray();
            string[] needs = [.. all, .. some.Length > 0 ? [$"one of {Words.List(some, "or")}"] : Array.Empty<string>()];
            text.Append($" {stage.Number} after {Words.List(needs)}.");
        }

        return text.ToString();
    }
}
