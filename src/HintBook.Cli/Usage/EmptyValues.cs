using System.CommandLine;
using System.CommandLine.Parsing;

namespace HintBook.Cli.Usage;

/// <summary>Refuses every argument and option that is there but says nothing, such as <c>""</c> from a script's unset variable.</summary>
internal static class EmptyValues
{
    /// <summary>Adds the refusal to all verbs.</summary>
    public static void Refuse(RootCommand root)
    {
        foreach (var verb in root.Subcommands)
        {
            foreach (var argument in verb.Arguments)
                argument.Validators.Add(given => Check(given, given.Tokens, argument.Name, argument.Description));
            foreach (var option in verb.Options)
                option.Validators.Add(given => Check(given, given.Tokens, option.Name, option.Description));
        }
    }

    private static void Check(SymbolResult given, IEnumerable<Token> tokens, string name, string? meaning)
    {
        if (tokens.Any(token => string.IsNullOrWhiteSpace(token.Value)))
            given.AddError($"{name} is empty. What belongs there: {meaning}");
    }
}
