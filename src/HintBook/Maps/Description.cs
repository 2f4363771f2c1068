namespace HintBook.Maps;

/// <summary>The map in words, for those who don't see it. Numbers and the theme's words only: nothing that the author wrote, the title aside.</summary>
internal static class Description
{
    public static string Title(StageMap map, MapWords words, bool spoilerFree) =>
        spoilerFree ? words.TitleOfNumbers : words.TitleOf(Wrapping.Clean(map.Title));

    /// <summary>Which stages open which, by number.</summary>
    public static string Write(StageMap map, MapWords words) => string.Join(' ', Sentences(map, words));

    private static IEnumerable<string> Sentences(StageMap map, MapWords words)
    {
        var before = map.Edges.ToLookup(edge => edge.To);
        yield return words.About;
        if (map.Edges.Any(edge => edge.OneOfSeveral))
            yield return words.AboutBroken;
        var first = map.Nodes.Where(stage => !before.Contains(stage.Number)).Select(stage => $"{stage.Number}").ToArray();
        if (first.Length > 0)
            yield return words.FirstAre(first);
        foreach (var stage in map.Nodes.Where(stage => before.Contains(stage.Number)))
        {
            var all = before[stage.Number].Where(edge => !edge.OneOfSeveral).Select(edge => $"{edge.From}");
            var some = before[stage.Number].Where(edge => edge.OneOfSeveral).Select(edge => $"{edge.From}");
            yield return words.Opens(stage.Number, all, [.. some]);
        }
    }
}
