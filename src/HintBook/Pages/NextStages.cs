using System.Collections.Frozen;
using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Pages;

/// <summary>What a reader who has done a stage is told next.</summary>
internal static class NextStages
{
    /// <summary>For each stage the stages whose opening mentions it, in the author's order.</summary>
    public static FrozenDictionary<string, ImmutableArray<string>> OpenedBy(SitePlan plan)
    {
        var opened = plan.Book.Stages.ToDictionary(stage => stage.Id.Value, _ => ImmutableArray.CreateBuilder<string>());
        foreach (var stage in plan.Book.Stages)
        {
            foreach (var before in OpensAfter(plan, stage.Id.Value).SelectMany(group => group).Distinct(StringComparer.Ordinal))
                opened.GetValueOrDefault(before)?.Add(stage.Id.Value);
        }

        return opened.ToFrozenDictionary(each => each.Key, each => each.Value.ToImmutable());
    }

    /// <summary>
    /// When a stage opens, for the script: alternatives joined by commas, groups by spaces, in page names, which say nothing.
    /// </summary>
    public static string Groups(SitePlan plan, string stage) =>
        string.Join(' ', OpensAfter(plan, stage).Select(group =>
            string.Join(',', group.Where(plan.Addresses.Names.ContainsKey).Select(each => plan.Addresses.Names[each][0]))));

    /// <summary>
    /// The stages that end the box: those that bring about something of the goal. Where a reaction of the box does that, no
    /// stage does, and then it is those after which nothing opens.
    /// </summary>
    public static FrozenSet<string> Ends(SitePlan plan, FrozenDictionary<string, ImmutableArray<string>> opened)
    {
        var wanted = plan.Book.Goal.SelectMany(InPositions).Select(goal => (
            goal.Name.Value,
            Positions: goal.Positions.IsEmpty
                ? plan.Book.Box.Names.Where(named => named.Id.Value == goal.Name.Value).Select(named => named.Attained).ToArray()
                : [.. goal.Positions.Select(position => position.Value)])).ToArray();
        var ends = plan.Book.Stages
            .Where(stage => stage.Moves.Any(move => move.Changes.Any(change =>
                wanted.Any(goal => goal.Value == change.Name.Value && goal.Positions.Contains(change.Position.Value)))))
            .Select(stage => stage.Id.Value)
            .ToFrozenSet();
        return ends.Count > 0
            ? ends
            : plan.Book.Stages.Where(stage => !stage.Optional && !stage.RedHerring && opened[stage.Id.Value].IsEmpty)
                .Select(stage => stage.Id.Value)
                .ToFrozenSet();
    }

    private static IEnumerable<InPosition> InPositions(Condition condition) => condition switch
    {
        InPosition one => [one],
        AnyOf any => any.Alternatives.SelectMany(alternative => alternative).SelectMany(InPositions),
        _ => [],
    };

    private static ImmutableArray<ImmutableArray<string>> OpensAfter(SitePlan plan, string stage) =>
        plan.Survey.Stages.TryGetValue(stage, out var known) ? known.OpensAfter : [];
}
