using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>Small values as templates get them. Built by hand: importing objects by reflection costs more than rendering them.</summary>
internal static class View
{
    public static ScriptObject Of(params ReadOnlySpan<(string Name, object? Value)> fields)
    {
        var view = new ScriptObject(fields.Length + 4);
        foreach (var (name, value) in fields)
            view[name] = value;
        return view;
    }

    /// <summary>Every sentence by its key.</summary>
    public static ScriptObject Words(ThemeWords words) => Of([.. words.Entries.Select(word => (word.Key, (object?)word.Value))]);

    /// <summary>The address of every file that goes along with the pages, by its name in the theme.</summary>
    /// <param name="theme">The theme.</param>
    /// <param name="root">The way from a page to the site's own folder.</param>
    public static ScriptObject Assets(Theme theme, string root) => Of([.. theme.Assets.Select(asset => (asset.Key, (object?)(root + asset.Value.Path)))]);

    public static ScriptArray List(IEnumerable<object?> items) => [.. items];
}
