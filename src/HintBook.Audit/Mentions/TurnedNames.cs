using System.Collections.Concurrent;
using System.Runtime.InteropServices;
using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>
/// Names whose words stand apart or in another order: "a drawer for the oil", "the medal, and it is of bronze", "a log of every storm" for a storm
/// logbook. Each word of a name may be met by another of its family, or in its two halves. Shared by all threads.
/// </summary>
internal sealed class TurnedNames
{
    private const int ShortestHalf = 3, ShortestTail = 5, ShortestMisspelt = 5, MostKept = 24, LongestKept = 24, MostFigures = 50_000;
    private readonly AuditLanguage language;
    private readonly Stems stems;
    private readonly Dictionary<string, int> parts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<PartHit>> hits = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, PartHit[]> kept = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, PartHit[]>.AlternateLookup<ReadOnlySpan<char>> keptBySpan;
    private readonly Dictionary<char, (string Written, int Part)[]> stretches = [];
    private readonly HashSet<string> stuffs, words = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<PartHit>>.AlternateLookup<ReadOnlySpan<char>> hitsBySpan;
    private readonly List<Turned> names = [];
    private readonly List<(string Written, int Part)> spelt = [];
    private readonly HashSet<(int, int)> together = [];
    private List<int>[] byPart = [];
    private int keptFigures;

