using System.CommandLine;
using HintBook.Cli.Usage;

namespace HintBook.Cli.Verbs;

/// <summary><c>man</c>: prints the manual page of the program, for systems that keep such pages.</summary>
internal static class ManVerb
{
    public static Command Make(Terminal terminal, RootCommand root)
    {
        var verb = new Command("man", "Print the manual page, for the program man.");
        verb.SetAction(_ =>
        {
            terminal.Out.Write(ManualPage.Write(Sheet.Of(root), Program.Version));
            return ExitCode.Fine;
        });
        return verb;
    }
}
