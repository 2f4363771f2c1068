using System.ComponentModel;
using System.Diagnostics;

namespace HintBook.Publishing.Films;

/// <summary>What a program said.</summary>
/// <param name="Succeeded">Whether it did what it was asked.</param>
/// <param name="Output">What it printed.</param>
/// <param name="Error">The last line of what it complained of; empty if it didn't.</param>
internal sealed record ToolRun(bool Succeeded, string Output, string Error)
{
    /// <summary>Runs a program to its end. Nothing is typed into it.</summary>
    /// <param name="program">Its full path.</param>
    /// <param name="arguments">What it is given.</param>
    /// <param name="stop">Ends it.</param>
    public static ToolRun Run(string program, IEnumerable<string> arguments, CancellationToken stop)
    {
        stop.ThrowIfCancellationRequested();
        var start = new ProcessStartInfo(program, arguments)
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        try
        {
            using var process = Process.Start(start);
            if (process is null)
                return new(false, "", $"{Path.GetFileName(program)} can't be started");
            using var ending = stop.Register(() => End(process));
            process.StandardInput.Close();
            var error = process.StandardError.ReadToEndAsync(CancellationToken.None);
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            stop.ThrowIfCancellationRequested();
            return new(process.ExitCode == 0, output, error.GetAwaiter().GetResult().TrimEnd().Split('\n')[^1].Trim());
        }
        catch (Win32Exception failure)
        {
            return new(false, "", failure.Message);
        }
    }

    private static void End(Process process)
    {
        try
        {
            process.Kill(entireProcessTree: true);
        }
        catch (InvalidOperationException)
        {
            // It has ended by itself.
        }
    }
}
