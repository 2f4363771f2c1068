using System.Diagnostics;

namespace HintBook.Benchmarks.UnderLoad;

/// <summary>How a run of the program ended.</summary>
/// <param name="Exit">The exit code.</param>
/// <param name="Said">All that it printed.</param>
internal sealed record Ran(int Exit, string Said)
{
    /// <summary>The program, as <c>dotnet</c> runs it.</summary>
    public static readonly string Program = Path.Combine(AppContext.BaseDirectory, "HintBook.Cli.dll");

    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(10);

    /// <summary>Runs the program to its end.</summary>
    public static Ran Cli(params string[] args) => By(["dotnet", Program, .. args]);

    /// <summary>Runs a command to its end.</summary>
    public static Ran By(params string[] command)
    {
        using var running = Running.Start(command);
        return running.End(Longest);
    }
}

/// <summary>A process that was started, and what it prints.</summary>
internal sealed class Running : IDisposable
{
    private static readonly TimeSpan Glance = TimeSpan.FromMilliseconds(5);

    private readonly Process process;
    private readonly Task<string> output;
    private readonly Task<string> error;

    private Running(Process process)
    {
        this.process = process;
        output = process.StandardOutput.ReadToEndAsync();
        error = process.StandardError.ReadToEndAsync();
    }

    public static Running Start(string[] command)
    {
        var start = new ProcessStartInfo(command[0], command[1..]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        return new(Process.Start(start) ?? throw new InvalidOperationException($"{command[0]} can't be started"));
    }

    /// <summary>
    /// Waits until it ends by itself, or has used so much processor time. What a run has got done follows from that, however busy the machine is.
    /// </summary>
    /// <returns>How much it has used, as last seen.</returns>
    public TimeSpan Spend(TimeSpan most)
    {
        var spent = TimeSpan.Zero;
        while (spent < most && !process.WaitForExit(Glance))
        {
            try
            {
                process.Refresh();
                spent = process.TotalProcessorTime;
            }
            catch (InvalidOperationException)
            {
                // It has ended since.
            }
        }

        return spent;
    }

    /// <summary>Kills it at once, as the system or a power cut would.</summary>
    public void Kill() => process.Kill(entireProcessTree: true);

    /// <summary>Waits for its end, and kills it if that doesn't come.</summary>
    public Ran End(TimeSpan longest)
    {
        var ended = process.WaitForExit(longest);
        if (!ended)
            Kill();
        process.WaitForExit();
        return new(ended ? process.ExitCode : -1, output.Result + error.Result + (ended ? "" : $"\nkilled after {longest.TotalSeconds} s"));
    }

    public void Dispose()
    {
        if (!process.HasExited)
            Kill();
        process.Dispose();
    }
}
