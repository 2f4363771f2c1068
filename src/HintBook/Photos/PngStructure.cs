using System.Buffers.Binary;

namespace HintBook.Photos;

/// <summary>Walks a PNG from chunk to chunk: length, four letters, data, check sum (W3C, Portable Network Graphics, third edition, section 5.3).</summary>
internal static class PngStructure
{
    public static ImageHeader Read(ReadOnlyMemory<byte> file)
    {
        var bytes = file.Span;
        var exif = ReadOnlyMemory<byte>.Empty;
        var moving = false;
        for (var at = 8; bytes.Length - at >= 12;)
        {
            var length = BinaryPrimitives.ReadUInt32BigEndian(bytes[at..]);
            if (length > bytes.Length - at - 12)
                break;
            var kind = bytes.Slice(at + 4, 4);
            if (kind.SequenceEqual("IEND"u8))
                return new(Complete: true, moving, exif);
            if (kind.SequenceEqual("eXIf"u8))
                exif = file.Slice(at + 8, (int)length);
            moving |= kind.SequenceEqual("acTL"u8);
            at += (int)length + 12;
        }

        return new(Complete: false, moving, exif);
    }
}
