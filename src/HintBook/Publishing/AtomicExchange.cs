using System.Runtime.InteropServices;
using System.Text;

namespace HintBook.Publishing;

/// <summary>
/// Exchanges two folders in one step, where the system offers that: on Linux, by <c>renameat2</c> with <c>RENAME_EXCHANGE</c> (Linux
/// man-pages, rename(2)).
/// </summary>
internal static class AtomicExchange
{
    private const int CurrentFolder = -100;
    private const uint Exchange = 2;

    /// <summary>True if the two have changed places; false if the system can't do it, and then nothing has happened.</summary>
    public static bool Try(string one, string other)
    {
        if (!OperatingSystem.IsLinux())
            return false;
        try
        {
            return RenameAt2(CurrentFolder, Terminated(one), CurrentFolder, Terminated(other), Exchange) == 0;
        }
        catch (EntryPointNotFoundException)
        {
            // An older or smaller C library.
            return false;
        }
    }

    private static byte[] Terminated(string path) => Encoding.UTF8.GetBytes(path + "\0");

    [DllImport("libc", EntryPoint = "renameat2")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int RenameAt2(int oldFolder, byte[] oldPath, int newFolder, byte[] newPath, uint flags);
}
