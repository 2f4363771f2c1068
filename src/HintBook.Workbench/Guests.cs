namespace HintBook.Workbench;

/// <summary>
/// Tells when the last page has been closed: each open page holds a request that waits for news. A workbench without a terminal has no other end.
/// Thread-safe.
/// </summary>
/// <param name="patience">How long nobody must be there; a page that is loaded again is away for a moment.</param>
public sealed class Guests(TimeSpan patience) : IDisposable
{
    private readonly Lock gate = new();
    private readonly TaskCompletionSource left = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private Timer? timer;
    private int here;

    /// <summary>Those of a workbench that is closed by Ctrl-C, however long nobody looks.</summary>
    public static Guests Unwatched => new(Timeout.InfiniteTimeSpan);

    /// <summary>Ends when nobody has been there for that long, after somebody was.</summary>
    public Task Left => left.Task;

    /// <summary>Somebody comes; they leave when what is given back is disposed of.</summary>
    public IDisposable Enter()
    {
        lock (gate)
        {
            here++;
            timer?.Dispose();
            timer = null;
        }

        return new Stay(this);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (gate)
        {
            timer?.Dispose();
            timer = null;
        }
    }

    private void Leave()
    {
        lock (gate)
        {
            here--;
            if (here == 0 && patience != Timeout.InfiniteTimeSpan)
                timer = new(_ => End(), null, patience, Timeout.InfiniteTimeSpan);
        }
    }

    private void End()
    {
        lock (gate)
        {
            if (here == 0)
                left.TrySetResult();
        }
    }

    private sealed class Stay(Guests guests) : IDisposable
    {
        public void Dispose() => guests.Leave();
    }
}
