using System.Diagnostics;
using System.Globalization;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Tests.Mechanism;

namespace HintBook.Benchmarks.Mechanism;

/// <summary>
/// Boxes with parts that can be shut again, each in a process of its own, as a user meets them: from the start of the process to all answers of
/// <c>solve</c>, and of <c>reset</c>. The boxes are made in memory, so that reading a folder isn't in the times.
/// </summary>
internal static class BoxNumbers
{
    private const int Rounds = 3;

    private static readonly string Self = Path.Combine(AppContext.BaseDirectory, "HintBook.Benchmarks.dll");

    private static readonly (string Name, Func<Book> Make)[] Boxes =
    [
        ("24 parts that can be shut again", () => LargeBoxes.Shutting(24)),
        ("60 parts that can be shut again", () => LargeBoxes.Shutting(60)),
        ("200 parts that can be shut again", () => LargeBoxes.Shutting(200)),
        ("30 drawers with the next key", () => LargeBoxes.Drawers(30)),
        ("60 drawers with the next key", () => LargeBoxes.Drawers(60)),
        ("200 drawers with the next key", () => LargeBoxes.Drawers(200)),
        ("6 rooms, 30 stages", () => LargeBoxes.Rooms(6)),
        ("60 rooms, 300 stages", () => LargeBoxes.Rooms(60)),
        ("a tree of 21 stages with free parts", () => LargeBoxes.Tree(21)),
        ("4 dials of 60", () => LargeBoxes.Dials(4)),
        ("5 dials of 60", () => LargeBoxes.Dials(5)),
        ("gripper with 16 balls", () => Tests.Mechanism.Boxes.Gripper(16)),
        ("a walk over 5 x 5 squares", () => LargeBoxes.Visits(5)),
        ("Tower of Hanoi 5", () => Tests.Mechanism.Boxes.Hanoi(5)),
        ("8-puzzle", () => Tests.Mechanism.Boxes.EightPuzzle(8, [6, 4, 7, 8, 5, 0, 3, 2, 1])),
    ];

    /// <summary>A row of the table for each box.</summary>
    public static int Print()
    {
        Console.WriteLine("| box | solve | reset | memory | answers not proved |");
        Console.WriteLine("|---|---|---|---|---|");
        foreach (var (name, _) in Boxes)
        {
            var (solve, reset) = (Measured("solve", name), Measured("reset", name));
            var open = string.Join(", ", new[] { solve.Open, reset.Open }.Where(words => words.Length > 0));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"| {name} | {solve.Seconds:0.00} s | {reset.Seconds:0.00} s | {Math.Max(solve.Bytes, reset.Bytes) >> 20} MiB | {open} |"));
        }

        return 0;
    }

    /// <summary>What the process of one row does; it prints what isn't proved, and the most memory that it took.</summary>
    public static int RunOne(string verb, string name)
    {
        var book = Boxes.First(box => box.Name == name).Make();
        var open = verb == "solve" ? Open(Solver.Solve(book, SolveLimits.Default)) : Open(ResetPlan.Find(book, SolveLimits.Default));
        Console.WriteLine(string.Join(", ", open));
        Console.WriteLine(Process.GetCurrentProcess().PeakWorkingSet64.ToString(CultureInfo.InvariantCulture));
        return 0;
    }

    private static IEnumerable<string> Open(Solution solution)
    {
        foreach (var (what, claim) in new[]
        {
            ("opens", solution.Opens),
            ("shortest", solution.Shortest),
            ("dead ends", solution.NoDeadEnds),
            ("shortcuts", solution.NoOtherShortcuts),
        })
        {
            if (claim is Claim.NotProved)
                yield return what;
        }

        if (!solution.Stages.All(stage => stage.Exact))
            yield return "stages";
        if (!solution.Widest.Exact)
            yield return "widest";
        if (!solution.Orders.Exact)
            yield return "orders";
    }

    private static IEnumerable<string> Open(ResetPlan plan) => plan.Possible is Claim.NotProved ? ["reset"] : [];

    private static (double Seconds, long Bytes, string Open) Measured(string verb, string name)
    {
        var (seconds, bytes, open) = (double.MaxValue, 0L, "");
        for (var round = 0; round < Rounds; round++)
        {
            var watch = Stopwatch.StartNew();
            using var process = Process.Start(new ProcessStartInfo("dotnet", [Self, "box", verb, name])
            {
                RedirectStandardOutput = true,
                UseShellExecute = false,
            })!;
            open = process.StandardOutput.ReadLine() ?? "";
            bytes = Math.Max(bytes, long.Parse(process.StandardOutput.ReadLine() ?? "0", CultureInfo.InvariantCulture));
            process.WaitForExit();
            seconds = Math.Min(seconds, watch.Elapsed.TotalSeconds);
        }

        return (seconds, bytes, open);
    }
}
