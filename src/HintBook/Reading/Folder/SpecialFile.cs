using System.Runtime.InteropServices;
using System.Text;

namespace HintBook.Reading.Folder;

/// <summary>
/// Tells pipes, sockets and devices from files and folders without opening them: opening a pipe waits until somebody writes into it, which
/// may be never. The runtime offers no such question, so the system is asked: on Linux by <c>statx</c> (Linux man-pages, statx(2)), on
/// macOS by <c>stat</c> (Apple's man pages, stat(2)). Elsewhere nothing counts as special.
/// </summary>
internal static class SpecialFile
{
    // POSIX.1-2017, <sys/stat.h>: what the upper four bits of a mode are on every system in use.
    private const int KindBits = 0xF000;
    private const int Pipe = 0x1000;
    private const int CharacterDevice = 0x2000;
    private const int BlockDevice = 0x6000;
    private const int Socket = 0xC000;

    private const int CurrentFolder = -100;
    private const uint KindAlone = 1;
    private const int RoomForAnswer = 256;
    private const int ModeOnLinux = 28;
    private const int ModeOnMac = 4;

    /// <summary>Whether a path leads, by links or not, to something that is neither a file nor a folder. False for what isn't there.</summary>
    public static bool Is(string path)
    {
        try
        {
            return ModeOf(Encoding.UTF8.GetBytes(path + "\0")) is { } mode && (mode & KindBits) is Pipe or CharacterDevice or BlockDevice or Socket;
        }
        catch (EntryPointNotFoundException)
        {
            // An older or smaller C library.
            return false;
        }
    }

    private static int? ModeOf(byte[] path)
    {
        var answer = new byte[RoomForAnswer];
        if (OperatingSystem.IsLinux())
            return StatX(CurrentFolder, path, 0, KindAlone, answer) == 0 ? BitConverter.ToUInt16(answer, ModeOnLinux) : null;
        if (!OperatingSystem.IsMacOS())
            return null;
        var asked = RuntimeInformation.ProcessArchitecture == Architecture.Arm64 ? Stat(path, answer) : Stat64(path, answer);
        return asked == 0 ? BitConverter.ToUInt16(answer, ModeOnMac) : null;
    }

    [DllImport("libc", EntryPoint = "statx")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int StatX(int folder, byte[] path, int flags, uint mask, [Out] byte[] answer);

    [DllImport("libc", EntryPoint = "stat")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Stat(byte[] path, [Out] byte[] answer);

    [DllImport("libc", EntryPoint = "stat$INODE64")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Stat64(byte[] path, [Out] byte[] answer);
}
