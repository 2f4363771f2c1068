using System.Text.Encodings.Web;
using System.Text.Json;

namespace HintBook.Pages;

/// <summary>
/// The file from which each page learns all that comes before its step. A page that named all of it would grow with the book, and the site with the
/// square of its stages. What a sealed page knows of the way is sealed with it: its book has no such file.
/// </summary>
internal static class WayBefore
{
    /// <summary>
    /// The script: in page names, which say nothing, each step with those right before it, in the author's order. Null where the theme has
    /// none, where the book is sealed, and where no step comes before another.
    /// </summary>
    public static ThemeAsset? Of(SitePlan plan, Theme theme, StageOrder order)
    {
        if (theme.Way is not { } script || plan.Seal is not null)
            return null;
        var right = Enumerable.Range(0, order.Count).Select(order.RightBefore).ToArray();
        if (right.All(each => each.IsEmpty))
            return null;
        var lines = right.Select((before, stage) => $"\n  \"{string.Join(' ', before.Prepend(stage).Select(NameOf).OfType<string>())}\"");
        return ThemeAsset.Of(Theme.WayFile, $"const way = [{string.Join(',', lines)}\n];\n\n{script}");

        string? NameOf(int stage) => plan.Addresses.Names.TryGetValue(order[stage], out var names)
            ? JsonEncodedText.Encode(names[0], JavaScriptEncoder.Default).Value
            : null;
    }
}
