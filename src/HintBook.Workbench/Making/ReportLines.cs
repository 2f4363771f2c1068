using System.Collections.Immutable;
using System.Globalization;
using HintBook.Publishing;
using HintBook.Text;

namespace HintBook.Workbench.Making;

/// <summary>What a publish or a print has made and checked, for its maker: each number from the work or the check that it names.</summary>
internal static class ReportLines
{
    /// <summary>The lines of a publish.</summary>
    /// <param name="report">Its report.</param>
    /// <param name="address">Where the site will live; null for a book that doesn't say.</param>
    public static ImmutableArray<string> OfPublish(Report report, string? address)
    {
        var site = Path.Combine(report.Folder, "site");
        return
        [
            .. Heading(report),
            $"Site: {Words.Count(report.Pages, "page")}, {Words.Count(report.Photos, "photo")} ({report.Developed} developed now), {Size(report.SiteBytes)}",
            .. report.Clips.All == 0 ? (string[])[] : [$"Film: {Words.Count(report.Clips.All, "clip")} cut ({report.Clips.Now} now)"],
            .. Printed(report),
            $"Checked: {Words.Count(report.Audit.Pages, "page")} read back, {Words.Count(report.Audit.Links, "link")} followed: each leads somewhere",
            .. report.Audit.Cards == 0 ? (string[])[] : [$"Opened: {Words.Count(report.Audit.Opened, "page")} with {Words.Count(report.Audit.Cards, "card")}"],
            $"Look at {Path.Combine(site, "index.html")}",
            address is null
                ? $"Upload everything in {site}. The book names no address yet: set “address” in book.yaml, so that cards can be printed."
                : $"Upload everything in {site}, so that its front page is found at {address}",
            .. report.Moved.Select(moved => $"Upload everything in {moved.Value} to {moved.Key}: its pages lead to the new ones"),
        ];
    }

    private static string[] Heading(Report report) => report.Unchanged is { } compared
        ?
        [
            $"Nothing has changed since “{report.Book}” was published in {report.Folder}",
            $"Compared: {Words.Count(compared.Read, "file")} of the book and {Words.Count(compared.Made, "file")} made of it: each is as it was. "
                + "The rest was made and checked then, not now.",
        ]
        : [$"Published “{report.Book}” in {report.Folder}"];

    /// <summary>The lines of a print.</summary>
    /// <param name="report">Its report.</param>
    public static ImmutableArray<string> OfPrint(Report report) =>
        [$"Printed for “{report.Book}” in {Path.Combine(report.Folder, "print")}", .. Printed(report), "Print all of it at 100 %, not “fit to page”."];

    private static IEnumerable<string> Printed(Report report)
    {
        if (report.Cards is { Cards: > 0 } cards)
        {
            yield return $"Cards: {Words.Count(cards.Cards, "card")} in {Path.Combine(report.Folder, "print", "cards.pdf")}; "
                + $"codes read back from the pictures: {cards.FromPictures}, from the PDF: {cards.FromPdf}";
            if (report.CardsAreProofs)
                yield return "These cards are proofs, since the address is one for examples: set “address” in book.yaml before you print for a box.";
            if (report.CardsBeforePages > 0)
            {
                yield return "Publish before you hand them out: "
                    + $"{Words.Count(report.CardsBeforePages, "card")} lead to no page of the site as it was published last.";
            }
        }

        foreach (var paper in report.Papers)
            yield return $"Paper: {Path.Combine(report.Folder, "print", paper)}";
    }

    private static string Size(long bytes) =>
        bytes < 1_000_000 ? $"{Math.Max(1, bytes / 1000)} kB" : $"{(bytes / 1e6).ToString("0.0", CultureInfo.InvariantCulture)} MB";
}
