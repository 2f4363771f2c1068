using System.Collections.Immutable;

namespace HintBook.Photos.Films.Metadata;

/// <summary>
/// What is overwritten in a film so that it tells nothing but what is seen and heard: place, camera, author, dates, names of programs. No byte
/// moves, so every offset in the film holds.
/// </summary>
/// <param name="IsKnown">Whether the kind of film is known and its file whole; otherwise nothing of it is overwritten.</param>
/// <param name="Overwrites">What is overwritten, by place.</param>
/// <param name="LeftOut">The kinds of the tracks that are neither picture nor sound and are blanked, as the file calls them.</param>
public sealed record FilmStripping(bool IsKnown, ImmutableArray<Overwrite> Overwrites, ImmutableArray<string> LeftOut)
{
    // QuickTime File Format, “Media types”, and ISO/IEC 14496-12, 12.5 and 12.6; Matroska (RFC 9559, 5.1.4.1.3) has numbers.
    private static readonly string[] Words = ["text", "sbtl", "subt", "clcp", "17"];

    /// <summary>Nothing is known of the film.</summary>
    public static FilmStripping Unknown { get; } = new(false, [], []);

    /// <summary>Whether a track with captions or chapters is blanked.</summary>
    public bool LeavesOutWords => LeftOut.Any(kind => Words.Contains(kind));

    /// <summary>Overwrites it in a copy of the film.</summary>
    /// <param name="copy">The copy, which must be able to seek and to write.</param>
    public void Apply(Stream copy)
    {
        var nothing = new byte[1 << 16];
        foreach (var (at, bytes, zeros) in Overwrites)
        {
            copy.Position = at;
            copy.Write(bytes.AsSpan());
            for (var left = zeros; left > 0; left -= nothing.Length)
                copy.Write(nothing, 0, (int)Math.Min(left, nothing.Length));
        }
    }
}

/// <summary>A stretch of a file that is overwritten.</summary>
/// <param name="At">Where it begins.</param>
/// <param name="Bytes">What it begins with afterwards.</param>
/// <param name="Zeros">How many bytes of 0 follow.</param>
public readonly record struct Overwrite(long At, ImmutableArray<byte> Bytes, long Zeros);
