using System.Diagnostics;
using System.Globalization;
using HintBook.Publishing;

namespace HintBook.Benchmarks.UnderLoad;

/// <summary>A publish that kills its own process before a step on the disk: for systems without strace.</summary>
internal static class StepKill
{
    /// <summary>The command of this program that does it.</summary>
    public const string Command = "publish-killed";

    /// <summary>Publishes to the end and counts the steps from the first list of addresses on.</summary>
    public static (int First, int Last) Last(Desk desk)
    {
        var (first, count) = (0, 0);
        var outcome = Publish(desk.Book, desk.Output, step =>
        {
            var number = Interlocked.Increment(ref count);
            if (first == 0 && Path.GetFileName(step.Path).StartsWith("kept-addresses", StringComparison.Ordinal))
                first = number;
        });
        return outcome is Published ? (first, count) : throw new InvalidOperationException($"{outcome}");
    }

    /// <summary>Runs it in a process of its own.</summary>
    public static void Run(Desk desk, int step) => Ran.By(
        "dotnet",
        Path.Combine(AppContext.BaseDirectory, "HintBook.Benchmarks.dll"),
        Command,
        desk.Book,
        desk.Output,
        step.ToString(CultureInfo.InvariantCulture));

    /// <summary>What that process does.</summary>
    public static int Here(string book, string output, string step)
    {
        var (count, last) = (0, int.Parse(step, CultureInfo.InvariantCulture));
        return Publish(book, output, _ =>
        {
            if (Interlocked.Increment(ref count) == last)
                Process.GetCurrentProcess().Kill();
        }) is Published ? 0 : 1;
    }

    private static PublishOutcome Publish(string book, string output, Action<DiskStep> before) =>
        Pipeline.Publish(book, new PublishOptions { Output = output, Disk = new(before) });
}
