using System.Text.Json;

namespace HintBook.Publishing;

/// <summary>
/// The folder that a publish writes: <c>site/</c>, <c>print/</c>, <c>moved/</c> and <c>report.json</c> for people, <c>.hintbook/</c> for
/// itself. Everything is written beside the last publish and swapped in at the end. Only files that a publish made are ever removed.
/// </summary>
internal sealed class OutputFolder : IDisposable
{
    /// <summary>The folders that are swapped.</summary>
    public static readonly string[] Swapped = ["site", "print", "moved"];

    /// <summary>The folder within it that a publish keeps for itself.</summary>
    public const string Own = ".hintbook";

    private const int TriesToClear = 12;
    private static readonly TimeSpan BetweenTries = TimeSpan.FromMilliseconds(20);
    private readonly FileStream hold;
    private readonly Disk disk;
    private readonly Lock clearing = new();
    private CancellationTokenRegistration stopped;
    private bool swapping;

    private OutputFolder(string root, FileStream hold, Disk disk)
    {
        Root = root;
        this.hold = hold;
        this.disk = disk;
    }

    public string Root { get; }

    /// <summary>Where the next publish grows.</summary>
    public string Next => Path.Combine(Root, Own, "next");

    /// <summary>Where photos are kept between publishes; may be deleted at any time.</summary>
    public string Cache => CacheIn(Root);

    /// <summary>The same of an output folder that isn't open.</summary>
    public static string CacheIn(string root) => Path.Combine(root, Own, "cache");

    private string MadeList => Path.Combine(Root, Own, "made.json");

    private string Pending => Path.Combine(Root, Own, "swap.json");

    /// <summary>Opens or makes the folder and holds it, so that no second publish can work in it.</summary>
    /// <param name="path">The folder.</param>
    /// <param name="book">The book's folder, or the shelf's.</param>
    /// <param name="disk">Does the steps; null for the disk as it is.</param>
    /// <param name="stop">Clears what has been written until then away at once: the program may end before the work notices.</param>
    /// <exception cref="MachineFailure">It isn't ours, can't be written, or is held by another publish.</exception>
    public static OutputFolder Open(string path, string book, Disk? disk = null, CancellationToken stop = default)
    {
        var root = Path.GetFullPath(path);
        OutputPlace.Refuse(root, book);
        OutputPlace.RefuseLinks(root, Own);
        try
        {
            Directory.CreateDirectory(Path.Combine(root, Own));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new MachineFailure(
                FailureKind.Machine,
                $"The output folder “{path}” can't be made: {Reason(failure)}.",
                "Name another folder with --out.",
                failure);
        }

        var folder = new OutputFolder(root, Hold(root, path), disk ?? new Disk());
        try
        {
            folder.Recover();
        }
        catch
        {
            folder.hold.Dispose();
            throw;
        }

        folder.stopped = stop.Register(folder.ClearUnfinished);
        return folder;
    }

    /// <summary>Puts the next publish in the place of the last one.</summary>
    /// <param name="names">Which of <see cref="Swapped"/> change; the others, and the report beside them, stay as they are.</param>
    /// <param name="made">Every file of the next publish, relative to the folder, with forward slashes.</param>
    /// <param name="keepEarlier">Whether files that an earlier publish made in the folders that change stay where the next one makes no other.</param>
    /// <exception cref="MachineFailure">It was begun and could not be finished; the next publish finishes it.</exception>
    public void Swap(IReadOnlyCollection<string> names, IEnumerable<string> made, bool keepEarlier = false)
    {
        lock (clearing)
            swapping = true;
        var before = Made();
        var staying = before.Where(file => keepEarlier || !names.Any(name => file.StartsWith(name + "/", StringComparison.Ordinal)));
        var after = made.Union(staying).ToArray();
        CarryOver(names, keepEarlier ? [] : before);
        // An empty folder takes the place of one that there is no more.
        foreach (var name in names)
            Directory.CreateDirectory(Path.Combine(Next, name));
        // Both lists while the swap runs: whichever half of it a power cut leaves, its files are known as ours.
        WriteMade(before.Union(after));
        var swap = PendingSwap.To(Next, names, after);
        disk.Keep(Pending, swap.Write());
        try
        {
            Finish(swap);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new MachineFailure(
                FailureKind.Machine,
                $"The new version is ready, but putting it in the place of the last one was cut short: {Reason(failure)}.",
                "Publish again when that is mended: the change is finished first. No printed address is lost.",
                failure);
        }
    }

