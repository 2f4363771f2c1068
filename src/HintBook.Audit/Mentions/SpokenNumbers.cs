using System.Runtime.InteropServices;
using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>
/// Numbers as they are said. Those below a thousand (in Japanese below ten thousand) are paths through a tree of words; larger ones are one of
/// them, the word for a thousand, and one more.
/// </summary>
internal sealed class SpokenNumbers
{
    private const int Most = 999_999;
    private readonly Dictionary<(int Node, int Word), int> children = [];
    private readonly List<int> values = [-1];
    private readonly HashSet<int> words = [];
    private readonly int thousand = -1;
    private readonly int thousandIs;

    /// <summary>Builds the tree.</summary>
    /// <param name="language">How numbers are said.</param>
    /// <param name="add">Gives a word and all its forms one number, and returns it.</param>
    public SpokenNumbers(AuditLanguage language, Func<string, IEnumerable<string>, int> add)
    {
        var bare = new Dictionary<string, int>(StringComparer.Ordinal);
        thousandIs = language.ThousandIs;
        if (language.Thousand.Length > 0)
            thousand = Word(language.Thousand);
        foreach (var (said, number) in language.Numbers?.Invoke() ?? [])
        {
            var node = 0;
            foreach (var written in said.Split(' '))
            {
                ref var next = ref CollectionsMarshal.GetValueRefOrAddDefault(children, (node, Word(written)), out var exists);
                if (!exists)
                {
                    next = values.Count;
                    values.Add(-1);
                }

                node = next;
            }

            values[node] = number;
        }

        int Word(string written)
        {
            if (!bare.TryGetValue(written, out var word))
            {
                var letters = FoldedText.BareWords(written).First();
                bare[written] = word = add(letters, [letters, .. language.BeforeNumbers.Select(before => before + letters)]);
                words.Add(word);
            }

            return word;
        }
    }

    /// <summary>Whether a word is said in numbers.</summary>
    public bool Has(int word) => words.Contains(word);

    /// <summary>The longest number that begins at a place in a row of words.</summary>
    /// <param name="row">The numbers of the words.</param>
    /// <param name="figures">What those that are written in figures count; -1 for the others.</param>
    /// <param name="from">Where it begins.</param>
    /// <param name="most">No greater one.</param>
    /// <returns>The number and how many words it takes; no words if none begins there.</returns>
    public (int Number, int Words) At(ReadOnlySpan<int> row, ReadOnlySpan<int> figures, int from, int most)
    {
        var (count, taken) = figures[from] >= 0 ? (figures[from], 1) : Small(row, from, most);
        var at = from + taken;
        // "A thousand" without a number before it is one thousand.
        if (most >= thousandIs && at < row.Length && row[at] == thousand && (taken == 0 || count is > 0 and < 1000))
            return WithRest(row, figures, from, (taken == 0 ? 1 : count) * thousandIs, taken + 1);
        if (figures[from] >= 0)
            return (0, 0);
        return count > 0 && count % thousandIs == 0 ? WithRest(row, figures, from, count, taken) : (count, taken);
    }

    private (int Number, int Words) WithRest(ReadOnlySpan<int> row, ReadOnlySpan<int> figures, int from, int total, int taken)
    {
        var behind = from + taken;
        if (behind >= row.Length)
            return (total, taken);
        var (rest, words) = figures[behind] >= 0 ? (figures[behind], 1) : Small(row, behind, thousandIs - 1);
        return words > 0 && rest < thousandIs && total + rest <= Most ? (total + rest, taken + words) : (total, taken);
    }

    private (int Number, int Words) Small(ReadOnlySpan<int> row, int from, int most)
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
