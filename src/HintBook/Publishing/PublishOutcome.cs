using System.Collections.Immutable;
using HintBook.Checking;
using HintBook.Publishing.Films;
using HintBook.Sealing;
using HintBook.Text;

namespace HintBook.Publishing;

/// <summary>How a publish ended.</summary>
public abstract record PublishOutcome;

/// <summary>It is done.</summary>
/// <param name="Report">What was made and checked.</param>
public sealed record Published(Report Report) : PublishOutcome
{
    /// <summary>The book that it was made from; null for a shelf, and where nothing had changed, so that nothing was read.</summary>
    internal Examined? Book { get; init; }
}

/// <summary>The book has errors; whatever was published before stands untouched.</summary>
/// <param name="Findings">What to mend.</param>
public sealed record Rejected(Findings Findings) : PublishOutcome;

/// <summary>It could not be done, the book aside; whatever was published before stands untouched.</summary>
/// <param name="Kind">Whose matter it is.</param>
/// <param name="Message">What happened, in one sentence.</param>
/// <param name="Help">What to do.</param>
public sealed record Failed(FailureKind Kind, string Message, string Help) : PublishOutcome;

/// <summary>How to publish.</summary>
public sealed record PublishOptions
{
    /// <summary>The output folder; null for <c>published</c> in the book.</summary>
    public string? Output { get; init; }

    /// <summary>The output folder of a book.</summary>
    public string OutputFor(string book) => Output ?? Path.Combine(book, "published");

    /// <summary>The sheets that the cards are printed on.</summary>
    public Cards.Paper Paper { get; init; }

    /// <summary>The serials of the copies whose papers are asked for; empty for all.</summary>
    public ImmutableArray<string> Copies { get; init; } = [];

    /// <summary>The maker's date, which the list of addresses keeps for the cards that are printed; null for none. Nothing else follows from it.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>The programs that cut clips out of their films; null where there are none, so that the films lie on the site whole.</summary>
    public FilmTools? FilmTools { get; init; }

    /// <summary>The card that stands in for the key of a sealed book, where that is lost; else null.</summary>
    public TypedCard? WithCard { get; init; }

    /// <summary>Told how far the work has come, from any thread.</summary>
    public Action<PublishProgress> Say { get; init; } = _ => { };

    /// <summary>Told how far the look into the mechanism has come.</summary>
    public IProgress<Mechanism.SolveProgress>? Solving { get; init; }

    /// <summary>Counts what is worked out; tests hold each kind of work to its number.</summary>
    internal WorkLog? Work { get; init; }

    /// <summary>Does the steps on the disk; tests put one here that fills or stops.</summary>
    internal Disk Disk { get; init; } = new();
}
