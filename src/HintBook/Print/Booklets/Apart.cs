using System.Collections.Immutable;
using HintBook.Mechanism;

namespace HintBook.Print.Booklets;

/// <summary>
/// Which entries must never be seen together: those of one stage, those of stages of which one opens the other, two questions of the finder, and a question
/// with an entry of a stage to which it leads.
/// </summary>
internal sealed class Apart
{
    private readonly bool[,] apart;

    private Apart(bool[,] apart) => this.apart = apart;

    /// <summary>Works it out.</summary>
    /// <param name="entries">The entries, by number from 0.</param>
    /// <param name="survey">Which stage opens which.</param>
    public static Apart Of(ImmutableArray<Entry> entries, Survey survey)
    {
        var neighbours = NeighboursIn(survey);
        var pairs = new bool[entries.Length, entries.Length];
        for (var i = 0; i < entries.Length; i++)
        {
            for (var j = 0; j < i; j++)
                pairs[i, j] = pairs[j, i] = Are(entries[i], entries[j], neighbours);
        }

        return new(pairs);
    }

    /// <summary>Whether two entries must not be seen together.</summary>
    public bool this[int one, int other] => apart[one, other];

    /// <summary>The pairs of stages of which one opens the other.</summary>
    public static ImmutableHashSet<(string, string)> NeighboursIn(Survey survey) =>
    [
        .. from stage in survey.Stages
           from before in stage.Value.OpensAfter.SelectMany(each => each)
           from pair in new[] { (stage.Key, before), (before, stage.Key) }
           select pair,
    ];

    private static bool Are(Entry one, Entry other, ImmutableHashSet<(string, string)> neighbours) => (one.IsQuestion, other.IsQuestion) switch
    {
        (true, true) => true,
        (false, false) => one.Stages.Any(stage => other.Stages.Any(another => stage == another || neighbours.Contains((stage, another)))),
        _ => one.Stages.Intersect(other.Stages).Any(),
    };
}
