using System.Collections.Immutable;
using HintBook.Photos.Drawings;

namespace HintBook.Photos;

/// <summary>A photo as it is published: turned upright, stripped of every bit of metadata, in several widths.</summary>
/// <param name="Files">The sizes, smallest first; at least one.</param>
public sealed record Picture(ImmutableArray<PictureFile> Files)
{
    /// <summary>The largest size.</summary>
    public PictureFile Largest => Files[^1];

    /// <summary>The shapes of a picture that is drawn, which has one file at one size; null for a photo.</summary>
    public Drawing? Drawing { get; init; }
}

/// <summary>One size of a picture.</summary>
/// <param name="Path">Relative to the site, opaque: <c>pictures/3f9a…-800w.jpg</c>.</param>
/// <param name="Width">In pixels.</param>
/// <param name="Height">In pixels.</param>
public sealed record PictureFile(string Path, int Width, int Height);
