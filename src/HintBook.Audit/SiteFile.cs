using System.Collections.Immutable;

namespace HintBook.Audit;

/// <summary>What is kept of a file once it has been read.</summary>
/// <param name="Path">In the site.</param>
internal sealed record SiteFile(string Path)
{
    /// <summary>What is wrong with the file by itself.</summary>
    public ImmutableArray<AuditFault> Faults { get; init; } = [];

    /// <summary>The addresses in it.</summary>
    public ImmutableArray<Reference> References { get; init; } = [];

    /// <summary>The ids that an address can point to, or null for a kind of file in which nobody looks for them.</summary>
    public IReadOnlySet<string>? Ids { get; init; }

    /// <summary>Whether it is HTML that could be read.</summary>
    public bool IsPage { get; init; }
}
