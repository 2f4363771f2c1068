using System.Buffers.Binary;
using System.IO.Compression;

namespace HintBook.Photos;

/// <summary>Finds the colour profile in a picture file: in APP2 of a JPEG (ICC.1:2022, B.4), iCCP of a PNG, ICCP of a WebP.</summary>
internal static class ProfileBlocks
{
    private const int Most = 4 * 1024 * 1024;

    /// <summary>The profile's bytes; empty where there is none.</summary>
    public static ReadOnlyMemory<byte> In(ReadOnlyMemory<byte> file) => file.Span switch
    {
        [0xFF, 0xD8, 0xFF, ..] => InJpeg(file),
        [0x89, (byte)'P', ..] => InPng(file),
        [(byte)'R', (byte)'I', (byte)'F', (byte)'F', ..] => InWebp(file),
        _ => default,
    };

    // Profiles longer than a segment are cut into numbered pieces, all of them before the picture.
    private static ReadOnlyMemory<byte> InJpeg(ReadOnlyMemory<byte> file)
    {
        var bytes = file.Span;
        var pieces = new SortedDictionary<int, ReadOnlyMemory<byte>>();
        for (var at = 2; at + 4 <= bytes.Length && bytes[at] == 0xFF && bytes[at + 1] is not (0xDA or 0xD9);)
        {
            var length = BinaryPrimitives.ReadUInt16BigEndian(bytes[(at + 2)..]);
            if (length < 2 || at + 2 + length > bytes.Length)
                break;
            var body = file.Slice(at + 4, length - 2);
            if (bytes[at + 1] == 0xE2 && body.Length > 14 && body.Span.StartsWith("ICC_PROFILE\0"u8))
                pieces[body.Span[12]] = body[14..];
            at += 2 + length;
        }

        return pieces.Count == 1 ? pieces.First().Value : pieces.Values.SelectMany(piece => piece.ToArray()).ToArray();
    }

    private static ReadOnlyMemory<byte> InPng(ReadOnlyMemory<byte> file)
    {
        var bytes = file.Span;
        for (var at = 8; bytes.Length - at >= 12;)
        {
            var length = BinaryPrimitives.ReadUInt32BigEndian(bytes[at..]);
            if (length > bytes.Length - at - 12 || bytes.Slice(at + 4, 4).SequenceEqual("IDAT"u8))
                break;
            if (bytes.Slice(at + 4, 4).SequenceEqual("iCCP"u8))
                return Unpacked(file.Slice(at + 8, (int)length));
            at += (int)length + 12;
        }

        return default;
    }

    // A name, its end, the method, then zlib's stream.
    private static ReadOnlyMemory<byte> Unpacked(ReadOnlyMemory<byte> chunk)
    {
        var end = chunk.Span.IndexOf((byte)0);
        if (end < 0 || end + 2 > chunk.Length)
            return default;
        try
        {
            using var zlib = new ZLibStream(new MemoryStream(chunk[(end + 2)..].ToArray()), CompressionMode.Decompress);
            var profile = new byte[Most];
            return profile.AsMemory(0, zlib.ReadAtLeast(profile, Most, throwOnEndOfStream: false));
        }
        catch (InvalidDataException)
        {
            return default;
        }
    }

    private static ReadOnlyMemory<byte> InWebp(ReadOnlyMemory<byte> file)
    {
        var bytes = file.Span;
        for (var at = 12L; bytes.Length - at >= 8;)
        {
            var length = BinaryPrimitives.ReadUInt32LittleEndian(bytes[(int)(at + 4)..]);
            if (length > bytes.Length - at - 8)
                break;
            if (bytes.Slice((int)at, 4).SequenceEqual("ICCP"u8))
                return file.Slice((int)at + 8, (int)length);
            at += 8 + length + (length & 1);
        }

        return default;
    }
}
