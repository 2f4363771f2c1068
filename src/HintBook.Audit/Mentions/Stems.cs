using System.Text.RegularExpressions;
using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>Brings words of one family to one spelling. Wrong now and then: two words of a name must agree before anything is told.</summary>
internal sealed partial class Stems
{
    private const int ShortestStem = 3;
    private readonly Kinship kinship;
    private readonly string[] endings, beginnings;
    private readonly Dictionary<string, string> families = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string>.AlternateLookup<ReadOnlySpan<char>> lookup;

    public Stems(Kinship kinship)
    {
        this.kinship = kinship;
        endings = [.. kinship.Endings.Split(' ', StringSplitOptions.RemoveEmptyEntries).OrderByDescending(ending => ending.Length)];
        beginnings = [.. kinship.Beginnings.Split(' ', StringSplitOptions.RemoveEmptyEntries).OrderByDescending(beginning => beginning.Length)];
        foreach (var family in kinship.Families)
        {
            var words = FoldedText.BareWords(family).ToArray();
            foreach (var word in words)
                families[word] = words[0];
        }

        lookup = families.GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <summary>What a word may have in common with its family if its first letter is only written as one with it; null if it can't be.</summary>
    /// <param name="word">Small bare letters.</param>
    public string? WithoutFirst(ReadOnlySpan<char> word) => kinship.HasRoots ? ArabicRoot.WithoutFirst(word) : null;

    /// <summary>What the words of a family have in common.</summary>
    /// <param name="word">Small bare letters.</param>
    public string Of(ReadOnlySpan<char> word)
    {
        if (kinship.HasRoots)
            return ArabicRoot.Of(word);
        if (lookup.TryGetValue(word, out var head))
            word = head;
        var stem = Short(word);
        if (lookup.TryGetValue(stem, out head))
            stem = Short(head);
        foreach (var beginning in beginnings)
        {
            if (stem.Length - beginning.Length >= ShortestStem && stem.StartsWith(beginning))
            {
                stem = stem[beginning.Length..];
                break;
            }
        }

        var single = Single(stem.Length > ShortestStem && stem[^1] is 'e' or 'y' or 'i' ? stem[..^1] : stem);
        // "Remiendo" for "remendado".
        if (kinship.HasDiphthongs)
            single = single.Replace("ie", "e", StringComparison.Ordinal);
        // "Muehlstein" for "Mühlstein"; "neu" and "bauen" have an e of their own.
        return kinship.HasDots ? Dotted().Replace(single, "${vowel}") : single;
    }

    // Two endings at the most: "sign-all-ing" keeps its stem.
    private ReadOnlySpan<char> Short(ReadOnlySpan<char> word)
    {
        for (var round = 0; round < 2; round++)
        {
            var cut = 0;
            foreach (var ending in endings)
            {
                if (word.Length - ending.Length >= ShortestStem && word.EndsWith(ending))
                {
                    cut = ending.Length;
                    break;
                }
            }

            if (cut == 0)
                break;
            word = word[..^cut];
        }

        return word;
    }

    // "traveller" and "traveler", "colour" and "color", "sulphur" and "sulfur" are written alike.
    private static string Single(ReadOnlySpan<char> stem)
    {
        Span<char> letters = stackalloc char[stem.Length];
        var length = 0;
        foreach (var letter in stem)
        {
            if (length > 0 && letters[length - 1] == letter)
                continue;
            letters[length++] = letter;
        }

        var single = letters[..length];
        return single.Contains('h') || single.IndexOf("our") >= 0
            ? single.ToString().Replace("ph", "f", StringComparison.Ordinal).Replace("our", "or", StringComparison.Ordinal)
            : single.ToString();
    }

    [GeneratedRegex("(?<vowel>[ao])e|(?<=[mrlhkt])(?<vowel>u)e", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Dotted();
}
