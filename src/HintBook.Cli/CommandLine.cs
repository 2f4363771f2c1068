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
            BeginVerb.Make(terminal),
            CheckVerb.Make(terminal, stop),
            PublishVerb.Make(terminal, stop),
            CardsVerb.Make(terminal, stop),
            MapVerb.Make(terminal, stop),
            SolveVerb.Make(terminal, stop),
            ResetVerb.Make(terminal, stop),
            ProveVerb.Make(terminal),
            ClueVerb.Make(terminal),
            SchemaVerb.Make(terminal),
            ThemeVerb.Make(terminal),
            AuditVerb.Make(terminal, stop),
            GuideVerb.Make(terminal),
        };
        var parsed = root.Parse(args);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors)
                terminal.Error.WriteLine(error.Message);
            terminal.Error.WriteLine("Run “hintbook --help” to see how it is used.");
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
