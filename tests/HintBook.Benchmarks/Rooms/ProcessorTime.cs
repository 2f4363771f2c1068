using System.Diagnostics;

namespace HintBook.Benchmarks.Rooms;

/// <summary>The processor time of this process, which a busy machine changes less than the clock.</summary>
internal static class ProcessorTime
{
    /// <summary>The least that an action took, in seconds.</summary>
    /// <param name="rounds">How often it is done.</param>
    /// <param name="action">The action.</param>
    public static double Best(int rounds, Action action) => Enumerable.Range(0, rounds).Min(_ =>
    {
        using var process = Process.GetCurrentProcess();
        process.Refresh();
        var start = process.TotalProcessorTime;
        action();
        process.Refresh();
        return (process.TotalProcessorTime - start).TotalSeconds;
    });
}
