using System.Collections.Immutable;
using HintBook.Text;

namespace HintBook.Cli;

/// <summary>
/// The guide's page for each code that a finding can have: what it means, a book that has it, and the book mended. A page's file is
/// named after its code; its books are changes to one small book, which all pages share.
/// </summary>
internal static class FindingPages
{
    /// <summary>The name under which the guide prints the shared book.</summary>
    public const string SharedBookName = "the-tea-caddy";

    private const string Prefix = "finding/";
    private const string StartPrefix = "start/";

    /// <summary>The codes that have a page, in order.</summary>
    public static ImmutableArray<string> Codes { get; } = [.. ResourcesUnder(Prefix).Select(name => name[Prefix.Length..])];

    /// <summary>The shared book's files by their paths inside the book, with forward slashes.</summary>
    public static ImmutableSortedDictionary<string, string> Start => ResourcesUnder(StartPrefix)
        .ToImmutableSortedDictionary(name => name[StartPrefix.Length..].Replace('\\', '/'), Guide.Read, StringComparer.Ordinal);

    /// <summary>The shared book as a page of the guide.</summary>
    public static string SharedBook =>
        "# The Tea Caddy\n\nA good book of three stages. The pages about findings show only the files that they change in it.\n"
        + string.Concat(Start.Select(file => $"\n```{FenceLanguage(file.Key)} {file.Key}\n{file.Value}```\n"));

    /// <summary>A page as it is written, or null if the code has none.</summary>
    public static string? Of(string code) => Codes.Contains(code) ? Guide.Read(Prefix + code) : null;

    /// <summary>A page with what the finding weighs under its title, or null if the code has none.</summary>
    public static string? Shown(FindingCode code)
    {
        if (Of(code.Id) is not { } page)
            return null;
        var endOfTitle = page.IndexOf('\n', StringComparison.Ordinal);
        return $"{page[..endOfTitle]}\n\n{code.Id} is {Weight(code.Severity)}{page[endOfTitle..]}"
            + $"\nThe rest of the book: `hintbook guide {SharedBookName}`.\n";
    }

    private static string FenceLanguage(string file) => file.EndsWith(".yaml", StringComparison.Ordinal) ? "yaml" : "markdown";

    private static string Weight(Severity severity) => severity switch
    {
        Severity.Error => "an error: nothing is published until it is mended.",
        Severity.Warning => "a warning: very likely a mistake. The book is published all the same.",
        _ => "a note: worth knowing, and no mistake. You see it only with `--notes`.",
    };

    private static IEnumerable<string> ResourcesUnder(string prefix) => typeof(FindingPages).Assembly.GetManifestResourceNames()
        .Where(name => name.StartsWith(prefix, StringComparison.Ordinal))
        .Order(StringComparer.Ordinal);
}
