using System.Collections.Immutable;
using System.Security.Cryptography;

namespace HintBook.Sealing;

/// <summary>
/// A photo or a film, sealed in segments of 1 MiB. Each segment knows its place and whether it is the last, so that none can be left out, exchanged or cut off.
/// </summary>
/// <param name="Name">16 letters that say nothing of the content.</param>
/// <param name="Key">The key that its readers find in the piece that shows it.</param>
/// <param name="Segments">The sealed segments.</param>
internal sealed record SealedFile(string Name, byte[] Key, ImmutableArray<byte[]> Segments)
{
    /// <summary>Bytes of a segment before it is sealed.</summary>
    public const int SegmentLength = 1 << 20;

    /// <summary>Bytes of a film at most: a browser holds all of it in its memory before it plays it.</summary>
    public const long MostOfFilm = 24 << 20;

    /// <summary>Seals a file.</summary>
    /// <param name="keys">The keys of the book's files.</param>
    /// <param name="content">The file, padded with zeros to <see cref="Padding.SizeOfFile"/> already where its length would speak.</param>
    public static SealedFile Of(FileKeys keys, ReadOnlySpan<byte> content)
    {
        var hash = SHA256.HashData(content);
        var (name, key) = (keys.NameOf(hash), keys.KeyOf(hash));
        var count = Math.Max(1, (content.Length + SegmentLength - 1) / SegmentLength);
        var segments = ImmutableArray.CreateBuilder<byte[]>(count);
        for (var k = 0; k < count; k++)
        {
            var segment = content[(k * SegmentLength)..Math.Min(content.Length, (k + 1) * SegmentLength)];
            segments.Add(Seal.Close(key, ContextOf(keys.Tag, name, k, isLast: k == count - 1), segment));
        }

        return new(name, key, segments.MoveToImmutable());
    }

    /// <summary>Where a segment belongs.</summary>
    public static byte[] ContextOf(byte[] tag, string name, int segment, bool isLast) =>
        Field.Join("file", tag, name, segment, isLast ? 1 : 0);
}
