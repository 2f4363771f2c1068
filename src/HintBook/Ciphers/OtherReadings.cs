using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Ciphers.WaysOfReading;
using HintBook.Text;

namespace HintBook.Ciphers;

/// <summary>
/// Other settings that a solver might read from a clue without knowing which way is meant, the likeliest first. Each is read by a chain
/// of steps like the author's.
/// </summary>
internal static class OtherReadings
{
    /// <summary>Clues of more characters than this aren't looked at.</summary>
    public const int LongestClue = 10_000;

    /// <summary>No more readings than this are kept of one code.</summary>
    public const int Most = 8;

    private static readonly (string Way, string Says)[] Rearranged =
    [
        (Rearrangements.Reverse.Name, "read from the right"),
        (Rearrangements.Sort.Name, "put in ascending order"),
        (Rearrangements.SortDown.Name, "put in descending order"),
    ];

    private static readonly (string Way, string Says)[] ReadElsewhere =
        [(Rearrangements.ReverseLines.Name, "read from the last line"), (Rearrangements.ReverseWords.Name, "read from the last word")];

    /// <summary>Every other setting that fits the code's lock; none for a code that can't be set on one.</summary>
    public static IEnumerable<OtherReading> Find(Code code, string start, ImmutableArray<ReadingStep> steps, ReadingSources sources)
    {
        if (code.Lock is not { } held || start.Length > LongestClue)
            return [];
        return Candidates(code, start, steps, sources)
            .Select(candidate => (candidate.How, candidate.Likely, Text: Chain.End(start, candidate.Steps, sources)))
            .Where(read => read.Text is not null && Fit.On(held, read.Text) && !Fit.Same(read.Text, code.Answer.Value, held))
            .Select(read => new OtherReading(Fit.Bare(read.Text!), read.How, read.Likely, Reason(code, read.Text!)))
            .DistinctBy(other => other.Setting);
    }

    /// <summary>The one change to one step that makes the chain give the answer, or null: which step, and what to write there.</summary>
    public static (ReadingStep Step, string Instead)? Mending(Code code, string start, ImmutableArray<ReadingStep> steps, ReadingSources sources)
    {
        if (start.Length > LongestClue)
            return null;
        var changes =
            from place in Enumerable.Range(0, steps.Length)
            from step in Habits(steps[place]).Select(habit => habit.Step).Concat(Bare(steps[place].At))
            let end = Chain.End(start, steps.SetItem(place, step), sources)
            where end is not null && Fit.Same(end, code.Answer.Value, code.Lock)
            select ((ReadingStep, string)?)(steps[place], $"“{Chain.Written(step)}”");
        return changes.FirstOrDefault();
    }

    private static IEnumerable<(IEnumerable<ReadingStep> Steps, string How, bool Likely)> Candidates(
        Code code, string start, ImmutableArray<ReadingStep> steps, ReadingSources sources)
    {
        var at = code.Answer.At;
        foreach (var place in Enumerable.Range(0, steps.Length))
        {
            foreach (var (step, says) in Habits(steps[place]))
                yield return (steps.SetItem(place, step), says, true);
        }

        // A lock of letters takes any word of the right length, so fitting it says nothing.
        var telling = code.Lock is not WheelLock { Symbols: var symbols } || !symbols.All(char.IsLetter);
        var alone = Ways.All.Where(way => way is { CanBeBare: true, StandsAlone: true } && !steps.Any(step => step.Way.Value == way.Name)).ToArray();
        foreach (var way in alone)
            yield return ([Bare(way.Name, at)], $"“{way.Name}”", telling);
        foreach (var place in Enumerable.Range(0, steps.Length == 1 ? 0 : steps.Length))
        {
            foreach (var way in alone)
                yield return (steps.SetItem(place, Bare(way.Name, at)), $"“{way.Name}” in place of “{steps[place].Way}”", false);
        }

        foreach (var (way, says) in Rearranged)
            yield return (steps.Add(Bare(way, at)), says, false);
        foreach (var (way, says) in ReadElsewhere)
            yield return (steps.Insert(0, Bare(way, at)), says, false);
    }

    private static IEnumerable<(ReadingStep Step, string Says)> Habits(ReadingStep step) =>
        from habit in Ways.Named(step.Way.Value)?.Conventions([.. step.With.Select(told => told.Value)]) ?? []
        select (step with { With = [.. habit.Told.Select(told => new Located<string>(told, step.At))] }, habit.Says);

    private static IEnumerable<ReadingStep> Bare(Span at) => Ways.All.Where(way => way.CanBeBare).Select(way => Bare(way.Name, at));

    private static ReadingStep Bare(string way, Span at) => new(new Located<string>(way, at), [], at);

    private static string? Reason(Code code, string text) =>
        code.RuledOut.FirstOrDefault(rule => Fit.Same(rule.Setting.Value, text, code.Lock))?.Why.Value;
}
