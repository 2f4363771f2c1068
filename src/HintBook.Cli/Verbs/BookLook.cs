using HintBook.Publishing;

namespace HintBook.Cli.Verbs;

/// <summary>A book read and checked, while a line says how far the look into its mechanism has come.</summary>
internal static class BookLook
{
    /// <inheritdoc cref="CheckedBook.Of"/>
    public static CheckedBook At(string path, string? lastPublished, Terminal terminal, CancellationToken stop)
    {
        using var progress = new Progress(terminal);
        return CheckedBook.Of(path, lastPublished, progress, stop);
    }
}
