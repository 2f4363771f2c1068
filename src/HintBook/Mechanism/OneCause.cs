using System.Collections.Immutable;
using HintBook.Mechanism.Answers;
using HintBook.Mechanism.Graph;
using HintBook.Text;

namespace HintBook.Mechanism;

/// <summary>Tells something that nothing gives once, with all that follows from it, instead of once for each thing that waits for it.</summary>
internal static class OneCause
{
    private static readonly Dictionary<FindingCode, string> Follows = new()
    {
        [MechanismFindings.NeverOpensCode] = "So the goal can't be reached.",
        [MechanismFindings.StageNeverReachedCode] = "So this stage can't be reached.",
        [MechanismFindings.NeverPossibleCode] = "So this never happens.",
        [HandlingFindings.NeverOpenCode] = "So no hand ever gets at this.",
    };

    /// <summary>The findings, without those that only follow from something that nothing gives.</summary>
    public static IEnumerable<Finding> Told(ImmutableArray<Finding> findings)
    {
        var places = findings.Where(finding => finding.Code == GraphFindings.NothingGivesCode)
            .SelectMany(finding => finding.Related.Select(related => related.At).Append(finding.At).Select(at => (at, finding)))
            .ToLookup(pair => pair.at, pair => pair.finding);
        var causes = findings.Where(finding => Follows.ContainsKey(finding.Code)).ToLookup(CauseOf);
        return
            from finding in findings
            where CauseOf(finding) is null
            select causes[finding] is var following && following.Any()
                ? finding with { Related = [.. finding.Related, .. following.SelectMany(Consequences)] }
                : finding;

        Finding? CauseOf(Finding finding) => Follows.ContainsKey(finding.Code)
            ? finding.Related.Where(related => related.Message == Cause.NothingGives).SelectMany(related => places[related.At]).FirstOrDefault()
            : null;
    }

    private static IEnumerable<Related> Consequences(Finding finding) =>
        finding.Related.Where(related => related.Message != Cause.NothingGives).Prepend(new Related(finding.At, Follows[finding.Code]));
}
