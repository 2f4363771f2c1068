using System.Collections.Immutable;

namespace HintBook.Cli;

/// <summary>The maker's guide: pages in Markdown, each with a whole small book in it.</summary>
internal static class Guide
{
    private const string Prefix = "guide/";

    /// <summary>The pages by name, in the order of the alphabet.</summary>
    public static ImmutableSortedDictionary<string, string> Pages { get; } = typeof(Guide).Assembly.GetManifestResourceNames()
        .Where(name => name.StartsWith(Prefix, StringComparison.Ordinal))
        .ToImmutableSortedDictionary(name => name[Prefix.Length..], Read, StringComparer.Ordinal);

    /// <summary>The names of the chapters, in reading order: they begin with their numbers.</summary>
    public static ImmutableArray<string> Chapters { get; } = [.. Pages.Keys.Where(name => char.IsAsciiDigit(name[0]))];

    /// <summary>The page that is asked for by its name or, a chapter, by its number; null if there is none.</summary>
    public static string? Of(string asked) =>
        Pages.GetValueOrDefault(asked)
        ?? (Chapters.FirstOrDefault(name => name.Split('-')[0].TrimStart('0') == asked.TrimStart('0')) is { } chapter ? Pages[chapter] : null);

    /// <summary>A page's title: its first line.</summary>
    public static string TitleOf(string page) => page[..page.IndexOf('\n', StringComparison.Ordinal)].TrimStart('#', ' ');

    /// <summary>The text of an embedded file.</summary>
    public static string Read(string name)
    {
        using var reader = new StreamReader(typeof(Guide).Assembly.GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }
}
