namespace HintBook.Browser.Tests.Browsers;

/// <summary>Where a Chromium-like browser usually lives, by operating system.</summary>
internal static class InstalledBrowser
{
    private static readonly string[] Commands =
    [
        "chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome", "microsoft-edge", "microsoft-edge-stable", "msedge",
    ];

    private static readonly string[] OnLinux = ["/opt/google/chrome/chrome", "/opt/microsoft/msedge/msedge", "/snap/bin/chromium"];

    private static readonly string[] OnMac =
    [
        "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
        "/Applications/Chromium.app/Contents/MacOS/Chromium",
        "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
    ];

    private static readonly string[] OnWindows =
    [
        @"Google\Chrome\Application\chrome.exe", @"Chromium\Application\chrome.exe", @"Microsoft\Edge\Application\msedge.exe",
    ];

    /// <summary>The first one that is there, or null.</summary>
    public static string? Find() => Find(Environment.GetEnvironmentVariable("PATH") ?? "", File.Exists);

    /// <summary>The same for a given search path and disk.</summary>
    public static string? Find(string path, Func<string, bool> exists) => InUsualPlaces().Concat(OnPath(path)).FirstOrDefault(exists);

    private static IEnumerable<string> InUsualPlaces()
    {
        if (OperatingSystem.IsMacOS())
            return OnMac;
        if (!OperatingSystem.IsWindows())
            return OnLinux;
        string[] roots = ["ProgramFiles", "ProgramFiles(x86)", "LOCALAPPDATA"];
        return roots.Select(Environment.GetEnvironmentVariable).OfType<string>().SelectMany(root => OnWindows.Select(program => Path.Combine(root, program)));
    }

    private static IEnumerable<string> OnPath(string path) =>
        from folder in path.Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
        from command in Commands
        select Path.Combine(folder, OperatingSystem.IsWindows() ? command + ".exe" : command);
}
