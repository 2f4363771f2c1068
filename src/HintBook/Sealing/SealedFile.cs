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

    /// <summary>Seals a file.</summary>
    /// <param name="keys">The book's keys.</param>
    /// <param name="content">The file, padded with zeros to <see cref="Padding.SizeOfFile"/> already where its length would speak.</param>
    public static SealedFile Of(BookKeys keys, ReadOnlySpan<byte> content)
    {
        var hash = SHA256.HashData(content);
        var (name, key) = (keys.FileName(hash), keys.FileKey(hash));
        var count = Math.Max(1, (content.Length + SegmentLength - 1) / SegmentLength);
        var segments = ImmutableArray.CreateBuilder<byte[]>(count);
        for (var k = 0; k < count; k++)
        {
            var segment = content[(k * SegmentLength)..Math.Min(content.Length, (k + 1) * SegmentLength)];
            segments.Add(Seal.Close(key, ContextOf(keys, name, k, isLast: k == count - 1), segment));
        }

        return new(name, key, segments.MoveToImmutable());
    }

    /// <summary>Where a segment belongs.</summary>
    public static byte[] ContextOf(BookKeys keys, string name, int segment, bool isLast) =>
        Field.Join("file", keys.Tag, name, segment, isLast ? 1 : 0);
}
