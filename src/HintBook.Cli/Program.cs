using HintBook.Cli;

using var stop = new CancellationTokenSource();
Console.CancelKeyPress += (_, pressed) =>
{
    pressed.Cancel = true;
    stop.Cancel();
};

return CommandLine.Run(args, Terminal.OfThisProcess(), stop.Token);

/// <summary>The program itself.</summary>
internal static partial class Program
{
    /// <summary>The version, for logs that name their tool.</summary>
    public static string Version { get; } = typeof(CommandLine).Assembly.GetName().Version!.ToString(3);
}
