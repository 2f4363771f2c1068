using System.Runtime.InteropServices;

namespace HintBook.Cli;

/// <summary>How a process was started, as far as it can see that itself.</summary>
/// <param name="IsWindows">Whether the system is Windows.</param>
/// <param name="InputIsTerminal">Whether a terminal is at standard input.</param>
/// <param name="OutputIsTerminal">Whether a terminal is at standard output.</param>
/// <param name="ErrorIsTerminal">Whether a terminal is at standard error.</param>
/// <param name="OwnsConsole">On Windows, whether no other process shares the console.</param>
/// <param name="IsWatchedBySomebody">Whether there is a screen with somebody before it, and not a build server or another computer.</param>
internal sealed record Surroundings(
    bool IsWindows, bool InputIsTerminal, bool OutputIsTerminal, bool ErrorIsTerminal, bool OwnsConsole, bool IsWatchedBySomebody)
{
    /// <summary>Those of this process.</summary>
    public static Surroundings OfThisProcess() => new(
        OperatingSystem.IsWindows(),
        !Console.IsInputRedirected,
        !Console.IsOutputRedirected,
        !Console.IsErrorRedirected,
        OperatingSystem.IsWindows() && ProcessesOfConsole(new uint[2], 2) == 1,
        IsWatched(Environment.GetEnvironmentVariable));

    /// <summary>Whether the environment speaks of somebody before a screen.</summary>
    /// <param name="variable">Gives the value of a variable, or null.</param>
    internal static bool IsWatched(Func<string, string?> variable)
    {
        var isElsewhere = IsSet("CI") || IsSet("SSH_CONNECTION");
        var hasScreen = OperatingSystem.IsWindows() || OperatingSystem.IsMacOS() || IsSet("DISPLAY") || IsSet("WAYLAND_DISPLAY");
        return hasScreen && !isElsewhere;

        bool IsSet(string name) => !string.IsNullOrEmpty(variable(name));
    }

    // learn.microsoft.com, GetConsoleProcessList: the number of processes attached to the console of the caller, 0 where it has none.
    [DllImport("kernel32", EntryPoint = "GetConsoleProcessList")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static extern uint ProcessesOfConsole([Out] uint[] processes, uint count);
}
