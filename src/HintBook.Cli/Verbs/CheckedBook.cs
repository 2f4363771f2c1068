using HintBook.Checking;

namespace HintBook.Cli.Verbs;

/// <summary>Checks a book while a line says how far the exploration of its mechanism has come.</summary>
internal static class CheckedBook
{
    /// <inheritdoc cref="Check.Run"/>
    /// <param name="path">The book's folder.</param>
    /// <param name="lastPublished">The output folder of the last publish, or null.</param>
    /// <param name="terminal">Where progress is said.</param>
    /// <param name="stop">Ends the exploration.</param>
    /// <exception cref="OperationCanceledException">It was stopped; what half a check says would be taken for the whole.</exception>
    public static Checked At(string path, string? lastPublished, Terminal terminal, CancellationToken stop)
    {
        using var progress = new Progress(terminal);
        var result = Check.Run(path, new()
        {
            LastPublished = lastPublished,
            CutsClips = terminal.FilmTools is not null,
            Progress = progress,
            Stop = stop,
        });
        stop.ThrowIfCancellationRequested();
        return result;
    }
}
