using System.Collections.Immutable;
using System.Reflection;
using System.Text;

namespace HintBook.Pages;

/// <summary>The themes that come with the tool. What they have in common stands once, in a folder of its own.</summary>
internal static class BuiltInThemes
{
    private const string Folder = "themes/";
    private const string Shared = "shared";

    private static readonly Lazy<ImmutableSortedDictionary<string, ImmutableSortedDictionary<string, string>>> All = new(Read);

    /// <summary>The files of each theme by name, each theme whole: what it shares with the others, and its own instead or beside.</summary>
    public static ImmutableSortedDictionary<string, ImmutableSortedDictionary<string, string>> Texts => All.Value;

    private static ImmutableSortedDictionary<string, ImmutableSortedDictionary<string, string>> Read()
    {
        var assembly = typeof(BuiltInThemes).Assembly;
        var folders = assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
            .Select(name => name[Folder.Length..].Split('/', 2))
            .Where(path => path.Length == 2)
            .GroupBy(path => path[0], path => path[1], StringComparer.Ordinal)
            .ToDictionary(
                folder => folder.Key,
                folder => folder.ToImmutableSortedDictionary(file => file, file => Text(assembly, $"{Folder}{folder.Key}/{file}"), StringComparer.Ordinal));
        return folders
            .Where(folder => folder.Key != Shared)
            .ToImmutableSortedDictionary(folder => folder.Key, folder => folders[Shared].SetItems(folder.Value), StringComparer.Ordinal);
    }

    private static string Text(Assembly assembly, string name)
    {
        using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
