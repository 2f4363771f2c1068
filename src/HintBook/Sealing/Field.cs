using System.Buffers.Binary;
using System.Text;

namespace HintBook.Sealing;

/// <summary>
/// One field of what a key or a sealed thing is bound to: a text in UTF-8, bytes, or a number of 4 bytes (big-endian).
/// </summary>
internal readonly struct Field
{
    private readonly byte[] bytes;

    private Field(byte[] bytes) => this.bytes = bytes;

    public static implicit operator Field(string text) => new(Encoding.UTF8.GetBytes(text));

    public static implicit operator Field(byte[] bytes) => new(bytes);

    public static implicit operator Field(int number)
    {
        var four = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(four, number);
        return new(four);
    }

    /// <summary>
    /// All fields in one row of bytes, each after its length in 2 bytes (big-endian): two different rows of fields never give the same bytes.
    /// </summary>
    /// <exception cref="OverflowException">A field has more than 65,535 bytes.</exception>
    public static byte[] Join(params ReadOnlySpan<Field> fields)
    {
        var length = 0;
        foreach (var field in fields)
            length += 2 + field.bytes.Length;
        var all = new byte[length];
        var rest = all.AsSpan();
        foreach (var field in fields)
        {
            BinaryPrimitives.WriteUInt16BigEndian(rest, checked((ushort)field.bytes.Length));
            field.bytes.CopyTo(rest[2..]);
            rest = rest[(2 + field.bytes.Length)..];
        }

        return all;
    }
}
