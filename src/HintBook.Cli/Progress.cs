using System.Diagnostics;
using HintBook.Mechanism;
using HintBook.Publishing;

namespace HintBook.Cli;

/// <summary>Says on standard error how far long work has come: from the first second on, at most five times a second, on one line that is drawn over.</summary>
internal sealed class Progress(Terminal terminal) : IDisposable, IProgress<SolveProgress>
{
    private static readonly TimeSpan Quiet = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(200);
    private static readonly TimeSpan LongPause = TimeSpan.FromSeconds(5);

    private readonly Lock drawing = new();
    private readonly Stopwatch watch = Stopwatch.StartNew();
    private TimeSpan last = TimeSpan.Zero;
    private int drawn;

    /// <summary>Takes news from any thread.</summary>
    public void Say(PublishProgress news) => Say($"{news.Doing}: {news.Done} of {news.Of}");

    /// <summary>Takes news of a search.</summary>
    public void Report(SolveProgress value)
    {
        var perSecond = (long)(value.States / Math.Max(0.001, value.Seconds));
        Say($"{SolutionText.Thousands(value.States)} states, {SolutionText.Thousands(value.Frontier)} of them to go on from, "
            + $"{SolutionText.Thousands(perSecond)} a second");
    }

    private void Say(string line)
    {
        var now = watch.Elapsed;
        if (now < Quiet || now - last < (terminal.Live ? Pause : LongPause))
            return;
        lock (drawing)
        {
            last = now;
            if (!terminal.Live)
            {
                terminal.Say(line);
                return;
            }

            terminal.Redraw(line, drawn);
            drawn = line.Length;
        }
    }

    /// <summary>Takes the line away.</summary>
    public void Clear()
    {
        if (drawn > 0)
            terminal.Erase(drawn);
        drawn = 0;
    }

    public void Dispose() => Clear();
}
