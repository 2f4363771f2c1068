using System.Collections.Immutable;
using System.Text;
using HintBook.Text;

namespace HintBook.Ciphers;

/// <summary>Leaves the words out of a clue that don't count, as the author names them under <c>skip</c>.</summary>
internal static class Skipping
{
    /// <summary>
    /// The text without the words, and those of them that don't stand in it. Case doesn't matter; a name of several words is left out as a whole.
    /// </summary>
    public static (string Text, ImmutableArray<Located<string>> NotThere) Without(string text, ImmutableArray<Located<string>> skipped)
    {
        if (skipped.IsEmpty)
            return (text, []);
        var words = TextPieces.Words(text).ToArray();
        var left = new bool[words.Length];
        var notThere = skipped.Where(name => !Mark(words, WordsOf(name.Value), left)).ToImmutableArray();
        var kept = Kept(text, words, left);
        // Pictures are left out as well, one by one, and what stands within a line of letters that has no spaces.
        var pictures = notThere.Where(name => (IsPicture(name.Value) || HasNoSpaces(name.Value)) && text.Contains(name.Value.Trim(), StringComparison.Ordinal))
            .ToImmutableArray();
        foreach (var picture in pictures)
            kept = kept.Replace(picture.Value.Trim(), " ", StringComparison.Ordinal);
        return (kept, [.. notThere.Except(pictures)]);
    }

    private static bool IsPicture(string name) => TextPieces.Pictures(name).Any() && WordsOf(name).Length == 0;

    // Han, kana and Thai are written without spaces between words.
    private static bool HasNoSpaces(string name) => name.Trim() is { Length: > 0 } bare
        && bare.All(letter => letter is (>= '\u3040' and <= '\u30FF') or (>= '\u3400' and <= '\u9FFF') or (>= '\u0E00' and <= '\u0E7F') or '々' or 'ー');

    private static bool Mark(TextPiece[] words, string[] name, bool[] left)
    {
        var found = false;
        for (var at = 0; name.Length > 0 && at + name.Length <= words.Length; at++)
        {
            if (!words.AsSpan(at, name.Length).ToArray().Select(word => word.Value).SequenceEqual(name, StringComparer.OrdinalIgnoreCase))
                continue;
            left.AsSpan(at, name.Length).Fill(true);
            found = true;
        }

        return found;
    }

    private static string Kept(string text, TextPiece[] words, bool[] left)
    {
        var (kept, from) = (new StringBuilder(text.Length), 0);
        foreach (var (at, word) in words.Index().Where(each => left[each.Index]))
        {
            // Marks between two words that are left out, and right behind the last, go with them.
            if (at == 0 || !left[at - 1])
                kept.Append(text, from, word.Start - from);
            else
                kept.Append(text.AsSpan(from..word.Start).Contains('\n') ? '\n' : ' ');
            from = word.End;
            // In French a space stands before some of them.
            if (from + 1 < text.Length && text[from] is ' ' or '\u00A0' or '\u202F' && text[from + 1] is ':' or ';' or '!' or '?' or '»')
                from++;
            while (from < text.Length && char.IsPunctuation(text[from]) && (at + 1 == words.Length || from < words[at + 1].Start))
                from++;
        }

        return kept.Append(text, from, text.Length - from).ToString();
    }

    private static string[] WordsOf(string name) => [.. TextPieces.Words(name).Select(word => word.Value)];
}
