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
    private static readonly string[] Doubts = ["HB3102", "HB3104", "HB3303", "HB7402"];
    private const string NotLookedFor = "HB3301";

    /// <summary>Always all five; not proved, with the reason, where something must be mended first.</summary>
    /// <param name="book">The book, with everything that was found about it.</param>
    public static ImmutableArray<BookVerdict> Of(Checked book) => book switch
    {
        Sound sound => Of(sound.Examined, sound.Findings),
        Faulty { Examined: { } examined } faulty => Of(examined, faulty.Findings),
        _ => Verdicts.Of(null, Standing.Unasked, Standing.Unasked),
    };

    private static ImmutableArray<BookVerdict> Of(Examined book, Findings findings) =>
        Verdicts.Of(book.Survey, CodesOf(book.Proofs), LeaksOf(book, findings));

    // A code that its maker gives without any clue, such as one that is found on the box, isn't said to follow from one.
    private static Standing CodesOf(Proofs proofs)
    {
        var claimed = proofs.Codes.Where(proof => proof.Code is not { Clue: null, ClueByCopy: null, OnPaper: null, Reads: [] }).ToArray();
        var refuted = claimed.Count(proof => proof.Says.Word == BookVerdict.Refuted);
        if (refuted > 0)
            return Standing.Against(refuted);
        return Array.Find(claimed, proof => proof.Says.Word == BookVerdict.NotProved) is { } open
            ? new(BookVerdict.NotProved, $"“{open.Code.Id.Value}”: {WhyOf(open.Says)}")
            : Standing.Proved;
    }

    private static string WhyOf(Verdict verdict) => verdict is Verdict.NotProved(var why) ? why : "it isn't proved for every copy";

    private static Standing LeaksOf(Examined book, Findings findings)
    {
        var sure = findings.All.Count(finding => Leaks.Contains(finding.Code.Id));
        var doubtful = findings.All.Count(finding => Doubts.Contains(finding.Code.Id));
        return sure > 0 ? Standing.Against(sure)
            : doubtful > 0 ? new(BookVerdict.NotProved, $"{Words.Count(doubtful, "finding")} in doubt")
            : book.Survey.Opens is Claim.Refuted ? new(BookVerdict.NotProved, "what is known where isn't clear before the box opens")
            : book.Proofs.Codes.FirstOrDefault(proof => IsNotLookedFor(proof.Code, findings)) is { } unsought
                ? new(BookVerdict.NotProved, $"the code of “{unsought.Code.Id.Value}” is too common to be looked for in the texts")
            : Standing.Proved;
    }

    private static bool IsNotLookedFor(Books.Code code, Findings findings) =>
        findings.All.Any(finding => finding.Code.Id == NotLookedFor && finding.At == code.Answer.At);
}
