using System.CommandLine;
using HintBook.Audit;
using HintBook.Mechanism;
using HintBook.Publishing;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary><c>publish BOOK</c>: makes the site and the cards, checks them and swaps them in; for a folder of books, a shelf of them.</summary>
internal static class PublishVerb
{
    public static Command Make(Terminal terminal, CancellationToken stop) => PublishingVerb.Make(
        "publish",
        "Make the site and the printed cards. Of a folder that holds several books, make one site with all of them.",
        (book, options) => Shelf.BooksIn(book).IsEmpty
            ? Pipeline.Publish(book, options, stop)
            : options.WithCard is not null
            ? WithCard.OfAShelf
            : Shelf.Publish(book, options, (name, outcome) => TellOne(name, outcome, terminal), stop),
        Told,
        terminal,
        WithCard.Option(terminal));

    // Every book of a shelf has its say; what becomes of the shelf is told at the end.
    private static void TellOne(string name, PublishOutcome outcome, Terminal terminal)
    {
        var (said, findings) = outcome switch
        {
            Published(var report) => (
                FindingCount.Say(report.Findings, false, report.Claims.All(claim => claim.IsProved)) + (report.Unchanged is null ? "" : $" {SaidThen}"),
                report.Findings),
            Rejected(var mistakes) => (FindingCount.Say(mistakes, withNotes: false), mistakes),
            Failed failed => (failed.Message, Findings.None),
            _ => throw new InvalidOperationException("A publish ends in no other way."),
        };
        terminal.Say($"{name}: {said}");
        terminal.Say(findings, withNotes: false);
    }

    private const string SaidThen = "This is what the last publish said; nothing has changed since.";

    private static string Told(Report report) => report.IsShelf ? ToldOfShelf(report) : ToldOfBook(report);

    private static string ToldOfShelf(Report report) =>
        $"""
        {Heading(report, $"a shelf of {Words.Count(report.Books, "book")}")}
          site     {Site(report)}
          books    {Path.Combine(report.Folder, "books")}: each book by itself, with its cards
        Look at  {Path.Combine(report.Folder, "site", "index.html")}
        Upload   everything in {Path.Combine(report.Folder, "site")}

        """;

    private static string ToldOfBook(Report report) =>
        $"""
        {Heading(report, $"“{TerminalText.Shown(report.Book)}”")}
          site     {Site(report)}
          {Cards(report)}{Papers(report)}
          checked  {Site(report.Audit)}{Opened(report)}{Printed(report)}
        Look at  {Path.Combine(report.Folder, "site", "index.html")}
        Upload   everything in {Path.Combine(report.Folder, "site")}
        {Moved(report)}
        {Verdicts.Write(report.Claims)}
        """;

    private static string Heading(Report report, string what) => report.Unchanged is { } compared
        ? $"""
        Nothing has changed since {what} was published in {report.Folder}
          compared {OutcomePrinter.Say(compared)}
        Made and checked then, not now:
        """
        : $"Published {what} in {report.Folder}";

    private static string Cards(Report report) =>
        report.IsWithCard ? "print    as it was: what is printed follows from the key alone" : CardsVerb.Told(report);

    private static string Site(Report report) =>
        $"{Words.Count(report.Pages, "page")}, {Words.Count(report.Photos, "photo")} ({report.Developed} developed now), {Size(report.SiteBytes)}"
        + Clips(report);

    private static string Site(AuditReport audit) =>
        $"{Words.Count(audit.Pages, "page")} read back, {Words.Count(audit.Links, "link")} followed: each leads somewhere";

    private static string Papers(Report report) => report.Papers.IsEmpty
        ? ""
        : $"\n  papers   {Words.List(report.Papers)} in {Path.Combine(report.Folder, "print")}"
            + (CardsVerb.OnPapers(report.PaperCodes) is { } codes ? $"\n  {codes}" : "");

    private static string Opened(Report report) => report.Audit.Cards == 0
        ? ""
        : $"\n  opened   {Words.Count(report.Audit.Opened, "page")} with {Words.Count(report.Audit.Cards, "card")}{OnOthers(report.Audit.OnOthers)}"
            + Gates(report.Audit.Gates);

    private static string OnOthers(KeyTries tries) => tries switch
    {
        { All: 0 } => "",
        { Tried: var tried, All: var all } when tried == all => "; the key of each stage was tried on all other pages",
        _ => $"; keys of stages were tried on other pages {Words.Grouped(tries.Tried)} times, spread over the {Words.Grouped(tries.All)} that are possible",
    };

    private static string Gates(KeyTries words) => words switch
    {
        { All: 0 } => "",
        { Tried: var tried, All: var all } when tried == all => $"\n  gates    opened with {Words.Count(all, "word")}, and shut without",
        _ => $"\n  gates    opened with {Words.Grouped(words.Tried)} of {Words.Grouped(words.All)} words, and shut without",
    };

    private static string Printed(Report report) => report.Print.Files == 0 ? "" : $"\n           {PrintVerb.Audited(report)}";

    private static string Clips(Report report) => report.Clips.All == 0
        ? ""
        : $"\n  clips    {Words.Count(report.Clips.All, "clip")} cut by ffmpeg ({report.Clips.Now} now): "
            + "another ffmpeg may give other bytes";

    // Each old address with what must be put there, as long as the book's old cards may lead to it.
    private static string Moved(Report report) => string.Concat(report.Moved.Select(moved =>
        $"Moved    everything in {moved.Value} goes to {moved.Key}: its pages lead to the new ones\n"));

    private static string Size(long bytes) =>
        bytes < 1_000_000 ? $"{Math.Max(1, bytes / 1000)} kB" : $"{(bytes / 1e6).ToString("0.0", System.Globalization.CultureInfo.InvariantCulture)} MB";
}
