using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;

namespace HintBook.Print.Booklets;

/// <summary>What stands on one page, or on several for an entry that is longer than a page.</summary>
/// <param name="Entries">The entries, by number from 0; none for a page that is left empty.</param>
/// <param name="Pages">How many pages it takes.</param>
internal sealed record PageGroup(ImmutableArray<int> Entries, int Pages);

/// <summary>
/// Puts entries in an order in which those that must be kept apart never stand on the same page nor on pages that follow each other. Two such pages lie
/// opposite each other or are the two sides of one leaf, so nothing else is ever beside, opposite or behind an entry. Where no entry fits, a page is left
/// empty: with that an order is always found. Of several tries that follow from the book alone, the one with the fewest empty pages is taken, and of these
/// the one with the fewest pages.
/// </summary>
internal static class Shuffle
{
    private const int Tries = 48;

    /// <summary>The pages.</summary>
    /// <param name="heights">How high each entry is, with the room above it, in millimetres.</param>
    /// <param name="pagesOf">How many pages each entry takes that is higher than a page.</param>
    /// <param name="apart">Which entries are kept apart.</param>
    /// <param name="first">The entry at the very beginning.</param>
    /// <param name="page">The height of a page.</param>
    /// <param name="seed">What the order follows from.</param>
    public static ImmutableArray<PageGroup> Order(
        ImmutableArray<double> heights, ImmutableArray<int> pagesOf, Func<int, int, bool> apart, int first, double page, string seed)
    {
        var degree = Enumerable.Range(0, heights.Length)
            .Select(one => Enumerable.Range(0, heights.Length).Count(other => apart(one, other)))
            .ToArray();
        return Enumerable.Range(0, Tries)
            .Select(number => (
                Drawn: Drawn(heights.Length, $"{seed}\n{number}"),
                Weight: number % 2 == 0 ? degree : new int[heights.Length],
                IsTight: number % 4 < 2))
            .Select(each => Try(heights, pagesOf, apart, first, page, each.Drawn, each.Weight, each.IsTight))
            .MinBy(order => (order.Count(group => group.Entries.IsEmpty), order.Sum(group => group.Pages)));
    }

    private static ImmutableArray<PageGroup> Try(
        ImmutableArray<double> heights,
        ImmutableArray<int> pagesOf,
        Func<int, int, bool> apart,
        int first,
        double page,
        int[] drawn,
        int[] weight,
        bool isTight)
    {
        // The order of entries of one weight stays as it was drawn: the sort is stable.
        var left = drawn.Where(entry => entry != first).OrderByDescending(entry => weight[entry]).ToList();
        var groups = ImmutableArray.CreateBuilder<PageGroup>();
        groups.Add(new([first], pagesOf[first]));
        var before = groups[0].Entries;
        while (left.Count > 0)
        {
            var (here, room) = (ImmutableArray.CreateBuilder<int>(), page);
            while (Next(here, room) is >= 0 and var at)
            {
                var next = left[at];
                here.Add(next);
                left.RemoveAt(at);
                room -= pagesOf[next] > 1 ? page : heights[next];
            }

            before = here.ToImmutable();
            groups.Add(new(before, here.Count == 1 ? pagesOf[here[0]] : 1));
        }

        return groups.ToImmutable();

        // The next one that was drawn, or, to fill a page that has begun, the highest that has room there.
        int Next(IReadOnlyList<int> here, double room)
        {
            var found = -1;
            for (var at = 0; at < left.Count; at++)
            {
                var entry = left[at];
                if ((heights[entry] > room && here.Count > 0) || (found >= 0 && heights[entry] <= heights[left[found]]))
                    continue;
                if (!Fits(entry, before) || !Fits(entry, here))
                    continue;
                if (here.Count == 0 || !isTight)
                    return at;
                found = at;
            }

            return found;
        }

        bool Fits(int entry, IReadOnlyList<int> others)
        {
            foreach (var other in others)
            {
                if (apart(entry, other))
                    return false;
            }

            return true;
        }
    }

    // By the hash of the seed and the number: the same on every machine.
    private static int[] Drawn(int count, string seed) =>
        [.. Enumerable.Range(0, count).OrderBy(number => HashOf($"{seed}\n{number}"), StringComparer.Ordinal)];

    private static string HashOf(string text) => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
