using System.Collections;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using HintBook.Mechanism.Answers;

namespace HintBook.Mechanism;

/// <summary>
/// Some items of a list, in its order. Many such sets share the list; each takes one bit for an item of it, so that what is certain before each of
/// thousands of stages stays small.
/// </summary>
/// <typeparam name="T">The items.</typeparam>
[CollectionBuilder(typeof(ChosenSet), nameof(ChosenSet.Of))]
public sealed class ChosenSet<T> : IReadOnlyCollection<T>
{
    private readonly ImmutableArray<T> all;
    private readonly Bits members;

    internal ChosenSet(ImmutableArray<T> all, Bits members) => (this.all, this.members, Count) = (all, members, members.Count());

    /// <summary>How many items it has.</summary>
    public int Count { get; }

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator()
    {
        foreach (var number in members.Members())
            yield return all[number];
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

/// <summary>Makes sets from what is written in brackets.</summary>
public static class ChosenSet
{
    /// <summary>A set that is the whole of a list of its own.</summary>
    /// <param name="items">The list.</param>
    public static ChosenSet<T> Of<T>(ReadOnlySpan<T> items) => new([.. items], Bits.All(items.Length));
}
