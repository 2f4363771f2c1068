using System.ComponentModel;
using System.Diagnostics;

namespace HintBook.Tests.House;

/// <summary>
/// Packages from npm that tests ask for a second opinion. They are fetched once, into the build folder, and nothing of them is kept in the project.
/// </summary>
internal static class NpmPackage
{
    private static readonly Lock OneAtATime = new();

    /// <summary>A package's folder; where it can't be had the test is skipped and says why.</summary>
    public static string Have(string name, string version)
    {
        var (folder, missing) = Find(name, version);
        if (folder is null)
            Assert.Skip(missing!);
        return folder!;
    }

    /// <summary>A package's folder, or why it can't be had.</summary>
    public static (string? Folder, string? Missing) Find(string name, string version)
    {
        var home = Path.Combine(AppContext.BaseDirectory, $"{name}-{version}");
        var folder = Path.Combine(home, "node_modules", name);
        lock (OneAtATime)
        {
            if (Directory.Exists(folder))
                return (folder, null);
            Directory.CreateDirectory(home);
            try
            {
                var said = Install(home, $"{name}@{version}");
                return Directory.Exists(folder) ? (folder, null) : (null, $"npm could not bring {name} {version}: {said.Trim()}");
            }
            catch (Win32Exception)
            {
                return (null, $"This needs npm, to fetch {name} {version}.");
            }
        }
    }

    private static string Install(string home, string package)
    {
        var windows = OperatingSystem.IsWindows();
        string[] install = ["install", "--prefix", home, "--no-audit", "--no-fund", "--ignore-scripts", package];
        var start = new ProcessStartInfo(windows ? "cmd" : "npm", windows ? ["/c", "npm", .. install] : install)
        {
            UseShellExecute = false,
            RedirectStandardError = true,
            RedirectStandardOutput = true,
        };
        using var npm = Process.Start(start)!;
        npm.OutputDataReceived += (_, _) => { };
        npm.BeginOutputReadLine();
        var said = npm.StandardError.ReadToEnd();
        npm.WaitForExit();
        return said;
    }
}
