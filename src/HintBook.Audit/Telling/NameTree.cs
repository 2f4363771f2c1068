using System.Runtime.InteropServices;

namespace HintBook.Audit.Telling;

/// <summary>All names as one tree of words, so that a text is walked once, however many there are.</summary>
internal sealed class NameTree(WordNumbers numbers)
{
    private readonly Dictionary<(int Node, int Word), int> children = [];
    private readonly List<List<Ending>?> endings = [null];
    private readonly FoldedText folded = new();

    /// <summary>Adds a name.</summary>
    /// <returns>Whether it has a word to look for.</returns>
    public bool Add(int secret, AuditSpelling spelling)
    {
        folded.Read(spelling.Text, isProse: false);
        List<string> words = [];
        foreach (var word in folded.Words)
        {
            var bare = folded.Of(word).ToString();
            if (bare.Length > 0 && numbers.UseOf(numbers.Of(bare)) != WordUse.Determiner)
                words.Add(bare);
        }

        if (words.Count == 0)
            return false;
        var ending = new Ending(secret, spelling.Sure, words.Count, spelling.As == SpelledAs.Capitals);
        Insert(words, ending);
        for (var i = 0; i + 1 < words.Count; i++)
            Insert([.. words[..i], words[i] + words[i + 1], .. words[(i + 2)..]], ending);
        return true;
    }

    /// <summary>Adds every mention in a text to a list.</summary>
    /// <param name="text">The text as words.</param>
    /// <param name="ids">The number of each word.</param>
    /// <param name="source">The text as it is written.</param>
    /// <param name="found">Gets the mentions.</param>
    public void In(FoldedText text, ReadOnlySpan<int> ids, string source, List<Met> found)
    {
        for (var first = 0; first < ids.Length; first++)
            Step(0, first, first, text, ids, source, found);
    }

    // Takes the word at a place, or the word that it makes with the one behind its hyphen.
    private void Step(int node, int first, int at, FoldedText text, ReadOnlySpan<int> ids, string source, List<Met> found)
    {
        if (ids[at] >= 0 && children.TryGetValue((node, ids[at]), out var next))
            Arrive(next, first, at, text, ids, source, found);
        if (at + 1 < ids.Length && text.Words[at + 1].Parting == Parting.Hyphen
            && Joined(text, at) is >= 0 and var joined && children.TryGetValue((node, joined), out next))
            Arrive(next, first, at + 1, text, ids, source, found);
    }

    private void Arrive(int node, int first, int last, FoldedText text, ReadOnlySpan<int> ids, string source, List<Met> found)
    {
        foreach (var ending in endings[node] ?? [])
        {
            if (!ending.Capitals || IsCapital(source.AsSpan(text.Words[first].Start..text.Words[last].End)))
                found.Add(new(ending.Secret, first, last, ending.Sure, ending.Words, IsCode: false));
        }

        var at = last + 1;
        while (at < ids.Length && GoesOn(text.Words[at]) && numbers.UseOf(ids[at]) == WordUse.Determiner && numbers.UseOf(ids[last]) == WordUse.Preposition)
            at++;
        if (at < ids.Length && GoesOn(text.Words[at]))
            Step(node, first, at, text, ids, source, found);
    }

    private static bool GoesOn(in FoldedWord word) => word.Parting < Parting.Comma;

    private static bool IsCapital(ReadOnlySpan<char> letters)
    {
        foreach (var letter in letters)
        {
            if (char.IsLower(letter))
                return false;
        }

        return true;
    }

    private int Joined(FoldedText text, int at)
    {
        var (left, right) = (text.Words[at], text.Words[at + 1]);
        Span<char> both = stackalloc char[64];
        if (left.Length + right.Length > both.Length)
            return -1;
        text.Of(left).CopyTo(both);
        text.Of(right).CopyTo(both[left.Length..]);
        return numbers.Of(both[..(left.Length + right.Length)]);
    }

    private void Insert(IReadOnlyList<string> words, Ending ending)
    {
        var node = 0;
        foreach (var word in words)
        {
            var key = (node, numbers.Add(word));
            if (!children.TryGetValue(key, out node))
            {
                node = endings.Count;
                endings.Add(null);
                children[key] = node;
            }
        }

        (endings[node] ??= []).Add(ending);
    }

    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Ending(int Secret, bool Sure, int Words, bool Capitals);
}
