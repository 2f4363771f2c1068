using System.Collections.Immutable;
using System.Globalization;

namespace HintBook.Benchmarks.UnderLoad;

/// <summary>What was tried under load.</summary>
/// <param name="What">What was done, as the table says it.</param>
/// <param name="Count">How many times.</param>
/// <param name="Failures">What wasn't as it must be, each with enough to try it again.</param>
internal sealed record Tried(string What, int Count, ImmutableArray<string> Failures);

/// <summary>
/// Kills, full disks, damaged files and crowds: nothing breaks, and nothing printed is lost. Prints the table that this folder's README quotes. What is drawn
/// by chance follows from a number that is printed and can be given again.
/// </summary>
internal static class LoadRuns
{
    private static readonly (string Name, int Count, Func<int, int, IEnumerable<Tried>> Run)[] Parts =
    [
        ("kills", 200, (count, seed) => Kills.AtRandom(Kills.Large, count, seed)),
        ("kills-of-a-small-book", 200, (count, seed) => Kills.AtRandom(Kills.Small, count, seed)),
        ("calls", 60, (count, _) => Kills.AtEveryCall(Kills.Large, count)),
        ("calls-of-a-small-book", 60, (count, _) => Kills.AtEveryCall(Kills.Small, count)),
        ("full-disk", 200, FullDisk.AtAnyWrite),
        ("books", 20_000, (count, seed) => [DamagedFiles.Books(count, seed)]),
        ("media", 10_000, (count, seed) => [DamagedFiles.Media(count, seed)]),
        ("two-at-once", 30, TwoAtOnce.Run),
        ("read-only", 1, ReadOnlyBook.Run),
    ];

    private static readonly CancellationTokenSource Stop = new();

    /// <summary>Whether Ctrl-C was pressed: then what has been tried so far is told, and nothing else is begun.</summary>
    public static bool Stopped => Stop.IsCancellationRequested;

    /// <summary>Tells a failure at once, and hands it on.</summary>
    public static string Failed(string failure)
    {
        Console.Error.WriteLine(failure);
        return failure;
    }

    /// <summary>Runs all parts, or one.</summary>
    /// <param name="args">Nothing; or the name of a part, how many times, and the number that chance begins with.</param>
    /// <returns>0 if nothing failed.</returns>
    public static int Run(string[] args)
    {
        var parts = args is [var name, ..] ? Array.FindAll(Parts, part => part.Name == name) : Parts;
        if (parts is [])
        {
            Console.Error.WriteLine($"Usage: HintBook.Benchmarks underload [{string.Join(" | ", Parts.Select(part => part.Name))} [COUNT [SEED]]]");
            return 2;
        }

        var seed = args is [_, _, var given, ..] ? int.Parse(given, CultureInfo.InvariantCulture) : Random.Shared.Next(1_000_000_000);
        Console.CancelKeyPress += (_, pressed) =>
        {
            pressed.Cancel = true;
            Stop.Cancel();
        };
        Console.WriteLine($"Chance begins with {seed}.\n\n| what was tried | how many | what failed |\n|---|---|---|");
        var failures = 0;
        foreach (var part in parts.TakeWhile(_ => !Stopped))
        {
            foreach (var tried in part.Run(args is [_, var count, ..] ? int.Parse(count, CultureInfo.InvariantCulture) : part.Count, seed))
            {
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {tried.What} | {tried.Count:N0} | {tried.Failures.Length} |"));
                failures += tried.Failures.Length;
            }
        }

        return failures == 0 ? 0 : 1;
    }
}
