using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace HintBook.Audit;

/// <summary>Something that is wrong with a finished site.</summary>
/// <param name="File">Relative to the site's folder, with forward slashes; empty where it concerns the folder itself.</param>
/// <param name="Line">From 1; 0 where it concerns the file as a whole.</param>
/// <param name="Column">From 1; 0 where it concerns the file as a whole.</param>
/// <param name="Message">What is wrong, in one or two sentences that make sense alone.</param>
public sealed record AuditFault(string File, int Line, int Column, string Message)
{
    /// <summary>The secret that is told, as the table calls it; null for other faults.</summary>
    public string? Secret { get; init; }

    /// <summary>Whether it is a fault; otherwise it may be one, and somebody has to look.</summary>
    public bool IsSure { get; init; } = true;
}

/// <summary>How many pairs of a key and a page that isn't its own were tried.</summary>
/// <param name="Tried">The pairs that were tried.</param>
/// <param name="All">All that there are.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct KeyTries(int Tried, int All);

/// <summary>What an audit read, and what it found.</summary>
/// <param name="Files">How many files the folder holds.</param>
/// <param name="Pages">How many of them are HTML and were read.</param>
/// <param name="Links">How many addresses inside the site were followed: links, pictures, styles, scripts and places in a page.</param>
/// <param name="Outgoing">How many links lead out of the site; nobody followed them.</param>
/// <param name="Faults">By file, then by place, then by message.</param>
public sealed record AuditReport(int Files, int Pages, int Links, int Outgoing, ImmutableArray<AuditFault> Faults)
{
    /// <summary>How many sealed pages were opened with cards, each of their pieces; 0 where none were tried.</summary>
    public int Opened { get; init; }

    /// <summary>How many cards opened them, each its own slot.</summary>
    public int Cards { get; init; }

    /// <summary>How often the key of one stage was tried on another page of a sealed site.</summary>
    public KeyTries OnOthers { get; init; }

    /// <summary>How many words were typed at the gates of pages: each opened its gate.</summary>
    public KeyTries Gates { get; init; }

    /// <summary>Nothing was read.</summary>
    public static AuditReport Nothing { get; } = new(0, 0, 0, 0, []);

    /// <summary>Whether nothing is wrong, as far as that is sure.</summary>
    public bool IsClean => Faults.All(fault => !fault.IsSure);
}
