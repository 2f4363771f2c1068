using System.Collections.Immutable;

namespace HintBook.Photos;

/// <summary>How photos are developed. Everything here goes into a picture's name, so that another setting is another file.</summary>
public sealed record PhotoSettings
{
    /// <summary>The settings that every book has.</summary>
    public static PhotoSettings Standard { get; } = new();

    /// <summary>The widths wanted, in pixels, smallest first: a phone, a phone with a fine screen, a desk.</summary>
    public ImmutableArray<int> Widths { get; init; } = [400, 800, 1600];

    /// <summary>JPEG quality, 1 to 100.</summary>
    public int Quality { get; init; } = 82;

    /// <summary>The most pixels that are decoded, width times height; 100 million take 300 MB of memory.</summary>
    public long MaxPixels { get; init; } = 100_000_000;

    /// <summary>The largest file that is looked at, in bytes.</summary>
    public long MaxFileBytes { get; init; } = 64 * 1024 * 1024;

    /// <summary>Raised whenever the same photo would come out as other bytes, so that no cache serves the older ones.</summary>
    public int Version { get; init; } = 1;
}
