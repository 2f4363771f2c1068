using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace HintBook.Mechanism.Packed;

/// <summary>A state in as few machine words as the box needs: each variable has a field of bits that lies within one word.</summary>
internal interface IPackedState<T> : IEquatable<T>
    where T : struct, IPackedState<T>
{
    /// <summary>How many bits there are.</summary>
    static abstract int Bits { get; }

    /// <summary>How many bits a word has; no field crosses from one to the next.</summary>
    static abstract int WordBits { get; }

    /// <summary>The field that starts at a bit.</summary>
    int Field(int bit, int mask);

    /// <summary>The same state with one field set anew.</summary>
    T With(int bit, int mask, int value);

    /// <summary>Keeps some bits and sets others.</summary>
    T Apply(in T keep, in T set);

    /// <summary>All bits turned over.</summary>
    T Turned();

    /// <summary>64 well mixed bits.</summary>
    ulong Mix();
}

/// <summary>Up to 32 bits.</summary>
internal readonly record struct Word32(uint Word) : IPackedState<Word32>
{
    public static int Bits => 32;

    public static int WordBits => 32;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public int Field(int bit, int mask) => unchecked((int)(Word >> bit) & mask);

    public Word32 With(int bit, int mask, int value) => unchecked(new((Word & ~((uint)mask << bit)) | ((uint)value << bit)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Word32 Apply(in Word32 keep, in Word32 set) => new((Word & keep.Word) | set.Word);

    public Word32 Turned() => new(~Word);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public ulong Mix() => HashMixing.Mix(Word);
}

/// <summary>Up to 64 bits.</summary>
internal readonly record struct Word64(ulong Word) : IPackedState<Word64>
{
    public static int Bits => 64;

    public static int WordBits => 64;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public int Field(int bit, int mask) => unchecked((int)(Word >> bit) & mask);

    public Word64 With(int bit, int mask, int value) => unchecked(new((Word & ~((ulong)mask << bit)) | ((ulong)value << bit)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Word64 Apply(in Word64 keep, in Word64 set) => new((Word & keep.Word) | set.Word);

    public Word64 Turned() => new(~Word);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public ulong Mix() => HashMixing.Mix(Word);
}

/// <summary>Up to 128 bits.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Word128(ulong Low, ulong High) : IPackedState<Word128>
{
    public static int Bits => 128;

    public static int WordBits => 64;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public int Field(int bit, int mask) => unchecked((int)((bit < 64 ? Low : High) >> (bit & 63)) & mask);

    public Word128 With(int bit, int mask, int value)
    {
        var (clear, set) = unchecked((~((ulong)mask << (bit & 63)), (ulong)value << (bit & 63)));
        return bit < 64 ? new((Low & clear) | set, High) : new(Low, (High & clear) | set);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Word128 Apply(in Word128 keep, in Word128 set) => new((Low & keep.Low) | set.Low, (High & keep.High) | set.High);

    public Word128 Turned() => new(~Low, ~High);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public ulong Mix() => unchecked(HashMixing.Mix(Low) ^ HashMixing.Mix(High + 0x9E3779B97F4A7C15UL));
}

/// <summary>Up to 4,096 bits: the box of two thousand parts.</summary>
internal readonly struct WordMany : IPackedState<WordMany>
{
    private readonly Row words;

    private WordMany(Row words) => this.words = words;

    public static int Bits => 64 * Row.Length;

    public static int WordBits => 64;

    public int Field(int bit, int mask) => unchecked((int)(words[bit >> 6] >> (bit & 63)) & mask);

    public WordMany With(int bit, int mask, int value)
    {
        var next = words;
        next[bit >> 6] = unchecked((words[bit >> 6] & ~((ulong)mask << (bit & 63))) | ((ulong)value << (bit & 63)));
        return new(next);
    }

    public WordMany Apply(in WordMany keep, in WordMany set)
    {
        var next = words;
        for (var i = 0; i < Row.Length; i++)
            next[i] = (words[i] & keep.words[i]) | set.words[i];
        return new(next);
    }

    public WordMany Turned()
    {
        var next = words;
        for (var i = 0; i < Row.Length; i++)
            next[i] = ~words[i];
        return new(next);
    }

    public ulong Mix()
    {
        var mixed = 0UL;
        for (var i = 0; i < Row.Length; i++)
            mixed = HashMixing.Mix(unchecked((mixed * 0x9E3779B97F4A7C15UL) + words[i]));
        return mixed;
    }

    public bool Equals(WordMany other) => ((ReadOnlySpan<ulong>)words).SequenceEqual(other.words);

    public override bool Equals(object? obj) => obj is WordMany other && Equals(other);

    public override int GetHashCode() => Mix().GetHashCode();

    [InlineArray(Length)]
    private struct Row
    {
        public const int Length = 64;
        private ulong first;
    }
}

/// <summary>Spreads the bits of a word over all of it.</summary>
internal static class HashMixing
{
    /// <summary>Two rounds of multiply and fold; the constants are odd and otherwise arbitrary.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ulong Mix(ulong word)
    {
        unchecked
        {
            word *= 0x9E3779B97F4A7C15UL;
            word ^= word >> 32;
            word *= 0xD6E8FEB86659FD93UL;
            return word ^ (word >> 32);
        }
    }
}
