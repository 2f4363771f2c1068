using System.Collections.Immutable;

namespace HintBook.Mechanism;

/// <summary>The order in which hands do one after the other what a step of a way does at once: the key goes on its hook before the door is shut.</summary>
public static class HandOrder
{
    private const int MostTried = 2_000;

    /// <summary>Tries orders, the one that is liked best first.</summary>
    /// <param name="before">The box before the step.</param>
    /// <param name="after">The box after it.</param>
    /// <param name="acts">What hands move together, each act by itself, in the order that is liked best.</param>
    /// <returns>
    /// The acts in an order in which hands get at everything and the box, reactions included, ends as it does after the step; null where
    /// none was found.
    /// </returns>
    public static ImmutableArray<OrderedAct>? Find(Replayer before, Replayer after, ImmutableArray<ImmutableArray<Placed>> acts)
    {
        var tried = 0;
        var way = new Stack<OrderedAct>();
        return Ends(before) ? [.. way.Reverse()] : null;

        bool Ends(Replayer at)
        {
            if (way.Count == acts.Length)
                return at.StandsAs(after);
            for (var act = 0; act < acts.Length; act++)
            {
                if (way.Any(done => done.Number == act) || tried++ >= MostTried)
                    continue;
                var next = at.AsItStands();
                if (!next.Lay(acts[act]))
                    continue;
                way.Push(new(act, [.. next.Moved.Order(StringComparer.Ordinal)]));
                if (Ends(next))
                    return true;
                way.Pop();
            }

            return false;
        }
    }
}

/// <summary>One act of several, in its place.</summary>
/// <param name="Number">Its number among those that were to be ordered.</param>
/// <param name="Moved">The names of what moves with it, by hand or by itself.</param>
public readonly record struct OrderedAct(int Number, ImmutableArray<string> Moved);
