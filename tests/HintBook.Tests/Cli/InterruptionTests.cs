using System.Diagnostics;
using HintBook.Cli;
using HintBook.Tests.House;
using HintBook.Tests.Publishing;

namespace HintBook.Tests.Cli;

/// <summary>A run that is asked to end does, whatever it waits for, and leaves nothing unfinished.</summary>
public sealed class InterruptionTests : IDisposable
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(60);
    private readonly BookAndOutput desk = new();

    public void Dispose() => desk.Dispose();

    // The program waits until somebody reads on: it says more than a pipe holds (64 KiB on Linux, pipe(7)).
    [Theory]
    [InlineData("INT")]
    [InlineData("TERM")]
    [InlineData("HUP")]
    public async Task A_signal_ends_even_a_run_that_waits_for_something_outside(string signal)
    {
        File.AppendAllLines(Path.Combine(desk.Book, "book.yaml"), Enumerable.Range(0, 2000).Select(number => $"no-such-key-{number}: {number}"));
        using var program = Start("check", desk.Book);
        await program.StandardOutput.BaseStream.ReadExactlyAsync(new byte[1], TestContext.Current.CancellationToken).AsTask().WaitAsync(Longest);

        DebianProgram.Run(desk.Root, "kill", $"-{signal}", $"{program.Id}");

        Assert.True(program.WaitForExit(Longest), "it goes on");
        Assert.Equal(ExitCode.MachineFailed, program.ExitCode);
        Assert.Contains("Stopped.", await program.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public void The_patience_leaves_time_to_end_within_half_a_second() => Assert.InRange(Interruption.Patience.TotalSeconds, 0.1, 0.4);

    [Fact]
    public void What_a_publish_has_begun_is_gone_as_soon_as_it_is_stopped()
    {
        desk.Published();
        var before = BookAndOutput.Tree(desk.Output);
        desk.Change("stages/02-the-number.md", "# Nudge", "# Nudge\n\nOne more sentence.");
        using var stop = new CancellationTokenSource();
        var goneAtOnce = false;

        var outcome = HintBook.Publishing.Pipeline.Publish(
            desk.Book,
            desk.Options with
            {
                Disk = new(step =>
                {
                    if (!step.Path.EndsWith("index.html", StringComparison.Ordinal) || step.Act != HintBook.Publishing.DiskAct.Write)
                        return;
                    File.WriteAllText(step.Path, "begun");
                    stop.Cancel();
                    goneAtOnce = !File.Exists(step.Path);
                    stop.Token.ThrowIfCancellationRequested();
                }),
            },
            stop.Token);

        Assert.Equal(HintBook.Publishing.FailureKind.Stopped, Assert.IsType<HintBook.Publishing.Failed>(outcome).Kind);
        Assert.True(goneAtOnce);
        Assert.Equal(before, BookAndOutput.Tree(desk.Output));
    }

    [Fact]
    public void A_check_that_was_stopped_claims_nothing()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        using var output = new StringWriter();
        using var error = new StringWriter();

        var exit = CommandLine.Run(["check", desk.Book], new Terminal { Out = output, Error = error }, stop.Token);

        Assert.Equal(ExitCode.MachineFailed, exit);
        Assert.Equal("", output.ToString());
        Assert.StartsWith("Stopped.", error.ToString(), StringComparison.Ordinal);
    }

    private static Process Start(params string[] args)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "HintBook.Cli.dll");
        var start = new ProcessStartInfo("dotnet", [program, .. args]) { RedirectStandardError = true, RedirectStandardOutput = true, UseShellExecute = false };
        return Process.Start(start) ?? throw new InvalidOperationException("dotnet can't be started");
    }
}
