using System.Collections.Immutable;
using System.Globalization;
using HintBook.Publishing;

namespace HintBook.Benchmarks.UnderLoad;

/// <summary>
/// Kills a publish of a large book. After each kill the site is whole and of one version, every printed address stands in a list, and the next
/// publish succeeds and leaves nothing lying about.
/// </summary>
internal static class Kills
{
    /// <summary>A book with 300 stages and 30 photos.</summary>
    public static readonly (int Stages, int Photos) Large = (300, 30);

    /// <summary>A book with 12 stages and 4 photos.</summary>
    public static readonly (int Stages, int Photos) Small = (12, 4);

    /// <summary>At moments drawn by chance from the whole processor time of a publish.</summary>
    public static IEnumerable<Tried> AtRandom((int Stages, int Photos) size, int count, int seed)
    {
        using var desk = new Desk(size.Stages, size.Photos);
        using var round = new Rounds(desk);
        var length = round.Length();
        var dice = new Random(seed);
        var ended = 0;
        var tried = 0;
        for (var i = 0; i < count && !LoadRuns.Stopped; i++, tried++)
        {
            var at = length * dice.NextDouble();
            round.Make($"kill {i} after {at.TotalMilliseconds:0} of {length.TotalMilliseconds:0} ms of processor time", () =>
            {
                using var running = Running.Start(["dotnet", Ran.Program, .. desk.Publish]);
                if (running.Spend(at) < at)
                    ended++;
                running.Kill();
                running.End(TimeSpan.FromMinutes(1));
            });
        }

        var told = ended == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $", {ended} of them too late");
        yield return new($"kills at moments by chance, {Told(size)}{told}", tried, round.Failures);
    }

    /// <summary>
    /// At every system call of the last second that flushes or renames, and at so many of the removals that follow. Where there is no <c>strace</c>, at
    /// every step of our own <c>Disk</c> from the first list on.
    /// </summary>
    public static IEnumerable<Tried> AtEveryCall((int Stages, int Photos) size, int removals)
    {
        using var desk = new Desk(size.Stages, size.Photos);
        using var round = new Rounds(desk);
        round.Length();
        if (!SystemCalls.CanBeCounted)
        {
            desk.Change();
            var steps = StepKill.Last(desk);
            for (var step = steps.First; step <= steps.Last && !LoadRuns.Stopped; step++)
                round.Make($"kill before step {step}", () => StepKill.Run(desk, step));
            yield return new(
                "kills before each step of `Disk` (no strace here) from the first list of addresses on, " + Told(size),
                steps.Last - steps.First + 1,
                round.Failures);
            yield break;
        }

        foreach (var calls in new[] { SystemCalls.OfTheSwap(desk), SystemCalls.Removals(desk) })
        {
            desk.Change();
            var found = calls.InTheLastSecond();
            round.Publish("the publish after the count");
            var every = calls.AreAlike ? Math.Max(1, found.Length / removals) : 1;
            var (tried, killed) = (0, 0);
            for (var i = 0; i < found.Length && !LoadRuns.Stopped; i += every, tried++)
                round.Make($"kill at {found[i]} of {calls.Name}", () => killed += calls.KillAt(found[i]) ? 1 : 0);
            var which = every == 1 ? "every one" : string.Create(CultureInfo.InvariantCulture, $"every {every}th");
            var count = string.Create(CultureInfo.InvariantCulture, $"{which} of {found.Length}, {killed} of them in time");
            var failures = killed > 0 || tried == 0 ? round.Failures : round.Failures.Add(LoadRuns.Failed($"{calls.Name}: none of {tried} kills came in time"));
            yield return new($"kills at {calls.Name} in the last second: {count} (strace), {Told(size)}", tried, failures);
            round.Failures = [];
        }
    }

    private static string Told((int Stages, int Photos) size) => string.Create(CultureInfo.InvariantCulture, $"{size.Stages} stages and {size.Photos} photos");

    /// <summary>A change, a publish that is cut, a look at what it left, and the publish after it: again and again.</summary>
    private sealed class Rounds(Desk desk) : IDisposable
    {
        private readonly HashSet<string> printed = new(StringComparer.Ordinal);
        private Finished old = new([], []);

        public ImmutableArray<string> Failures { get; set; } = [];

        /// <summary>Publishes what the rounds begin with.</summary>
        /// <returns>The processor time that a publish by the program takes after a change.</returns>
        public TimeSpan Length()
        {
            Publish("the first publish");
            desk.Change();
            using var running = Running.Start(["dotnet", Ran.Program, .. desk.Publish]);
            var length = running.Spend(TimeSpan.MaxValue);
            running.End(TimeSpan.Zero);
            Publish("the second publish");
            return length;
        }

        /// <summary>Publishes, and takes what is there then for the last whole version.</summary>
        public void Publish(string what)
        {
            var outcome = Pipeline.Publish(desk.Book, new PublishOptions { Output = desk.Output });
            if (outcome is not Published)
                Failures = Failures.Add(LoadRuns.Failed($"{what}: the publish that followed ended as {outcome}"));
            old = Finished.Of(desk.Output);
        }

        public void Make(string what, Action cut)
        {
            desk.Change();
            cut();
            var (found, kept, before) = (Finished.Of(desk.Output), Finished.KeptBy(desk), old);
            Publish(what);
            var faults = found.Faults(before, old, kept).Concat(old.FaultsOfTheNext(desk, printed));
            Failures = [.. Failures, .. faults.Select(fault => LoadRuns.Failed($"{what}: {fault}"))];
            printed.UnionWith(found.Cards);
            printed.UnionWith(old.Cards);
        }

        public void Dispose() => Failures = [];
    }
}
