using System.Runtime.CompilerServices;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Packed;

/// <summary>What one core needs to find the states after a state.</summary>
internal sealed class Expander(Machine machine, Layout layout)
{
    /// <summary>Why there is no going on when the box never comes to rest.</summary>
    public const string NoRest = "its reactions never settle";

    private readonly Successors<Word64> successors = new(machine, layout);
    private readonly Settling<Word64> settling = new(machine, layout);

    /// <summary>The states after the last one asked about.</summary>
    public Word64[] Next { get; } = new Word64[machine.Acts.Sum(act => act.When.Length) + 1];

    /// <summary>The act that leads to each of them.</summary>
    public int[] Acts { get; } = new int[machine.Acts.Sum(act => act.When.Length) + 1];

    /// <summary>What the last part found first.</summary>
    public List<ulong> Found { get; } = [];

    /// <summary>The places of states that the last part found no room for.</summary>
    public List<int> Left { get; } = [];

    /// <summary>Whether the box was somewhere without rest.</summary>
    public bool Restless { get; private set; }

    /// <summary>Brings a state to rest; false if it never rests.</summary>
    public bool Settle(ref Word64 state) => !settling.Any || settling.Settle(ref state) == Rest.Settled;

    /// <summary>Finds the states after a state, at rest.</summary>
    /// <returns>How many there are, or -1 where the box never rests.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public int Of(ulong state)
    {
        var count = successors.Of(new Word64(state), Next, Acts);
        if (!settling.Any)
            return count;
        for (var s = 0; s < count; s++)
        {
            if (settling.MayFollow(Acts[s]) && !Settle(ref Next[s]))
                return -1;
        }

        return count;
    }

    /// <summary>Finds what comes after a part of a layer while others do the same with theirs.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Part(PackedNumberList states, int first, int end, VisitedSet seen, long room)
    {
        Found.Clear();
        Left.Clear();
        for (var i = first; i < end; i++)
        {
            var count = Of(states[i]);
            if (count < 0)
            {
                Restless = true;
                return;
            }

            for (var s = 0; s < count; s++)
            {
                var met = Found.Count >= room ? VisitedSet.Met.NoRoom : seen.AddAmongOthers(Next[s].Word);
                if (met == VisitedSet.Met.First)
                    Found.Add(Next[s].Word);
                if (met != VisitedSet.Met.NoRoom)
                    continue;
                Left.Add(i);
                break;
            }
        }
    }
}
