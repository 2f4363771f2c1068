namespace HintBook.Maps;

/// <summary>Which row each node of a piece stands in.</summary>
internal static class Rows
{
    /// <summary>
    /// Which edges must be turned round for the graph to have no circle: those that lead back to a node on the way to
    /// themselves. None, if it has no circle anyway. Linear time, without recursion.
    /// </summary>
    public static bool[] Turned(int count, IReadOnlyList<(int From, int To)> edges)
    {
        var leaving = Leaving(count, edges);
        var turned = new bool[edges.Count];
        var next = new int[count];
        var state = new State[count];
        var entered = edges.Select(edge => edge.To).ToHashSet();
        var way = new Stack<int>();
        foreach (var start in Enumerable.Range(0, count).OrderBy(node => entered.Contains(node)))
        {
            if (state[start] == State.New)
                Enter(start);
            while (way.TryPeek(out var node))
            {
                if (next[node] == leaving[node].Count)
                {
                    state[way.Pop()] = State.Left;
                    continue;
                }

                var edge = leaving[node][next[node]++];
                var to = edges[edge].To;
                turned[edge] = state[to] == State.OnTheWay;
                if (state[to] == State.New)
                    Enter(to);
            }
        }

        return turned;

        void Enter(int node)
        {
            state[node] = State.OnTheWay;
            way.Push(node);
        }
    }

    /// <summary>
    /// Rows from 0 such that every edge leads downward, none with more nodes than <paramref name="widest"/>. A row has what is
    /// free after the rows above it; where that is too much, those with the longest way still below them go first (list
    /// scheduling by critical path, after T. C. Hu 1961), so that without a bound each node stands at the longest path to it.
    /// </summary>
    public static int[] Assign(int count, IReadOnlyList<(int From, int To)> edges, int widest)
    {
        var leaving = Leaving(count, edges);
        var waiting = new int[count];
        foreach (var (_, to) in edges)
            waiting[to]++;
        var below = WaysBelow(edges, leaving, waiting);

        var row = new int[count];
        var free = new PriorityQueue<int, (int, int)>();
        for (var node = 0; node < count; node++)
        {
            if (waiting[node] == 0)
                free.Enqueue(node, (-below[node], node));
        }

        for (var here = 0; free.Count > 0; here++)
        {
            var taken = new List<int>();
            while (taken.Count < widest && free.TryDequeue(out var node, out _))
                taken.Add(node);
            foreach (var node in taken)
            {
                row[node] = here;
                foreach (var to in leaving[node].Select(edge => edges[edge].To))
                {
                    if (--waiting[to] == 0)
                        free.Enqueue(to, (-below[to], to));
                }
            }
        }

        return row;
    }

    private static int[] WaysBelow(IReadOnlyList<(int From, int To)> edges, List<int>[] leaving, int[] entering)
    {
        var waiting = (int[])entering.Clone();
        var order = new List<int>(Enumerable.Range(0, waiting.Length).Where(node => waiting[node] == 0));
        for (var i = 0; i < order.Count; i++)
            order.AddRange(leaving[order[i]].Select(edge => edges[edge].To).Where(to => --waiting[to] == 0));

        var below = new int[waiting.Length];
        foreach (var node in Enumerable.Reverse(order))
            below[node] = leaving[node].Select(edge => below[edges[edge].To] + 1).DefaultIfEmpty(0).Max();
        return below;
    }

    private static List<int>[] Leaving(int count, IReadOnlyList<(int From, int To)> edges)
    {
        var leaving = Enumerable.Range(0, count).Select(_ => new List<int>()).ToArray();
        for (var edge = 0; edge < edges.Count; edge++)
            leaving[edges[edge].From].Add(edge);
        return leaving;
    }

    private enum State
    {
        New,
        OnTheWay,
        Left,
    }
}
