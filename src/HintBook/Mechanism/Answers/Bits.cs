using System.Numerics;

namespace HintBook.Mechanism.Answers;

/// <summary>A set of small numbers.</summary>
/// <param name="size">Numbers from 0 up to this one, excluded.</param>
internal sealed class Bits(int size)
{
    private readonly ulong[] words = new ulong[(size + 63) / 64];

    /// <summary>Numbers from 0 up to this one, excluded, may be in it.</summary>
    public int Size => size;

    /// <summary>Whether a number is in it.</summary>
    public bool this[int number]
    {
        get => (words[number >> 6] >> (number & 63) & 1) != 0;
        set => words[number >> 6] = value ? words[number >> 6] | (1UL << (number & 63)) : words[number >> 6] & ~(1UL << (number & 63));
    }

    /// <summary>All numbers.</summary>
    public static Bits All(int size)
    {
        var all = new Bits(size);
        for (var i = 0; i < size; i++)
            all[i] = true;
        return all;
    }

    /// <summary>The numbers in it, in order.</summary>
    public IEnumerable<int> Members()
    {
        for (var w = 0; w < words.Length; w++)
        {
            for (var left = words[w]; left != 0; left &= left - 1)
                yield return (w << 6) + BitOperations.TrailingZeroCount(left);
        }
    }

    /// <summary>Writes the numbers in it in order, from the start of a row that has room for all.</summary>
    /// <returns>How many there are.</returns>
    public int CopyTo(Span<int> row)
    {
        var count = 0;
        for (var w = 0; w < words.Length; w++)
        {
            for (var left = words[w]; left != 0; left &= left - 1)
                row[count++] = (w << 6) + BitOperations.TrailingZeroCount(left);
        }

        return count;
    }

    /// <summary>How many there are.</summary>
    public int Count() => words.Sum(BitOperations.PopCount);

    /// <summary>A set of its own with the same numbers.</summary>
    public Bits Copy()
    {
        var copy = new Bits(size);
        words.CopyTo(copy.words, 0);
        return copy;
    }

    /// <summary>Takes in all of another set.</summary>
    public void Or(Bits other)
    {
        for (var w = 0; w < words.Length; w++)
            words[w] |= other.words[w];
    }

    /// <summary>Keeps what is in a row of words too.</summary>
    public void And(ReadOnlySpan<ulong> other)
    {
        for (var w = 0; w < words.Length; w++)
            words[w] &= other[w];
    }

    /// <summary>Keeps what another set has too; whether that changed anything.</summary>
    public bool And(Bits other)
    {
        var changed = false;
        for (var w = 0; w < words.Length; w++)
        {
            var kept = words[w] & other.words[w];
            changed |= kept != words[w];
            words[w] = kept;
        }

        return changed;
    }
}
