using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace HintBook.Cli.Usage;

/// <summary>The list of all verbs in <c>hintbook --help</c>: what may be left out stands in square brackets.</summary>
internal static class VerbList
{
    /// <summary>Puts the list in the place of the usual help of the whole program; each verb keeps its own.</summary>
    public static void ShowInHelpOf(RootCommand root)
    {
        if (root.Options.OfType<HelpOption>().FirstOrDefault() is { Action: SynchronousCommandLineAction ofVerbs } help)
            help.Action = new Shown(ofVerbs, root);
    }

    /// <summary>The help of the whole program.</summary>
    public static string Text(RootCommand root)
    {
        var wide = root.Subcommands.Max(verb => Called(verb).Length) + 2;
        var verbs = root.Subcommands.Select(verb => $"  {Called(verb).PadRight(wide)}{verb.Description}\n");
        return $"""
            {root.Description}

            Usage:
              hintbook VERB …

            Verbs:
            {string.Concat(verbs)}
            Options of a verb: hintbook VERB --help. What hintbook this is: hintbook --version.

            Example:
              {Examples.Of("check")}

            {ExitCodes}
            """;
    }

    private static string ExitCodes => $"Exit codes:\n{string.Concat(ExitCode.Meanings.Select(each => $"  {each.Code,-4}{each.Meaning}\n"))}";

    private static string Ending(string verb) => $"Example:\n  {Examples.Of(verb)}\n\n{ExitCodes}";

    private static string Called(Command verb) => string.Join(' ', [verb.Name, .. verb.Arguments.Select(Called)]);

    private static string Called(Argument argument)
    {
        var name = argument.HelpName ?? argument.Name;
        return argument.Arity.MinimumNumberOfValues == 0 || argument.HasDefaultValue ? $"[{name}]" : name;
    }

    private sealed class Shown(SynchronousCommandLineAction ofVerbs, RootCommand root) : SynchronousCommandLineAction
    {
        public override bool Terminating => true;

        public override bool ClearsParseErrors => true;

        public override int Invoke(ParseResult parseResult)
        {
            if (parseResult.CommandResult.Command != root)
            {
                var ended = ofVerbs.Invoke(parseResult);
                parseResult.InvocationConfiguration.Output.Write(Ending(parseResult.CommandResult.Command.Name));
                return ended;
            }

            parseResult.InvocationConfiguration.Output.Write(Text(root));
            return ExitCode.Fine;
        }
    }
}
