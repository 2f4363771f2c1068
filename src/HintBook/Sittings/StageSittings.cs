using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Sittings;

/// <summary>What sittings tell of one stage.</summary>
public sealed record StageSittings
{
    // From here on a step of help is worth rewriting: in most of what would come, most people go on to the next one.
    private const double Most = 0.5;
    private const int Enough = 3;

    /// <summary>The stage.</summary>
    public required Stage Stage { get; init; }

    /// <summary>How many people were at it.</summary>
    public required int People { get; init; }

    /// <summary>How long they took; null where nobody looked at a clock.</summary>
    public required MiddleMinutes? Minutes { get; init; }

    /// <summary>The times that were noted, in minutes, in the order of the files.</summary>
    public required ImmutableArray<double> Times { get; init; }

    /// <summary>Of all, those who took any help.</summary>
    public required Proportion TookNudge { get; init; }

    /// <summary>Of those who read the nudge, those who went on to the clue.</summary>
    public required Proportion WentOnToClue { get; init; }

    /// <summary>Of those who read the clue, those who went on to the answer.</summary>
    public required Proportion WentOnToAnswer { get; init; }

    /// <summary>Of all, those who read the answer.</summary>
    public Proportion ReadAnswer => WentOnToAnswer with { Of = People };

    /// <summary>Of all, those who gave up here.</summary>
    public required Proportion GaveUp { get; init; }

    /// <summary>What people noted.</summary>
    public required ImmutableArray<string> Remarks { get; init; }

    /// <summary>
    /// The step of help that is most surely worth rewriting, and how many of those who read it needed the next one; null where none is. It
    /// is named where three read it at least, and half of them or more went on.
    /// </summary>
    public (HelpTaken Step, Proportion WentOn)? Rewrite => new (HelpTaken Step, Proportion WentOn)[]
        {
            (HelpTaken.Nudge, WentOnToClue), (HelpTaken.Clue, WentOnToAnswer), (HelpTaken.Answer, GaveUp),
        }
        .Where(step => step.WentOn.Of >= Enough && step.WentOn.Share >= Most)
        .OrderByDescending(step => step.WentOn.Bounds.Low)
        .Select(step => ((HelpTaken, Proportion)?)step)
        .FirstOrDefault();

    /// <summary>What the sittings of a book tell of each of its stages, in the author's order.</summary>
    /// <param name="book">The book.</param>
    public static ImmutableArray<StageSittings> Of(Book book)
    {
        var rows = book.Sittings.ToLookup(row => row.Stage);
        return [.. book.Stages.Select(stage => Of(stage, [.. rows[stage.Id.Value]]))];
    }

    private static StageSittings Of(Stage stage, ImmutableArray<SatStage> rows)
    {
        ImmutableArray<double> times = [.. rows.Where(row => !row.GaveUp).Select(row => row.Minutes).OfType<double>()];
        return new()
        {
            Stage = stage,
            People = rows.Length,
            Minutes = MiddleMinutes.Of(times),
            Times = times,
            TookNudge = new(Took(HelpTaken.Nudge), rows.Length),
            WentOnToClue = new(Took(HelpTaken.Clue), Took(HelpTaken.Nudge)),
            WentOnToAnswer = new(Took(HelpTaken.Answer), Took(HelpTaken.Clue)),
            GaveUp = new(rows.Count(row => row.GaveUp), rows.Length),
            Remarks = [.. rows.Select(row => row.Remark).Where(remark => remark.Length > 0)],
        };

        int Took(HelpTaken help) => rows.Count(row => row.Help >= help);
    }
}
