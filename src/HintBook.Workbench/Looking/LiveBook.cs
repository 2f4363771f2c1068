using System.Threading.Channels;
using HintBook.Checking;
using HintBook.Text;

namespace HintBook.Workbench.Looking;

/// <summary>
/// A book that is looked at again whenever one of its files changes. Only what a change touches is worked out again
/// (<see cref="RunResults"/>). Changes that come while a look is taken are answered by one more.
/// </summary>
public sealed class LiveBook : IAsyncDisposable
{
    // A save in several steps (an editor that writes beside and renames) is over after this.
    private static readonly TimeSpan Settling = TimeSpan.FromMilliseconds(8);

    private readonly Channel<bool> changes = Channel.CreateBounded<bool>(new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropWrite });
    private readonly CancellationTokenSource stop = new();
    private readonly RunResults results = new();
    private readonly FolderWatch watch;
    private readonly Task looking;
    private readonly Newest<Look> looks = new(Look.None, look => look.Number);

    /// <summary>Begins to look at a book.</summary>
    /// <param name="root">The book's folder.</param>
    public LiveBook(string root)
    {
        Root = Path.TrimEndingDirectorySeparator(Path.GetFullPath(root));
        watch = new(Root, () => changes.Writer.TryWrite(true));
        changes.Writer.TryWrite(true);
        looking = Task.Run(KeepLooking);
    }

    /// <summary>The book's folder, as a full path.</summary>
    public string Root { get; }

    /// <summary>Completes when the book is looked at no more, with what nobody expected if that was the reason.</summary>
    public Task Ended => looking;

    /// <summary>The newest look.</summary>
    public Look Now => looks.Now;

    /// <summary>Has the book looked at again although nobody told of a change.</summary>
    public void LookAgain() => changes.Writer.TryWrite(true);

    /// <summary>Waits for a look that is newer than one.</summary>
    /// <param name="number">The number of the look that is known already.</param>
    /// <param name="ended">Ends the waiting.</param>
    /// <exception cref="OperationCanceledException">The waiting was ended, or the book is looked at no more.</exception>
    public Task<Look> After(int number, CancellationToken ended) => looks.After(number, ended);

    /// <summary>Ends the looking.</summary>
    public async ValueTask DisposeAsync()
    {
        watch.Dispose();
        await stop.CancelAsync().ConfigureAwait(false);
        changes.Writer.TryComplete();
        await looking.ConfigureAwait(false);
        looks.End();
        stop.Dispose();
    }

    private async Task KeepLooking()
    {
        while (await changes.Reader.WaitToReadAsync().ConfigureAwait(false))
        {
            if (Now.Number > 0)
                await Task.Delay(Settling).ConfigureAwait(false);
            changes.Reader.TryRead(out _);
            if (Found() is { } found)
                looks.Tell(look => look.Next(found));
        }
    }

    // Files that vanish while they are read are a change by themselves, which is answered by the next look.
    private Checked? Found()
    {
        try
        {
            var found = Check.Run(Root, new() { Results = results, Stop = stop.Token });
            return stop.IsCancellationRequested ? null : found;
        }
        catch (Exception failure) when (failure is IOException and not FileLoadException or UnauthorizedAccessException or OperationCanceledException)
        {
            return null;
        }
    }
}
