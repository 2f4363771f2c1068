using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;

namespace HintBook.Spoilers;

/// <summary>
/// Looks for a way to a stage that leaves out the stages which give a secret: whatever can be done is done, round after round, in the
/// author's order. Quick and not thorough; a way that it finds has been carried out move by move, and where it finds none, that proves nothing.
/// </summary>
internal sealed class WaysAround(Book book)
{
    private const int MostStages = 200;
    private const int MostRounds = 40;
    private const int MostSearches = 20;
    private readonly Dictionary<(string, string), ImmutableArray<string>?> found = [];

    /// <summary>The moves of a way as a person would say them, or null if none was found.</summary>
    public ImmutableArray<string>? To(Stage stage, Secret secret, ImmutableArray<Stage> givers)
    {
        if (book.Stages.Length > MostStages)
            return null;
        if (!found.TryGetValue((stage.Id.Value, secret.Id), out var way))
            found[(stage.Id.Value, secret.Id)] = way = found.Count >= MostSearches ? null : Search(stage, givers.Select(giver => giver.Id.Value).ToHashSet());
        return way;
    }

    private ImmutableArray<string>? Search(Stage goal, HashSet<string> without)
    {
        var box = new Replayer(book);
        var way = new List<Step>();
        var did = new HashSet<(string?, int)>();
        for (var round = 0; round < MostRounds; round++)
        {
            if (box.IsOpen(goal.Id.Value))
                return Trimmed(way, goal);
            var before = way.Count;
            foreach (var step in Steps(goal, without).Where(step => !did.Contains((step.Stage, step.Move))))
            {
                if (box.Follow([step]) is not null)
                    continue;
                did.Add((step.Stage, step.Move));
                way.Add(step);
                if (box.IsOpen(goal.Id.Value))
                    return Trimmed(way, goal);
            }

            if (way.Count == before)
                return null;
        }

        return null;
    }

    // A step that the way does without is left out.
    private ImmutableArray<string> Trimmed(List<Step> way, Stage goal)
    {
        for (var i = way.Count - 1; i >= 0; i--)
        {
            List<Step> shorter = [.. way[..i], .. way[(i + 1)..]];
            var box = new Replayer(book);
            if (box.Follow(shorter) is null && box.IsOpen(goal.Id.Value))
                way = shorter;
        }

        return [.. way.Select(step => step.Says).Distinct(StringComparer.Ordinal)];
    }

    private IEnumerable<Step> Steps(Stage goal, HashSet<string> without) =>
    [
        .. from stage in book.Stages
           where stage != goal && !without.Contains(stage.Id.Value)
           from move in stage.Moves.Index()
           select new Step { Kind = StepKind.StageMove, Says = $"“{stage.Title.Value}”", Stage = stage.Id.Value, Move = move.Index },
        .. book.Box.Moves.Index().Select(move => new Step { Kind = StepKind.BookMove, Says = move.Item.Name.Value, Move = move.Index }),
    ];
}
