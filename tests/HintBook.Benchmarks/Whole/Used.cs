using System.Diagnostics;
using System.Globalization;

namespace HintBook.Benchmarks.Whole;

/// <summary>What a whole process used, as GNU time tells it (Debian's package time).</summary>
/// <param name="Processor">Seconds of processor time, user and system, all threads together. A busy machine counts less in it than in the clock.</param>
/// <param name="Clock">Seconds by the clock.</param>
/// <param name="Mebibytes">The most memory that it had at once.</param>
internal sealed record Used(double Processor, double Clock, double Mebibytes)
{
    /// <summary>Runs a command to its end; one that doesn't end well is an error.</summary>
    public static Used By(params string[] command)
    {
        var told = Path.GetTempFileName();
        try
        {
            var start = new ProcessStartInfo("/usr/bin/time", ["-f", "%U %S %e %M", "-o", told, .. command])
            {
                UseShellExecute = false,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            };
            using var process = Process.Start(start)!;
            var said = process.StandardOutput.ReadToEndAsync();
            var error = process.StandardError.ReadToEndAsync();
            process.WaitForExit();
            if (process.ExitCode != 0)
                throw new InvalidOperationException($"{string.Join(' ', command)} ended with {process.ExitCode}:\n{said.Result}\n{error.Result}");
            double[] numbers = [.. File.ReadAllText(told).Split(' ').Select(number => double.Parse(number, CultureInfo.InvariantCulture))];
            return new(numbers[0] + numbers[1], numbers[2], numbers[3] / 1024);
        }
        finally
        {
            File.Delete(told);
        }
    }

    /// <summary>Of several runs the least processor time, the least time by the clock and the most memory.</summary>
    public static Used Best(IEnumerable<Used> runs) =>
        runs.Aggregate((one, other) => new(
            Math.Min(one.Processor, other.Processor), Math.Min(one.Clock, other.Clock), Math.Max(one.Mebibytes, other.Mebibytes)));
}
