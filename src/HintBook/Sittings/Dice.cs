namespace HintBook.Sittings;

/// <summary>
/// Numbers as if by chance, the same for the same seed on every machine: SplitMix64 (G. L. Steele, D. Lea and C. H. Flood, OOPSLA 2014). Not thread-safe.
/// </summary>
/// <param name="seed">Where it begins.</param>
public sealed class Dice(ulong seed)
{
    private ulong state = seed;

    /// <summary>The next 64 bits.</summary>
    public ulong Next()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15;
            var mixed = state;
            mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
            mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
            return mixed ^ (mixed >> 31);
        }
    }

    /// <summary>A number from 0 up to 1, which it never is.</summary>
    public double Share() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>One of the first so many whole numbers, from 0 on.</summary>
    public int Below(int count) => (int)(Share() * count);
}
