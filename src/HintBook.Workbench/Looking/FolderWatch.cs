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
            inside = null;
            if (disposed || !Directory.Exists(root))
                return;
            try
            {
                inside = new(root) { IncludeSubdirectories = true, InternalBufferSize = BufferSize };
                inside.Changed += Told;
                inside.Created += Told;
                inside.Deleted += Told;
                inside.Renamed += Told;
                inside.Error += (_, _) => Begin();
                inside.EnableRaisingEvents = true;
            }
            catch (Exception failure) when (failure is IOException or ArgumentException)
            {
                // Gone again meanwhile; the parent tells when it is back.
            }
        }

        changed();
    }

    // What a publish writes, and what hidden programs keep for themselves, isn't the book.
    private void Told(object sender, FileSystemEventArgs change)
    {
        if (change.Name is { } name && !BookPaths.IsOutside(name))
            changed();
    }
}
