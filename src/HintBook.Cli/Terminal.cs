using System.Text;
using HintBook.Publishing.Films;
using HintBook.Text;

namespace HintBook.Cli;

/// <summary>
/// The one place that prints: results on <see cref="Out"/>, everything else on <see cref="Error"/>. Both show control characters as
/// U+FFFD; the escapes that colour findings and draw progress are sent here and nowhere else. Passed in, so that tests can read it.
/// </summary>
internal sealed record Terminal
{
    private readonly TextWriter rawOut = TextWriter.Null;
    private readonly TextWriter rawError = TextWriter.Null;

    /// <summary>For results, which may be piped on.</summary>
    public required TextWriter Out
    {
        get;
        init
        {
            rawOut = value;
            field = PrintableWriter.Over(value);
        }
    }

    /// <summary>For progress, warnings and what went wrong.</summary>
    public required TextWriter Error
    {
        get;
        init
        {
            rawError = value;
            field = PrintableWriter.Over(value);
        }
    }

    /// <summary>Whether results may be coloured.</summary>
    public bool ColourOut { get; init; }

    /// <summary>Whether the rest may be coloured.</summary>
    public bool ColourError { get; init; }

    /// <summary>Whether progress may be drawn over itself.</summary>
    public bool Live { get; init; }

    /// <summary>Reads a line that somebody types, null at its end; itself null where nobody is there to be asked.</summary>
    public Func<string?>? Answer { get; init; }

    /// <summary>Whether the program was started without a terminal by somebody who looks at a screen: by a double click, that is.</summary>
    public bool IsDoubleClicked { get; init; }

    /// <summary>The folder for reports of what nobody expected.</summary>
    public string Reports { get; init; } = Path.GetTempPath();

    /// <summary>The programs that cut films, if there are any here.</summary>
    public FilmTools? FilmTools { get; init; }

    /// <summary>
    /// The process's own. <c>NO_COLOR</c> (no-color.org) and <c>TERM=dumb</c> switch colour off. The runtime is told of a dumb terminal in
    /// any case: for every other it would send escapes that set up the keyboard, which nothing here reads.
    /// </summary>
    public static Terminal OfThisProcess()
    {
        var dumb = Environment.GetEnvironmentVariable("TERM") == "dumb";
        Environment.SetEnvironmentVariable("TERM", "dumb");
        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        if (!Console.IsOutputRedirected || OperatingSystem.IsWindows())
            Console.OutputEncoding = utf8;
        var colour = !dumb && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"));
        return new Terminal
        {
            Out = Console.Out,
            Error = Console.Error,
            ColourOut = colour && !Console.IsOutputRedirected,
            ColourError = colour && !Console.IsErrorRedirected,
            Live = !dumb && !Console.IsErrorRedirected,
            Answer = Console.IsInputRedirected || Console.IsErrorRedirected ? null : () => Console.In.ReadLine(),
            IsDoubleClicked = DoubleClick.Is(Surroundings.OfThisProcess()),
            FilmTools = FilmTools.OnPath(),
        };
    }

    /// <summary>Prints findings as a result.</summary>
    public void Give(Findings findings, bool withNotes) => rawOut.Write(FindingsText.Write(findings, withNotes, ColourOut));

    /// <summary>Prints findings beside a result, or in its place.</summary>
    public void Say(Findings findings, bool withNotes) => rawError.Write(FindingsText.Write(findings, withNotes, ColourError));

    /// <summary>Says one line; line breaks in it are shown as what they are not: part of a name.</summary>
    public void Say(string line) => Error.WriteLine(TerminalText.Shown(line));

    /// <summary>Asks a question and gives what was typed, without spaces around it; empty where nothing was.</summary>
    /// <param name="question">The question; the answer is typed behind it.</param>
    /// <param name="answer">Reads the answer.</param>
    public string Ask(string question, Func<string?> answer)
    {
        Error.Write($"{TerminalText.Shown(question)} ");
        Error.Flush();
        return answer()?.Trim() ?? "";
    }

    /// <summary>Draws a line of progress over the one before, and leaves the cursor behind it.</summary>
    /// <param name="line">What is shown.</param>
    /// <param name="columns">The columns that the line before took.</param>
    public void Redraw(string line, int columns) => rawError.Write("\r" + TerminalText.Shown(line).PadRight(columns));

    /// <summary>Takes a line of progress away.</summary>
    /// <param name="columns">The columns that it took.</param>
    public void Erase(int columns) => rawError.Write("\r" + new string(' ', columns) + "\r");
}
