using System.Buffers.Binary;

namespace HintBook.Photos;

/// <summary>Walks a WebP from chunk to chunk: four letters, length, data, padded to an even length (RFC 9649, section 2.3).</summary>
internal static class WebpStructure
{
    public static ImageHeader Read(ReadOnlyMemory<byte> file)
    {
        var bytes = file.Span;
        var exif = ReadOnlyMemory<byte>.Empty;
        var (pixels, moving) = (false, false);
        var promised = 8L + BinaryPrimitives.ReadUInt32LittleEndian(bytes[4..]);
        for (var at = 12L; bytes.Length - at >= 8;)
        {
            var head = bytes.Slice((int)at, 8);
            var length = BinaryPrimitives.ReadUInt32LittleEndian(head[4..]);
            if (length > bytes.Length - at - 8)
                break;
            var kind = head[..4];
            if (kind.SequenceEqual("EXIF"u8))
                exif = WithoutJpegPrefix(file.Slice((int)at + 8, (int)length));
            pixels |= kind.SequenceEqual("VP8 "u8) || kind.SequenceEqual("VP8L"u8);
            moving |= kind.SequenceEqual("ANIM"u8) || kind.SequenceEqual("ANMF"u8);
            at += 8 + length + (length & 1);
        }

        return new(Complete: promised <= bytes.Length && (pixels || moving), moving, exif);
    }

    // Some programs copy the block from a JPEG with the six bytes that announce it there.
    private static ReadOnlyMemory<byte> WithoutJpegPrefix(ReadOnlyMemory<byte> exif) =>
        exif.Span.StartsWith("Exif\0\0"u8) ? exif[6..] : exif;
}
