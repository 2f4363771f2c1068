using System.Buffers.Binary;
using System.Text;

namespace HintBook.Sealing;

/// <summary>
/// Texts made equally long before they are sealed, so that their length says nothing: 4 bytes of length (big-endian), the text in UTF-8, zeros. Nothing is
/// compressed, since the length of what is compressed speaks.
/// </summary>
internal static class Padding
{
    /// <summary>The largest size in bytes.</summary>
    public const int Largest = 64 * 1024;

    private const int Smallest = 1024;
    private const int Head = 4;

    /// <summary>The smallest of 1, 2, 4 … 64 KiB that holds the longest of texts.</summary>
    /// <param name="longest">The bytes of the longest text in UTF-8.</param>
    /// <returns>Bytes; null if it has more than 65,532.</returns>
    public static int? SizeFor(int longest)
    {
        for (var size = Smallest; size <= Largest; size *= 2)
        {
            if (longest + Head <= size)
                return size;
        }

        return null;
    }

    /// <summary>A text made as long as a size.</summary>
    /// <exception cref="ArgumentException">It is longer.</exception>
    public static byte[] Pad(string text, int size)
    {
        var length = Encoding.UTF8.GetByteCount(text);
        if (length + Head > size)
            throw new ArgumentException($"A text of {length} bytes doesn't fit into {size}.", nameof(text));
        var padded = new byte[size];
        BinaryPrimitives.WriteInt32BigEndian(padded, length);
        Encoding.UTF8.GetBytes(text, padded.AsSpan(Head));
        return padded;
    }

    /// <summary>The text in what was padded; null if its length can't be right.</summary>
    public static string? Unpad(ReadOnlySpan<byte> padded)
    {
        if (padded.Length < Head)
            return null;
        var length = BinaryPrimitives.ReadInt32BigEndian(padded);
        return length < 0 || length > padded.Length - Head ? null : Encoding.UTF8.GetString(padded.Slice(Head, length));
    }

    /// <summary>The padded size of a file: up to the next eighth of the power of two below it, in steps of 1 KiB at least.</summary>
    /// <param name="length">The file's bytes.</param>
    public static long SizeOfFile(long length)
    {
        var step = Math.Max(1024, (long)System.Numerics.BitOperations.RoundUpToPowerOf2((ulong)Math.Max(1, length) + 1) / 16);
        return (length + step - 1) / step * step;
    }
}
