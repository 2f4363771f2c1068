using System.Diagnostics;
using HintBook.Publishing;
using HintBook.Publishing.Films;
using HintBook.Text;

namespace HintBook.Workbench.Making;

/// <summary>Publishes and prints a book, one at a time, by the same calls as the verbs, and tells how far it has come. Thread-safe.</summary>
/// <param name="root">The book's folder, as a full path.</param>
internal sealed class Workshop(string root) : IAsyncDisposable
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(100);

    private readonly Lock gate = new();
    private readonly Newest<MakeState> states = new(new(0, false, ""), state => state.Number);
    private CancellationTokenSource stop = new();
    private Task work = Task.CompletedTask;
    private long lastTold;

    /// <summary>Where it is.</summary>
    public MakeState Now => states.Now;

    /// <summary>Begins; false where something is being made already.</summary>
    /// <param name="asked">What.</param>
    /// <param name="address">Where the site will live, or null.</param>
    public bool Begin(MakeAsked asked, string? address)
    {
        lock (gate)
        {
            if (Now.Running)
                return false;
            stop.Dispose();
            stop = new();
            var ended = stop.Token;
            Tell(new(0, true, "The book is being checked."));
            work = Task.Run(() => Tell(Made(asked, address, ended)), CancellationToken.None);
            return true;
        }
    }

    /// <summary>Ends the work before its time; what was published before stays.</summary>
    public void Stop()
    {
        lock (gate)
            stop.Cancel();
    }

    /// <summary>Waits for a state that is newer than one.</summary>
    /// <param name="number">The number of the state that is known.</param>
    /// <param name="ended">Ends the waiting.</param>
    /// <exception cref="OperationCanceledException">The waiting was ended, or the workbench is.</exception>
    public Task<MakeState> After(int number, CancellationToken ended) => states.After(number, ended);

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        Stop();
        await work.ConfigureAwait(false);
        states.End();
        stop.Dispose();
    }

    private MakeState Made(MakeAsked asked, string? address, CancellationToken ended)
    {
        var options = new PublishOptions
        {
            Output = string.IsNullOrWhiteSpace(asked.Output) ? null : Path.GetFullPath(asked.Output.Trim(), root),
            Paper = asked.Paper ?? Cards.Paper.A4,
            FilmTools = FilmTools.OnPath(),
            Say = Say,
        };
        try
        {
            var outcome = asked.Kinds is { } kinds ? Pipeline.PrintPapers(root, kinds, options, ended) : Pipeline.Publish(root, options, ended);
            return outcome switch
            {
                Published(var report) => new(0, false, "")
                {
                    Done = true,
                    Lines = asked.Kinds is null ? ReportLines.OfPublish(report, address) : ReportLines.OfPrint(report),
                    Findings = report.Findings,
                },
                Rejected(var findings) => new(0, false, "")
                {
                    Done = false,
                    Lines =
                    [
                        $"Nothing was made: {Words.Count(findings.Count(Severity.Error), "error")} must be mended first. "
                            + "What was published before is untouched.",
                    ],
                    Findings = findings,
                },
                Failed failed => new(0, false, "") { Done = false, Lines = [failed.Message, failed.Help.Replace(" with --out", "", StringComparison.Ordinal)] },
                _ => throw new UnreachableException(),
            };
        }
        catch (Exception failure) when (failure is not OutOfMemoryException)
        {
            // The page must not wait for an end that never comes.
            return new(0, false, "") { Done = false, Lines = [$"Something happened that nobody expected: {failure.Message}"] };
        }
    }

    private void Say(PublishProgress news)
    {
        lock (gate)
        {
            // The rest is told with the next one; the end is told in any case.
            if (Stopwatch.GetElapsedTime(lastTold) < Pause)
                return;
            lastTold = Stopwatch.GetTimestamp();
            Tell(new(0, true, $"{news.Doing}: {news.Done} of {news.Of}"));
        }
    }

    private void Tell(MakeState state) => states.Tell(before => state with { Number = before.Number + 1 });
}
