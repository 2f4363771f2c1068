using System.CommandLine;
using HintBook.Publishing;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary><c>publish BOOK</c>: makes the site and the cards, checks them and swaps them in.</summary>
internal static class PublishVerb
{
    public static Command Of(Terminal terminal, CancellationToken stop) => PublishingVerb.Of(
        "publish",
        "Make the site and the printed cards.",
        (book, options) => Pipeline.Publish(book, options, stop),
        Told,
        terminal);

    private static string Told(Report report) =>
        $"""
        Published “{report.Book}” in {report.Folder}
          site     {Words.Count(report.Pages, "page")}, {Words.Count(report.Photos, "photo")} ({report.Developed} developed now), {Size(report.SiteBytes)}
          {CardsVerb.Told(report)}
          checked  {Words.Count(report.Audit.Pages, "page")} read back, {Words.Count(report.Audit.Links, "link")} followed: each leads somewhere
        Look at  {Path.Combine(report.Folder, "site", "index.html")}
        Upload   everything in {Path.Combine(report.Folder, "site")}

        """;

    private static string Size(long bytes) =>
        bytes < 1_000_000 ? $"{Math.Max(1, bytes / 1000)} kB" : $"{(bytes / 1e6).ToString("0.0", System.Globalization.CultureInfo.InvariantCulture)} MB";
}
