using System.Collections.Immutable;
using System.Globalization;
using HintBook.Checking;
using HintBook.Publishing;

namespace HintBook.Benchmarks.UnderLoad;

/// <summary>A disk that is full from some write on, or fails at one alone. What was published before stays, or the new version is there whole.</summary>
internal static class FullDisk
{
    /// <summary>At every write of a small book, and at some of a large one.</summary>
    public static IEnumerable<Tried> AtAnyWrite(int count, int seed)
    {
        yield return Run(3, 1, int.MaxValue, staysFull: true, "a disk that is full from a write on");
        yield return Run(3, 1, int.MaxValue, staysFull: false, "a disk that fails at one write");
        yield return Run(300, 30, count, staysFull: true, "a disk that is full from a write on");
    }

    private static Tried Run(int stages, int photos, int most, bool staysFull, string what)
    {
        using var desk = new Desk(stages, photos);
        MustPublish(desk, Looked(desk.Book, desk));
        desk.Change();
        var copy = desk.CopyOfBook();
        desk.Change();
        MustPublish(desk, Looked(desk.Book, desk));
        // Both versions are looked at when every address is kept that either has; then they are published many times, in turn.
        MustPublish(desk, Looked(copy, desk));
        var back = Looked(desk.Book, desk);
        MustPublish(desk, back);
        var sound = Looked(copy, desk);
        MustPublish(desk, sound);
        var fresh = Finished.Of(desk.Output);
        MustPublish(desk, back);
        var old = Finished.Of(desk.Output);
        var writes = Writes(desk, sound);
        MustPublish(desk, back);

        var failures = ImmutableArray.CreateBuilder<string>();
        var every = Math.Max(1, writes / most);
        var tried = 0;
        for (var full = 1; full <= writes && !LoadRuns.Stopped; full += every, tried++)
        {
            var where = string.Create(CultureInfo.InvariantCulture, $"{stages} stages, write {full} of {writes}");
            var outcome = Publish(desk, sound, full, staysFull);
            if (!IsTold(outcome))
                failures.Add(LoadRuns.Failed($"{where}: it ended as {outcome}"));
            failures.AddRange(Told(Finished.Of(desk.Output).Faults(old, fresh, Finished.KeptBy(desk))));
            MustPublish(desk, back);
            failures.AddRange(Told(Finished.Of(desk.Output).FaultsOfTheNext(desk, fresh.Cards.Concat(old.Cards))));

            IEnumerable<string> Told(IEnumerable<string> faults) => faults.Select(fault => LoadRuns.Failed($"{where}: {fault}"));
        }

        var which = every == 1 ? "at every" : string.Create(CultureInfo.InvariantCulture, $"at every {every}th");
        return new(string.Create(CultureInfo.InvariantCulture, $"{what}, {stages} stages, {which} of {writes}"), tried, failures.ToImmutable());
    }

    // Where only the book's own list didn't fit, the site is published and that is said.
    private static bool IsTold(PublishOutcome outcome) => outcome switch
    {
        Failed failed => failed.Kind == FailureKind.Machine,
        Published published => published.Report.Findings.All.Any(finding => finding.Code == AddressFindings.NotKeptCode),
        _ => false,
    };

    private static Sound Looked(string book, Desk desk) => Check.Run(book, new() { LastPublished = desk.Output }) as Sound
        ?? throw new InvalidOperationException("the made book isn't sound");

    private static void MustPublish(Desk desk, Sound sound)
    {
        if (Pipeline.Publish(sound, new PublishOptions { Output = desk.Output }) is not Published)
            throw new InvalidOperationException("the made book can't be published");
    }

    private static int Writes(Desk desk, Sound sound)
    {
        var writes = 0;
        Pipeline.Publish(sound, new PublishOptions
        {
            Output = desk.Output,
            Disk = new(step =>
            {
                if (step.Act is DiskAct.Write or DiskAct.Flush)
                    Interlocked.Increment(ref writes);
            }),
        });
        return writes;
    }

    private static PublishOutcome Publish(Desk desk, Sound sound, int full, bool staysFull)
    {
        var writes = 0;
        return Pipeline.Publish(sound, new PublishOptions
        {
            Output = desk.Output,
            Disk = new(step =>
            {
                if (step.Act is DiskAct.Write or DiskAct.Flush && Interlocked.Increment(ref writes) is var now && (now == full || (staysFull && now > full)))
                    throw new IOException("No space left on device");
            }),
        });
    }
}
