using System.Collections.Immutable;
using System.Numerics;

namespace HintBook.Mechanism.Model;

/// <summary>
/// Classes of variables that can be exchanged for each other, such as balls that nothing tells apart: exchanging any two of a class maps the machine
/// onto itself, each move of a stage to itself, and so the goal, the marks of stages and all else outside the classes. Such exchanges of
/// two make every permutation of a class.
/// </summary>
internal sealed class Symmetry
{
    private const int MostTried = 4;
    private const int MostFailed = 200;
    private readonly Machine machine;
    private readonly Exchange exchange;
    private readonly int[] leader;
    private readonly Lazy<ImmutableArray<int>[]> images;

    private Symmetry(Machine machine, Exchange exchange, ImmutableArray<ImmutableArray<int>> classes)
    {
        (this.machine, this.exchange, Classes) = (machine, exchange, classes);
        leader = [.. Enumerable.Range(0, machine.Variables.Length)];
        foreach (var members in classes)
        {
            foreach (var member in members)
                leader[member] = members[0];
        }

        images = new(FindImages);
    }

    /// <summary>The classes of two and more, each in the order of its variables.</summary>
    public ImmutableArray<ImmutableArray<int>> Classes { get; }

    /// <summary>The classes of a machine; null where nothing can be exchanged. Not all are found where there are many that look alike and aren't.</summary>
    public static Symmetry? Of(Machine machine)
    {
        if (machine.Refused is not null || LikelyAlike.Groups(machine) is not { Count: > 0 } groups)
            return null;
        var tried = new Exchange(machine);
        var failed = 0;
        ImmutableArray<ImmutableArray<int>> classes = [.. groups.SelectMany(Classify)];
        return classes.IsEmpty ? null : new Symmetry(machine, tried, classes);

        IEnumerable<ImmutableArray<int>> Classify(int[] group)
        {
            var found = new List<List<int>>();
            foreach (var variable in group)
            {
                if (found.Take(MostTried).FirstOrDefault(members => Keeps(members[0], variable)) is { } members)
                    members.Add(variable);
                else
                    found.Add([variable]);
            }

            return found.Where(members => members.Count > 1).Select(members => members.ToImmutableArray());
        }

        bool Keeps(int one, int other)
        {
            var keeps = failed < MostFailed && tried.Keeps(one, other);
            failed += keeps ? 0 : 1;
            return keeps;
        }
    }

    /// <summary>The same without the exchanges that move a variable; null where none are left.</summary>
    public Symmetry? Without(int variable)
    {
        ImmutableArray<ImmutableArray<int>> classes = [.. Classes.Select(members => members.Remove(variable)).Where(members => members.Length > 1)];
        return classes.IsEmpty ? null : new Symmetry(machine, exchange, classes);
    }

    /// <summary>The first of the class that a variable belongs to; itself if it can't be exchanged.</summary>
    public int Leader(int variable) => leader[variable];

    /// <summary>The acts that an act can become, in order, itself among them.</summary>
    public ImmutableArray<int> Images(int act) => images.Value[act];

    /// <summary>Whether no exchange changes an act.</summary>
    public bool Keeps(int act) => Images(act).Length == 1;

    /// <summary>Puts a state into the form that stands for all that differ from it by exchanges: the positions of each class in order.</summary>
    public int[] Representative(int[] state)
    {
        int[] sorted = [.. state];
        foreach (var members in Classes)
        {
            int[] positions = [.. members.Select(member => state[member]).Order()];
            for (var i = 0; i < positions.Length; i++)
                sorted[members[i]] = positions[i];
        }

        return sorted;
    }

    /// <summary>For how many states one stands: in how many ways each class can be given its positions.</summary>
    /// <param name="position">The position of each variable.</param>
    public BigInteger Stands(Func<int, int> position)
    {
        var ways = BigInteger.One;
        foreach (var members in Classes)
        {
            var placed = new Dictionary<int, int>();
            for (var i = 0; i < members.Length; i++)
            {
                var alike = placed[position(members[i])] = placed.GetValueOrDefault(position(members[i])) + 1;
                ways = ways * (i + 1) / alike;
            }
        }

        return ways;
    }

    private ImmutableArray<int>[] FindImages()
    {
        int[] first = [.. Enumerable.Range(0, machine.Acts.Length)];
        foreach (var members in Classes)
        {
            foreach (var (act, image) in members.Skip(1).SelectMany(member => exchange.Moved(members[0], member)))
                Join(act, image);
        }

        var orbits = first.Index().ToLookup(act => First(act.Index), act => act.Index);
        return [.. first.Select((_, act) => orbits[First(act)].ToImmutableArray())];

        int First(int act) => first[act] == act ? act : first[act] = First(first[act]);

        void Join(int one, int other) => (first[First(one)], first[First(other)]) = (Math.Min(First(one), First(other)), Math.Min(First(one), First(other)));
    }
}
