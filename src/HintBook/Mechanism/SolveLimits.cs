using System.Runtime.InteropServices;

namespace HintBook.Mechanism;

/// <summary>How much an exploration may use before it ends in "not proved".</summary>
/// <param name="Memory">Bytes for states, tables and edges of all that is kept at the same time.</param>
/// <param name="Time">From the start of the verb. It only shortens: what a machine without haste can prove is decided by the other two.</param>
/// <param name="Reduce">Whether the reductions may be used; without them every state is looked at.</param>
/// <param name="States">States that may be looked at in all explorations together; one that takes long to look at counts as several.</param>
/// <param name="Plainly">A box of at most so many states is looked at state by state before anything clever is tried.</param>
public sealed record SolveLimits(
    long Memory, TimeSpan Time, bool Reduce = true, long States = SolveLimits.MostStates, int Plainly = SolveLimits.FewStates)
{
    /// <summary>How many states are looked at where nobody says otherwise: less than half a minute of work.</summary>
    public const long MostStates = 20_000_000;

    /// <summary>How many states are looked at sooner than it takes to find out what needn't be.</summary>
    public const int FewStates = 30_000;

    /// <summary>What some memory allows: with more of it more states are looked at, too.</summary>
    /// <param name="mebibytes">The memory in MiB.</param>
    /// <param name="time">The longest time.</param>
    public static SolveLimits Of(int mebibytes, TimeSpan time) => Default with
    {
        Memory = (long)mebibytes << 20,
        Time = time,
        States = Math.Max(MostStates, (long)(MostStates * ((double)((long)mebibytes << 20) / Default.Memory))),
    };

    /// <summary>1 GiB, and no haste: the verdict is the same on every machine and under every load.</summary>
    public static SolveLimits Default { get; } = new(1L << 30, TimeSpan.MaxValue);
}

/// <summary>How far an exploration has come.</summary>
/// <param name="States">States stored so far.</param>
/// <param name="Frontier">States of the layer being explored.</param>
/// <param name="Seconds">Time since the start.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct SolveProgress(long States, long Frontier, double Seconds);
