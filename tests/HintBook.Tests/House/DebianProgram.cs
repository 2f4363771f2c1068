using System.Collections.Concurrent;
using System.Diagnostics;

namespace HintBook.Tests.House;

/// <summary>
/// Programs from Debian that tests ask for a second opinion. Where they may be installed they are; elsewhere the test is skipped and says why.
/// </summary>
internal static class DebianProgram
{
    // What went wrong with a package is asked once in a run.
    private static readonly ConcurrentDictionary<string, Lazy<string?>> Installed = new(StringComparer.Ordinal);

    /// <summary>Makes sure that a program is there, or skips the test.</summary>
    public static void Have(string program, string package) => Have(program, package, () => IsThere(program));

    /// <summary>Makes sure that what packages bring is there, or skips the test.</summary>
    /// <param name="what">What it is called.</param>
    /// <param name="packages">The packages, with spaces between them.</param>
    /// <param name="isThere">Whether it is there.</param>
    public static void Have(string what, string packages, Func<bool> isThere)
    {
        if (isThere())
            return;
        var failed = DebianPackages.MayBeInstalled ? Installed.GetOrAdd(packages, new Lazy<string?>(() => DebianPackages.Install(packages))).Value : null;
        if (!isThere())
            Assert.Skip($"{what} is not installed here (on Debian: apt install {packages}). {failed}".TrimEnd());
    }

    /// <summary>Runs a program in a folder and gives what it printed.</summary>
    public static string Run(string folder, string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments) { WorkingDirectory = folder, RedirectStandardOutput = true, UseShellExecute = false };
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return output;
    }

    /// <summary>Whether a program is on the path.</summary>
    public static bool IsThere(string program) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            .Any(folder => File.Exists(Path.Combine(folder, OperatingSystem.IsWindows() ? program + ".exe" : program)));
}
