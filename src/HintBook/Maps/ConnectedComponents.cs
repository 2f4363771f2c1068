namespace HintBook.Maps;

/// <summary>A part of a graph that hangs together, its nodes and edges in ascending order; edges from a node to itself left out.</summary>
internal sealed record Component(List<int> Nodes, List<int> Edges)
{
    /// <summary>An edge in terms of indices into <see cref="Nodes"/>.</summary>
    public (int From, int To) Local((int From, int To) edge) => (Nodes.BinarySearch(edge.From), Nodes.BinarySearch(edge.To));
}

/// <summary>Takes a graph apart into the pieces that hang together.</summary>
internal static class ConnectedComponents
{
    /// <summary>The pieces, in the order of their first nodes. Time almost linear.</summary>
    public static List<Component> Find(int count, IReadOnlyList<(int From, int To)> edges)
    {
        var parent = Enumerable.Range(0, count).ToArray();
        foreach (var (from, to) in edges)
            parent[Math.Max(Top(from), Top(to))] = Math.Min(Top(from), Top(to));

        var pieces = new SortedDictionary<int, Component>();
        for (var node = 0; node < count; node++)
        {
            pieces.TryAdd(Top(node), new([], []));
            pieces[Top(node)].Nodes.Add(node);
        }

        for (var edge = 0; edge < edges.Count; edge++)
        {
            if (edges[edge].From != edges[edge].To)
                pieces[Top(edges[edge].From)].Edges.Add(edge);
        }

        return [.. pieces.Values];

        int Top(int node)
        {
            while (parent[node] != node)
                node = parent[node] = parent[parent[node]];
            return node;
        }
    }
}
