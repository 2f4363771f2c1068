namespace HintBook.Workbench.Looking;

/// <summary>
/// Tells when something below a folder changes. Survives that the folder is taken away and comes back: its parent is watched for its name.
/// Sleeps while nothing happens.
/// </summary>
internal sealed class FolderWatch : IDisposable
{
    // In bytes: room for the names of a thousand quick saves.
    private const int BufferSize = 64 * 1024;

    private readonly string root;
    private readonly Action changed;
    private readonly FileSystemWatcher? parent;
    private readonly Lock gate = new();
    private FileSystemWatcher? inside;
    private bool disposed;

    /// <summary>Begins to watch.</summary>
    /// <param name="root">The folder's full path.</param>
    /// <param name="changed">Called on any thread, and often more than once for one save.</param>
    public FolderWatch(string root, Action changed)
    {
        this.root = root;
        this.changed = changed;
        if (Path.GetDirectoryName(root) is { } above)
        {
            parent = new(above, Path.GetFileName(root)) { NotifyFilter = NotifyFilters.DirectoryName };
            parent.Created += (_, _) => Begin();
            parent.Renamed += (_, _) => Begin();
            parent.Deleted += (_, _) => changed();
            parent.EnableRaisingEvents = true;
        }

        Begin();
    }

    public void Dispose()
    {
        lock (gate)
        {
            disposed = true;
            inside?.Dispose();
        }

        parent?.Dispose();
    }

    // Begun anew when the folder is back, and when so much happened at once that some of it wasn't told.
    private void Begin()
    {
        lock (gate)
        {
            inside?.Dispose();
            inside = disposed ? null : Inside();
        }

        changed();
    }

    // Null while the folder is away; the parent tells when it is back.
    private FileSystemWatcher? Inside()
    {
        try
        {
            var watcher = new FileSystemWatcher(root) { IncludeSubdirectories = true, InternalBufferSize = BufferSize };
            watcher.Changed += Told;
            watcher.Created += Told;
            watcher.Deleted += Told;
            watcher.Renamed += Told;
            watcher.Error += (_, _) => Begin();
            watcher.EnableRaisingEvents = true;
            return watcher;
        }
        catch (Exception failure) when (failure is IOException or ArgumentException)
        {
            return null;
        }
    }

    // What a publish writes, and what hidden programs keep for themselves, isn't the book.
    private void Told(object sender, FileSystemEventArgs change)
    {
        if (change.Name is { } name && !BookPaths.IsOutside(name))
            changed();
    }
}
