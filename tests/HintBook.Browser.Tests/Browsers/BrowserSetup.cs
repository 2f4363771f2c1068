using System.Diagnostics;

namespace HintBook.Browser.Tests.Browsers;

/// <summary>Finds a browser for the tests, or installs one.</summary>
/// <param name="find">The browser that is installed, or null.</param>
/// <param name="ways">How one can be installed here, tried in this order.</param>
internal sealed class BrowserSetup(Func<string?> find, params BrowserSetup.Way[] ways)
{
    private const string AptGet = "/usr/bin/apt-get";

    /// <summary>The setup of this machine.</summary>
    /// <param name="own">Where Playwright keeps the browser that it installs itself.</param>
    public static BrowserSetup Here(string own) => new(
        () => InstalledBrowser.Find() ?? (File.Exists(own) ? own : null),
        OnDebianAsRoot()
            ? [new Way("apt-get install chromium", () => Run(AptGet, "update") && Run(AptGet, "install", "-y", "chromium")), ByPlaywright]
            : [ByPlaywright]);

    private static Way ByPlaywright { get; } = new("playwright install chromium", () => Microsoft.Playwright.Program.Main(["install", "chromium"]) == 0);

    /// <summary>The program to start. A missing browser is an error, not a skip: without one the tests prove nothing.</summary>
    /// <exception cref="InvalidOperationException">There is none and none could be installed.</exception>
    public string Browser()
    {
        if (find() is { } there)
            return there;
        foreach (var way in ways)
        {
            if (way.Install() && find() is { } fresh)
                return fresh;
        }

        var commands = string.Join("` and `", ways.Select(way => way.Command));
        throw new InvalidOperationException(
            $"The browser tests need Chromium, Chrome or Edge: none is installed, and `{commands}` failed; install one and run the tests again.");
    }

    private static bool OnDebianAsRoot() => OperatingSystem.IsLinux() && Environment.IsPrivilegedProcess && File.Exists(AptGet);

    private static bool Run(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments);
        start.Environment["DEBIAN_FRONTEND"] = "noninteractive";
        using var process = Process.Start(start);
        process?.WaitForExit();
        return process?.ExitCode == 0;
    }

    /// <summary>One way of installing a browser.</summary>
    /// <param name="Command">What a person would type.</param>
    /// <param name="Install">Does it and says whether it went well.</param>
    internal sealed record Way(string Command, Func<bool> Install);
}
