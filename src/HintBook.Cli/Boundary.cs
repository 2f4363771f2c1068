namespace HintBook.Cli;

/// <summary>
/// The last place that an exception can reach. Whatever happens inside, the user gets sentences and an exit code, never a stack trace.
/// What was published before is whole then: a publish grows beside it and is swapped in at its end.
/// </summary>
internal static class Boundary
{
    private const string Untouched = "What was published before is untouched.";

    /// <summary>Does the work of a verb.</summary>
    /// <param name="verb">Which one, for the report.</param>
    /// <param name="work">The work; it gives the exit code.</param>
    /// <param name="terminal">Where it is said, and where reports are laid.</param>
    public static int Run(string verb, Func<int> work, Terminal terminal)
    {
        try
        {
            return work();
        }
        catch (Exception failure)
        {
            return Tell(verb, Cause(failure), terminal);
        }
    }

    // Work on several cores wraps what went wrong; the first of several stands for all.
    private static Exception Cause(Exception failure) => failure is AggregateException several ? several.Flatten().InnerExceptions[0] : failure;

    private static int Tell(string verb, Exception failure, Terminal terminal)
    {
        switch (failure)
        {
            case OperationCanceledException:
                terminal.Say($"Stopped. {Untouched}");
                return ExitCode.MachineFailed;
            case OutOfMemoryException:
                terminal.Say($"This computer has too little memory for it. {Untouched}");
                return ExitCode.MachineFailed;
            case IOException or UnauthorizedAccessException:
                terminal.Say($"It can't be done: {failure.Message}");
                return ExitCode.MachineFailed;
            default:
                terminal.Say("Something happened that nobody expected: a mistake in HintBook, most likely, and not in your book.");
                terminal.Say(FailureReport.Lay(terminal.Reports, verb, failure) is { } file
                    ? $"A report is in {file}. It says which verb, which version and where in the program, and nothing of your book."
                    : $"No report could be written into {terminal.Reports}.");
                terminal.Say(Untouched);
                return ExitCode.Unexpected;
        }
    }
}
