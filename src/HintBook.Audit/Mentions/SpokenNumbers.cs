using System.Runtime.InteropServices;

namespace HintBook.Audit.Mentions;

/// <summary>Every number below ten thousand as a path through a tree of words.</summary>
internal sealed class SpokenNumbers
{
    private readonly Dictionary<(int Node, int Word), int> children = [];
    private readonly List<int> values = [-1];
    private readonly HashSet<int> words = [];

    /// <summary>Builds the tree.</summary>
    /// <param name="spoken">Every number as it is said, its words parted by spaces.</param>
    /// <param name="andBefore">The "and" that is written as one with the word behind it; empty in most languages.</param>
    /// <param name="add">Gives a word and all its forms one number, and returns it.</param>
    public SpokenNumbers(IEnumerable<(string Said, int Number)> spoken, string andBefore, Func<string, IEnumerable<string>, int> add)
    {
        var bare = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (said, number) in spoken)
        {
            var node = 0;
            foreach (var written in said.Split(' '))
            {
                if (!bare.TryGetValue(written, out var word))
                {
                    var letters = FoldedText.BareWords(written).First();
                    bare[written] = word = add(letters, andBefore.Length == 0 ? [letters] : [letters, andBefore + letters]);
                    words.Add(word);
                }

                ref var next = ref CollectionsMarshal.GetValueRefOrAddDefault(children, (node, word), out var exists);
                if (!exists)
                {
                    next = values.Count;
                    values.Add(-1);
                }

                node = next;
            }

            values[node] = number;
        }
    }

    /// <summary>Whether a word is said in numbers.</summary>
    public bool Has(int word) => words.Contains(word);

    /// <summary>The longest number that begins at a place in a row of words.</summary>
    /// <param name="row">The numbers of the words.</param>
    /// <param name="from">Where it begins.</param>
    /// <param name="most">No greater one.</param>
    /// <returns>The number and how many words it takes; no words if none begins there.</returns>
    public (int Number, int Words) At(ReadOnlySpan<int> row, int from, int most)
    {
        var (node, best) = (0, (Number: 0, Words: 0));
        for (var i = from; i < row.Length && children.TryGetValue((node, row[i]), out node); i++)
        {
            if (values[node] >= 0 && values[node] <= most)
                best = (values[node], i + 1 - from);
        }

        return best;
    }
}
