using System.Collections.Immutable;
using DiffPlex.DiffBuilder;
using DiffPlex.DiffBuilder.Model;

namespace HintBook.Workbench.Writing;

/// <summary>A line of two texts that are compared.</summary>
/// <param name="Kind"><c>same</c>, <c>mine</c> or <c>theirs</c>: in which of them it stands.</param>
/// <param name="Text">The line.</param>
internal sealed record ComparedLine(string Kind, string Text);

/// <summary>Two texts line by line.</summary>
internal static class LineDifferences
{
    /// <summary>The lines of both, those that they share once.</summary>
    /// <param name="mine">The text on the page.</param>
    /// <param name="theirs">The text on the disk.</param>
    public static ImmutableArray<ComparedLine> Of(string mine, string theirs) =>
    [
        .. InlineDiffBuilder.Diff(mine, theirs, ignoreWhiteSpace: false).Lines.Select(line => new ComparedLine(
            line.Type switch
            {
                ChangeType.Inserted => "theirs",
                ChangeType.Deleted => "mine",
                _ => "same",
            },
            line.Text)),
    ];
}
