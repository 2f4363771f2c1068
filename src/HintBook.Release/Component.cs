using System.Collections.Immutable;

namespace HintBook.Release;

/// <summary>Something of somebody else's that travels in the program.</summary>
internal sealed record Component
{
    /// <summary>Its name where it comes from.</summary>
    public required string Name { get; init; }

    /// <summary>Its version.</summary>
    public required string Version { get; init; }

    /// <summary>Its package URL (ECMA-427), which names it among all packages.</summary>
    public required string Purl { get; init; }

    /// <summary>Its licence as an SPDX expression; empty where it only gives an address.</summary>
    public string Licence { get; init; } = "";

    /// <summary>The address of its licence, where it gives that alone.</summary>
    public string LicenceAddress { get; init; } = "";

    /// <summary>What it says of its copyright, or who its authors are.</summary>
    public string Copyright { get; init; } = "";

    /// <summary>The SHA-512 of its package in hexadecimal digits; empty where it isn't known.</summary>
    public string Sha512 { get; init; } = "";

    /// <summary>The licence and notices that lie in its package, by their names there.</summary>
    public ImmutableArray<(string Name, string Text)> Texts { get; init; } = [];

    /// <summary>The names of those that it needs among the others.</summary>
    public ImmutableArray<string> Needs { get; init; } = [];
}
