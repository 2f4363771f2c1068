using System.Buffers.Binary;

namespace HintBook.Photos;

/// <summary>
/// Walks a JPEG from marker to marker, as ITU-T T.81 annex B lays them out. A thumbnail inside the Exif block has an end mark
/// of its own: going by segments steps over it.
/// </summary>
internal static class JpegStructure
{
    private const byte EndOfImage = 0xD9, App1 = 0xE1, FirstRestart = 0xD0, StartOfImage = 0xD8, Temporary = 0x01;

    public static ImageHeader Read(ReadOnlyMemory<byte> file)
    {
        var bytes = file.Span;
        var exif = ReadOnlyMemory<byte>.Empty;
        var at = 2;
        while (NextMarker(bytes, at) is { } marker)
        {
            var kind = bytes[marker + 1];
            at = marker + 2;
            if (kind == EndOfImage)
                return new(Complete: true, Moving: false, exif);
            if (kind is Temporary or (>= FirstRestart and <= StartOfImage))
                continue;
            if (at + 2 > bytes.Length)
                break;
            var length = BinaryPrimitives.ReadUInt16BigEndian(bytes[at..]);
            if (length < 2 || at + length > bytes.Length)
                break;
            var body = file[(at + 2)..(at + length)];
            if (kind == App1 && exif.IsEmpty && body.Span.StartsWith("Exif\0\0"u8))
                exif = body[6..];
            at += length;
            // What follows a scan's header is coded data, in which FF is always followed by 00 or a restart: NextMarker passes over both.
        }

        return new(Complete: false, Moving: false, exif);
    }

    private static int? NextMarker(ReadOnlySpan<byte> bytes, int from)
    {
        for (var at = from; at + 1 < bytes.Length; at++)
        {
            var step = bytes[at..^1].IndexOf((byte)0xFF);
            if (step < 0)
                return null;
            at += step;
            if (bytes[at + 1] is not (0x00 or 0xFF))
                return at;
        }

        return null;
    }
}
