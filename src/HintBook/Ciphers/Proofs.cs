using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Ciphers.Making;
using HintBook.Text;

namespace HintBook.Ciphers;

/// <summary>What is known of all codes of a book.</summary>
/// <param name="Codes">One proof for each code, in the author's order.</param>
/// <param name="Findings">What there is to tell.</param>
public sealed record Proofs(ImmutableArray<Proof> Codes, ImmutableArray<Finding> Findings)
{
    /// <summary>No codes.</summary>
    public static Proofs None { get; } = new([], []);

    /// <summary>
    /// Reads every clue as its code says, and as a solver might who doesn't know how. Never throws, whatever is written in the
    /// book. The time grows with the length of the clues.
    /// </summary>
    /// <param name="book">The book.</param>
    /// <param name="work">Counts how often this is worked out.</param>
    public static Proofs Prove(Book book, WorkLog? work = null)
    {
        work?.Did(Work.ProveCodes);
        var sources = ReadingSources.Of(book);
        ImmutableArray<OwnCodes> copies = [.. book.Copies.Select(copy => new OwnCodes(copy, ReadingSources.Of(CluesOnPaper.As(book, copy))))];
        var proved = book.Box.Codes
            .Select((code, place) => CopyProofs.Differs(code, sources) ? CopyProofs.Prove(code, place, copies) : CodeProof.Of(code, sources))
            .ToArray();
        return new Proofs([.. proved.Select(one => one.Proof)], Text.Findings.Of(proved.SelectMany(one => one.Findings)).All);
    }
}
