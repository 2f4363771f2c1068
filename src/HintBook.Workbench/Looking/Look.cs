using System.Collections.Immutable;
using HintBook.Checking;
using HintBook.Mechanism;
using HintBook.Text;

namespace HintBook.Workbench.Looking;

/// <summary>What the workbench knows of a book at one moment.</summary>
/// <param name="Number">Counts the looks, from 1; 0 before the first.</param>
/// <param name="Findings">Everything there is to tell the author.</param>
/// <param name="Shown">
/// The newest state of the book that has pages; null while there was none. It may have errors: its maker wants to see it all the same.
/// </param>
/// <param name="IsCurrent">
/// Whether <paramref name="Shown"/> is made of the files as they are. Otherwise something must be mended first, and an earlier state stands.
/// </param>
public sealed record Look(int Number, Findings Findings, Examined? Shown, bool IsCurrent)
{
    /// <summary>What is proved of the book.</summary>
    public ImmutableArray<BookVerdict> Verdicts { get; init; } = [];

    /// <summary>Before the first look.</summary>
    public static Look None { get; } = new(0, Findings.None, null, IsCurrent: false);

    /// <summary>The look after this one.</summary>
    /// <param name="found">What came of checking the book as it is.</param>
    public Look Next(Checked found) =>
        new(Number + 1, found.Findings, found.Known ?? Shown, found.Known is not null) { Verdicts = BookClaims.Of(found) };
}
