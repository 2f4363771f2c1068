using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Ciphers;

/// <summary>Codes that differ by copy: each copy's clue is read for itself, and what is wrong with several copies alike is said once.</summary>
internal static class CopyProofs
{
    /// <summary>Whether a code has an answer or a clue of its own in each copy, or is read from a code that has.</summary>
    public static bool Differs(Code code, Book book)
    {
        var seen = new HashSet<string>();
        for (var next = code; next is not null && seen.Add(next.Id.Value); next = Chain.Next(next, book))
        {
            if (next.AnswerByCopy is not null || next.ClueByCopy is not null)
                return true;
        }

        return false;
    }

    /// <summary>One proof for each copy, and what there is to tell, with the copies that it is told of.</summary>
    /// <param name="place">The code's place in the book.</param>
    /// <param name="book">The book.</param>
    /// <param name="ofCopies">The book as each copy's owner has it.</param>
    public static (Proof Proof, IEnumerable<Finding> Findings) Prove(int place, Book book, ImmutableArray<Book> ofCopies)
    {
        var code = book.Box.Codes[place];
        var missing = Missing(code, book).ToArray();
        if (ofCopies.IsEmpty)
            return (new Proof(code, new Verdict.NotProved("it differs by copy, and the book has no copies"), [], []), missing);

        var proofs = ImmutableArray.CreateBuilder<CopyProof>();
        var told = new List<(string Serial, Finding Finding)>();
        foreach (var (copy, own) in book.Copies.Zip(ofCopies))
        {
            var findings = ImmutableArray.CreateBuilder<Finding>();
            proofs.Add(new CopyProof(copy, Proofs.Prove(own.Box.Codes[place], own, findings)));
            told.AddRange(findings.Select(finding => (copy.Serial.Value, finding)));
        }

        return (new Proof(code, new Verdict.ByCopy(proofs.ToImmutable()), [], []), missing.Concat(Merged(told, book.Copies.Length)));
    }

    // What rules a setting out for one copy needs to do nothing for the others.
    private static IEnumerable<Finding> Merged(IEnumerable<(string Serial, Finding Finding)> told, int copies) =>
        from same in told.GroupBy(one => (one.Finding.Code, one.Finding.At, one.Finding.Message))
        let serials = same.Select(one => one.Serial).ToArray()
        where serials.Length == copies || same.Key.Code != CipherFindings.UnusedRuleCode
        select CipherFindings.InCopies(same.First().Finding, serials, copies);

    private static IEnumerable<Finding> Missing(Code code, Book book)
    {
        foreach (var name in new[] { code.AnswerByCopy, code.ClueByCopy }.OfType<Located<string>>())
        {
            var without = book.Copies.Where(copy => copy[name.Value] is null).ToArray();
            if (without.Length == book.Copies.Length)
                yield return CipherFindings.NoCopyHas(name, book.Copies);
            else
            {
                foreach (var copy in without)
                    yield return CipherFindings.CopyLacks(copy, name, code);
            }
        }
    }
}
