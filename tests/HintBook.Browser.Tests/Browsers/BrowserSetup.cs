using HintBook.Tests.House;

namespace HintBook.Browser.Tests.Browsers;

/// <summary>Finds a browser for the tests, or installs one.</summary>
/// <param name="find">The browser that is installed, or null.</param>
/// <param name="ways">How one can be installed here, tried in this order.</param>
internal sealed class BrowserSetup(Func<string?> find, params BrowserSetup.Way[] ways)
{
    /// <summary>The setup of this machine.</summary>
    /// <param name="own">Where Playwright keeps the browser that it installs itself.</param>
    public static BrowserSetup Here(string own) => new(
        () => InstalledBrowser.Find() ?? (File.Exists(own) ? own : null),
        DebianPackages.MayBeInstalled
            ? [new Way("apt-get install chromium", () => DebianPackages.Install("chromium") is null), ByPlaywright]
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

    /// <summary>One way of installing a browser.</summary>
    /// <param name="Command">What a person would type.</param>
    /// <param name="Install">Does it and says whether it went well.</param>
    internal sealed record Way(string Command, Func<bool> Install);
}
