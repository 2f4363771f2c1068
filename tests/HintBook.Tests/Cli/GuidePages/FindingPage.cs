using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace HintBook.Tests.Cli.GuidePages;

/// <summary>A page about a finding, taken apart.</summary>
internal sealed partial record FindingPage
{
    private const string WrongHeading = "\n## A book that has it\n";
    private const string MendedHeading = "\n## Mended\n";

    public required string Title { get; init; }

    /// <summary>The paragraphs below the title.</summary>
    public required ImmutableArray<string> Prose { get; init; }

    /// <summary>What the first book changes in the shared one, in the order of the page.</summary>
    public required ImmutableArray<Fence> Wrong { get; init; }

    public required ImmutableArray<Fence> Mended { get; init; }

    /// <summary>The lines that stand in no fence.</summary>
    public required ImmutableArray<string> ProseLines { get; init; }

    /// <summary>The first sentence below the title, in one line.</summary>
    public string FirstSentence => EndOfSentence().Split(Prose[0].Replace('\n', ' '))[0];

    public static FindingPage Parse(string text)
    {
        var (wrong, mended) = (text.IndexOf(WrongHeading, StringComparison.Ordinal), text.IndexOf(MendedHeading, StringComparison.Ordinal));
        Assert.True(text.StartsWith("# ", StringComparison.Ordinal), "The first line isn't a title.");
        Assert.True(0 < wrong && wrong < mended, "“## A book that has it” and “## Mended” don't stand there, in this order.");
        var paragraphs = text[..wrong].Trim('\n').Split("\n\n");
        var proseLines = Fenced().Replace(text, "").Split('\n');
        Assert.DoesNotContain(proseLines, line => line.StartsWith("```", StringComparison.Ordinal));
        return new FindingPage
        {
            Title = paragraphs[0][2..],
            Prose = [.. paragraphs[1..]],
            Wrong = FencesIn(text[wrong..mended]),
            Mended = FencesIn(text[mended..]),
            ProseLines = [.. proseLines],
        };
    }

    // A fence without a path or a meaning of its own shows something, such as what is said; it is no file.
    private static ImmutableArray<Fence> FencesIn(string section) =>
    [
        .. Fenced().Matches(section)
            .Select(fence => new Fence(fence.Groups["language"].Value, fence.Groups["path"].Value, fence.Groups["body"].Value))
            .Where(fence => fence.Path.Length > 0 || fence.Language == Fence.Circumstance),
    ];

    [GeneratedRegex("^(?<marks>```+)(?<language>[a-z]+)?(?: (?<path>[^\n]+))?\n(?<body>(?s:.*?))^\\k<marks>$", RegexOptions.Multiline)]
    private static partial Regex Fenced();

    [GeneratedRegex(@"(?<=[.!?])(?: |$)")]
    private static partial Regex EndOfSentence();
}

/// <summary>A file of a page's book, or what stands for one.</summary>
/// <param name="Language">The language of a text file, or <c>made</c>, <c>absent</c> or <c>circumstance</c>.</param>
/// <param name="Path">Inside the book (on a shelf: inside the shelf), with forward slashes.</param>
/// <param name="Body">The text of the file, or a line from <see cref="MadeFiles"/> or <see cref="Circumstances"/>.</param>
internal sealed record Fence(string Language, string Path, string Body)
{
    public const string Made = "made";
    public const string Absent = "absent";
    public const string Circumstance = "circumstance";
}
