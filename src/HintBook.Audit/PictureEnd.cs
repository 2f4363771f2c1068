using System.Buffers.Binary;

namespace HintBook.Audit;

/// <summary>Where a picture ends in its file. What stands behind is shown by no viewer, and anyone may read it.</summary>
internal static class PictureEnd
{
    private const int Marker = 0xFF, StartOfScan = 0xDA, EndOfImage = 0xD9;

    /// <summary>The offset behind the last byte of a picture; null for other kinds of files and for damaged ones.</summary>
    public static int? Of(ReadOnlySpan<byte> file) =>
        file.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8]) ? OfJpeg(file)
        : file.StartsWith((ReadOnlySpan<byte>)[0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A]) ? OfPng(file)
        : file.StartsWith("RIFF"u8) && file.Length >= 8 ? Within(file, 8L + BinaryPrimitives.ReadUInt32LittleEndian(file[4..]))
        : file.StartsWith("GIF8"u8) ? OfGif(file)
        : null;

    // ITU-T T.81, B.1.1: a marker is 0xFF and a byte; most have a length behind them, and the coded data of a scan go on to the next marker.
    private static int? OfJpeg(ReadOnlySpan<byte> file)
    {
        for (var at = 2; at + 1 < file.Length;)
        {
            if (file[at] != Marker)
                return null;
            var kind = file[at + 1];
            if (kind == Marker)
            {
                at++;
                continue;
            }

            if (kind == EndOfImage)
                return at + 2;
            if (IsAlone(kind))
            {
                at += 2;
                continue;
            }

            if (at + 3 >= file.Length)
                return null;
            at += 2 + BinaryPrimitives.ReadUInt16BigEndian(file[(at + 2)..]);
            if (kind == StartOfScan)
                at = EndOfScan(file, at);
        }

        return null;
    }

    private static bool IsAlone(int kind) => kind is 0x01 or (>= 0xD0 and <= 0xD7);

    private static int EndOfScan(ReadOnlySpan<byte> file, int at)
    {
        while (at + 1 < file.Length && !(file[at] == Marker && file[at + 1] != 0 && !IsAlone(file[at + 1])))
            at++;
        return at;
    }

    // PNG specification, third edition, 5.3: length, type, data, check; the last chunk is IEND.
    private static int? OfPng(ReadOnlySpan<byte> file)
    {
        for (long at = 8; at + 12 <= file.Length;)
        {
            var next = at + 12 + BinaryPrimitives.ReadUInt32BigEndian(file[(int)at..]);
            if (file.Slice((int)at + 4, 4).SequenceEqual("IEND"u8))
                return Within(file, next);
            at = next;
        }

        return null;
    }

    // GIF89a specification: blocks of their own lengths up to the trailer.
    private static int? OfGif(ReadOnlySpan<byte> file)
    {
        if (file.Length < 13)
            return null;
        var at = 13 + TableSize(file[10]);
        while (at < file.Length)
        {
            switch (file[at])
            {
                case 0x3B:
                    return at + 1;
                case 0x21:
                    at = BehindBlocks(file, at + 2);
                    break;
                case 0x2C when at + 9 < file.Length:
                    at = BehindBlocks(file, at + 11 + TableSize(file[at + 9]));
                    break;
                default:
                    return null;
            }
        }

        return null;
    }

    private static int TableSize(int flags) => (flags & 0x80) == 0 ? 0 : 3 << ((flags & 7) + 1);

    private static int BehindBlocks(ReadOnlySpan<byte> file, int at)
    {
        while (at < file.Length && file[at] != 0)
            at += file[at] + 1;
        return at + 1;
    }

    private static int? Within(ReadOnlySpan<byte> file, long end) => end <= file.Length ? (int)end : null;
}
