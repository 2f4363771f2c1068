using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;
using HintBook.Mechanism.Model;
using HintBook.Tests.Mechanism;

namespace HintBook.Benchmarks.Mechanism;

/// <summary>The floor of the explorers: Debian's spin, breadth first, its compilation not counted.</summary>
/// <param name="States">States it stored.</param>
/// <param name="Seconds">Processor time.</param>
/// <param name="Bytes">Bytes a state, for states alone.</param>
internal sealed partial record ModelChecker(long States, double Seconds, double Bytes)
{
    /// <summary>Explores a box with it, or null where spin or gcc isn't installed.</summary>
    public static ModelChecker? Of(Machine machine)
    {
        var folder = Directory.CreateTempSubdirectory("hintbook-spin-").FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "box.pml"), Promela.Of(machine));
            var (_, built) = Run(folder, "spin -a box.pml && gcc -w -O2 -DSAFETY -DBFS -o pan pan.c");
            if (!built)
                return null;
            var (said, _) = Run(folder, "TIMEFORMAT='%U user'; time ./pan -m4000000 2>&1");
            return new ModelChecker(
                (long)Number(StatesStored().Match(said)),
                Number(User().Match(said)),
                Number(Memory().Match(said)) * 1048576 / Math.Max(1, Number(StatesStored().Match(said))));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static (string Said, bool Well) Run(string folder, string command)
    {
        using var process = Process.Start(new ProcessStartInfo("bash", ["-c", $"{{ {command}; }} 2>&1"])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            UseShellExecute = false,
        })!;
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (said, process.ExitCode == 0);
    }

    private static double Number(Match match) => match.Success ? double.Parse(match.Groups["number"].ValueSpan, CultureInfo.InvariantCulture) : double.NaN;

    [GeneratedRegex(@"(?<number>[\d.e+]+) states, stored", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex StatesStored();

    [GeneratedRegex(@"(?<number>[\d.]+)\s+(total )?actual memory usage", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Memory();

    [GeneratedRegex(@"(?<number>[\d.]+) user", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex User();
}
