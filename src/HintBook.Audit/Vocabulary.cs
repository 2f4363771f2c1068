using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace HintBook.Audit;

/// <summary>
/// Finds many words in many texts, reading each text once. Words and texts are folded: runs of letters and digits, without
/// accents and in small letters, with one space after each. A word is found where its runs stand one after the other.
/// </summary>
internal sealed class Vocabulary
{
    private readonly Dictionary<string, ImmutableArray<Entry>>.AlternateLookup<ReadOnlySpan<char>> byFirstRun;

    public Vocabulary(IEnumerable<string> words)
    {
        var all = words.Distinct(StringComparer.Ordinal).Select(word => new Entry(word, Fold(word))).ToArray();
        Wordless = [.. all.Where(entry => entry.Folded.Length == 0).Select(entry => entry.Word)];
        byFirstRun = all
            .Where(entry => entry.Folded.Length > 0)
            .GroupBy(entry => entry.Folded[..entry.Folded.IndexOf(' ', StringComparison.Ordinal)], StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.ToImmutableArray(), StringComparer.Ordinal)
            .GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <summary>Whether no text can have any of them.</summary>
    public bool IsEmpty => byFirstRun.Dictionary.Count == 0;

    /// <summary>Words with nothing to look for in them.</summary>
    public ImmutableArray<string> Wordless { get; }

    /// <summary>The words that a text has, each once, in the order in which they are met.</summary>
    public IReadOnlyList<string> In(string text)
    {
        if (IsEmpty)
            return [];
        List<string> found = [];
        for (var rest = Fold(text).AsSpan(); !rest.IsEmpty; rest = rest[(rest.IndexOf(' ') + 1)..])
        {
            if (!byFirstRun.TryGetValue(rest[..rest.IndexOf(' ')], out var entries))
                continue;
            foreach (var entry in entries)
            {
                if (rest.StartsWith(entry.Folded, StringComparison.Ordinal) && !found.Contains(entry.Word))
                    found.Add(entry.Word);
            }
        }

        return found;
    }

    private static string Fold(string text)
    {
        var folded = new StringBuilder(text.Length + 1);
        foreach (var rune in text.EnumerateRunes())
        {
            var letter = Bare(rune);
            if (IsUnheard(letter))
                continue;
            var alone = IsWrittenWithoutSpaces(letter.Value);
            var counts = Rune.IsLetterOrDigit(letter);
            if (alone || !counts)
                End();
            if (counts)
                folded.Append(letter);
            if (alone)
                End();
        }

        End();
        return folded.ToString();

        void End()
        {
            if (folded.Length > 0 && folded[^1] != ' ')
                folded.Append(' ');
        }
    }

    private static Rune Bare(Rune letter)
    {
        if (letter.IsAscii)
            return new(char.ToLowerInvariant((char)letter.Value));
        var small = Rune.ToLowerInvariant(letter);
        return small.IsBmp ? new Rune(Accents.Without((char)small.Value)) : small;
    }

    // Accents that stand by themselves, soft hyphens and joiners: a word with them is the same word.
    private static bool IsUnheard(Rune letter) =>
        !letter.IsAscii
        && Rune.GetUnicodeCategory(letter) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format;

    // Thai, Hangul and the scripts of China and Japan: every letter counts as a word there, since no space does.
    private static bool IsWrittenWithoutSpaces(int letter) =>
        letter is (>= 0x0E00 and <= 0x0E7F) or (>= 0x1100 and <= 0x11FF) or (>= 0x2E80 and <= 0x9FFF) or (>= 0xAC00 and <= 0xD7AF) or (>= 0xF900 and <= 0xFAFF) or (>= 0x20000 and <= 0x3FFFF);

    private sealed record Entry(string Word, string Folded);
}
