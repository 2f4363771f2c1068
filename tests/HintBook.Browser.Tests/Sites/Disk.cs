namespace HintBook.Browser.Tests.Sites;

/// <summary>What other programs write below a folder.</summary>
internal static class Disk
{
    // What is written into a folder below while the watch is being set up may be told by nobody: then it is found by looking again.
    private static readonly TimeSpan Untold = TimeSpan.FromMilliseconds(500);

    /// <summary>Waits until something holds, asking whenever a file below a folder has changed, and now and then; a minute at most.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="holds">What is waited for.</param>
    public static async Task Until(string folder, Func<bool> holds)
    {
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(60));
        using var told = new SemaphoreSlim(0);
        using var watch = new FileSystemWatcher(folder) { IncludeSubdirectories = true };
        watch.Changed += (_, _) => told.Release();
        watch.Created += (_, _) => told.Release();
        watch.Renamed += (_, _) => told.Release();
        watch.EnableRaisingEvents = true;
        while (!holds())
            await told.WaitAsync(Untold, patience.Token);
    }
}
