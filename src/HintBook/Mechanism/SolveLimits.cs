using System.Runtime.InteropServices;

namespace HintBook.Mechanism;

/// <summary>How much an exploration may use before it ends in "not proved".</summary>
/// <param name="Memory">Bytes for states, tables and edges together.</param>
/// <param name="Time">From the start of the verb.</param>
/// <param name="Reduce">Whether the reductions may be used; without them every state is looked at.</param>
public sealed record SolveLimits(long Memory, TimeSpan Time, bool Reduce = true)
{
    /// <summary>1 GiB and 30 seconds.</summary>
    public static SolveLimits Default { get; } = new(1L << 30, TimeSpan.FromSeconds(30));
}

/// <summary>How far an exploration has come.</summary>
/// <param name="States">States stored so far.</param>
/// <param name="Frontier">States of the layer being explored.</param>
/// <param name="Seconds">Time since the start.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct SolveProgress(long States, long Frontier, double Seconds);
