using System.Collections.Immutable;
using HintBook.Ciphers;
using HintBook.Mechanism;
using HintBook.Text;

namespace HintBook.Checking;

/// <summary>The five claims about a book that a check ends with, each from the pass that looked into it.</summary>
public static class BookClaims
{
    // Errors that say what is told too early, and the warnings that say where that may be so.
    private static readonly string[] Leaks = ["HB3101", "HB3103", "HB3105"];
    private static readonly string[] Doubts = ["HB3102", "HB3104", "HB3303"];

    /// <summary>Always all five; not proved, with the reason, where something must be mended first.</summary>
    public static ImmutableArray<BookVerdict> Of(Checked book) => book switch
    {
        Sound sound => Of(sound.Examined, sound.Findings),
        Faulty { Examined: { } examined } faulty => Of(examined, faulty.Findings),
        _ => Verdicts.Of(null, Standing.Unasked, Standing.Unasked),
    };

    private static ImmutableArray<BookVerdict> Of(Examined book, Findings findings) =>
        Verdicts.Of(book.Survey, CodesOf(book.Proofs), LeaksOf(findings));

    // A code without a clue isn't said to follow from one.
    private static Standing CodesOf(Proofs proofs)
    {
        var verdicts = proofs.Codes.Where(proof => proof.Code.Clue is not null || !proof.Code.Reads.IsEmpty).ToArray();
        var refuted = verdicts.Count(proof => proof.Says.Word == BookVerdict.Refuted);
        var open = verdicts.Where(proof => proof.Says.Word == BookVerdict.NotProved).Select(proof => $"“{proof.Code.Id.Value}”").ToArray();
        var (noun, verb) = open.Length == 1 ? ("clue", "is") : ("clues", "are");
        return refuted > 0 ? Standing.Against(refuted)
            : open.Length > 0 ? new(BookVerdict.NotProved, $"nothing says how the {noun} of {Words.List(open)} {verb} read")
            : Standing.Proved;
    }

    private static Standing LeaksOf(Findings findings)
    {
        var sure = findings.All.Count(finding => Leaks.Contains(finding.Code.Id));
        var doubtful = findings.All.Count(finding => Doubts.Contains(finding.Code.Id));
        return sure > 0 ? Standing.Against(sure)
            : doubtful > 0 ? new(BookVerdict.NotProved, $"{Words.Count(doubtful, "finding")} in doubt")
            : Standing.Proved;
    }
}
