using System.CommandLine;
using HintBook.Cli.Usage;
using HintBook.Cli.Usage.Completions;

namespace HintBook.Cli.Verbs;

/// <summary><c>completions SHELL</c>: prints what a shell needs to complete verbs, options and folders.</summary>
internal static class CompletionsVerb
{
    public static Command Make(Terminal terminal, RootCommand root)
    {
        var shell = new Argument<string>("SHELL") { Description = "The shell: bash, zsh, fish or powershell.", HelpName = "SHELL" };
        shell.AcceptOnlyFromAmong("bash", "zsh", "fish", "powershell");
        var verb = new Command("completions", "Print what a shell needs to complete the verbs and their options.") { shell };
        verb.SetAction(parsed =>
        {
            var sheet = Sheet.Of(root);
            terminal.Out.Write(parsed.GetValue(shell) switch
            {
                "bash" => BashCompletion.Write(sheet),
                "zsh" => ZshCompletion.Write(sheet),
                "fish" => FishCompletion.Write(sheet),
                _ => PowerShellCompletion.Write(sheet),
            });
            return ExitCode.Fine;
        });
        return verb;
    }
}
