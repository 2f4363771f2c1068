using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace HintBook.Audit;

/// <summary>
/// Finds many words in many texts, reading each text once. Words and texts are cut into runs of letters and digits, without
/// accents and in small letters; a word is found where its runs stand one after the other.
/// </summary>
internal sealed class Vocabulary
{
    private readonly Dictionary<string, ImmutableArray<Entry>> byFirstRun;

    public Vocabulary(IEnumerable<string> words)
    {
        var all = words.Distinct(StringComparer.Ordinal).Select(word => new Entry(word, [.. Runs(word)])).ToArray();
        Wordless = [.. all.Where(entry => entry.Runs.IsEmpty).Select(entry => entry.Word)];
        byFirstRun = all
            .Where(entry => !entry.Runs.IsEmpty)
            .GroupBy(entry => entry.Runs[0], StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.ToImmutableArray(), StringComparer.Ordinal);
    }

    /// <summary>Words with nothing to look for in them.</summary>
    public ImmutableArray<string> Wordless { get; }

    /// <summary>The words that a text has, each once, in the order in which they are met.</summary>
    public IEnumerable<string> In(string text)
    {
        if (byFirstRun.Count == 0)
            return [];
        var runs = Runs(text);
        return runs
            .SelectMany((run, at) => byFirstRun.TryGetValue(run, out var entries) ? entries.Where(entry => StandsAt(entry, runs, at)) : [])
            .Select(entry => entry.Word)
            .Distinct(StringComparer.Ordinal);
    }

    private static bool StandsAt(Entry entry, List<string> runs, int at) =>
        entry.Runs.Length <= runs.Count - at && entry.Runs.AsSpan().SequenceEqual(runs.GetRange(at, entry.Runs.Length).ToArray());

    private static List<string> Runs(string text)
    {
        var runs = new List<string>();
        var run = new StringBuilder();
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
                run.Append(letter);
            if (alone)
                End();
        }

        End();
        return runs;

        void End()
        {
            if (run.Length > 0)
                runs.Add(run.ToString());
            run.Clear();
        }
    }

    private static Rune Bare(Rune letter)
    {
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

    private sealed record Entry(string Word, ImmutableArray<string> Runs);
}
