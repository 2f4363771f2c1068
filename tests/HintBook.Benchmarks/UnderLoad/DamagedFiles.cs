using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;

namespace HintBook.Benchmarks.UnderLoad;

/// <summary>
/// Books and media with damage drawn by chance, each looked at by the program as a user would have it. Many are looked at in one process; one that
/// ends it or keeps it for too long is told, and the next goes on in a fresh one.
/// </summary>
internal static class DamagedFiles
{
    private static readonly TimeSpan LongestSilence = TimeSpan.FromMinutes(5);

    public static Tried Books(int count, int seed) => Run("damaged books", DamageWorker.Books, count, seed);

    public static Tried Media(int count, int seed) => Run("damaged photos, films and captions, published", DamageWorker.Media, count, seed);

    private static Tried Run(string what, string kind, int count, int seed)
    {
        var failures = new ConcurrentQueue<string>();
        var (workers, done, peak, slowest) = (Environment.ProcessorCount, 0, 0L, 0L);
        Parallel.For(0, workers, new() { MaxDegreeOfParallelism = workers }, worker =>
        {
            var (next, last) = (count * worker / workers, count * (worker + 1) / workers);
            while (next < last && !LoadRuns.Stopped)
                next = Work(next, last);
        });
        Console.Error.WriteLine($"{kind}: most memory {peak / 1024} MB, slowest {slowest} ms of processor time");
        return new(what, done, [.. failures.Order(StringComparer.Ordinal)]);

        void Fail(string failure) => failures.Enqueue(LoadRuns.Failed(failure));

        int Work(int from, int to)
        {
            var start = new ProcessStartInfo(
                "dotnet",
                [Path.Combine(AppContext.BaseDirectory, "HintBook.Benchmarks.dll"), DamageWorker.Command, kind, Text(from), Text(to), Text(seed)])
            {
                UseShellExecute = false,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            };
            using var process = Process.Start(start)!;
            var error = process.StandardError.ReadToEndAsync();
            var at = from;
            while (true)
            {
                var line = process.StandardOutput.ReadLineAsync();
                if (!line.Wait(LongestSilence))
                {
                    Fail($"case {at} of {seed}: no end after {LongestSilence.TotalSeconds} s");
                    process.Kill();
                    process.WaitForExit();
                    return at + 1;
                }

                switch (line.Result?.Split('\t'))
                {
                    case ["case", var number]:
                        at = int.Parse(number, CultureInfo.InvariantCulture);
                        break;
                    case ["fault", var fault]:
                        Fail($"case {at} of {seed}: {fault}");
                        break;
                    case ["done", var milliseconds, var kibibytes]:
                        Interlocked.Increment(ref done);
                        if (LoadRuns.Stopped)
                        {
                            process.Kill();
                            return to;
                        }

                        InterlockedMax(ref slowest, long.Parse(milliseconds, CultureInfo.InvariantCulture));
                        InterlockedMax(ref peak, long.Parse(kibibytes, CultureInfo.InvariantCulture));
                        break;
                    case null when LoadRuns.Stopped:
                        return to;
                    case null:
                        process.WaitForExit();
                        if (process.ExitCode == 0)
                            return to;
                        Fail($"case {at} of {seed}: the process ended with {process.ExitCode}: {error.Result}");
                        return at + 1;
                    default:
                        throw new InvalidOperationException($"a worker said {line.Result}");
                }
            }
        }
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static void InterlockedMax(ref long most, long value)
    {
        for (var seen = Volatile.Read(ref most); value > seen; seen = Volatile.Read(ref most))
        {
            if (Interlocked.CompareExchange(ref most, value, seen) == seen)
                return;
        }
    }
}
