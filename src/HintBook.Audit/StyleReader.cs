using System.Collections.Immutable;
using System.Text.RegularExpressions;
using HintBook.Audit.Mentions;

namespace HintBook.Audit;

/// <summary>Reads a style sheet: its addresses in <c>url(…)</c> and <c>@import "…"</c>, its strings and its remarks.</summary>
internal static partial class StyleReader
{
    /// <summary>Reads a style sheet.</summary>
    public static SiteFile Read(string path, string text, Secrets secrets)
    {
        var references = References(text).ToImmutableArray();
        var listener = secrets.Listen(path);
        return new(path)
        {
            References = references,
            Faults = secrets.IsEmpty
                ? []
                :
                [
                    .. from reference in references
                       let address = Uri.UnescapeDataString(reference.Address)
                       let manner = PictureAddresses.MannerOf(address)
                       from fault in listener.Hear(new(address, reference.Line, reference.Column, "in an address", manner, secrets.Outside))
                       select fault,
                    .. from row in Rows(references)
                       from fault in listener.Hear(new(row.Said, 0, 0, "in its addresses one by one", row.Manner, secrets.Outside))
                       select fault,
                    .. PlainReader.Faults(path, text, secrets, ProgramText.InStyle(text), "in the style sheet"),
                ],
        };
    }

    private static IEnumerable<(string Said, Manner Manner)> Rows(ImmutableArray<Reference> references)
    {
        var rows = new ReferenceRows();
        foreach (var reference in references)
            rows.Add(Uri.UnescapeDataString(reference.Address));
        return rows.Rows;
    }

    private static IEnumerable<Reference> References(string text)
    {
        var lines = new LineMap(text);
        // Comments become spaces of the same length, so that places stay where they are.
        var bare = Comment().Replace(text, comment => new string(' ', comment.Length));
        foreach (Match match in Address().Matches(bare))
        {
            var (line, column) = lines.PlaceOf(match.Index);
            yield return new(ReferenceKind.Asset, Reference.Cleaned(match.Groups["address"].Value), line, column);
        }
    }

    [GeneratedRegex(@"/\*.*?(\*/|\z)", RegexOptions.Singleline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Comment();

    [GeneratedRegex(
        """(url\(\s*|@import\s+)("(?<address>[^"\n]*)"|'(?<address>[^'\n]*)')|url\(\s*(?<address>[^"'\s)][^)\s]*)""",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant,
        matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Address();
}
