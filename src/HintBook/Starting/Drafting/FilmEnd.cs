using System.Collections.Immutable;

namespace HintBook.Starting.Drafting;

/// <summary>Holds the steps of a film against its length: captions of another film are as easily chosen as those of this one.</summary>
public static class FilmEnd
{
    // Credits and a last look at the box need no words.
    private static readonly TimeSpan Wordless = TimeSpan.FromSeconds(60);

    /// <summary>The steps that the film has; none of them ends after it.</summary>
    /// <param name="steps">The steps, in the order of time.</param>
    /// <param name="length">How long the film lasts; null where it isn't known.</param>
    public static Usable<FilmStep> Within(ImmutableArray<FilmStep> steps, TimeSpan? length)
    {
        if (length is not { } end || steps.IsEmpty)
            return new(steps, []);
        var kept = steps.Where(step => step.From < end).Select(step => step.To >= end ? step with { To = null } : step).ToImmutableArray();
        return new(kept, [.. Later(steps, kept.Length, end), .. Silent(kept, end)]);
    }

    private static IEnumerable<string> Later(ImmutableArray<FilmStep> steps, int kept, TimeSpan end)
    {
        if (kept < steps.Length)
        {
            yield return $"The film ends at {DraftedStage.Moment(end)}, but its captions or chapters go on: what begins at "
                + $"{DraftedStage.Moment(steps[kept].From)} and later is passed over. Do they belong to another film?";
        }
    }

    private static IEnumerable<string> Silent(ImmutableArray<FilmStep> kept, TimeSpan end)
    {
        var spoken = kept.SelectMany(step => step.Said).Select(said => said.To).DefaultIfEmpty(end).Max();
        if (end - spoken > Wordless)
        {
            yield return $"The captions end at {DraftedStage.Moment(spoken)}, the film at {DraftedStage.Moment(end)}. "
                + "What it shows after them without a word is drafted only where a list of chapters names it.";
        }
    }
}
