namespace HintBook.Mechanism.Tours;

/// <summary>A set of duties, one bit for each.</summary>
internal sealed class DutySet
{
    private const int Bits = 64;
    private readonly ulong[] words;

    private DutySet(ulong[] words) => this.words = words;

    /// <summary>A set.</summary>
    /// <param name="count">How many duties there are.</param>
    /// <param name="duties">Those in it.</param>
    public static DutySet Of(int count, IEnumerable<int> duties)
    {
        var set = new DutySet(new ulong[(count + Bits - 1) / Bits]);
        foreach (var duty in duties)
            set.Add(duty);
        return set;
    }

    /// <summary>Another set with the same in it.</summary>
    public DutySet Copy() => new((ulong[])words.Clone());

    /// <summary>Has in it what another has, and nothing else.</summary>
    public void Become(DutySet other) => other.words.CopyTo(words, 0);

    /// <summary>Whether a duty is in it.</summary>
    public bool Has(int duty) => (words[duty / Bits] >> (duty % Bits) & 1) != 0;

    /// <summary>Adds a duty.</summary>
    public void Add(int duty) => words[duty / Bits] |= 1UL << (duty % Bits);

    /// <summary>Adds what a deed does.</summary>
    public void Add(Deed deed)
    {
        if (deed.Own >= 0)
            Add(deed.Own);
        foreach (var seen in deed.Seen)
            Add(seen);
    }

    /// <summary>Adds all of another set.</summary>
    public void Add(DutySet other)
    {
        for (var i = 0; i < words.Length; i++)
            words[i] |= other.words[i];
    }

    /// <summary>Another set that has in it what a deed does and all of a third set as well.</summary>
    public DutySet With(Deed deed, DutySet other)
    {
        var all = Copy();
        all.Add(deed);
        all.Add(other);
        return all;
    }

    /// <summary>Takes a duty out; false if it isn't in it.</summary>
    public bool Remove(int duty)
    {
        var had = Has(duty);
        words[duty / Bits] &= ~(1UL << (duty % Bits));
        return had;
    }

    /// <summary>Whether all of another set is in it.</summary>
    public bool Covers(DutySet other)
    {
        for (var i = 0; i < words.Length; i++)
        {
            if ((other.words[i] & ~words[i]) != 0)
                return false;
        }

        return true;
    }
}
