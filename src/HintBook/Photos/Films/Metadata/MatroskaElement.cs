using System.Numerics;

namespace HintBook.Photos.Films.Metadata;

/// <summary>An element of a Matroska or WebM film (RFC 8794, EBML).</summary>
/// <param name="Id">What it is (RFC 9559, section 5).</param>
/// <param name="Start">Where it begins in the file.</param>
/// <param name="Data">Where its data begin.</param>
/// <param name="End">Where it ends; where its size isn't known, as far as that goes.</param>
/// <param name="IsEndKnown">Whether its size is known: a film that was written while it was taken doesn't say.</param>
internal readonly record struct MatroskaElement(uint Id, long Start, long Data, long End, bool IsEndKnown)
{
    /// <summary>The element at a place of the file.</summary>
    /// <exception cref="InvalidDataException">There is none, or it goes beyond the end.</exception>
    public static MatroskaElement At(Stream film, long start, long end)
    {
        film.Position = start;
        // RFC 8794, 4: the zeros before the first 1 say how many bytes follow. An id keeps that 1.
        var (id, idLength, _) = Number(film, 4, end, keepsMarker: true);
        var (size, sizeLength, isUnknown) = Number(film, 8, end, keepsMarker: false);
        var data = start + idLength + sizeLength;
        if (!isUnknown && size > end - data)
            throw new InvalidDataException();
        return new((uint)id, start, data, isUnknown ? end : data + size, !isUnknown);
    }

    /// <summary>The elements in its data.</summary>
    /// <exception cref="InvalidDataException">Something in it is no element, or has no end.</exception>
    public IEnumerable<MatroskaElement> Children(Stream film)
    {
        for (var at = Data; at < End;)
        {
            var child = At(film, at, End);
            if (!child.IsEndKnown)
                throw new InvalidDataException();
            yield return child;
            at = child.End;
        }
    }

    /// <summary>An unsigned number, up to eight bytes.</summary>
    public long Value(Stream film)
    {
        film.Position = Data;
        var value = 0L;
        for (var left = Math.Min(8, End - Data); left > 0; left--)
            value = unchecked((value << 8) | (long)film.ReadByte());
        return value;
    }

    /// <summary>The number of the track that a block belongs to (RFC 9559, 10.1).</summary>
    public long TrackOfBlock(Stream film)
    {
        film.Position = Data;
        return Number(film, 8, End, keepsMarker: false).Value;
    }

    private static (long Value, int Length, bool IsUnknown) Number(Stream film, int most, long end, bool keepsMarker)
    {
        var first = film.ReadByte();
        var length = first <= 0 ? 9 : BitOperations.LeadingZeroCount((uint)first) - 23;
        if (length > most || film.Position + length - 1 > end)
            throw new InvalidDataException();
        long value = keepsMarker ? first : first & (0xFF >> length);
        var isUnknown = (first & (0xFF >> length)) == 0xFF >> length;
        for (var i = 1; i < length; i++)
        {
            var next = film.ReadByte();
            isUnknown &= next == 0xFF;
            value = (value << 8) | (long)next;
        }

        return (value, length, isUnknown);
    }
}
