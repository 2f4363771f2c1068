using System.Collections.Immutable;
using HintBook.Mechanism.Model;
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
            Enumerable.Range(0, graph.Machine.Variables[variable].Positions.Length).Where(p => p != graph.Machine.Start[variable]).Select(p => things.Of(variable, p));

        Bits[]? Single(ImmutableArray<int> members)
        {
            var told = Exploration.Whole(graph.Machine, budget, most: MostToldApart, alike: alike.Without(members[0]));
            return told.Stopped is null && CertainBefore.On(told, budget) is { } known ? [.. known.Stages, known.Goal] : null;
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
