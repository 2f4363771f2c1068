using HintBook.Cli;
using HintBook.Publishing.Films;

namespace HintBook.Tests.Cli;

/// <summary>What a command printed and how it ended.</summary>
internal sealed record Said(int Exit, string Out, string Error)
{
    public static Said By(params string[] args) => By(live: false, args);

    public static Said By(bool live, params string[] args) => By(live, null, args);

    /// <summary>Where there are programs that cut films.</summary>
    public static Said By(FilmTools? filmTools, params string[] args) => By(live: false, filmTools, args);

    private static Said By(bool live, FilmTools? filmTools, string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var terminal = new Terminal { Out = output, Error = error, ColourOut = live, ColourError = live, Live = live, FilmTools = filmTools };
        var exit = CommandLine.Run(args, terminal, CancellationToken.None);
        return new Said(exit, output.ToString(), error.ToString());
    }
}
