using System.Diagnostics;
using System.Globalization;
using HintBook.Benchmarks.Books;

namespace HintBook.Benchmarks.Whole;

/// <summary>
/// Whole processes, started as a user starts them and timed from outside: ours and the floor in turn, so that both meet the same
/// machine. Prints the table that this folder's README quotes.
/// </summary>
internal static class WholeRuns
{
    private const int Rounds = 5;

    private static readonly string Cli = Path.Combine(AppContext.BaseDirectory, "HintBook.Cli.dll");
    private static readonly string Self = Path.Combine(AppContext.BaseDirectory, "HintBook.Benchmarks.dll");

    public static int Run()
    {
        var root = Directory.CreateTempSubdirectory("hintbook-bench-").FullName;
        try
        {
            var example = Path.Combine(root, "example");
            CopyFolder(Path.Combine(Checkout.Root, "content-example"), example);
            var pages = Path.Combine(root, "pages");
            MadeBook.Write(pages, stages: 2000, photos: 0, cards: false);
            var photos = Path.Combine(root, "photos");
            MadeBook.Write(photos, stages: 200, photos: 200, cards: false);
            var whole = Path.Combine(root, "whole");
            MadeBook.Write(whole, stages: 2000, photos: 200, cards: true);

            Console.WriteLine("| what | ours | floor | ratio |");
            Console.WriteLine("|---|---|---|---|");
            Row(root, "`check --help` (start of the program)", ["--help"], null);
            Row(root, "the example, cold", ["publish", example], null);
            Row(root, "the example, nothing changed", ["publish", example], null, again: true);
            Row(root, "2,000 stages, no photos, no cards", ["publish", pages], ["floor-pages", pages]);
            Row(root, "200 photos of 12 megapixels", ["publish", photos], ["floor-photos", photos]);
            Row(root, "200 photos, nothing changed", ["publish", photos], null, again: true);
            Row(root, "2,000 stages, 200 photos, 2,001 cards, cold", ["publish", whole], null, rounds: 2);
            return 0;
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }

    private static void Row(string root, string what, string[] ours, string[]? floor, bool again = false, int rounds = Rounds)
    {
        var output = Path.Combine(root, "out");
        var ourTimes = new List<double>();
        var floorTimes = new List<double>();
        string[] command = ours is ["publish", ..] ? [.. ours, "--out", output] : ours;
        if (again)
            Timed(Cli, command);
        for (var round = 0; round < rounds; round++)
        {
            if (floor is not null)
            {
                Clear(output);
                floorTimes.Add(Timed(Self, [.. floor, output]));
            }

            if (!again)
                Clear(output);
            ourTimes.Add(Timed(Cli, command));
        }

        Clear(output);
        var (mine, theirs) = (Median(ourTimes), floor is null ? (double?)null : Median(floorTimes));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"| {what} | {Told(mine)} | {(theirs is null ? "" : Told(theirs.Value))} | {(theirs is null ? "" : $"{mine / theirs:0.00}")} |"));
    }

    private static double Timed(string program, string[] args)
    {
        var start = new ProcessStartInfo("dotnet") { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        start.ArgumentList.Add(program);
        foreach (var arg in args)
            start.ArgumentList.Add(arg);
        var watch = Stopwatch.StartNew();
        using var process = Process.Start(start)!;
        var said = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEndAsync();
        process.WaitForExit();
        var time = watch.Elapsed.TotalSeconds;
        return process.ExitCode == 0
            ? time
            : throw new InvalidOperationException($"{string.Join(' ', args)} ended with {process.ExitCode}:\n{said.Result}\n{error.Result}");
    }

    private static double Median(List<double> times) => times.Order().ElementAt(times.Count / 2);

    private static string Told(double seconds) => seconds < 1
        ? string.Create(CultureInfo.InvariantCulture, $"{seconds * 1000:0} ms")
        : string.Create(CultureInfo.InvariantCulture, $"{seconds:0.00} s");

    private static void Clear(string folder)
    {
        if (Directory.Exists(folder))
            Directory.Delete(folder, recursive: true);
    }

    private static void CopyFolder(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }
}
