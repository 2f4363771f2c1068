using System.Text.RegularExpressions;

namespace HintBook.Spoilers.ReadingLevels;

/// <summary>How long a text is.</summary>
/// <param name="Words">Runs of letters and figures; what a hyphen, an apostrophe or a point without a space joins is one word.</param>
/// <param name="Sentences">What ends in a full stop, question mark, exclamation mark or ellipsis, or where a paragraph or a list item ends.</param>
/// <param name="Syllables">See <see cref="ReadingLevels.Syllables"/>; only English has a meaning.</param>
internal sealed partial record TextLength(int Words, int Sentences, int Syllables)
{
    /// <summary>Counts in an author's Markdown.</summary>
    public static TextLength In(string markdown)
    {
        var (words, sentences, syllables) = (0, 0, 0);
        foreach (var block in PlainText.Blocks(markdown))
        {
            var from = 0;
            foreach (var end in Ends(block))
            {
                var before = words;
                foreach (var word in Word().EnumerateMatches(block.AsSpan(from, end - from)))
                {
                    words++;
                    syllables += ReadingLevels.Syllables.In(block.Substring(from + word.Index, word.Length));
                }

                sentences += words > before ? 1 : 0;
                from = end;
            }
        }

        return new(words, sentences, syllables);
    }

    /// <summary>
    /// The grade of a US school whose pupils can read an English text: 0.39 × words per sentence + 11.8 × syllables per word − 15.59
    /// (Kincaid, Fishburne, Rogers and Chissom 1975, Naval Technical Training Command, Research Branch Report 8-75). Null without a word.
    /// A text of short words in short sentences may be below nought.
    /// </summary>
    public double? Grade => Words == 0 ? null : (0.39 * Words / Sentences) + (11.8 * Syllables / Words) - 15.59;

    private static IEnumerable<int> Ends(string block)
    {
        foreach (Match end in End().Matches(block))
            yield return end.Index + end.Length;
        yield return block.Length;
    }

    [GeneratedRegex(@"[\p{L}\p{N}\p{M}]+(?:['’‑.-][\p{L}\p{N}\p{M}]+|(?<=[0-9]),[0-9]+)*")]
    private static partial Regex Word();

    // A stop behind an initial, behind a short form or before a small letter ends nothing.
    [GeneratedRegex(@"(?<![.!?…])(?>(?:[!?…。！？]|(?<!\b(?:\p{Lu}|Mr|Mrs|Ms|Dr|St|No|e\.g|i\.e|etc))\.)+)[""'”’»)\]]*(?=\s+[^\s\p{Ll}]|\s*$|[^\x00-\x7F])")]
    private static partial Regex End();
}
