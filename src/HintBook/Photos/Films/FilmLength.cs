using System.Buffers.Binary;

namespace HintBook.Photos.Films;

/// <summary>How long a film lasts, as its file says.</summary>
internal static class FilmLength
{
    private const uint Unknown = uint.MaxValue;

    /// <summary>
    /// The length of an MP4 or QuickTime film, from its movie header (ISO/IEC 14496-12, 8.2.2: duration over time scale); null for other
    /// kinds of file, for one that doesn't say, and for one that is cut short before it says.
    /// </summary>
    /// <param name="film">The file, from its start; it must be able to seek.</param>
    public static TimeSpan? Read(Stream film)
    {
        if (Find(film, film.Length, "moov") is not { } movie || Find(film, movie, "mvhd") is not { } end)
            return null;
        Span<byte> header = stackalloc byte[32];
        header = header[..(int)Math.Min(header.Length, end - film.Position)];
        if (film.ReadAtLeast(header, header.Length, throwOnEndOfStream: false) < header.Length)
            return null;
        return header switch
        {
            [0, ..] when header.Length >= 20 => Time(
                BinaryPrimitives.ReadUInt32BigEndian(header[12..]),
                BinaryPrimitives.ReadUInt32BigEndian(header[16..]),
                Unknown),
            [1, ..] when header.Length >= 32 => Time(
                BinaryPrimitives.ReadUInt32BigEndian(header[20..]),
                BinaryPrimitives.ReadUInt64BigEndian(header[24..]),
                ulong.MaxValue),
            _ => null,
        };
    }

    private static TimeSpan? Time(uint scale, ulong duration, ulong unknown)
    {
        var seconds = (double)duration / scale;
        return scale == 0 || duration == 0 || duration == unknown || seconds >= TimeSpan.MaxValue.TotalSeconds ? null : TimeSpan.FromSeconds(seconds);
    }

    // Boxes (ISO/IEC 14496-12, 4.2): 32 bits of size, four letters, and 64 bits of size where the first says 1; 0 means to the end.
    private static long? Find(Stream film, long end, string kind)
    {
        Span<byte> head = stackalloc byte[16];
        while (film.Position + 8 <= end)
        {
            var start = film.Position;
            if (film.ReadAtLeast(head[..8], 8, throwOnEndOfStream: false) < 8)
                return null;
            long size = BinaryPrimitives.ReadUInt32BigEndian(head);
            if (size == 1)
            {
                if (film.ReadAtLeast(head[8..], 8, throwOnEndOfStream: false) < 8)
                    return null;
                size = BinaryPrimitives.ReadInt64BigEndian(head[8..]);
            }

            var next = size == 0 ? end : size < 8 || size > end - start ? -1 : start + size;
            if (next < film.Position)
                return null;
            if (head[4] == kind[0] && head[5] == kind[1] && head[6] == kind[2] && head[7] == kind[3])
                return next;
            film.Position = next;
        }

        return null;
    }
}
