using System.Diagnostics;

namespace HintBook.Tests.House;

/// <summary>Installs what tests need, where they may: on Debian, as root. Several tests, test runs and people may install at once.</summary>
internal static class DebianPackages
{
    private const string AptGet = "/usr/bin/apt-get";

    // How long to wait for whoever else installs something.
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(10);

    /// <summary>Whether packages may be installed here.</summary>
    public static bool MayBeInstalled => OperatingSystem.IsLinux() && Environment.IsPrivilegedProcess && File.Exists(AptGet);

    /// <summary>Installs packages, and gives null if that went well, else why it didn't, in one line.</summary>
    /// <param name="packages">Their names, with spaces between them.</param>
    public static string? Install(string packages)
    {
        // Each test project is a process of its own, and both may come here at once.
        using var oneAtATime = new Mutex(initiallyOwned: false, @"Global\hintbook-apt-get");
        Take(oneAtATime);
        try
        {
            // A fresh machine has no lists of packages, and old lists name files that are gone.
            string[] install = ["install", "--no-install-recommends", .. packages.Split(' ')];
            return Run(install) is null ? null : Run("update") ?? Run(install);
        }
        finally
        {
            oneAtATime.ReleaseMutex();
        }
    }

    private static void Take(Mutex mutex)
    {
        try
        {
            mutex.WaitOne();
        }
        catch (AbandonedMutexException)
        {
            // Whoever had it was killed. It is ours now, and apt itself mends what was left half done.
        }
    }

    // The option makes apt wait for dpkg's lock. For those of its lists and its archives it doesn't wait (apt 2.6), so that it is asked again.
    private static string? Run(params string[] arguments)
    {
        for (var started = Stopwatch.StartNew(); ;)
        {
            var start = new ProcessStartInfo(AptGet, ["--yes", "-o", $"DPkg::Lock::Timeout={Patience.TotalSeconds:0}", .. arguments])
            {
                UseShellExecute = false,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            };
            start.Environment["DEBIAN_FRONTEND"] = "noninteractive";
            start.Environment["LC_ALL"] = "C";
            using var apt = Process.Start(start)!;
            apt.OutputDataReceived += (_, _) => { };
            apt.BeginOutputReadLine();
            var said = apt.StandardError.ReadToEnd();
            apt.WaitForExit();
            if (apt.ExitCode == 0)
                return null;
            if (!said.Contains("Could not get lock", StringComparison.Ordinal) || started.Elapsed > Patience)
            {
                var why = said.Split('\n').FirstOrDefault(line => line.StartsWith("E: ", StringComparison.Ordinal)) ?? said.Trim();
                return $"apt-get {arguments[0]} failed: {why}";
            }

            Thread.Sleep(TimeSpan.FromSeconds(1));
        }
    }
}
