using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace HintBook.Ciphers;

/// <summary>
/// What of a text belongs to the code and what is the story around it. A sentence, or a part of one between colons, semicolons, brackets or dashes, that has
/// nothing to be read in it and at least <see cref="FewestWords"/> words is story: it is passed over, and the working says so. In all others every word must
/// be read, so that no item of a list is lost.
/// </summary>
internal static partial class Story
{
    /// <summary>A shorter part could be an item of the list: “red, blue; dark mauve”.</summary>
    public const int FewestWords = 4;

    /// <summary>The parts of a text, without the marks between them.</summary>
    public static IEnumerable<string> Parts(string text) => Breaks().Split(text).Select(part => part.Trim()).Where(part => part.Length > 0);

    /// <summary>What was read of a text, part by part.</summary>
    /// <param name="text">The text.</param>
    /// <param name="read">What is read in a part, and what can't be.</param>
    /// <param name="nothing">Why nothing could be read, where that is so.</param>
    public static ReadingResult Read(string text, Func<string, (IReadOnlyCollection<Row> Rows, IReadOnlyCollection<string> Unread)> read, string nothing)
    {
        var (rows, unread, story) = (new List<Row>(), new List<string>(), ImmutableArray.CreateBuilder<string>());
        foreach (var part in Parts(text))
        {
            var (readRows, readUnread) = read(part);
            rows.AddRange(readRows);
            if (readRows.Count == 0 && TextPieces.Words(part).Count() >= FewestWords)
                story.Add(part);
            else
                unread.AddRange(readUnread);
        }

        var result = ReadingResult.Of(rows, unread, nothing);
        return result is ReadingResult.Gave gave ? gave with { Story = story.ToImmutable() } : result;
    }

    /// <summary>What was read of the figures of a text; words that stand beside figures in one part can't be read.</summary>
    public static ReadingResult BesideFigures(string text, IEnumerable<Row> rows, string nothing)
    {
        var parts = Parts(text).ToLookup(part => TextPieces.Words(part).Count() >= FewestWords && !part.Any(char.IsAsciiDigit));
        var result = ReadingResult.Of(rows, parts[false].SelectMany(TextPieces.Lettered), nothing);
        return result is ReadingResult.Gave gave ? gave with { Story = [.. parts[true]] } : result;
    }

    [GeneratedRegex(@"[.!?…:;()\[\]\n]+(?=\s|$)|[()\[\]\n]|\s[-–—]\s|—", RegexOptions.CultureInvariant)]
    private static partial Regex Breaks();
}
