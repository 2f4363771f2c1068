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
        // Pictures are left out as well, one by one.
        var pictures = notThere.Where(name => IsPicture(name.Value) && text.Contains(name.Value.Trim(), StringComparison.Ordinal)).ToImmutableArray();
        foreach (var picture in pictures)
            kept = kept.Replace(picture.Value.Trim(), " ", StringComparison.Ordinal);
        return (kept, [.. notThere.Except(pictures)]);
    }

    private static bool IsPicture(string name) => TextPieces.Pictures(name).Any() && WordsOf(name).Length == 0;

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
        foreach (var (word, _) in words.Zip(left).Where(pair => pair.Second))
        {
            kept.Append(text, from, word.Start - from);
            from = word.End;
        }

        return kept.Append(text, from, text.Length - from).ToString();
    }

    private static string[] WordsOf(string name) => [.. TextPieces.Words(name).Select(word => word.Value)];
}
