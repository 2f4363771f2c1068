namespace HintBook.Cli;

/// <summary>Tells a double click on the program from a command in a terminal, and both from a script.</summary>
internal static class DoubleClick
{
    /// <summary>
    /// Whether somebody double-clicked. Windows gives such a program a console of its own. Elsewhere a file manager gives it no terminal at all, as a script
    /// may, too; so there must be a screen that a browser can be opened on. (Finder on macOS opens a terminal for a program, which looks like a
    /// command; the download for macOS has a second file to click on.)
    /// </summary>
    public static bool Is(Surroundings around) => around.IsWindows
        ? around is { OwnsConsole: true, OutputIsTerminal: true, IsWatchedBySomebody: true }
        : around is { InputIsTerminal: false, OutputIsTerminal: false, ErrorIsTerminal: false, IsWatchedBySomebody: true };
}
