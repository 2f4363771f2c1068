using System.CommandLine;
using HintBook.Cli.Usage;
using HintBook.Cli.Verbs;

namespace HintBook.Cli;

/// <summary>The verbs and how they are called.</summary>
internal static class CommandLine
{
    public static int Run(string[] args, Terminal terminal, CancellationToken stop)
    {
        if (args.Length == 0 && terminal.IsDoubleClicked)
            args = ["workbench"];
        var root = Verbs(terminal, stop);
        var verb = root.Subcommands.FirstOrDefault(verb => args is [var first, ..] && first == verb.Name);
        return Boundary.Run(verb?.Name ?? "none", () => Run(args, root, terminal), terminal);
    }

    /// <summary>All verbs.</summary>
    internal static RootCommand Verbs(Terminal terminal, CancellationToken stop)
    {
        var root = new RootCommand("Hints, walkthroughs and printed cards for sequential-discovery puzzle boxes.")
        {
            BeginVerb.Make(terminal),
            DraftVerb.Make(terminal),
            CheckVerb.Make(terminal, stop),
            PublishVerb.Make(terminal, stop),
            CardsVerb.Make(terminal, stop),
            PrintVerb.Make(terminal, stop),
            MapVerb.Make(terminal, stop),
            SolveVerb.Make(terminal, stop),
            ResetVerb.Make(terminal, stop),
            ProveVerb.Make(terminal),
            ClueVerb.Make(terminal),
            LetterVerb.Make(terminal, stop),
            ListingVerb.Make(terminal, stop),
            SittingsVerb.Make(terminal, stop),
            TestWalkVerb.Make(terminal, stop),
            PackingVerb.Make(terminal, stop),
            SchemaVerb.Make(terminal),
            ThemeVerb.Make(terminal),
            AuditVerb.Make(terminal, stop),
            VisitVerb.Make(terminal, stop),
            CopiesVerb.Make(terminal),
            WorkbenchVerb.Make(terminal, stop),
            GuideVerb.Make(terminal),
        };
        root.Add(CompletionsVerb.Make(terminal, root));
        root.Add(ManVerb.Make(terminal, root));
        EmptyValues.Refuse(root);
        VerbList.ShowInHelpOf(root);
        return root;
    }

    private static int Run(string[] args, RootCommand root, Terminal terminal)
    {
        if (args.Length == 0)
        {
            terminal.Error.Write(NextSteps.Text(inBook: File.Exists("book.yaml")));
            return ExitCode.WrongUsage;
        }

        // An argument that begins with “@” is a name like any other and not a file with more arguments.
        var parsed = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parsed.Errors.Count > 0)
        {
            foreach (var sentence in UsageErrors.In(parsed, args))
                terminal.Say(sentence);
            return ExitCode.WrongUsage;
        }

        return parsed.Invoke(new InvocationConfiguration
        {
            Output = terminal.Out,
            Error = terminal.Error,
            EnableDefaultExceptionHandler = false,
            ProcessTerminationTimeout = null,
        });
    }
}
