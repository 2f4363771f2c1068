using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Packed;

/// <summary>
/// All that can be done in a state, found by a decision tree: a node looks at one variable, goes to the acts that ask for its position and
/// then to those that don't ask. At the acts themselves nothing is left to test, so the cost is the acts found and the nodes on the way.
/// </summary>
internal sealed class Successors<T>
    where T : struct, IPackedState<T>
{
    private readonly Node[] nodes;
    private readonly int[] children;
    private readonly Line[] lines;
    private readonly (int Bit, int Mask, ulong From)[] guards;
    private readonly int[] stack;
    private readonly int root;

    /// <summary>Builds the tree.</summary>
    public Successors(Machine machine, Layout layout)
    {
        var tree = new Tree(machine, layout);
        var open = machine.Acts.SelectMany((act, a) => act.When.Select(clause => (a, clause.Literals))).ToList();
        root = tree.Grow(open);
        (nodes, children, lines, guards) = ([.. tree.Nodes], [.. tree.Children], [.. tree.Lines], [.. tree.Guards]);
        Most = Math.Max(1, open.Count);
        stack = new int[machine.Variables.Length + 1];
    }

    /// <summary>The most that one state can have.</summary>
    public int Most { get; }

    /// <summary>
    /// What each act that is possible makes of a state, reactions aside. An act with several needs that hold comes several times. Not for two
    /// threads at once.
    /// </summary>
    /// <returns>How many were written to the two spans.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public int Of(in T state, Span<T> next, Span<int> acts)
    {
        var (count, waiting, at) = (0, 0, root);
        while (true)
        {
            ref readonly var node = ref nodes[at];
            for (var i = node.From; i < node.To; i++)
            {
                ref readonly var line = ref lines[i];
                next[count] = line.Guards == line.GuardsEnd ? state.Apply(line.Keep, line.Set) : Guarded(line, state);
                acts[count++] = line.Act;
            }

            var child = node.Children >= 0 ? children[node.Children + state.Field(node.Bit, node.Mask)] : -1;
            if (child >= 0)
            {
                if (node.Else >= 0)
                    stack[waiting++] = node.Else;
                at = child;
            }
            else if (node.Else >= 0)
            {
                at = node.Else;
            }
            else if (waiting > 0)
            {
                at = stack[--waiting];
            }
            else
            {
                return count;
            }
        }
    }

    private T Guarded(in Line line, in T state)
    {
        var next = state.Apply(line.Keep, line.Set);
        for (var g = line.Guards; g < line.GuardsEnd; g++)
        {
            var (bit, mask, from) = guards[g];
            var position = state.Field(bit, mask);
            if ((from >> position & 1) == 0)
                next = next.With(bit, mask, position);
        }

        return next;
    }

    [StructLayout(LayoutKind.Auto)]
    private struct Node
    {
        public int Bit, Mask, Children, Else, From, To;
    }

    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Line(T Keep, T Set, int Act, int Guards, int GuardsEnd);

    private sealed class Tree(Machine machine, Layout layout)
    {
        public List<Node> Nodes { get; } = [];

        public List<int> Children { get; } = [];

        public List<Line> Lines { get; } = [];

        public List<(int Bit, int Mask, ulong From)> Guards { get; } = [];

        public int Grow(List<(int Act, ImmutableArray<Literal> Left)> open)
        {
            var at = Nodes.Count;
            var node = new Node { Children = -1, Else = -1, From = Lines.Count };
            foreach (var (act, _) in open.Where(entry => entry.Left.IsEmpty).DistinctBy(entry => entry.Act))
                Lines.Add(Ready(act));
            node.To = Lines.Count;
            Nodes.Add(node);
            var rest = open.Where(entry => !entry.Left.IsEmpty).ToList();
            if (rest.Count == 0)
                return at;

            var variable = rest.SelectMany(entry => entry.Left).CountBy(literal => literal.Variable)
                .OrderByDescending(pair => pair.Value).ThenBy(pair => pair.Key).First().Key;
            var size = 1 << BitOperations.PopCount((uint)layout.Fields[variable].Mask);
            node.Bit = layout.Fields[variable].Bit;
            node.Mask = layout.Fields[variable].Mask;
            node.Children = Children.Count;
            Children.AddRange(Enumerable.Repeat(-1, size));
            for (var p = 0; p < machine.Variables[variable].Positions.Length; p++)
            {
                var taken = new List<(int, ImmutableArray<Literal>)>();
                foreach (var (act, left) in rest)
                {
                    var asked = left.FirstOrDefault(literal => literal.Variable == variable, new Literal(-1, 0));
                    if (asked.Variable == variable && asked.Takes(p))
                        taken.Add((act, left.Remove(asked)));
                }

                if (taken.Count > 0)
                    Children[node.Children + p] = Grow(taken);
            }

            var others = rest.Where(entry => entry.Left.All(literal => literal.Variable != variable)).ToList();
            if (others.Count > 0)
                node.Else = Grow(others);
            Nodes[at] = node;
            return at;
        }

        private Line Ready(int number)
        {
            var act = machine.Acts[number];
            var (clear, set) = (default(T), default(T));
            var from = Guards.Count;
            foreach (var effect in act.Effects)
            {
                var (bit, mask) = layout.Fields[effect.Variable];
                clear = clear.With(bit, mask, mask);
                set = set.With(bit, mask, effect.Position);
                if ((machine.Variables[effect.Variable].All & ~effect.From & ~(1UL << effect.Position)) != 0)
                    Guards.Add((bit, mask, effect.From));
            }

            return new Line(clear.Turned(), set, number, from, Guards.Count);
        }
    }
}
