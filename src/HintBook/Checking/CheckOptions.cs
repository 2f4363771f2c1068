using HintBook.Books;
using HintBook.Checking.Media;
using HintBook.Mechanism;
using HintBook.Reading.Folder;
using HintBook.Sealing;
using HintBook.Text;

namespace HintBook.Checking;

/// <summary>What a check is given besides the book.</summary>
public sealed record CheckOptions
{
    /// <summary>A folder with the addresses of the last publish, for a book that can't keep its own; or null.</summary>
    public string? LastPublished { get; init; }

    /// <summary>Told how far the exploration of the mechanism has come.</summary>
    public IProgress<SolveProgress>? Progress { get; init; }

    /// <summary>Ends the exploration; what wasn't looked at until then is not proved.</summary>
    public CancellationToken Stop { get; init; }

    /// <summary>Results of earlier checks in the same process, so that only what a changed file touches is done again; or null.</summary>
    public RunResults? Results { get; init; }

    /// <summary>Whether a publish will cut clips out of their films, for which it needs a program: otherwise the films lie on the site whole.</summary>
    public bool CutsClips { get; init; }

    /// <summary>Told of the photos and films as soon as they have been looked at, while the rest is still being checked; or null.</summary>
    public Action<Book, BookFolder, BookMedia>? MediaKnown { get; init; }

    /// <summary>What a card opened of the published site, where a sealed book has lost its key; else null.</summary>
    public OpenedBox? Box { get; init; }

    /// <summary>Counts what is worked out; tests hold each kind of work to its number.</summary>
    public WorkLog? Work { get; init; }
}
