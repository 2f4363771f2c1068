using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Mechanism.Model;
using HintBook.Mechanism.Packed;
using HintBook.Tests.Mechanism;

namespace HintBook.Benchmarks.Mechanism;

/// <summary>How long the mechanism takes, and in how many states. The boxes are those of the tests.</summary>
internal static class MechanismNumbers
{
    /// <summary>One line for each box, to standard output, and beside it what a general-purpose checker does in the same run.</summary>
    public static int Print()
    {
        Reached("Chinese rings 20", Boxes.ChineseRings(20));
        Reached("Chinese rings 22", Boxes.ChineseRings(22));
        Reached("Tower of Hanoi 12", Boxes.Hanoi(12));
        Reached("8-puzzle", Boxes.EightPuzzle(8, [6, 4, 7, 8, 5, 0, 3, 2, 1]));
        Reached("20 loose parts", LargeBoxes.Loose(20), floored: false);
        Explore("Chinese rings 20", Boxes.ChineseRings(20));
        Explore("Tower of Hanoi 12", Boxes.Hanoi(12));
        Explore("8-puzzle", Boxes.EightPuzzle(8));
        Solve("24 parts behind a gate", LargeBoxes.Gated(24));
        Solve("60 parts behind a gate", LargeBoxes.Gated(60));
        Solve("200 parts behind a gate", LargeBoxes.Gated(200));
        Solve("200 free parts behind a gate", LargeBoxes.GatedFree(200));
        Solve("60 stages, 40 free parts", LargeBoxes.TrueToLife(60, 40));
        Solve("300 stages, 40 free parts", LargeBoxes.TrueToLife(300, 40));
        return 0;
    }

    // All states and the shortest way, without the acts between states: the best of five, the processor's time; then the same with two cores by the clock.
    private static void Reached(string name, Book book, bool floored = true)
    {
        var machine = Compiler.Compile(book);
        var (states, seconds, bytes, moves) = (0, double.MaxValue, 0.0, 0);
        var (one, two) = (double.MaxValue, double.MaxValue);
        for (var run = 0; run < 5; run++)
        {
            var (busy, watch) = (Environment.CpuUsage.TotalTime, Stopwatch.StartNew());
            var reach = BreadthFirst.Explore(machine, Unlimited())!;
            one = Math.Min(one, watch.Elapsed.TotalSeconds);
            moves = reach.WayToGoal()?.Count ?? -1;
            seconds = Math.Min(seconds, (Environment.CpuUsage.TotalTime - busy).TotalSeconds);
            (states, bytes) = (reach.Count, (double)reach.Bytes / reach.Count);
            watch.Restart();
            BreadthFirst.Explore(machine, Unlimited(), cores: 2);
            two = Math.Min(two, watch.Elapsed.TotalSeconds);
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{name,-32} {states,9} states, {moves} moves {states / seconds / 1e6,6:0.00} million states/s {bytes,6:0.0} bytes a state; "
            + $"two cores {one / two:0.00} times as fast"));
        if (floored && ModelChecker.Of(machine) is { } floor)
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{"    spin",-32} {floor.States,9} states {floor.States / floor.Seconds / 1e6,6:0.00} million states/s {floor.Bytes,6:0.0} bytes a state; "
                + $"ours {states / seconds / (floor.States / floor.Seconds):0.0} times as fast in {bytes / floor.Bytes:0.000} of the bytes"));
        }
    }

    private static Budget Unlimited() => new(SolveLimits.Default with { Time = TimeSpan.FromMinutes(10) }, TimeProvider.System, null, CancellationToken.None);

    private static void Explore(string name, Book book)
    {
        var machine = Compiler.Compile(book);
        for (var run = 0; run < 2; run++)
            ExploreOnce(name, machine);
    }

    // Not inlined, so that the previous graph is garbage when the memory of the next is measured.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void ExploreOnce(string name, Machine machine)
    {
        var held = GC.GetTotalMemory(forceFullCollection: true);
        var busy = Environment.CpuUsage.TotalTime;
        var graph = Exploration.Whole(machine, new Budget(SolveLimits.Default, TimeProvider.System, null, CancellationToken.None));
        var seconds = (Environment.CpuUsage.TotalTime - busy).TotalSeconds;
        var bytes = (double)(GC.GetTotalMemory(forceFullCollection: true) - held) / graph.Count;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{name,-32} {graph.Count,9} states {seconds,6:0.00} s of processor {graph.Count / seconds / 1e6,6:0.00} million states/s "
            + $"{bytes,6:0.0} bytes a state, acts between them included{(graph.Stopped is null ? "" : $" ({graph.Stopped})")}"));
        GC.KeepAlive(graph);
    }

    private static void Solve(string name, Book book)
    {
        for (var run = 0; run < 2; run++)
        {
            var watch = Stopwatch.StartNew();
            var busy = Environment.CpuUsage.TotalTime;
            var solution = Solver.Solve(book, SolveLimits.Default);
            var (real, processor) = (watch.Elapsed.TotalMilliseconds, (Environment.CpuUsage.TotalTime - busy).TotalMilliseconds);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{name,-32} {real,7:0} ms ({processor,6:0} of processor) {solution.States,9} states  {solution.Explored} "
                + $"opens {solution.Opens.Word}, shortest {solution.Shortest.Word}, no dead ends {solution.NoDeadEnds.Word}, "
                + $"exact {solution.Stages.Count(s => s.Exact)}/{solution.Stages.Length}, "
                + $"widest {solution.Widest.Count}{(solution.Widest.Exact ? "" : "?")}, orders {Short(solution.Orders.ToString())}"));
        }
    }

    private static string Short(string text) => text.Length < 30 ? text : $"{text[..20]}… ({text.Length} signs)";
}
