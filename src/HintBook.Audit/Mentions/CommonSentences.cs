using System.Collections.Immutable;

namespace HintBook.Audit.Mentions;

/// <summary>
/// Sentences that stand on every site, whatever its secrets are called: a caution that speaks of a battery gives no battery away.
/// Asked only where a secret was met.
/// </summary>
internal sealed class CommonSentences(ImmutableArray<string> sentences)
{
    // What stands in braces is filled in and may be anything.
    private readonly string[] pieces =
        [.. sentences.SelectMany(sentence => sentence.Split('{', '}').Where((piece, i) => i % 2 == 0 && piece.Length > 0)).Distinct(StringComparer.Ordinal)];

    /// <summary>Whether a stretch of a text stands there as part of such a sentence.</summary>
    public bool Says(string text, int start, int end)
    {
        var mention = text[start..end];
        foreach (var piece in pieces)
        {
            for (var at = piece.IndexOf(mention, StringComparison.Ordinal); at >= 0; at = piece.IndexOf(mention, at + 1, StringComparison.Ordinal))
            {
                // A sentence of one word is recognised only where it is the whole text.
                if ((piece.Length > mention.Length || text.AsSpan().Trim().Length == piece.Length)
                    && start >= at
                    && string.CompareOrdinal(text, start - at, piece, 0, piece.Length) == 0)
                {
                    return true;
                }
            }
        }

        return false;
    }
}
