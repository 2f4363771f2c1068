using System.CommandLine;
using HintBook.Cli.Verbs;

namespace HintBook.Cli;

/// <summary>The verbs and how they are called.</summary>
internal static class CommandLine
{
    public static int Run(string[] args, Terminal terminal, CancellationToken stop)
    {
        var root = new RootCommand("Hints, walkthroughs and printed cards for sequential-discovery puzzle boxes.")
        {
            BeginVerb.Of(terminal),
            CheckVerb.Of(terminal, stop),
            PublishVerb.Of(terminal, stop),
            CardsVerb.Of(terminal, stop),
            MapVerb.Of(terminal, stop),
            SolveVerb.Of(terminal, stop),
            ResetVerb.Of(terminal, stop),
            ProveVerb.Of(terminal),
            ClueVerb.Of(terminal),
            SchemaVerb.Of(terminal),
            ThemeVerb.Of(terminal),
            AuditVerb.Of(terminal, stop),
            GuideVerb.Of(terminal),
        };
        var parsed = root.Parse(args);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors)
                terminal.Error.WriteLine(error.Message);
            terminal.Error.WriteLine("Run `hintbook --help` to see how it is used.");
            return ExitCode.WrongUsage;
        }

        try
        {
            return parsed.Invoke(new InvocationConfiguration
            {
                Output = terminal.Out,
                Error = terminal.Error,
                EnableDefaultExceptionHandler = false,
                ProcessTerminationTimeout = null,
            });
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            terminal.Error.WriteLine($"It can't be done: {failure.Message}");
            return ExitCode.MachineFailed;
        }
    }
}
