using System.Text.RegularExpressions;

namespace HintBook.Ciphers;

/// <summary>
/// Reads texts of which every word counts. Nothing is passed over: what can't be read is refuted by name. A sentence, or a part of one between colons,
/// semicolons, brackets or dashes, of at least <see cref="FewestWords"/> words in which nothing can be read is named as a whole, so that the author can
/// leave it out as a whole.
/// </summary>
internal static partial class EveryWord
{
    /// <summary>Of a shorter part each word is named: “red, blue; dark mauve”.</summary>
    public const int FewestWords = 4;

    /// <summary>The parts of a text, without the marks between them.</summary>
    public static IEnumerable<string> Parts(string text) => Breaks().Split(text).Select(part => part.Trim()).Where(part => part.Length > 0);

    /// <summary>What was read of a text, part by part.</summary>
    /// <param name="text">The text.</param>
    /// <param name="read">What is read in a part, and what can't be.</param>
    /// <param name="nothing">Why nothing could be read, where that is so.</param>
    public static ReadingResult Read(string text, Func<string, (IReadOnlyCollection<Row> Rows, IReadOnlyCollection<string> Unread)> read, string nothing)
    {
        var parts = Parts(text).Select(part => (Text: part, Read: read(part))).ToArray();
        return ReadingResult.Of(
            parts.SelectMany(part => part.Read.Rows),
            parts.SelectMany(part => part.Read.Rows.Count == 0 ? Unread(part.Text, part.Read.Unread) : part.Read.Unread),
            nothing);
    }

    /// <summary>What was read of the figures of a text; words beside them can't be read.</summary>
    public static ReadingResult BesideFigures(string text, IEnumerable<Row> rows, string nothing) => ReadingResult.Of(
        rows,
        Parts(text).SelectMany(part => part.Any(char.IsAsciiDigit) ? TextPieces.Lettered(part) : Unread(part, [.. TextPieces.Lettered(part)])),
        nothing);

    private static IEnumerable<string> Unread(string part, IReadOnlyCollection<string> unread) =>
        unread.Count > 0 && TextPieces.Words(part).Count() >= FewestWords ? [part] : unread;

    [GeneratedRegex(@"[.!?…:;()\[\]\n]+(?=\s|$)|[()\[\]\n]|\s[-–—]\s|—", RegexOptions.CultureInvariant)]
    private static partial Regex Breaks();
}
