using System.Collections.Immutable;

namespace HintBook.Audit.Mentions;

/// <summary>
/// Sentences of the theme that are on every site, whatever its secrets: a caution about a battery doesn't tell that there is one.
/// Called only where a secret was found.
/// </summary>
internal sealed class CommonSentences(ImmutableArray<string> sentences)
{
    // A placeholder in braces may be filled with anything.
    private readonly string[] pieces =
        [.. sentences.SelectMany(sentence => sentence.Split('{', '}').Where((piece, i) => i % 2 == 0 && piece.Length > 0)).Distinct(StringComparer.Ordinal)];

    /// <summary>Whether a range of a text is part of such a sentence.</summary>
    public bool Says(string text, int start, int end)
    {
        var mention = text[start..end];
        foreach (var piece in pieces)
        {
            for (var at = piece.IndexOf(mention, StringComparison.Ordinal); at >= 0; at = piece.IndexOf(mention, at + 1, StringComparison.Ordinal))
            {
                // A sentence of one word is recognised only where it is a whole line.
                if ((piece.Length > mention.Length || LineOf(text, start, end).Trim().Length == piece.Length)
                    && start >= at
                    && string.CompareOrdinal(text, start - at, piece, 0, piece.Length) == 0)
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static ReadOnlySpan<char> LineOf(string text, int start, int end)
    {
        var (from, to) = (text.AsSpan(0, start).LastIndexOf('\n') + 1, text.AsSpan(end).IndexOf('\n'));
        return text.AsSpan(from, (to < 0 ? text.Length : end + to) - from);
    }
}
