using HintBook.Reading.Folder;

namespace HintBook.Publishing;

/// <summary>What is done to the disk in one step.</summary>
internal enum DiskAct
{
    /// <summary>A file's content is written or copied.</summary>
    Write,

    /// <summary>A file's content is carried from the system's memory to the disk.</summary>
    Flush,

    /// <summary>A file or a folder gets another place, or two folders change places.</summary>
    Rename,

    /// <summary>A file or a folder is removed.</summary>
    Delete,
}

/// <summary>One step.</summary>
/// <param name="Act">What is done.</param>
/// <param name="Path">The full path of what it is done to.</param>
internal readonly record struct DiskStep(DiskAct Act, string Path);

/// <summary>All that a publish does to the disk, step by step.</summary>
/// <param name="before">Called before each step, from any thread; tests throw here what a full disk or a power cut would be.</param>
internal sealed class Disk(Action<DiskStep>? before = null)
{
    private const int MostBeside = 9;

    private static readonly EnumerationOptions NoLinks = new()
    {
        RecurseSubdirectories = true,
        AttributesToSkip = FileAttributes.ReparsePoint,
    };

    /// <summary>Whether two folders may change places in one step, where the system can do that.</summary>
    public bool Exchanges { get; init; } = true;

    /// <summary>Writes a file that is of no use before the swap.</summary>
    public void Write(string path, ReadOnlyMemory<byte> content)
    {
        Step(DiskAct.Write, path);
        File.WriteAllBytes(path, content.Span);
    }

    /// <summary>Copies a file over whatever is there.</summary>
    public void Copy(string source, string path)
    {
        Step(DiskAct.Write, path);
        File.Copy(source, path, overwrite: true);
    }

    /// <summary>Copies a file and changes the copy before anything else reads it.</summary>
    public void Copy(string source, string path, Action<FileStream> change)
    {
        Copy(source, path);
        // A copy is as well kept from writing as what it was made from.
        File.SetAttributes(path, FileAttributes.Normal);
        Step(DiskAct.Write, path);
        using var copy = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.None);
        change(copy);
    }

    /// <summary>Writes a file that is there whole or not at all, and is on the disk itself when this returns.</summary>
    public void Keep(string path, ReadOnlyMemory<byte> content)
    {
        Step(DiskAct.Write, path + ".new");
        using (var file = OpenBeside(path))
        {
            try
            {
                file.Write(content.Span);
                Step(DiskAct.Flush, file.Name);
                file.Flush(flushToDisk: true);
                // Held until it has its place, so that nobody takes it for one that was left over. Others may read it there already.
                Step(DiskAct.Rename, path);
                File.Move(file.Name, path, overwrite: true);
            }
            catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
            {
                file.Dispose();
                File.Delete(file.Name);
                throw;
            }
        }

        RemoveLeftOver(path);
    }

    // A name of its own: another program may be about to put the same file in its place, or a cut has left one there.
    private static FileStream OpenBeside(string path)
    {
        for (var number = 0; ; number++)
        {
            try
            {
                return new FileStream(Beside(path, number), FileMode.CreateNew, FileAccess.Write, FileShare.Read | FileShare.Delete);
            }
            catch (IOException) when (number < MostBeside && SingleFile.IsThere(Beside(path, number)))
            {
                // It is another's.
            }
        }
    }

    // What nobody is writing any more was left by a cut. A link or a pipe of that name is none of ours.
    private void RemoveLeftOver(string path)
    {
        foreach (var name in Enumerable.Range(0, MostBeside + 1).Select(number => Beside(path, number)))
        {
            if (!File.Exists(name) || new FileInfo(name).LinkTarget is not null || SpecialFile.Is(name))
                continue;
            try
            {
                using (new FileStream(name, FileMode.Open, FileAccess.Write, FileShare.None))
                    Step(DiskAct.Delete, name);
                File.Delete(name);
            }
            catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
            {
                // It is held, or has just been put in its place.
            }
        }
    }

    private static string Beside(string path, int number) => number == 0 ? path + ".new" : $"{path}.new-{number}";

    /// <summary>Moves a file over whatever is there.</summary>
    public void Replace(string source, string path)
    {
        Step(DiskAct.Rename, path);
        File.Move(source, path, overwrite: true);
    }

    /// <summary>Moves a folder to where there is nothing.</summary>
    public void Move(string folder, string path)
    {
        Step(DiskAct.Rename, path);
        Directory.Move(folder, path);
    }

    /// <summary>Puts a folder in the place of another, which takes its own place if that can be done in one step.</summary>
    /// <param name="next">The folder that comes.</param>
    /// <param name="last">The folder that goes, or the place where there is none yet.</param>
    /// <param name="aside">Where the one that goes is kept if it takes two steps.</param>
    public void Exchange(string next, string last, string aside)
    {
        if (Exchanges && Directory.Exists(last))
        {
            Step(DiskAct.Rename, last);
            if (AtomicExchange.Try(next, last))
                return;
        }

        if (Directory.Exists(last))
            Move(last, aside);
        Move(next, last);
    }

    /// <summary>Removes a file.</summary>
    public void Delete(string path)
    {
        Step(DiskAct.Delete, path);
        File.Delete(path);
    }

    /// <summary>Removes a folder that is ours with all that is in it. Nothing is removed through a link.</summary>
    public void Clear(string folder)
    {
        if (!Directory.Exists(folder))
            return;
        foreach (var file in Directory.EnumerateFiles(folder, "*", NoLinks).Order(StringComparer.Ordinal).ToArray())
            Delete(file);
        Step(DiskAct.Delete, folder);
        Directory.Delete(folder, recursive: true);
    }

    private void Step(DiskAct act, string path) => before?.Invoke(new(act, path));
}
