namespace HintBook.Tests.Mechanism;

/// <summary>One state of a box at rest, and what can be done there.</summary>
/// <param name="At">Where everything is.</param>
/// <param name="Solved">Whether the goal holds.</param>
/// <param name="Acts">Every act that is possible.</param>
internal sealed record Rest(IReadOnlyDictionary<string, string> At, bool Solved, IReadOnlyList<Arrow> Acts);

/// <summary>An act that is possible in a state.</summary>
/// <param name="Name">Which one: <c>stage/0</c> for the first move of a stage.</param>
/// <param name="Stage">The stage of which it is a move, or null.</param>
/// <param name="To">The number of the state it leads to.</param>
internal sealed record Arrow(string Name, string? Stage, int To);

/// <summary>All states as plain data, for those who ask something else of them.</summary>
internal sealed partial class NaiveExplorer
{
    /// <summary>Every state that was reached, the start first.</summary>
    public IReadOnlyList<Rest> Rests()
    {
        var numbers = order.Index().ToDictionary(pair => pair.Item, pair => pair.Index);
        return [.. order.Select(state => new Rest(
            state.At, Solved(state), [.. state.Next.Select(next => new Arrow(next.Act, next.Stage, numbers[next.To]))]))];
    }
}
