using System.Globalization;
using HintBook.Cli;

namespace HintBook.Benchmarks.UnderLoad;

/// <summary>
/// Looks at damaged books one after the other in this process. Prints, with tabs between: <c>case</c> and its number before each, <c>fault</c> and what isn't
/// as it must be, <c>done</c> with its milliseconds of processor time and the most memory in KiB that the process had during it.
/// </summary>
internal static class DamageWorker
{
    /// <summary>The command of this program.</summary>
    public const string Command = "damaged";

    /// <summary>Damaged texts.</summary>
    public const string Books = "books";

    /// <summary>Damaged photos, films and captions.</summary>
    public const string Media = "media";

    private const int LongestMilliseconds = 20_000;
    private const long MostKibibytes = 600 * 1024;
    private const long TimeToCollect = 200 * 1024 * 1024;

    /// <summary>Looks at the cases from one number to below another.</summary>
    public static int Run(string kind, string from, string to, string seed)
    {
        var root = Directory.CreateTempSubdirectory("hintbook-damaged-").FullName;
        try
        {
            var last = int.Parse(to, CultureInfo.InvariantCulture);
            for (var number = int.Parse(from, CultureInfo.InvariantCulture); number < last; number++)
            {
                Console.WriteLine($"case\t{number}");
                Look(kind, Path.Combine(root, "case"), new Random(HashCode(number, int.Parse(seed, CultureInfo.InvariantCulture))));
            }

            return 0;
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }

    // The same on every run, which the framework's own combination of hashes isn't.
    private static int HashCode(int number, int seed) => unchecked((number * 486187739) + (seed * 16777619));

    private static void Look(string kind, string folder, Random dice)
    {
        if (Directory.Exists(folder))
            Directory.Delete(folder, recursive: true);
        var book = Path.Combine(folder, "book");
        var args = kind == Books ? DamagedBook.Write(book, dice) : DamagedMedia.Write(book, dice);
        if (GC.GetTotalMemory(forceFullCollection: false) > TimeToCollect)
            GC.Collect();
        PeakMemory.Forget();
        // What a case before this one took isn't this one's.
        if (PeakMemory.Kibibytes > MostKibibytes / 2)
        {
            GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive);
            PeakMemory.Forget();
        }

        using var output = new StringWriter();
        using var error = new StringWriter();
        var terminal = new Terminal { Out = output, Error = error, Reports = folder };
        var before = Environment.CpuUsage.TotalTime;
        var exit = Cli.CommandLine.Run(args, terminal, CancellationToken.None);
        var (milliseconds, memory) = ((long)(Environment.CpuUsage.TotalTime - before).TotalMilliseconds, PeakMemory.Kibibytes);
        var command = string.Join(' ', args);
        var said = $"{output}{error}";
        if (exit is < 0 or > 3)
            Fault($"{command} ended with {exit}: {string.Join(' ', Directory.GetFiles(folder, "hintbook-report-*").Select(File.ReadAllText))}");
        if (said.Contains("   at HintBook", StringComparison.Ordinal) || said.Contains("Exception", StringComparison.Ordinal))
            Fault($"{command} prints a stack: {said}");
        if (milliseconds > LongestMilliseconds)
            Fault($"{command} took {milliseconds} ms");
        if (memory > MostKibibytes)
            Fault($"{command} took {memory / 1024} MB");
        if (kind == Media)
            DamagedMedia.Tells(Path.Combine(folder, "out", "site")).ToList().ForEach(Fault);
        Console.WriteLine($"done\t{milliseconds}\t{memory}");
    }

    private static void Fault(string what) => Console.WriteLine($"fault\t{what.ReplaceLineEndings(" / ").Replace('\t', ' ')}");
}
