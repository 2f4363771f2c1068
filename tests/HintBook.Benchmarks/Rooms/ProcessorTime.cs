using System.Diagnostics;

namespace HintBook.Benchmarks.Rooms;

/// <summary>The processor time of this process, all its threads together, so that a busy machine counts less.</summary>
internal static class ProcessorTime
{
    /// <summary>How long something took, in seconds.</summary>
    public static double Of(Action action)
    {
        using var process = Process.GetCurrentProcess();
        process.Refresh();
        var start = process.TotalProcessorTime;
        action();
        process.Refresh();
        return (process.TotalProcessorTime - start).TotalSeconds;
    }

    /// <summary>The least that an action took, in seconds.</summary>
    /// <param name="rounds">How often it is done.</param>
    /// <param name="action">The action.</param>
    public static double Best(int rounds, Action action) => Enumerable.Range(0, rounds).Min(_ => Of(action));
}
