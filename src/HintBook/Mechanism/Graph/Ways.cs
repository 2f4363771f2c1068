using System.Collections.Immutable;
using System.Numerics;

namespace HintBook.Mechanism.Graph;

/// <summary>
/// A choice among sets of stages, each set with one bit for a stage: "A and B, or C". Only the least sets are kept. Used to say
/// after which stages another one opens.
/// </summary>
internal sealed class Ways
{
    /// <summary>More alternatives than this are no help to a reader, and their number can double with every condition.</summary>
    public const int Most = 64;

    private Ways(ImmutableArray<BigInteger> sets) => Sets = sets;

    /// <summary>No way at all.</summary>
    public static Ways None { get; } = new([]);

    /// <summary>Nothing has to be done.</summary>
    public static Ways Free { get; } = new([BigInteger.Zero]);

    /// <summary>The least sets, smallest number first.</summary>
    public ImmutableArray<BigInteger> Sets { get; }

    /// <summary>One stage has to be done.</summary>
    public static Ways By(int stage) => new([BigInteger.One << stage]);

    /// <summary>One of the two.</summary>
    public static Ways Either(Ways left, Ways right) => new(Least(left.Sets.Concat(right.Sets)));

    /// <summary>Both.</summary>
    public static Ways Both(Ways left, Ways right) =>
        new(Least(left.Sets.SelectMany(one => right.Sets.Select(other => one | other))));

    /// <summary>The same without the sets that hold a stage: it can't have to be done before itself.</summary>
    public Ways Without(int stage) => new([.. Sets.Where(set => !CertainStages.Has(set, stage))]);

    /// <summary>
    /// The same as a conjunction: of every group at least one stage. Null where that would take more than <see cref="Most"/> groups.
    /// </summary>
    public ImmutableArray<BigInteger>? AsGroups()
    {
        var groups = ImmutableArray.Create(BigInteger.Zero);
        foreach (var set in Sets)
        {
            var members = CertainStages.Indices(set);
            groups = Least(groups.SelectMany(group => members.Select(stage => group | (BigInteger.One << stage))));
            if (groups.Length > Most)
                return null;
        }

        return groups;
    }

    public bool SameAs(Ways other) => Sets.SequenceEqual(other.Sets);

    private static ImmutableArray<BigInteger> Least(IEnumerable<BigInteger> sets)
    {
        var least = new List<BigInteger>();
        foreach (var set in sets.Distinct().OrderBy(BitCount).ThenBy(set => set))
        {
            if (!least.Any(smaller => (smaller & set) == smaller))
                least.Add(set);
        }

        return [.. least.Take(Most)];
    }

    private static int BitCount(BigInteger set) => set.ToByteArray().Sum(part => BitOperations.PopCount(part));
}
