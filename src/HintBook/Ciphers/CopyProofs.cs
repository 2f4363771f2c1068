using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Ciphers;

/// <summary>Proves codes that differ by copy: once for each copy. A finding that several copies share is reported once.</summary>
internal static class CopyProofs
{
    /// <summary>Whether a code has an answer or a clue of its own in each copy, or is read from a code that has.</summary>
    public static bool Differs(Code code, ReadingSources sources)
    {
        var seen = new HashSet<string>();
        for (var next = code; next is not null && seen.Add(next.Id.Value); next = sources.SourceOf(next))
        {
            if (next.AnswerByCopy is not null || next.ClueByCopy is not null)
                return true;
        }

        return false;
    }

    /// <summary>One proof for each copy, and the findings, each with the copies that it is about.</summary>
    /// <param name="code">The code as the book has it.</param>
    /// <param name="place">Its place among the codes of the book, from 0.</param>
    /// <param name="copies">The codes of every copy, in the author's order.</param>
    public static (Proof Proof, ImmutableArray<Finding> Findings) Prove(Code code, int place, ImmutableArray<OwnCodes> copies)
    {
        var missing = Missing(code, [.. copies.Select(own => own.Copy)]);
        if (copies.IsEmpty)
            return (new Proof(code, new Verdict.NotProved("it differs by copy, and the book has no copies"), [], []), [.. missing]);

        var proved = copies.Select(own => (own.Copy, Own: CodeProof.Of(own.Sources.Codes[place], own.Sources))).ToArray();
        var told =
            from one in proved
            from finding in one.Own.Findings
                // A clue that a copy lacks is a finding already.
            where finding.Code != CipherFindings.NoClueCode || code.ClueByCopy is not { } name || one.Copy[name.Value] is not null
            select (one.Copy.Serial.Value, finding);
        var verdict = new Verdict.ByCopy([.. proved.Select(one => new CopyProof(one.Copy, one.Own.Proof))]);
        return (new Proof(code, verdict, [], []), [.. missing, .. Merged(told, copies.Length)]);
    }

    // A setting that is ruled out for one copy, and a word that its clue has and that doesn't count, may be of no use in the others.
    private static IEnumerable<Finding> Merged(IEnumerable<(string Serial, Finding Finding)> told, int copies) =>
        from same in told.GroupBy(one => (one.Finding.Code, one.Finding.At, one.Finding.Message))
        let serials = same.Select(one => one.Serial).ToArray()
        where serials.Length == copies || (same.Key.Code != CipherFindings.UnusedRuleCode && same.Key.Code != CipherFindings.NotThereCode)
        select CipherFindings.InCopies(same.First().Finding, serials, copies);

    private static IEnumerable<Finding> Missing(Code code, ImmutableArray<Copy> copies)
    {
        foreach (var name in new[] { code.AnswerByCopy, code.ClueByCopy }.OfType<Located<string>>())
        {
            var without = copies.Where(copy => copy[name.Value] is null).ToArray();
            if (without.Length == copies.Length)
                yield return CipherFindings.NoCopyHas(name, copies);
            else
            {
                foreach (var copy in without)
                    yield return CipherFindings.CopyLacks(copy, name, code);
            }
        }
    }
}

/// <summary>A copy with the codes as its owner has them.</summary>
internal sealed record OwnCodes(Copy Copy, ReadingSources Sources);
