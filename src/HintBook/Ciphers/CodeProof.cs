using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Ciphers;

/// <summary>Proves one code that has one answer for everybody.</summary>
internal static class CodeProof
{
    private const int MostTold = 4;

    /// <summary>Reads the clue as the code says, and as a solver might who doesn't know how.</summary>
    /// <param name="code">The code, with the answer and the clue of one copy where they differ by copy.</param>
    /// <param name="sources">What its steps may name.</param>
    /// <returns>The proof, and the findings about this code in no particular order.</returns>
    public static (Proof Proof, ImmutableArray<Finding> Findings) Of(Code code, ReadingSources sources)
    {
        // Reading the book has reported a missing answer.
        if (code.Answer.Value.Length == 0)
            return (new Proof(code, new Verdict.NotProved("it has no answer"), [], []), []);
        ImmutableArray<Finding> unfit = Fit.Wrong(code) is { } misfit ? [misfit] : [];
        // Every clue gives another answer than one that nobody can set.
        if (unfit is [{ Code: var lacking } nothing] && lacking == CipherFindings.NothingToSetCode)
            return (new Proof(code, new Verdict.Refuted(nothing), [], []), unfit);
        if (code.Reads.IsEmpty)
            return (Unread(code), code is { Lock: not null, Clue: not null } ? [.. unfit, CipherFindings.NoReads(code)] : unfit);

        var (start, steps, wrong) = Chain.Plan(code, sources);
        if (wrong is not null)
            return (new Proof(code, wrong.IsError ? new Verdict.Refuted(wrong) : new Verdict.NotProved("it has no clue"), [], []), [.. unfit, wrong]);

        var (worked, end, stuck) = Chain.Read(start, steps, sources);
        if (stuck is not null && OtherReadings.Mending(code, start, steps, sources) is { } other)
            stuck = stuck with { Help = $"{stuck.Help} With {other.Instead} in place of “{Chain.Written(other.Step)}” it would be the answer." };
        var refuted = stuck ?? (Fit.Same(end, code.Answer.Value, code.Lock) ? null : OtherAnswer(code, start, steps, end, sources));
        var clue = code.Clue?.Value ?? sources.SourceOf(code)?.Answer.Value ?? "";
        unfit = [.. unfit, .. Skipping.Without(clue, code.Skip).NotThere.Select(word => CipherFindings.NotThere(code, word))];
        ImmutableArray<Finding> against = refuted is null ? unfit : [.. unfit, refuted];
        if ((refuted ?? unfit.FirstOrDefault(finding => finding.IsError)) is { } reason)
            return (new Proof(code, new Verdict.Refuted(reason), worked, []), against);

        var others = OtherReadings.Find(code, start, steps, sources).ToArray();
        return (new Proof(code, new Verdict.Proved(), worked, [.. others.Take(OtherReadings.Most)]), [.. unfit, .. About(code, start, others)]);
    }

    private static Proof Unread(Code code) =>
        new(code, new Verdict.NotProved(code.Clue is null ? "it has no clue" : "nothing says how its clue is read"), [], []);

    private static Finding OtherAnswer(Code code, string start, ImmutableArray<ReadingStep> steps, string end, ReadingSources sources) =>
        OtherReadings.Mending(code, start, steps, sources) is { } mending
            ? CipherFindings.OtherAnswer(code, mending.Step, end, mending.Instead)
            : CipherFindings.OtherAnswer(code, code.Reads[^1], end, null);

    // Every lock has some unlikely other readings. The proof lists them; they aren't findings.
    private static IEnumerable<Finding> About(Code code, string start, OtherReading[] others)
    {
        var likely = others.Where(other => other is { Likely: true, RuledOut: null }).Take(MostTold).ToArray();
        if (likely.Length > 0)
            yield return CipherFindings.LikelyOther(code, likely);
        if (start.Length > OtherReadings.LongestClue && code is { Clue: not null, Lock: not null })
            yield return CipherFindings.TooLong(code, OtherReadings.LongestClue);
        foreach (var rule in code.RuledOut)
        {
            if (!Array.Exists(others, other => Fit.Same(other.Setting, rule.Setting.Value, code.Lock)))
                yield return CipherFindings.UnusedRule(rule);
        }
    }
}
