using System.Collections.Immutable;
using System.Numerics;

namespace HintBook.Mechanism.Graph;

/// <summary>
/// Which stages have to be done first: of every group at least one. A group has one bit for a stage; only the least groups are kept.
/// "And" joins the groups of both sides; "or" pairs each group of one side with each of the other, which is where they could
/// multiply without end. Past <see cref="Most"/> pairs the longest groups are left out: those that stay are still true, and what
/// is said is then "not before these" instead of "as soon as these".
/// </summary>
internal sealed class Prerequisites
{
    /// <summary>The most pairs of groups that one "or" looks at.</summary>
    public const int Most = 1024;

    private Prerequisites(ImmutableArray<BigInteger> groups) => Groups = groups;

    /// <summary>No way at all: a group without members can never be met.</summary>
    public static Prerequisites None { get; } = new([BigInteger.Zero]);

    /// <summary>Nothing has to be done.</summary>
    public static Prerequisites Free { get; } = new([]);

    /// <summary>The least groups, those with few stages first.</summary>
    public ImmutableArray<BigInteger> Groups { get; }

    public bool IsNone => Groups is [{ IsZero: true }];

    /// <summary>One stage has to be done.</summary>
    public static Prerequisites By(int stage) => new([BigInteger.One << stage]);

    /// <summary>One of the two.</summary>
    public static Prerequisites Either(Prerequisites left, Prerequisites right)
    {
        if (left.Implies(right))
            return right;
        if (right.Implies(left))
            return left;
        var (few, many) = left.Groups.Length <= right.Groups.Length ? (left.Groups, right.Groups) : (right.Groups, left.Groups);
        few = [.. few.Take(32)];
        many = [.. many.Take(Most / few.Length)];
        return new(Least(few.SelectMany(one => many.Select(other => one | other))));
    }

    /// <summary>All of them.</summary>
    public static Prerequisites All(IEnumerable<Prerequisites> ways) => new(Least(ways.SelectMany(one => one.Groups)));

    /// <summary>The same without the help of one stage: it can't have to be done before itself.</summary>
    public Prerequisites Without(int stage) =>
        new(Least(Groups.Select(group => CertainStages.Has(group, stage) ? group - (BigInteger.One << stage) : group)));

    public bool SameAs(Prerequisites other) => Groups.SequenceEqual(other.Groups);

    // Whether whatever meets these groups meets the other ones: each of those holds one of these.
    private bool Implies(Prerequisites other)
    {
        var mine = Groups.ToHashSet();
        return other.Groups.All(group => mine.Contains(group) || Groups.Any(smaller => (smaller & group) == smaller));
    }

    private static ImmutableArray<BigInteger> Least(IEnumerable<BigInteger> groups)
    {
        var least = ImmutableArray.CreateBuilder<BigInteger>();
        var single = BigInteger.Zero;
        foreach (var group in groups.Distinct().OrderBy(Size).ThenBy(group => group))
        {
            // Most groups have one member; whether a longer one holds any of those is one look.
            if (!(group & single).IsZero)
                continue;
            if (group.IsZero)
                return [group];
            if (group.IsPowerOfTwo)
                single |= group;
            else if (least.Any(smaller => (smaller & group) == smaller))
                continue;
            least.Add(group);
        }

        return least.ToImmutable();
    }

    private static int Size(BigInteger group) => group.ToByteArray().Sum(part => BitOperations.PopCount(part));
}
