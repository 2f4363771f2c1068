using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Sittings;
using HintBook.Tests.Books;

namespace HintBook.Tests.Sittings;

/// <summary>People whom nobody has met, but of whom everything is known: how long most of them take, and how many need which help.</summary>
internal static class SimulatedSittings
{
    /// <summary>The middle of the times that <see cref="At"/> draws, in minutes.</summary>
    public const double Median = 12;

    /// <summary>Of those who read the nudge, this share needs the clue.</summary>
    public const double NeedTheClue = 0.4;

    private const double NeedTheNudge = 0.7;
    private const double Spread = 0.6;

    /// <summary>
    /// As many people at one stage: times as in a log-normal distribution, which has most people near its middle and a few who are stuck for long.
    /// </summary>
    /// <param name="stage">The stage's id.</param>
    /// <param name="people">How many.</param>
    /// <param name="dice">Chance.</param>
    public static IEnumerable<SatStage> At(string stage, int people, Dice dice)
    {
        for (var who = 1; who <= people; who++)
        {
            // Box and Muller 1958: two even numbers make one of the normal distribution.
            var normal = Math.Sqrt(-2 * Math.Log(1 - dice.Share())) * Math.Cos(2 * Math.PI * dice.Share());
            var help = dice.Share() >= NeedTheNudge ? HelpTaken.Nothing : dice.Share() < NeedTheClue ? HelpTaken.Clue : HelpTaken.Nudge;
            yield return Row($"P{who}", stage, Median * Math.Exp(Spread * normal), help);
        }
    }

    /// <summary>A row as it would be read.</summary>
    public static SatStage Row(string who, string stage, double? minutes, HelpTaken help = HelpTaken.Nothing, bool gaveUp = false, string remark = "") =>
        new(who, stage, minutes, help, gaveUp, remark, A.Somewhere);

    /// <summary>A book of stages, one behind the other, with these rows.</summary>
    public static Book Book(ImmutableArray<SatStage> rows, params Stage[] stages) => A.Book(stages) with { Sittings = rows };
}
