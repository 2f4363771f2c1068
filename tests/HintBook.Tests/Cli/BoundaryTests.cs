using HintBook.Cli;
using HintBook.Mechanism;
using HintBook.Pages;
using HintBook.Tests.Mechanism;
using HintBook.Tests.Publishing;

namespace HintBook.Tests.Cli;

/// <summary>What a user sees of something that nobody expected: sentences, a report that tells nothing of the book, and an exit code.</summary>
public sealed class BoundaryTests : IDisposable
{
    private const string Secret = "the honey is behind the crown board";
    private readonly string reports = Directory.CreateTempSubdirectory("hintbook-reports-").FullName;

    public void Dispose() => Directory.Delete(reports, recursive: true);

    [Fact]
    public void A_mistake_in_the_program_ends_in_sentences_and_the_code_70()
    {
        var (exit, error) = Run("check", () => throw new InvalidOperationException(Secret));

        Assert.Equal(70, exit);
        Assert.Contains("nobody expected", error, StringComparison.Ordinal);
        Assert.Contains("What was published before is untouched.", error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
        Assert.DoesNotContain(Secret, error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_report_whose_place_is_told_has_the_verb_the_version_and_the_stack_and_nothing_of_the_book()
    {
        var (_, error) = Run("solve", () => Fail(new InvalidOperationException(Secret, new FormatException(Secret))));

        var file = Assert.Single(Directory.GetFiles(reports));
        Assert.Contains(file, error, StringComparison.Ordinal);
        var report = File.ReadAllText(file);
        Assert.Contains("verb: solve", report, StringComparison.Ordinal);
        Assert.Contains($"HintBook {Program.Version}", report, StringComparison.Ordinal);
        Assert.Contains($"{nameof(BoundaryTests)}.{nameof(Fail)}", report, StringComparison.Ordinal);
        Assert.Contains("caused by System.FormatException", report, StringComparison.Ordinal);
        Assert.DoesNotContain(Secret, report, StringComparison.Ordinal);
    }

    // The plan has one step that no box can make: it stands for a mistake in whoever made the plan.
    [Fact]
    public void A_plan_that_does_not_replay_ends_here_and_nothing_is_claimed()
    {
        var book = new BoxBuilder().Part("lid", "shut", "open").Stage("lid", "", "lid=open").Goal("lid=open").Build();
        var step = new Step { Kind = StepKind.FreeMove, Says = Secret, Leaves = [new Placed("lid", "open")] };

        var (exit, error) = Run("publish", () => new ResetLines(book).Of(ResetPlan.None("") with { Plan = [step] }).Length);

        Assert.Equal(ExitCode.Unexpected, exit);
        Assert.DoesNotContain(Secret, error + File.ReadAllText(Assert.Single(Directory.GetFiles(reports))), StringComparison.Ordinal);
    }

    [Fact]
    public void A_second_report_takes_no_other_s_place()
    {
        var first = Path.Combine(reports, "hintbook-report-1.txt");
        File.WriteAllText(first, "mine");

        Run("check", () => throw new InvalidOperationException());

        Assert.Equal("mine", File.ReadAllText(first));
        Assert.Equal(2, Directory.GetFiles(reports).Length);
    }

    [Fact]
    public void Where_no_report_can_be_written_that_is_said()
    {
        var (exit, error) = Run("check", () => throw new InvalidOperationException(), Path.Combine(reports, "nowhere"));

        Assert.Equal(ExitCode.Unexpected, exit);
        Assert.Contains("No report could be written", error, StringComparison.Ordinal);
    }

    public static TheoryData<Exception> OfTheMachine =>
    [
        new IOException("No space left on device"),
        new UnauthorizedAccessException("no"),
        new InsufficientMemoryException(),
        new OperationCanceledException(),
        new AggregateException(new AggregateException(new IOException("No space left on device"))),
    ];

    [Theory]
    [MemberData(nameof(OfTheMachine))]
    public void What_the_machine_fails_at_is_no_mistake_of_the_program(Exception failure)
    {
        var (exit, error) = Run("check", () => throw failure);

        Assert.Equal(ExitCode.MachineFailed, exit);
        Assert.NotEqual("", error);
        Assert.Empty(Directory.GetFiles(reports));
    }

    [Fact]
    public void Every_verb_stands_inside_the_boundary()
    {
        using var desk = new BookAndOutput();
        using var error = new StringWriter();
        var terminal = new Terminal { Out = new Broken(), Error = error, Reports = reports };

        Assert.Equal(ExitCode.Unexpected, CommandLine.Run(["check", desk.Book], terminal, CancellationToken.None));

        var report = File.ReadAllText(Assert.Single(Directory.GetFiles(reports)));
        Assert.Contains("verb: check", report, StringComparison.Ordinal);
        Assert.DoesNotContain(desk.Book, report, StringComparison.Ordinal);
    }

    private static int Fail(Exception failure) => throw failure;

    private (int Exit, string Error) Run(string verb, Func<int> work, string? folder = null)
    {
        using var error = new StringWriter();
        var exit = Boundary.Run(verb, work, new Terminal { Out = TextWriter.Null, Error = error, Reports = folder ?? reports });
        return (exit, error.ToString());
    }

    private sealed class Broken : StringWriter
    {
        public override void Write(string? value) => throw new InvalidOperationException(value);
    }
}
