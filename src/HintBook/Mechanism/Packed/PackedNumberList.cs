namespace HintBook.Mechanism.Packed;

/// <summary>A list of numbers of up to 40 bits, in four or five bytes each.</summary>
/// <param name="bits">How many bits.</param>
internal sealed class PackedNumberList(int bits)
{
    private readonly ChunkedList<uint> low = new();
    private readonly ChunkedList<byte>? high = bits > 32 ? new() : null;

    /// <summary>How many there are.</summary>
    public int Count => low.Count;

    /// <summary>Bytes held.</summary>
    public long Bytes => low.Bytes + (high?.Bytes ?? 0);

    /// <summary>One of them.</summary>
    public ulong this[int index] => high is null ? low[index] : low[index] | ((ulong)high[index] << 32);

    /// <summary>Adds one more.</summary>
    public void Add(ulong number)
    {
        unchecked
        {
            low.Add((uint)number);
            high?.Add((byte)(number >> 32));
        }
    }
}
