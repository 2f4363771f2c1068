using System.Collections;
using System.Collections.Immutable;

namespace HintBook.Audit;

/// <summary>What a printed booklet of numbered entries may tell, and which entries may not be seen at once.</summary>
public sealed record AuditBooklet
{
    /// <summary>Its file, relative to the folder with what was printed.</summary>
    public required string File { get; init; }

    /// <summary>Its language as a BCP 47 tag.</summary>
    public required string Language { get; init; }

    /// <summary>The page on which the first entry begins, from 1. What stands before it may say what anyone may know.</summary>
    public required int FirstPage { get; init; }

    /// <summary>The least size of the number that stands at the head of an entry, in points. No other text that is as large consists of digits.</summary>
    public required double NumberSize { get; init; }

    /// <summary>What stands on a page that is left empty, so that it isn't taken for the end of the entry before it.</summary>
    public required string SaidOfEmpty { get; init; }

    /// <summary>The entries by their numbers.</summary>
    public required ImmutableDictionary<int, AuditEntry> Entries { get; init; }

    /// <summary>The pairs of entries that may not stand on one page nor on pages that follow each other, the smaller number first.</summary>
    public required ImmutableHashSet<(int, int)> Apart { get; init; }
}

/// <summary>An entry.</summary>
/// <param name="May">The secrets that it may name.</param>
/// <param name="Sure">The secrets of which it is sure that it may not name them unless they are in <paramref name="May"/>; null for all.</param>
public sealed record AuditEntry(BitArray May, BitArray? Sure);
