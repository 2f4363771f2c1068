using System.Globalization;

namespace HintBook.Benchmarks.UnderLoad;

/// <summary>
/// Some of the system calls that change something on the disk, counted on the main thread of a publish, which does all that matters at its end. Debian's
/// strace counts them and kills at one of them before it is carried out (strace(1), "inject").
/// </summary>
internal sealed class SystemCalls
{
    private const string Changing = "openat,creat,write,pwrite64,ftruncate,fsync,fdatasync,rename,renameat,renameat2,mkdir,symlink,link";

    private readonly Desk desk;
    private readonly string calls;
    private readonly string[] paths;

    private SystemCalls(string name, Desk desk, string calls, bool areAlike, params string[] paths)
    {
        (Name, this.desk, this.calls, AreAlike) = (name, desk, calls, areAlike);
        this.paths = [.. paths.SelectMany(path => new[] { "-P", path })];
    }

    /// <summary>Whether there is a strace here.</summary>
    public static bool CanBeCounted { get; } = OperatingSystem.IsLinux()
        && (Environment.GetEnvironmentVariable("PATH") ?? "").Split(':').Any(folder => File.Exists(Path.Combine(folder, "strace")));

    /// <summary>What they are, for the table.</summary>
    public string Name { get; }

    /// <summary>Whether they all do the same, so that some stand for all.</summary>
    public bool AreAlike { get; }

    /// <summary>The calls that name what the swap changes.</summary>
    public static SystemCalls OfTheSwap(Desk desk)
    {
        string[] folders = ["site", "print", "moved"];
        var own = Path.Combine(desk.Output, ".hintbook");
        return new(
            "system calls on the lists, the swap and what is swapped",
            desk,
            Changing + ",unlink,unlinkat,rmdir",
            areAlike: false,
            [
                .. new[] { "kept-addresses.txt", "addresses.lock" }.SelectMany(name => new[] { Path.Combine(desk.Book, name), Path.Combine(desk.Output, name) })
                    .Concat(new[] { "made.json", "swap.json" }.Select(name => Path.Combine(own, name)))
                    .SelectMany(list => new[] { list, list + ".new" }),
                .. folders.SelectMany(name => new[]
                {
                    Path.Combine(desk.Output, name), Path.Combine(own, "next", name), Path.Combine(own, "next", "last-" + name),
                }),
                Path.Combine(desk.Output, "report.json"), Path.Combine(own, "next", "report.json"), Path.Combine(own, "next"),
            ]);
    }

    /// <summary>The calls that take away the last version, file by file.</summary>
    public static SystemCalls Removals(Desk desk) => new("removals of files of the last version", desk, "unlink,unlinkat,rmdir", areAlike: true);

    /// <summary>Publishes to the end and counts.</summary>
    /// <returns>The first and the last of the calls that are made in the last second, as they are counted on the main thread.</returns>
    public (int First, int Last) InTheLastSecond()
    {
        var log = Path.Combine(desk.Root, "calls.txt");
        var ran = Strace(["-ttt", "-o", log, "-e", $"trace={calls}"]);
        if (ran.Exit != 0)
            throw new InvalidOperationException($"strace ended with {ran.Exit}: {ran.Said}");
        var lines = File.ReadAllLines(log).Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Where(words => words.Length > 2).ToArray();
        File.Delete(log);
        var end = lines.Max(words => double.Parse(words[1], CultureInfo.InvariantCulture));
        // The thread that removes or renames is the main one.
        var main = lines.Last(words => words[2].StartsWith("unlink", StringComparison.Ordinal) || words[2].StartsWith("rename", StringComparison.Ordinal))[0];
        var made = lines.Where(words => words[0] == main && !words[2].StartsWith("+++", StringComparison.Ordinal) && words[2] != "<...").ToArray();
        var early = made.Count(words => double.Parse(words[1], CultureInfo.InvariantCulture) < end - 1);
        return (early + 1, made.Length);
    }

    /// <summary>Publishes and is killed.</summary>
    public void KillAt(int number) => Strace(["-o", "/dev/null", "-e", $"trace={calls}", "-e", $"inject={calls}:signal=KILL:when={number}"]);

    private Ran Strace(string[] how) => Ran.By(["strace", "-f", "--seccomp-bpf", "-qq", .. how, .. paths, "dotnet", Ran.Program, .. desk.Publish]);
}
