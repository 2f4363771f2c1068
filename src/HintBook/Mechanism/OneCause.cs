using System.Collections.Immutable;
using HintBook.Mechanism.Answers;
using HintBook.Mechanism.Graph;
using HintBook.Text;

namespace HintBook.Mechanism;

/// <summary>
/// Tells one cause once, with what follows from it, instead of once for each thing that waits for it. A cause is something that nothing gives,
/// a circle of things that wait for each other, or conditions that never hold together.
/// </summary>
internal static class OneCause
{
    // A maker who mends the cause needs to see where it reaches, and not every place of it.
    private const int MostTold = 6;

    // What names the cause best stands first, behind what stands where the cause is written: a stage says where to mend it, the goal only that it must be.
    private static readonly ImmutableArray<(FindingCode Code, string Follows)> Effects =
    [
        (MechanismFindings.StageNeverReachedCode, "So this stage can't be reached."),
        (MechanismFindings.NeverOpensCode, "So the goal can't be reached."),
        (HandlingFindings.NeverOpenCode, "So no hand ever gets at this."),
        (MechanismFindings.NeverPossibleCode, "So this never happens."),
    ];

    private static readonly ImmutableArray<FindingCode> Ranked = [.. Effects.Select(effect => effect.Code)];

    /// <summary>The findings, without those that only follow from another one.</summary>
    public static IEnumerable<Finding> Told(ImmutableArray<Finding> findings)
    {
        var places = findings.Where(finding => finding.Code == GraphFindings.NothingGivesCode)
            .SelectMany(finding => finding.Related.Select(related => related.At).Append(finding.At).Select(at => (at, finding)))
            .ToLookup(pair => pair.at, pair => pair.finding);
        var first = findings.Where(finding => RankOf(finding) >= 0)
            .OrderByDescending(finding => CausePlace(finding)?.At == finding.At).ThenBy(RankOf)
            .Select(finding => (finding, Place: CausePlace(finding)))
            .Where(pair => pair.Place is not null)
            .GroupBy(pair => pair.Place!, pair => pair.finding)
            .ToDictionary(same => same.Key, same => same.First());
        var causes = findings.ToLookup(CauseOf);
        return
            from finding in findings
            where CauseOf(finding) is null
            select RankOf(finding) >= 0 || causes[finding].Any() ? With(finding, [.. causes[finding]]) : finding;

        Finding? CauseOf(Finding finding)
        {
            if (RankOf(finding) < 0 || CausePlace(finding) is not { } place)
                return null;
            var cause = place.Message == Cause.NothingGives ? places[place.At].FirstOrDefault() : first[place];
            return ReferenceEquals(cause, finding) ? null : cause;
        }
    }

    // Where the cause is written, then how far it reaches: to the goal first of all.
    private static Finding With(Finding finding, ImmutableArray<Finding> following)
    {
        var isCauseItself = finding.Code == GraphFindings.NothingGivesCode;
        var causes = finding.Related.Where(related => isCauseItself || (IsCause(related) && related.At != finding.At));
        var reach = following.Where(each => each.Code == MechanismFindings.NeverOpensCode).SelectMany(Consequences)
            .Concat(finding.Related.Where(related => !isCauseItself && !IsCause(related)))
            .Concat(following.Where(each => each.Code != MechanismFindings.NeverOpensCode).SelectMany(Consequences))
            .Where(related => isCauseItself || related.At != finding.At);
        return finding with { Related = [.. causes, .. Shortened([.. reach])] };
    }

    private static int RankOf(Finding finding) => Ranked.IndexOf(finding.Code);

    private static Related? CausePlace(Finding finding) => finding.Related.FirstOrDefault(IsCause);

    private static bool IsCause(Related related) => related.Message is Cause.NothingGives or Cause.InACircle or Cause.NeverSo;

    private static IEnumerable<Related> Consequences(Finding finding) =>
        finding.Related.Where(related => !IsCause(related)).Prepend(new Related(finding.At, Effects[RankOf(finding)].Follows));

    private static ImmutableArray<Related> Shortened(ImmutableArray<Related> all)
    {
        if (all.Length <= MostTold)
            return all;
        const int told = MostTold / 2;
        var last = all[told - 1];
        return [.. all.Take(told - 1), last with { Message = $"{last.Message} {all.Length - told} more places wait for the same." }];
    }
}
