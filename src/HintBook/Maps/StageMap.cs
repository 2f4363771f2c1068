using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;

namespace HintBook.Maps;

/// <summary>How a stage stands out on a map.</summary>
public enum StageKind
{
    /// <summary>On the way to the goal.</summary>
    Ordinary,

    /// <summary>The box opens without it.</summary>
    Optional,

    /// <summary>It leads nowhere, on purpose.</summary>
    RedHerring,

    /// <summary>No way leads to it.</summary>
    Unreachable,

    /// <summary>It attains what the box is solved by, or a part of that.</summary>
    Goal,
}

/// <summary>One stage on a map.</summary>
/// <param name="Number">Its place in the author's order, from 1.</param>
/// <param name="Title">What the author calls it.</param>
/// <param name="Kind">How it stands out; of several reasons the gravest.</param>
public sealed record StageNode(int Number, string Title, StageKind Kind)
{
    /// <summary>What its maker is told at its corner, such as what was found in its file; null for nothing.</summary>
    public NodeBadge? Badge { get; init; }
}

/// <summary>A word at the corner of a stage.</summary>
/// <param name="Says">The word, short.</param>
/// <param name="IsGrave">Whether it must be mended.</param>
public sealed record NodeBadge(string Says, bool IsGrave);

/// <summary>One stage opens another.</summary>
/// <param name="From">The number of the stage that is done first.</param>
/// <param name="To">The number of the stage that it opens.</param>
/// <param name="OneOfSeveral">Whether another stage would do in its place.</param>
public sealed record StageEdge(int From, int To, bool OneOfSeveral);

/// <summary>Which stages open which: the graph alone, without any place on paper.</summary>
/// <param name="Title">What the box is called.</param>
/// <param name="Nodes">The stages in the author's order: number <c>n</c> stands at index <c>n - 1</c>.</param>
/// <param name="Edges">Every pair at most once, ordered by the stage that is opened, then by the one that opens it.</param>
public sealed record StageMap(string Title, ImmutableArray<StageNode> Nodes, ImmutableArray<StageEdge> Edges)
{
    /// <summary>
    /// The map of a book. A stage that is needed and also one of several is needed; names that are no stages of the book, and
    /// stages that the survey doesn't speak of, have no edges.
    /// </summary>
    public static StageMap Build(Book book, Survey survey)
    {
        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var stage in book.Stages)
            numbers.TryAdd(stage.Id.Value, numbers.Count + 1);

        var goals = Goals.Find(book);
        var nodes = book.Stages.Select((stage, i) =>
            new StageNode(i + 1, stage.Title.Value, KindOf(stage, survey, goals.Contains(stage))));
        var edges =
            from stage in book.Stages.Select((stage, i) => (Number: i + 1, Id: stage.Id.Value))
            where survey.Stages.ContainsKey(stage.Id)
            from opener in
                from opens in survey.Stages[stage.Id].OpensAfter
                from id in opens
                where numbers.ContainsKey(id)
                group opens by numbers[id]
            orderby stage.Number, opener.Key
            select new StageEdge(opener.Key, stage.Number, opener.All(opens => opens.Length > 1));
        return new(book.Title.Value, [.. nodes], [.. edges]);
    }

    private static StageKind KindOf(Stage stage, Survey survey, bool isGoal) =>
        survey.Stages.TryGetValue(stage.Id.Value, out var known) && !known.Reachable ? StageKind.Unreachable
        : stage.RedHerring ? StageKind.RedHerring
        : isGoal ? StageKind.Goal
        : stage.Optional ? StageKind.Optional
        : StageKind.Ordinary;
}
