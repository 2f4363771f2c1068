using System.Globalization;
using System.Runtime.CompilerServices;

namespace HintBook.Mechanism;

/// <summary>Watches the limits of one run and tells how far it has come.</summary>
/// <param name="limits">What may be used.</param>
/// <param name="time">Where the time comes from.</param>
/// <param name="progress">Told a few times a second, after the first second.</param>
/// <param name="stop">Ends everything as soon as it is asked for.</param>
internal sealed class Budget(SolveLimits limits, TimeProvider time, IProgress<SolveProgress>? progress, CancellationToken stop)
{
    private long start = time.GetTimestamp();
    private double told = 1;

    /// <summary>Why the run had to stop, or null while it may go on.</summary>
    public string? Why { get; private set; }

    /// <summary>The limits.</summary>
    public SolveLimits Limits => limits;

    /// <summary>States stored in all explorations together.</summary>
    public long Stored { get; private set; }

    /// <summary>States looked at in all explorations that have ended, each as often as it counts.</summary>
    public long Used { get; private set; }

    /// <summary>Bytes that are kept of explorations that have ended.</summary>
    public long Held { get; private set; }

    /// <summary>Seconds since the start.</summary>
    public double Seconds => time.GetElapsedTime(start).TotalSeconds;

    /// <summary>Whether an exploration must stop; to be asked every few thousand states.</summary>
    /// <param name="states">States it has stored.</param>
    /// <param name="frontier">States of the layer being explored.</param>
    /// <param name="bytes">Bytes it holds.</param>
    /// <param name="each">As how many each of its states counts.</param>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public bool Spent(long states, long frontier, long bytes, int each = 1)
    {
        if (Why is not null)
            return true;
        var seconds = Seconds;
        if (progress is not null && seconds > told)
        {
            told = seconds + 0.25;
            progress.Report(new SolveProgress(Stored + states, frontier, seconds));
        }

        Why = stop.IsCancellationRequested ? "it was stopped"
            : bytes + Held > limits.Memory ? $"{limits.Memory >> 20} MiB were not enough for the states"
            : Used + (states * each) > limits.States ? string.Create(CultureInfo.InvariantCulture, $"{limits.States:#,0} states were not enough")
            : seconds > limits.Time.TotalSeconds ? $"{limits.Time.TotalSeconds:0.##} seconds were not enough"
            : null;
        return Why is not null;
    }

    /// <summary>Another budget that has used as much so far.</summary>
    /// <param name="held">Bytes that are kept meanwhile.</param>
    public Budget Fork(long held = 0) =>
        new(limits, time, progress, stop) { start = start, told = told, Why = Why, Stored = Stored, Used = Used, Held = Held + held };

    /// <summary>Counts what a fork of this budget has used.</summary>
    /// <param name="fork">The fork, made of this budget as it is now.</param>
    public void Join(Budget fork) => (Stored, Used) = (fork.Stored, fork.Used);

    /// <summary>Counts the states of an exploration that has ended.</summary>
    /// <param name="states">How many it stored.</param>
    /// <param name="each">As how many each of them counts.</param>
    public void Add(long states, int each = 1) => (Stored, Used) = (Stored + states, Used + (states * each));

    /// <summary>Lets a smaller exploration be tried after one that was too large, unless time is up.</summary>
    public void Forgive()
    {
        if (!stop.IsCancellationRequested && Seconds <= limits.Time.TotalSeconds)
            Why = null;
    }
}
