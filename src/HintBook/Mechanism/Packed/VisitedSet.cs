using System.Runtime.CompilerServices;

namespace HintBook.Mechanism.Packed;

/// <summary>
/// A set of numbers of few bits that only grows. First an open-addressed table in which a number costs four bytes a slot: where it stands says
/// most of its bits, so that only the others are kept, with the distance from home (Cleary 1984). As soon as a bit for each
/// number there can be takes no more room than the table, it is that instead. Several threads may add at the same time.
/// </summary>
internal sealed class VisitedSet
{
    private const int FewestHomeBits = 18;
    private const int BitsOfASlot = 5;
    private const int DistanceBits = 10;
    private const int MostDistance = (1 << DistanceBits) - 1;
    private readonly int bits;
    private int homeBits;
    private int restBits;
    private uint[]? slots;
    private ulong[] all = [];

    /// <summary>An empty set of numbers below 2 to the power of so many bits, at most <see cref="MostBits"/>.</summary>
    public VisitedSet(int bits)
    {
        this.bits = Math.Max(bits, 6);
        homeBits = FewestHomeBits;
        restBits = this.bits - homeBits;
        if (this.bits <= FewestHomeBits + BitsOfASlot)
            all = new ulong[1L << (this.bits - 6)];
        else
            slots = new uint[1 << homeBits];
    }

    /// <summary>What became of a number.</summary>
    public enum Met
    {
        /// <summary>It was there already.</summary>
        Before,

        /// <summary>It is there now.</summary>
        First,

        /// <summary>There is no room: <see cref="Grow"/> and try again.</summary>
        NoRoom,
    }

    /// <summary>The widest numbers it can hold.</summary>
    public static int MostBits => FewestHomeBits + 32 - DistanceBits;

    /// <summary>How many may be added before it must grow.</summary>
    public long Room => slots is null ? long.MaxValue : slots.Length / 4 * 3;

    /// <summary>Bytes held.</summary>
    public long Bytes => slots is null ? all.LongLength * sizeof(ulong) : slots.LongLength * sizeof(uint);

    /// <summary>Adds a number for the only thread there is.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Met Add(ulong number)
    {
        if (slots is not null)
            return AddToTable(number, alone: true);
        ref var word = ref all[number >> 6];
        var bit = 1UL << (int)(number & 63);
        if ((word & bit) != 0)
            return Met.Before;
        word |= bit;
        return Met.First;
    }

    /// <summary>Adds a number while others add theirs.</summary>
    public Met AddAmongOthers(ulong number)
    {
        if (slots is not null)
            return AddToTable(number, alone: false);
        ref var word = ref all[number >> 6];
        var bit = 1UL << (int)(number & 63);
        return (Volatile.Read(ref word) & bit) != 0 || (Interlocked.Or(ref word, bit) & bit) != 0 ? Met.Before : Met.First;
    }

    /// <summary>Makes twice the room. No other thread may be adding.</summary>
    public void Grow()
    {
        var (old, oldHome, oldRest) = (slots!, homeBits, restBits);
        do
        {
            (homeBits, restBits) = (homeBits + 1, restBits - 1);
            if (homeBits + BitsOfASlot >= bits)
                (slots, all) = (null, new ulong[1L << (bits - 6)]);
            else
                slots = new uint[1L << homeBits];
        }
        while (!AddAll(old, oldHome, oldRest));
    }

    private bool AddAll(uint[] old, int oldHome, int oldRest)
    {
        for (var slot = 0; slot < old.Length; slot++)
        {
            if (old[slot] == 0)
                continue;
            var entry = old[slot] - 1;
            var home = unchecked((ulong)(slot - (int)(entry & MostDistance)) & ((1UL << oldHome) - 1));
            if (Add(Unmix((home << oldRest) | (entry >> DistanceBits))) == Met.NoRoom)
                return false;
        }

        return true;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private Met AddToTable(ulong number, bool alone)
    {
        var mixed = Mix(number);
        var table = slots!;
        var home = (int)(mixed >> restBits);
        var rest = (uint)(mixed & ((1UL << restBits) - 1)) << DistanceBits;
        for (var distance = 0; distance < MostDistance; distance++)
        {
            ref var slot = ref table[(home + distance) & (table.Length - 1)];
            var entry = (rest | (uint)distance) + 1;
            var there = slot;
            if (there == 0)
            {
                if (alone)
                    slot = entry;
                else
                    there = Interlocked.CompareExchange(ref slot, entry, 0);
                if (there == 0)
                    return Met.First;
            }

            if (there == entry)
                return Met.Before;
        }

        return Met.NoRoom;
    }

    // Both ways lose nothing: an odd factor has an inverse, and folding the upper half down is undone by folding again.
    private ulong Mix(ulong number)
    {
        unchecked
        {
            var mask = (1UL << bits) - 1;
            number = (number * 0x9E3779B97F4A7C15UL) & mask;
            number ^= number >> ((bits + 1) / 2);
            return (number * 0xD6E8FEB86659FD93UL) & mask;
        }
    }

    private ulong Unmix(ulong mixed)
    {
        unchecked
        {
            var mask = (1UL << bits) - 1;
            mixed = (mixed * Inverse(0xD6E8FEB86659FD93UL)) & mask;
            mixed ^= mixed >> ((bits + 1) / 2);
            return (mixed * Inverse(0x9E3779B97F4A7C15UL)) & mask;
        }
    }

    // Newton's iteration doubles the right bits of the inverse each time.
    private static ulong Inverse(ulong odd)
    {
        unchecked
        {
            var inverse = odd;
            for (var i = 0; i < 6; i++)
                inverse *= 2 - (odd * inverse);
            return inverse;
        }
    }
}
