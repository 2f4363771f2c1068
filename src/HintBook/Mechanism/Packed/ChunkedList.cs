namespace HintBook.Mechanism.Packed;

/// <summary>A list that only grows, in pieces, so that growing copies nothing and a large one needs no large block.</summary>
internal sealed class ChunkedList<T>
{
    private const int Shift = 13;
    private const int Mask = (1 << Shift) - 1;
    private T[][] pieces = new T[16][];

    /// <summary>How many there are.</summary>
    public int Count { get; private set; }

    /// <summary>Bytes held, unused ends included.</summary>
    public long Bytes => (long)(Count + Mask >> Shift << Shift) * System.Runtime.CompilerServices.Unsafe.SizeOf<T>();

    /// <summary>One of them.</summary>
    public ref T this[int index] => ref pieces[index >> Shift][index & Mask];

    /// <summary>Adds one more.</summary>
    public void Add(in T value)
    {
        var piece = Count >> Shift;
        if (piece == pieces.Length)
            Array.Resize(ref pieces, pieces.Length * 2);
        (pieces[piece] ??= new T[1 << Shift])[Count & Mask] = value;
        Count++;
    }
}
