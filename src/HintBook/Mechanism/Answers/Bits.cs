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

    /// <summary>One number alone.</summary>
    public static Bits With(int size, int number) => new(size) { [number] = true };

    /// <summary>The least number in it; -1 if there is none.</summary>
    public int First
    {
        get
        {
            var w = words.AsSpan().IndexOfAnyExcept(0UL);
            return w < 0 ? -1 : (w << 6) + BitOperations.TrailingZeroCount(words[w]);
        }
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

    /// <summary>A starting value and what the numbers in it weigh, added in order.</summary>
    /// <param name="weights">By number its weight.</param>
    /// <param name="start">The starting value.</param>
    public double Weigh(double[] weights, double start)
    {
        for (var w = 0; w < words.Length; w++)
        {
            for (var left = words[w]; left != 0; left &= left - 1)
                start += weights[(w << 6) + BitOperations.TrailingZeroCount(left)];
        }

        return start;
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

    /// <summary>A set with the numbers in a row of words.</summary>
    /// <param name="size">Numbers from 0 up to this one, excluded.</param>
    /// <param name="row">Their bits, none above the size.</param>
    public static Bits Of(int size, ReadOnlySpan<ulong> row)
    {
        var set = new Bits(size);
        row.CopyTo(set.words);
        return set;
    }

    /// <summary>Whether all of it is in another set.</summary>
    public bool IsWithin(Bits other)
    {
        for (var w = 0; w < words.Length; w++)
        {
            if ((words[w] & ~other.words[w]) != 0)
                return false;
        }

        return true;
    }

    /// <summary>Whether it has a number in common with another set.</summary>
    public bool Overlaps(Bits other)
    {
        for (var w = 0; w < words.Length; w++)
        {
            if ((words[w] & other.words[w]) != 0)
                return true;
        }

        return false;
    }

    /// <summary>Whether it has no number.</summary>
    public bool IsEmpty => !words.AsSpan().ContainsAnyExcept(0UL);

    /// <summary>A set of the numbers that are in both.</summary>
    public Bits Both(Bits other)
    {
        var both = Copy();
        both.And(other);
        return both;
    }

    /// <summary>A set of the numbers that aren't in another.</summary>
    public Bits Without(Bits other)
    {
        var left = Copy();
        for (var w = 0; w < words.Length; w++)
            left.words[w] &= ~other.words[w];
        return left;
    }

    /// <summary>Compares sets of one size by what is in them. Sets that are keys must not change.</summary>
    public static IEqualityComparer<Bits> ByContent { get; } = EqualityComparer<Bits>.Create(
        (one, other) => one is null ? other is null : other is not null && one.words.AsSpan().SequenceEqual(other.words),
        set =>
        {
            var hash = 17UL;
            foreach (var word in set.words)
                hash = unchecked((hash ^ word) * 0x9E3779B97F4A7C15UL) ^ (hash >> 29);
            return unchecked((int)(hash >> 32));
        });

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
