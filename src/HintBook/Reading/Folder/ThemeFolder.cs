using System.Collections.Immutable;
using HintBook.Text;

namespace HintBook.Reading.Folder;

/// <summary>Reads a theme that the author keeps in the book, under <c>themes/name/</c>.</summary>
internal static class ThemeFolder
{
    private const string Parts = "parts";

    /// <summary>Its files by their name in the theme, such as <c>parts/head.html</c>; null where the book has no theme of that name.</summary>
    /// <param name="folder">The book's folder.</param>
    /// <param name="theme">The theme's name.</param>
    /// <param name="findings">Where a file that can't be read is told.</param>
    public static ImmutableSortedDictionary<string, string>? Read(BookFolder folder, string theme, List<Finding> findings)
    {
        var root = $"themes/{theme}";
        if (folder.FilesIn(root, findings) is not { Count: > 0 } top)
            return null;
        var names = top.Where(name => name != Parts).Concat((folder.FilesIn($"{root}/{Parts}", findings) ?? []).Select(name => $"{Parts}/{name}"));
        var texts = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var name in names)
        {
            if (folder.ReadText($"{root}/{name}", findings) is { } file)
                texts.Add(name, file.Text.ReplaceLineEndings("\n"));
        }

        return texts.ToImmutable();
    }
}
