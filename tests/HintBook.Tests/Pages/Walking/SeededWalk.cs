using HintBook.Tests.Mechanism;

namespace HintBook.Tests.Pages.Walking;

/// <summary>
/// How often solvers stand in each state: they go for one of the stages that are next, with the handling on the way, and do one act in four at random.
/// A tenth of the weight is spread evenly, for those who stand anywhere.
/// </summary>
internal static class SeededWalk
{
    private const int Solvers = 400;
    private const int MostActs = 400;

    /// <summary>The weight of every state before the goal; all of them make 1.</summary>
    public static IReadOnlyDictionary<int, double> Weights(Standings standings)
    {
        var pick = new Pick(20261128);
        var live = standings.Live.ToHashSet();
        var visits = live.ToDictionary(state => state, _ => 0);
        for (var solver = 0; solver < Solvers; solver++)
        {
            var at = 0;
            for (var acts = 0; acts < MostActs && live.Contains(at); acts++)
            {
                visits[at]++;
                at = pick.OneIn(4) ? Stray(standings, live, at, pick) : Towards(standings, at, pick);
            }
        }

        var all = (double)visits.Values.Sum();
        return visits.ToDictionary(pair => pair.Key, pair => (0.9 * pair.Value / all) + (0.1 / live.Count));
    }

    private static int Stray(Standings standings, HashSet<int> live, int at, Pick pick)
    {
        int[] to = [.. standings.Rests[at].Acts.Select(arrow => arrow.To).Where(live.Contains)];
        return to.Length == 0 ? Towards(standings, at, pick) : to[pick.Of(0, to.Length - 1)];
    }

    // The first step of a shortest way to a move that brings the goal nearer, of a stage that is drawn.
    private static int Towards(Standings standings, int at, Pick pick)
    {
        string[] next = [.. standings.NextAt(at)];
        var wanted = next.Length == 0 ? null : next[pick.Of(0, next.Length - 1)];
        var first = new Dictionary<int, int>();
        var open = new Queue<int>([at]);
        while (open.TryDequeue(out var state))
        {
            var far = standings.Distance(state);
            foreach (var arrow in standings.Rests[state].Acts)
            {
                var step = first.TryGetValue(state, out var before) ? before : arrow.To;
                if (wanted is null ? standings.Rests[arrow.To].Solved : arrow.Stage == wanted && standings.Distance(arrow.To) < far)
                    return step;
                if (standings.Distance(arrow.To) == far && arrow.To != at && first.TryAdd(arrow.To, step))
                    open.Enqueue(arrow.To);
            }
        }

        throw new InvalidOperationException("No way leads to a stage that is next.");
    }
}
