using System.Diagnostics;

namespace HintBook.Tests.House;

/// <summary>Programs from Debian that tests ask for a second opinion. Where they may be installed they are; elsewhere the test is skipped and says why.</summary>
internal static class DebianProgram
{
    /// <summary>Makes sure that a program is there, or skips the test.</summary>
    public static void Have(string program, string package)
    {
        if (IsThere(program))
            return;
        if (File.Exists("/etc/debian_version") && Environment.UserName == "root")
        {
            Run("/", "apt-get", "update");
            Run("/", "apt-get", "install", "--yes", "--no-install-recommends", package);
        }

        if (!IsThere(program))
            Assert.Skip($"{program} is not installed here (on Debian: apt install {package}).");
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
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, program)));
}
