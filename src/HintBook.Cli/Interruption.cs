using System.Runtime.InteropServices;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace HintBook.Cli;

/// <summary>
/// Ends a run when the user or the system asks for it (Ctrl-C, SIGTERM, a closed window). The work is asked to end by itself; what hasn't
/// after <see cref="Patience"/>, perhaps because it waits for something outside, is ended. A publish clears away what it had begun when it
/// is asked, so nothing of it stays.
/// </summary>
internal sealed class Interruption : IDisposable
{
    /// <summary>How long the work has to end by itself. With the start of a process's end, less than half a second.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(200);

    // POSIX.1-2017, <unistd.h>: STDERR_FILENO.
    private const nint StandardError = 2;
    private static readonly TimeSpan LongestToTell = TimeSpan.FromMilliseconds(50);

    private readonly CancellationTokenSource stop = new();
    private readonly ManualResetEventSlim ended = new();
    private readonly PosixSignalRegistration[] signals;
    private readonly Terminal terminal;
    private int asked;

    public Interruption(Terminal terminal)
    {
        this.terminal = terminal;
        signals = [.. new[] { PosixSignal.SIGINT, PosixSignal.SIGTERM, PosixSignal.SIGHUP }.Select(signal => PosixSignalRegistration.Create(signal, End))];
    }

    /// <summary>Set when the run shall end.</summary>
    public CancellationToken Token => stop.Token;

    /// <summary>Does the work. From its end on, a signal changes nothing.</summary>
    public int During(Func<int> work)
    {
        var exit = work();
        ended.Set();
        return exit;
    }

    public void Dispose()
    {
        foreach (var signal in signals)
            signal.Dispose();
    }

    // The runtime locks both outputs while one waits for whoever reads it. So this isn't waited for, and said past the runtime if need be.
    private void Tell()
    {
        const string Said = "Stopped. What was published before is untouched.";
        var told = new Thread(() => terminal.Say(Said)) { IsBackground = true };
        told.Start();
        if (told.Join(LongestToTell) || OperatingSystem.IsWindows())
            return;
        try
        {
            using var handle = new SafeFileHandle(StandardError, ownsHandle: false);
            using var error = new FileStream(handle, FileAccess.Write, bufferSize: 0);
            error.Write(Encoding.UTF8.GetBytes(Said + "\n"));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException)
        {
            // Nobody is there to be told.
        }
    }

    private void End(PosixSignalContext signal)
    {
        signal.Cancel = true;
        if (Interlocked.Exchange(ref asked, 1) == 1)
            return;
        // On a thread of its own: what is cleared away then must not use up the patience.
        new Thread(stop.Cancel) { IsBackground = true }.Start();
        if (ended.Wait(Patience))
            return;
        Tell();
        Environment.Exit(ExitCode.MachineFailed);
    }
}
