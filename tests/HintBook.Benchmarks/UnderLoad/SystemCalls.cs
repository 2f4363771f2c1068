using System.Globalization;

namespace HintBook.Benchmarks.UnderLoad;

/// <summary>
/// Some of the system calls that change something on the disk, counted on the main thread of a publish, which does all that matters at its end. Debian's
/// strace counts them and kills at one of them before it is carried out (strace(1), "inject"). It counts whatever files they are about, so only calls that
/// the threads which write pages don't share in can be found again by their number: not the writes themselves.
/// </summary>
internal sealed class SystemCalls
{
    private readonly Desk desk;
    private readonly string calls;

    private SystemCalls(string name, Desk desk, string calls, bool areAlike) => (Name, this.desk, this.calls, AreAlike) = (name, desk, calls, areAlike);

    /// <summary>Whether there is a strace here.</summary>
    public static bool CanBeCounted { get; } = OperatingSystem.IsLinux()
        && (Environment.GetEnvironmentVariable("PATH") ?? "").Split(':').Any(folder => File.Exists(Path.Combine(folder, "strace")));

    /// <summary>What they are, for the table.</summary>
    public string Name { get; }

    /// <summary>Whether they all do the same, so that some stand for all.</summary>
    public bool AreAlike { get; }

    /// <summary>The calls that carry the lists to the disk, put them in their place and swap the folders.</summary>
    public static SystemCalls OfTheSwap(Desk desk) =>
        new("flushes and renames of the lists and the folders", desk, "fsync,fdatasync,rename,renameat,renameat2", areAlike: false);

    /// <summary>The calls that take away the last version, file by file.</summary>
    public static SystemCalls Removals(Desk desk) => new("removals of files of the last version", desk, "unlink,unlinkat,rmdir", areAlike: true);

    /// <summary>Publishes to the end and counts.</summary>
    /// <returns>The calls of the last second in their order: what each is called, and which of that name it is on the main thread, from 1.</returns>
    public (string Call, int Number)[] InTheLastSecond()
    {
        var log = Path.Combine(desk.Root, "calls.txt");
        var ran = Strace(["--seccomp-bpf", "-ttt", "-o", log, "-e", $"trace={calls}"]);
        if (ran.Exit != 0)
            throw new InvalidOperationException($"strace ended with {ran.Exit}: {ran.Said}");
        // A line holds the thread, the time, and the call as it is written in C.
        var lines = File.ReadAllLines(log).Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Where(words => words.Length > 2).ToArray();
        File.Delete(log);
        var end = lines.Max(words => double.Parse(words[1], CultureInfo.InvariantCulture));
        // The thread that removes or renames is the main one.
        var main = lines.Last(words => words[2].StartsWith("unlink", StringComparison.Ordinal) || words[2].StartsWith("rename", StringComparison.Ordinal))[0];
        var counted = new Dictionary<string, int>(StringComparer.Ordinal);
        var found = new List<(string Call, int Number)>();
        foreach (var words in lines.Where(words => words[0] == main && words[2].Contains('(', StringComparison.Ordinal)))
        {
            var call = words[2].Split('(')[0];
            counted[call] = counted.GetValueOrDefault(call) + 1;
            if (double.Parse(words[1], CultureInfo.InvariantCulture) >= end - 1)
                found.Add((call, counted[call]));
        }

        return [.. found];
    }

    /// <summary>Publishes and is killed. strace 6.1 injects nothing under its own <c>--seccomp-bpf</c>, so every call of the process stops here.</summary>
    /// <param name="call">A name and a number: strace counts the calls of each name by itself.</param>
    /// <returns>Whether it was killed: a publish that made fewer calls has ended by itself.</returns>
    public bool KillAt((string Call, int Number) call) =>
        Strace(["-o", "/dev/null", "-e", $"trace={call.Call}", "-e", $"inject={call.Call}:signal=KILL:when={call.Number}"]).Exit != 0;

    private Ran Strace(string[] how) => Ran.By(["strace", "-f", "-qq", .. how, "dotnet", Ran.Program, .. desk.Publish]);
}
