using System.Diagnostics;

namespace HintBook.Browser.Tests.Sites;

/// <summary>A disk of a few hundred kilobytes, in memory (Linux, tmpfs); whoever may not mount one skips the test.</summary>
internal sealed class SmallDisk : IDisposable
{
    private const int Block = 4096;

    private readonly string folder;

    private SmallDisk(string folder) => this.folder = folder;

    private string Filler => Path.Combine(folder, ".filler");

    /// <summary>Puts one at a folder.</summary>
    public static SmallDisk At(string folder)
    {
        Directory.CreateDirectory(folder);
        Assert.SkipUnless(OperatingSystem.IsLinux() && Environment.IsPrivilegedProcess, "Only Linux mounts a small disk in memory, and only as root.");
        Assert.SkipUnless(Run("mount", "-t", "tmpfs", "-o", "size=1m", "tmpfs", folder), "No disk in memory may be mounted here.");
        return new(folder);
    }

    /// <summary>Fills it to the last block.</summary>
    public void Fill()
    {
        try
        {
            using var filler = new FileStream(Filler, FileMode.Append, FileAccess.Write, FileShare.Read, bufferSize: 0);
            while (true)
                filler.Write(new byte[Block]);
        }
        catch (IOException)
        {
            // It is full.
        }
    }

    /// <summary>Makes room again.</summary>
    public void Empty() => File.Delete(Filler);

    public void Dispose() => Run("umount", "-l", folder);

    private static bool Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { UseShellExecute = false, RedirectStandardError = true });
        process?.WaitForExit();
        return process?.ExitCode == 0;
    }
}
