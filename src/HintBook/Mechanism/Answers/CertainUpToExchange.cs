using System.Collections.Immutable;
using HintBook.Mechanism.Packed;

namespace HintBook.Mechanism.Answers;

/// <summary>
/// What is certain, from a graph in which each state may stand for all that exchanges of alike things make of it. What no exchange moves is certain there
/// exactly where it is certain in the box. Of alike things such a graph tells only what one or another of them does; if that is certain, the box is
/// explored again with one of its class told apart from the rest, and what holds for that one holds for each of them.
/// </summary>
internal static class CertainUpToExchange
{
    private const int MostToldApart = 1_000_000;

    /// <summary>By stage, and for the goal; of acts that can be exchanged nothing is said. Null where memory, time or states did not suffice.</summary>
    public static (Bits[] Stages, Bits Goal)? On(StateGraph graph, Budget budget)
    {
        var certain = CertainBefore.On(graph, budget);
        if (certain is null || graph.Alike is not { } alike)
            return certain;
        var things = new Attainable(graph.Machine);
        Bits[] all = [.. certain.Value.Stages, certain.Value.Goal];
        bool[] reached = [.. graph.Machine.StageActs.Select(acts => acts.Any(act => graph.Possible[act])), graph.Solved.HasAnySet()];
        foreach (var members in alike.Classes)
        {
            Bits[]? single = null;
            if (all.Where((bits, i) => reached[i] && Moved(members[0]).Any(number => bits[number])).Any() && (single = Single(members)) is null)
                return null;
            for (var i = 0; i < all.Length; i++)
            {
                if (reached[i])
                    Spread(all[i], single?[i], members);
            }
        }

        for (var i = 0; i < all.Length; i++)
        {
            for (var act = 0; reached[i] && act < graph.Machine.Acts.Length; act++)
                all[i][act] &= alike.Keeps(act);
        }

        return (all[..^1], all[^1]);

        IEnumerable<int> Moved(int variable) =>
            from position in Enumerable.Range(0, graph.Machine.Variables[variable].Positions.Length)
            where position != graph.Machine.Start[variable]
            select things.Of(variable, position);

        Bits[]? Single(ImmutableArray<int> members)
        {
            var besides = budget.Fork(held: graph.Bytes);
            var told = Exploration.Whole(graph.Machine, besides, most: MostToldApart, alike: alike.Without(members[0]));
            var known = told.Stopped is null ? CertainBefore.On(told, besides) : null;
            budget.Join(besides);
            return known is null ? null : [.. known.Value.Stages, known.Value.Goal];
        }

        void Spread(Bits bits, Bits? single, ImmutableArray<int> members)
        {
            for (var p = 0; p < graph.Machine.Variables[members[0]].Positions.Length; p++)
            {
                var holds = single?[things.Of(members[0], p)] ?? bits[things.Of(members[0], p)];
                foreach (var member in members)
                    bits[things.Of(member, p)] = holds;
            }
        }
    }
}
