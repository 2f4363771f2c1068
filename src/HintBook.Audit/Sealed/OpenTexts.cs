using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using AngleSharp.Html.Parser;

namespace HintBook.Audit.Sealed;

/// <summary>Looks for texts that may be read with a card only in everything that lies open, as they are written.</summary>
internal static partial class OpenTexts
{
    private const int ShortestHint = 24, LongestQuoted = 60;

    private static readonly string[] Hints = ["nudge", "clue", "answer"];

    /// <summary>Every file with such a text.</summary>
    /// <param name="folder">The site.</param>
    /// <param name="paths">Its files.</param>
    /// <param name="texts">Titles, signs and names that the caller knows.</param>
    /// <param name="opened">The pages that were opened: their hints mustn't lie open either.</param>
    public static IEnumerable<AuditFault> Faults(string folder, IEnumerable<string> paths, IEnumerable<SealedText> texts, IEnumerable<OpenedPage> opened)
    {
        SealedText[] sought =
        [
            .. texts.Concat(opened.SelectMany(HintsIn).Select(hint => new SealedText(hint, Sure: true)))
                .Select(text => text with { Text = Plain(text.Text) })
                .Where(text => text.Text.Length > 0)
                .DistinctBy(text => text.Text, StringComparer.OrdinalIgnoreCase),
        ];
        return paths.Where(MayBeText).AsParallel().AsOrdered().SelectMany(path => In(folder, path, sought));
    }

    private static IEnumerable<AuditFault> In(string folder, string path, SealedText[] sought)
    {
        var file = File.ReadAllText(Path.Combine(folder, path));
        if (SealedForm.IsHandedOn(path, file))
            return [];
        var open = Plain(Closed().Replace(WebUtility.HtmlDecode(file), match => SealedForm.Bytes(match.Groups["text"].Value) is null ? match.Value : ""));
        return
            from text in sought
            where Stands(open, text)
            select new AuditFault(path, 0, 0, $"The text “{Short(text.Text)}” lies open, and may be read with a card only.") { IsSure = text.Sure };
    }

    // As words of their own: "key" isn't told by "keyboard". What may be everyday words counts only as it is written: the title "Out of reach" isn't told
    // by "out of reach".
    private static bool Stands(string open, SealedText sought)
    {
        var (text, comparison) = (sought.Text, sought.Sure ? StringComparison.OrdinalIgnoreCase : StringComparison.Ordinal);
        for (var at = open.IndexOf(text, comparison); at >= 0; at = open.IndexOf(text, at + 1, comparison))
        {
            var end = at + text.Length;
            if ((at == 0 || !char.IsLetterOrDigit(open[at - 1])) && (end == open.Length || !char.IsLetterOrDigit(open[end])))
                return true;
        }

        return false;
    }

    // Hints are prose; what a theme writes around them stands on other pages too.
    private static IEnumerable<string> HintsIn(OpenedPage page) =>
        from piece in page.Shell.Pieces.Zip(page.Texts ?? [])
        where Hints.Contains(piece.First.Name)
        from block in new HtmlParser().ParseDocument(piece.Second).QuerySelectorAll(".prose > p, .prose li")
        where block.TextContent.Length >= ShortestHint
        select block.TextContent;

    private static string Plain(string text) => Space().Replace(text.Normalize(NormalizationForm.FormC), " ").Trim();

    private static string Short(string text) => text.Length <= LongestQuoted ? text : text[..LongestQuoted] + "…";

    private static bool MayBeText(string path) =>
        Path.GetExtension(path).ToLowerInvariant() is ".html" or ".js" or ".css" or ".json" or ".webmanifest" or ".svg" or ".txt" or ".xml" or ".vtt" or "";

    [GeneratedRegex(@"\s+", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Space();

    [GeneratedRegex("data-text=\"(?<text>[A-Za-z0-9+/]+={0,2})\"", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Closed();
}
