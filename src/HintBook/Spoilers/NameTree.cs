namespace HintBook.Spoilers;

/// <summary>Names as a tree of words. The node 0 is its root.</summary>
internal sealed class NameTree
{
    // The first words of names stand in a list of their own, for every word of a text is looked up there.
    private readonly List<int> first = [];
    private readonly Dictionary<long, int> children = [];
    private readonly List<List<Ending>?> endings = [null];
    private readonly List<bool> hasChildren = [false];
    private static readonly List<Ending> None = [];

    /// <summary>The endings of the names whose last word is a node.</summary>
    public List<Ending> EndingsAt(int node) => endings[node] ?? None;

    /// <summary>Whether a name goes on behind a node.</summary>
    public bool GoesOn(int node) => hasChildren[node];

    /// <summary>The node behind another one for a word, or 0.</summary>
    public int Next(int node, int word) => node == 0 ? (word < first.Count ? first[word] : 0) : children.GetValueOrDefault(KeyOf(node, word));

    // Both in one number, which is looked up faster than a pair.
    private static long KeyOf(int node, int word) => ((long)node << 32) | (uint)word;

    /// <summary>Adds the words of a name, and what a text has told that has them.</summary>
    public void Insert(ReadOnlySpan<int> written, Ending ending)
    {
        var node = 0;
        foreach (var word in written)
        {
            if (Next(node, word) is not (> 0 and var next))
            {
                next = endings.Count;
                endings.Add(null);
                hasChildren.Add(false);
                hasChildren[node] = true;
                if (node == 0)
                {
                    while (first.Count <= word)
                        first.Add(0);
                    first[word] = next;
                }
                else
                {
                    children[KeyOf(node, word)] = next;
                }
            }

            node = next;
        }

        var here = endings[node] ??= [];
        if (!here.Exists(other => other.Secret == ending.Secret && other.Casing == ending.Casing && other.Reading == ending.Reading))
            here.Add(ending);
    }
}