    /// <summary>Lets go of the folder and of whatever an unfinished publish left.</summary>
    public void Dispose()
    {
        stopped.Dispose();
        try
        {
            TryClear();
        }
        finally
        {
            hold.Dispose();
        }
    }

    // Files that are being written at the same time may keep their folder from going: it is tried again until they have ended.
    private void ClearUnfinished()
    {
        for (var left = TriesToClear; left > 0; left--)
        {
            lock (clearing)
            {
                if (swapping || TryClear())
                    return;
            }

            Thread.Sleep(BetweenTries);
        }
    }

    private bool TryClear()
    {
        try
        {
            // What a swap that was cut short has yet to put in its place lies there.
            if (!File.Exists(Pending))
                disk.Clear(Next);
            return true;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // The next publish clears it; failing here would hide why this one ended.
            return false;
        }
    }

    private static FileStream Hold(string root, string path)
    {
        try
        {
            return new FileStream(Path.Combine(root, Own, "hold"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw failure is IOException
                ? new MachineFailure(
                    FailureKind.Machine,
                    $"Another publish is at work in “{path}”.",
                    "Wait until it has ended, then publish again.",
                    failure)
                : new MachineFailure(
                    FailureKind.Machine,
                    $"The output folder “{path}” can't be written: {Reason(failure)}.",
                    "Name another folder with --out.",
                    failure);
        }
    }

    // A swap that was cut short is finished: what it puts in its place had been checked.
    private void Recover()
    {
        if (File.Exists(Pending) && PendingSwap.Read(File.ReadAllText(Pending)) is { } swap)
            Finish(swap);
        // Nothing was written down by version 0.1.0; a swap of it that was cut has left the last folder here.
        foreach (var name in Swapped.Where(name => !Directory.Exists(Path.Combine(Root, name))))
        {
            if (Directory.Exists(Path.Combine(Next, "last-" + name)))
                disk.Move(Path.Combine(Next, "last-" + name), Path.Combine(Root, name));
        }

        disk.Clear(Next);
    }

    private void Finish(PendingSwap swap)
    {
        swap.Finish(Root, Next, disk);
        WriteMade(swap.Made);
        disk.Clear(Next);
        disk.Delete(Pending);
    }

    // What the maker put among our files (a host's settings, say) goes along.
    private void CarryOver(IEnumerable<string> names, HashSet<string> before)
    {
        foreach (var name in names.Where(name => Directory.Exists(Path.Combine(Root, name))))
        {
            foreach (var (path, isLink) in OutputPlace.FilesAndLinksIn(Path.Combine(Root, name)))
            {
                var relative = Path.GetRelativePath(Root, path).Replace('\\', '/');
                var target = Path.Combine(Next, relative);
                if (before.Contains(relative) || Path.Exists(target))
                    continue;
                Directory.CreateDirectory(Path.GetDirectoryName(target)!);
                if (isLink)
                    File.CreateSymbolicLink(target, new FileInfo(path).LinkTarget ?? "");
                else
                    disk.Copy(path, target);
            }
        }
    }

    private HashSet<string> Made()
    {
        try
        {
            return JsonSerializer.Deserialize<HashSet<string>>(File.ReadAllText(MadeList)) ?? [];
        }
        catch (Exception failure) when (failure is IOException or JsonException)
        {
            // Without the list nothing counts as ours, so that nothing of the maker's can be lost.
            return [];
        }
    }

    private void WriteMade(IEnumerable<string> made) =>
        disk.Keep(MadeList, JsonSerializer.SerializeToUtf8Bytes(made.Order(StringComparer.Ordinal)));

    private static string Reason(Exception failure) =>
        failure is UnauthorizedAccessException ? "it isn't allowed" : failure.Message.TrimEnd('.');
}
