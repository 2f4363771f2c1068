using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Mechanism.Answers;

/// <summary>What happens first on one way: ways are long, and a large book has many stages that the same way goes round.</summary>
internal sealed class OnTheWay
{
    private readonly Dictionary<Placed, int> first = [];

    // By step the last stage, in the author's order, up to it.
    private readonly int[] furthest;

    private OnTheWay(int length) => furthest = new int[length];

    /// <summary>Goes along a way once.</summary>
    /// <param name="book">The book.</param>
    /// <param name="numbers">The numbers of its stages by id.</param>
    /// <param name="way">The way.</param>
    public static OnTheWay Of(Book book, Dictionary<string, int> numbers, ImmutableArray<Step> way)
    {
        var (made, last) = (new OnTheWay(way.Length), -1);
        for (var i = 0; i < way.Length; i++)
        {
            var step = way[i];
            var move = step.Kind is StepKind.StageMove or StepKind.BookMove ? SolutionFindings.MoveOf(book, step, id => book.Stages[numbers[id]]) : null;
            foreach (var placed in move is null ? step.Leaves : move.Changes.Select(change => new Placed(change.Name.Value, change.Position.Value)))
                made.first.TryAdd(placed, i);
            made.furthest[i] = last = Math.Max(last, step.Stage is { } id ? numbers[id] : -1);
        }

        return made;
    }

    /// <summary>The step that brings about what a stage is for; else the first of a later stage; else the last.</summary>
    /// <param name="stage">The stage, which the way goes round.</param>
    /// <param name="number">Its number.</param>
    public int Round(Stage stage, int number)
    {
        var gives = stage.Moves.SelectMany(move => move.Changes).Select(change => new Placed(change.Name.Value, change.Position.Value))
            .Select(placed => first.GetValueOrDefault(placed, int.MaxValue)).DefaultIfEmpty(int.MaxValue).Min();
        return gives < int.MaxValue ? gives : Math.Min(FirstBehind(number), furthest.Length - 1);
    }

    private int FirstBehind(int number)
    {
        var (from, to) = (0, furthest.Length);
        while (from < to)
        {
            var middle = (from + to) / 2;
            (from, to) = furthest[middle] > number ? (from, middle) : (middle + 1, to);
        }

        return from;
    }
}