    public TurnedNames(AuditLanguage language)
    {
        this.language = language;
        stems = new(language.Kinship);
        stuffs = [.. FoldedText.BareWords(SynonymsIn.Stuffs(language.Code))];
        keptBySpan = kept.GetAlternateLookup<ReadOnlySpan<char>>();
        hitsBySpan = hits.GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <summary>Whether nouns are written as one with others.</summary>
    public bool HasCompounds => language.HasCompounds;

    /// <summary>Whether there are none.</summary>
    public bool IsEmpty => names.Count == 0;

    /// <summary>Adds a name of several telling words, as bare letters.</summary>
    /// <param name="secret">Its place in the table.</param>
    /// <param name="words">The telling words in their order.</param>
    /// <param name="isNegative">Whether it says what is wanting: "headless".</param>
    public void Add(int secret, IReadOnlyList<string> words, bool isNegative)
    {
        int[] all = [.. words.Select(PartOf)];
        if (all.Distinct().Count() != all.Length || (all.Length == 1 && Halves(words[0]) == 0))
            return;
        names.Add(new(secret, all, isNegative));
        if (all.Length > 2 && words.Any(stuffs.Contains))
            names.Add(new(secret, [.. all.Where((_, i) => !stuffs.Contains(words[i]))], isNegative));
    }

    /// <summary>Adds a name of a language without spaces, as stretches of bare letters.</summary>
    /// <param name="secret">Its place in the table.</param>
    /// <param name="all">The stretches.</param>
    /// <param name="areWords">Whether they are words of the name, for which others may stand.</param>
    public void AddStretches(int secret, IReadOnlyList<string> all, bool areWords)
    {
        if (areWords)
            words.UnionWith(all);
        foreach (var stretch in all)
        {
            if (parts.TryAdd(stretch, parts.Count))
                AddStretch(stretch, parts[stretch]);
        }

        int[] own = [.. all.Select(stretch => parts[stretch])];
        if (own.Distinct().Count() == own.Length && own.Length > 1)
            names.Add(new(secret, own, IsNegative: false));
    }

    private void AddStretch(string stretch, int part) => stretches[stretch[0]] = [.. stretches.GetValueOrDefault(stretch[0], []), (stretch, part)];

    // A word of a group stands for the only one of it that names have.
    private void AddOtherWords()
    {
        foreach (var group in SynonymsIn.Of(language.Code))
        {
            if (language.IsUnspaced)
            {
                if (group.Where(words.Contains).ToArray() is not [var only])
                    continue;
                foreach (var other in group.Where(word => word != only))
                    AddStretch(other, parts[only]);
                continue;
            }

            string[] stemmed = [.. FoldedText.BareWords(string.Join(' ', group)).Select(word => stems.Of(word)).Distinct()];
            string[] known = [.. stemmed.Where(hits.ContainsKey)];
            if (known is not [var one])
                continue;
            // Where a word stands whole in one name, the halves that others may be cut into count for nothing.
            PartHit[] own = [.. hits[one].Where(each => each.Cut == 0)];
            if ((own.Length > 0 ? own : [.. hits[one]]) is not [var hit])
                continue;
            foreach (var other in stemmed)
            {
                if (other != one)
                    Hit(other, hit);
            }
        }
    }

    /// <summary>Orders the names for searching; called once behind the last of them.</summary>
    public void Freeze()
    {
        AddOtherWords();
        var common = new int[parts.Count];
        foreach (var part in names.SelectMany(name => name.Parts))
            common[part]++;
        byPart = [.. Enumerable.Range(0, parts.Count).Select(_ => new List<int>())];
        foreach (var (i, name) in names.Index())
            byPart[name.Parts.MinBy(part => common[part])].Add(i);
        foreach (var name in names)
        {
            foreach (var one in name.Parts)
                together.UnionWith(name.Parts.Where(other => other >= one).Select(other => (one, other)));
        }
    }

    /// <summary>The names whose rarest word is a part.</summary>
    public IReadOnlyList<int> RarestIn(int part) => byPart[part];

    /// <summary>A name.</summary>
    public Turned this[int name] => names[name];

    /// <summary>What the words that begin at a place may stand for.</summary>
    public PartHit[] HitsAt(FoldedText text, int at)
    {
        var word = text.Of(text.Words[at]);
        if (!language.IsUnspaced)
            return HitsOf(word);
        return stretches.TryGetValue(word[0], out var all)
            ? [.. all.Where(stretch => text.Says(at, stretch.Written)).Select(stretch => new PartHit(stretch.Part, 0, IsFirst: false)).Distinct()]
            : [];
    }

    private PartHit[] HitsOf(ReadOnlySpan<char> word)
    {
        if (keptBySpan.TryGetValue(word, out var known))
            return known;
        var found = Find(word);
        // Words there are some thousands; numbers, and names of pages and pictures, have no end.
        if (word.Length <= LongestKept && (!word.ContainsAnyInRange('0', '9') || Interlocked.Increment(ref keptFigures) <= MostFigures))
            keptBySpan[word] = found;
        return found;
    }

    private PartHit[] Find(ReadOnlySpan<char> word)
    {
        if (word.Length < (language.Kinship.HasRoots || language.Code.Length == 0 ? 2 : ShortestHalf))
            return hitsBySpan.TryGetValue(word, out var same) ? [.. same] : [];
        // "Des Gärtners": what is left without the ending of the genitive may have another.
        var owner = language.HasCompounds && word[^1] == 's' ? hits.GetValueOrDefault(stems.Of(word[..^1]), []) : [];
        if (hits.TryGetValue(stems.Of(word), out var found))
            return owner.Count == 0 ? [.. found] : [.. found.Union(owner)];
        if (owner.Count > 0)
            return [.. owner];
        if (stems.WithoutFirst(word) is { } rest && hits.TryGetValue(rest, out found))
            return [.. found];
        return InCompound(word) is { Length: > 0 } halves ? halves : Misspelt(word);
    }

    // "The lether pouch": one letter left out, too many, other than it is, or two that changed places.
    private PartHit[] Misspelt(ReadOnlySpan<char> word)
    {
        if (word.Length < ShortestMisspelt || language.Code.Length == 0 || language.Kinship.HasRoots || language.IsUnspaced)
            return [];
        foreach (var (written, part) in spelt)
        {
            if (written[0] == word[0] && IsNearly(word, written))
                return [new(part, 0, IsFirst: false)];
        }

        return [];
    }

    private static bool IsNearly(ReadOnlySpan<char> word, ReadOnlySpan<char> written)
    {
        if (word.Length == written.Length)
        {
            var at = word.CommonPrefixLength(written);
            if (at == word.Length)
                return false;
            var isOther = word.Length > ShortestMisspelt && word[(at + 1)..].SequenceEqual(written[(at + 1)..]);
            return isOther || (at + 1 < word.Length && word[at] == written[at + 1] && word[at + 1] == written[at]
                && word[(at + 2)..].SequenceEqual(written[(at + 2)..]));
        }

        var isShorter = word.Length < written.Length;
        var shorter = isShorter ? word : written;
        var longer = isShorter ? written : word;
        var same = shorter.CommonPrefixLength(longer);
        // Short words have too many neighbours that are words: "cover" and "clover".
        return shorter.Length > ShortestMisspelt && longer.Length == shorter.Length + 1 && longer[(same + 1)..].SequenceEqual(shorter[same..]);
    }

    // "Pendelfach" for "Fach hinter dem Pendel".
    private PartHit[] InCompound(ReadOnlySpan<char> word)
    {
        for (var cut = ShortestHalf; cut <= word.Length - ShortestHalf && !language.Kinship.HasRoots; cut++)
        {
            if (Whole(word[..cut]) is { } left && Whole(word[cut..]) is { } right && AreOfOneName(left, right))
                return [new(left, 0, IsFirst: false), new(right, 0, IsFirst: false)];
        }

        // "Lederriemen" for a Riemen: the tail of a longer noun.
        for (var cut = ShortestHalf; language.HasCompounds && cut <= word.Length - ShortestTail; cut++)
        {
            if (Whole(word[cut..]) is { } tail)
                return [new(tail, 0, IsFirst: false)];
        }

        return [];
    }

    /// <summary>Whether the second half of a word may stand for all of it: "Bügel" for a Steigbügel.</summary>
    public bool MayStandForWhole(in PartHit hit, int length) => language.HasCompounds && hit is { Cut: > 0, IsFirst: false } && length >= ShortestTail;

    // A beehive is no part of a brass bee, though there be a hive tool.
    private bool AreOfOneName(int left, int right) => together.Contains((Math.Min(left, right), Math.Max(left, right)));

    private int? Whole(ReadOnlySpan<char> half)
    {
        if (!hits.TryGetValue(stems.Of(half), out var found))
            return null;
        foreach (var hit in found)
        {
            if (hit.Cut == 0)
                return hit.Part;
        }

        return null;
    }

    private int PartOf(string word)
    {
        var stem = word.Length < ShortestHalf ? word : stems.Of(word);
        if (parts.TryGetValue(stem, out var part))
            return part;
        parts[stem] = part = parts.Count;
        Hit(stem, new(part, 0, IsFirst: false));
        if (word.Length >= ShortestMisspelt)
            spelt.Add((word, part));
        for (var cut = ShortestHalf; cut <= word.Length - ShortestHalf && Halves(word) > 0; cut++)
        {
            Hit(stems.Of(word.AsSpan(0, cut)), new(part, cut, IsFirst: true));
            Hit(stems.Of(word.AsSpan(cut)), new(part, cut, IsFirst: false));
        }

        return part;
    }

    private int Halves(string word) => language.Kinship.HasRoots || language.Code.Length == 0 ? 0 : Math.Max(0, word.Length - (2 * ShortestHalf) + 1);

    private void Hit(string stem, PartHit hit)
    {
        if (!hits.TryGetValue(stem, out var same))
            hits[stem] = same = [];
        if (same.Count < MostKept && !same.Contains(hit))
            same.Add(hit);
    }

    /// <summary>A name.</summary>
    /// <param name="Secret">Its place in the table.</param>
    /// <param name="Parts">Its telling words.</param>
    /// <param name="IsNegative">Whether it says what is wanting.</param>
    internal sealed record Turned(int Secret, int[] Parts, bool IsNegative);
}

/// <summary>What a word of a text may stand for.</summary>
/// <param name="Part">A word of names.</param>
/// <param name="Cut">Where that word is cut in two, of which this is one half; 0 for the whole word.</param>
/// <param name="IsFirst">Whether it is the first half.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct PartHit(int Part, int Cut, bool IsFirst);
