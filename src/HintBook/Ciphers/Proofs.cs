using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Ciphers;

/// <summary>What is known of all codes of a book.</summary>
/// <param name="Codes">One proof for each code, in the author's order.</param>
/// <param name="Findings">What there is to tell.</param>
public sealed record Proofs(ImmutableArray<Proof> Codes, ImmutableArray<Finding> Findings)
{
    private const int MostTold = 4;

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
        var findings = ImmutableArray.CreateBuilder<Finding>();
        ImmutableArray<Book> copies = [.. book.Copies.Select(book.As)];
        var proofs = book.Box.Codes.Select((code, place) =>
        {
            if (!CopyProofs.Differs(code, book))
                return Prove(code, book, findings);
            var (proof, told) = CopyProofs.Prove(place, book, copies);
            findings.AddRange(told);
            return proof;
        });
        return new Proofs([.. proofs], Text.Findings.Of(findings).All);
    }

    /// <summary>One code, which has one answer for everybody.</summary>
    internal static Proof Prove(Code code, Book book, ImmutableArray<Finding>.Builder findings)
    {
        // An answer that isn't there has its finding from reading.
        if (code.Answer.Value.Length == 0)
            return new Proof(code, new Verdict.NotProved("it has no answer"), [], []);
        var unfit = Fit.Wrong(code);
        if (unfit is not null)
            findings.Add(unfit);
        if (code.Reads.IsEmpty)
            return Unread(code, findings);

        var (start, steps, wrong) = Chain.Plan(code, book);
        if (wrong is not null)
        {
            findings.Add(wrong);
            return new Proof(code, wrong.IsError ? new Verdict.Refuted(wrong) : new Verdict.NotProved("it has no clue"), [], []);
        }

        var (worked, end, stuck) = Chain.Read(start, steps, book);
        var same = Fit.Same(end, code.Answer.Value, code.Lock);
        var refuted = stuck ?? (same ? null : Other(code, start, steps, end, book));
        if (refuted is not null)
            findings.Add(refuted);
        if ((refuted ?? unfit) is { } reason)
            return new Proof(code, new Verdict.Refuted(reason), worked, []);

        var others = OtherReadings.Find(code, start, steps, book).ToArray();
        findings.AddRange(About(code, start, others));
        return new Proof(code, new Verdict.Proved(), worked, [.. others.Take(OtherReadings.Most)]);
    }

    private static Proof Unread(Code code, ImmutableArray<Finding>.Builder findings)
    {
        if (code is { Lock: not null, Clue: not null })
            findings.Add(CipherFindings.NoReads(code));
        return new Proof(code, new Verdict.NotProved(code.Clue is null ? "it has no clue" : "nothing says how its clue is read"), [], []);
    }

    private static Finding Other(Code code, string start, ImmutableArray<ReadingStep> steps, string end, Book book) =>
        OtherReadings.Mending(code, start, steps, book) is { } mending
            ? CipherFindings.OtherAnswer(code, mending.Step, end, mending.Instead)
            : CipherFindings.OtherAnswer(code, code.Reads[^1], end, null);

    // Long shots aren't findings: there are some for every lock. The workings of a proof list them.
    private static IEnumerable<Finding> About(Code code, string start, OtherReading[] others)
    {
        var likely = others.Where(other => other is { Likely: true, RuledOut: null }).Take(MostTold).ToArray();
        if (likely.Length > 0)
            yield return CipherFindings.LikelyOther(code, likely);
        if (start.Length > OtherReadings.LongestClue && code is { Clue: not null, Lock: not null })
            yield return CipherFindings.TooLong(code, OtherReadings.LongestClue);
        foreach (var rule in code.RuledOut.Where(rule => !Array.Exists(others, other => Fit.Same(other.Setting, rule.Setting.Value, code.Lock))))
            yield return CipherFindings.UnusedRule(rule);
    }
}
