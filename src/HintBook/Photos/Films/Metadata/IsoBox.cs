using System.Buffers.Binary;
using System.Text;

namespace HintBook.Photos.Films.Metadata;

/// <summary>A box of an MP4 or QuickTime film (ISO/IEC 14496-12, 4.2; QuickTime calls it an atom).</summary>
/// <param name="Kind">Its four letters, as Latin-1.</param>
/// <param name="Start">Where it begins in the file.</param>
/// <param name="Content">Where its content begins.</param>
/// <param name="End">Where it ends.</param>
internal readonly record struct IsoBox(string Kind, long Start, long Content, long End)
{
    /// <summary>The largest table that is read, in bytes: for a film of days.</summary>
    private const long MostTableBytes = 1 << 26;

    private const int MostBoxes = 1_000_000;

    /// <summary>The boxes in a stretch of the file, and where they end: before <paramref name="end"/> if what follows is no box.</summary>
    public static (List<IsoBox> Boxes, long End) List(Stream film, long start, long end)
    {
        var boxes = new List<IsoBox>();
        Span<byte> head = stackalloc byte[16];
        while (start + 8 <= end)
        {
            if (boxes.Count == MostBoxes)
                throw new InvalidDataException();
            film.Position = start;
            film.ReadExactly(head[..8]);
            long size = BinaryPrimitives.ReadUInt32BigEndian(head);
            var content = start + 8;
            var kind = Encoding.Latin1.GetString(head[4..8]);
            if (size == 1 && start + 16 <= end)
            {
                film.ReadExactly(head[8..]);
                size = BinaryPrimitives.ReadInt64BigEndian(head[8..]);
                content = start + 16;
            }

            // 0 means to the end. Media data may be cut short; nothing else can be read then.
            if (size == 0 || (kind == "mdat" && size > end - start))
                size = end - start;
            if (size < content - start || size > end - start)
                break;
            boxes.Add(new(kind, start, content, start + size));
            start += size;
        }

        return (boxes, start);
    }

    /// <summary>The boxes in its content, from an offset on. What is too short to be a box ends a QuickTime list.</summary>
    /// <exception cref="InvalidDataException">Something in it is no box.</exception>
    public List<IsoBox> Children(Stream film, int from = 0)
    {
        var (boxes, end) = List(film, Content + from, End);
        return End - end < 8 ? boxes : throw new InvalidDataException();
    }

    /// <summary>The only box of a kind in its content.</summary>
    /// <exception cref="InvalidDataException">It isn't there.</exception>
    public IsoBox Child(Stream film, string kind)
    {
        var found = Children(film).Where(child => child.Kind == kind).Take(1).ToArray();
        return found is [var child] ? child : throw new InvalidDataException();
    }

    /// <summary>All of its content.</summary>
    /// <exception cref="InvalidDataException">It is larger than any table.</exception>
    public byte[] Bytes(Stream film)
    {
        if (End - Content > MostTableBytes)
            throw new InvalidDataException();
        var bytes = new byte[End - Content];
        film.Position = Content;
        film.ReadExactly(bytes);
        return bytes;
    }
}

/// <summary>Reads numbers in a box's content.</summary>
internal static class IsoNumbers
{
    /// <summary>32 bits.</summary>
    /// <exception cref="InvalidDataException">The content ends before.</exception>
    public static uint Number(this byte[] content, long at) =>
        at >= 0 && at + 4 <= content.Length ? BinaryPrimitives.ReadUInt32BigEndian(content.AsSpan((int)at)) : throw new InvalidDataException();

    /// <summary>64 bits, of which the highest must be 0.</summary>
    /// <exception cref="InvalidDataException">The content ends before.</exception>
    public static long Long(this byte[] content, long at) => ((long)Number(content, at) << 32) | Number(content, at + 4);
}
