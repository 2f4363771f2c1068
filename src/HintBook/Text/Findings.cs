using System.Collections.Immutable;

namespace HintBook.Text;

/// <summary>
/// All findings of one run, in the order in which they are printed: first the errors of files that could not be taken into the book, since
/// others may follow from them; then by file, by place and by code.
/// </summary>
/// <param name="All">The ordered list.</param>
public sealed record Findings(ImmutableArray<Finding> All)
{
    /// <summary>Nothing to say.</summary>
    public static Findings None { get; } = new([]);

    /// <summary>Whether anything keeps the book from being published.</summary>
    public bool AnyError => All.Any(finding => finding.IsError);

    /// <summary>Puts findings from any source into the printed order, leaving out exact repeats.</summary>
    public static Findings Of(IEnumerable<Finding> findings) => new(
    [
        .. findings
            .DistinctBy(f => (f.Code.Id, f.At, f.Message))
            .OrderBy(f => f.IsError && f.At.File.IsUnread ? 0 : 1)
            .ThenBy(f => f.At.File.Path == "book.yaml" ? "" : f.At.File.Path, StringComparer.Ordinal)
            .ThenBy(f => f.At.Start)
            .ThenBy(f => f.Code.Id, StringComparer.Ordinal)
            .ThenBy(f => f.Message, StringComparer.Ordinal),
    ]);

    /// <summary>These and more, ordered again.</summary>
    public Findings And(IEnumerable<Finding> more) => Of(All.Concat(more));

    /// <summary>How many there are of one weight.</summary>
    public int Count(Severity severity) => All.Count(finding => finding.Code.Severity == severity);

    /// <summary>Those that are said: all, or all but the notes.</summary>
    public IEnumerable<Finding> Shown(bool withNotes) => All.Where(finding => withNotes || finding.Code.Severity > Severity.Note);
}
