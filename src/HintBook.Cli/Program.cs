using HintBook.Cli;

EmbeddedLibraries.Offer();
var terminal = Terminal.OfThisProcess();
using var interruption = new Interruption(terminal);
return interruption.During(() => CommandLine.Run(args, terminal, interruption.Token));

/// <summary>The program itself.</summary>
internal static partial class Program
{
    /// <summary>The version, for logs that name their tool.</summary>
    public static string Version { get; } = typeof(CommandLine).Assembly.GetName().Version!.ToString(3);
}
