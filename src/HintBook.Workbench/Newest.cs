namespace HintBook.Workbench;

/// <summary>The newest of a series of states, the next of which can be waited for. Thread-safe.</summary>
/// <typeparam name="T">A state.</typeparam>
/// <param name="first">The first state.</param>
/// <param name="numberOf">The number of a state; each has a greater one than the state before.</param>
internal sealed class Newest<T>(T first, Func<T, int> numberOf)
{
    private readonly Lock gate = new();
    private T now = first;
    private TaskCompletionSource next = Waiting();
    private bool isOver;

    /// <summary>The newest.</summary>
    public T Now
    {
        get
        {
            lock (gate)
                return now;
        }
    }

    /// <summary>Tells whoever waits of another state.</summary>
    /// <param name="after">The state after the newest one.</param>
    public void Tell(Func<T, T> after)
    {
        lock (gate)
        {
            now = after(now);
            if (isOver)
                return;
            next.SetResult();
            next = Waiting();
        }
    }

    /// <summary>Waits for another state than the one that is known.</summary>
    /// <param name="number">Its number; a page that was open before the program was started again knows a greater one than there is.</param>
    /// <param name="ended">Ends the waiting.</param>
    /// <exception cref="OperationCanceledException">The waiting was ended, or there will be no more states.</exception>
    public async Task<T> After(int number, CancellationToken ended)
    {
        while (true)
        {
            Task waiting;
            lock (gate)
            {
                if (numberOf(now) != number)
                    return now;
                waiting = next.Task;
            }

            await waiting.WaitAsync(ended).ConfigureAwait(false);
        }
    }

    /// <summary>Says that there will be no more states.</summary>
    public void End()
    {
        lock (gate)
        {
            isOver = true;
            next.TrySetCanceled();
        }
    }

    // Whoever waits goes on elsewhere than under the lock.
    private static TaskCompletionSource Waiting() => new(TaskCreationOptions.RunContinuationsAsynchronously);
}
