using System.CommandLine;
using HintBook.Publishing.Visits;

namespace HintBook.Cli.Verbs;

/// <summary><c>visit BOOK</c>: asks for every printed address, page and file where the site lives, and says what fails.</summary>
internal static class VisitVerb
{
    private const double LongestVisit = 24 * 60 * 60;

    public static Command Make(Terminal terminal, CancellationToken stop)
    {
        var book = Options.Book();
        var output = Options.Out("The output folder of the last publish (default: “published” in the book).");
        var local = new Option<string?>("--base") { Description = "Ask there instead of at the book's own address, such as a local server.", HelpName = "URL" };
        var time = new Option<double>("--time") { Description = "Stop after so many seconds.", DefaultValueFactory = _ => 600, HelpName = "SECONDS" };
        time.Validators.Add(given =>
        {
            if (given.GetValue(time) is not (> 0 and <= LongestVisit))
                given.AddError("--time takes seconds, from above 0 to 86400.");
        });
        var format = new Option<string>("--format") { Description = "How to print it.", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "json");
        var verb = new Command("visit", "Ask for every card, page and file where the site lives.") { book, output, local, time, format };
        verb.SetAction((parsed, _) => Visit(
            parsed.GetValue(book)!,
            parsed.GetValue(output),
            parsed.GetValue(local),
            TimeSpan.FromSeconds(parsed.GetValue(time)),
            parsed.GetValue(format) == "json",
            terminal,
            stop));
        return verb;
    }

    private static async Task<int> Visit(
        string path, string? output, string? local, TimeSpan time, bool asJson, Terminal terminal, CancellationToken stop)
    {
        if (!TryBase(local, out var at))
        {
            terminal.Say($"“{local}” is no address that can be asked. Write one such as http://localhost:8000/.");
            return ExitCode.WrongUsage;
        }

        var (plan, why) = VisitPlan.Of(path, output ?? PublishedFolder(path), at);
        if (plan is null)
        {
            terminal.Say(why);
            return ExitCode.WrongUsage;
        }

        using var progress = new Progress(terminal);
        var report = await SiteVisit.Run(plan, new() { Time = time }, progress.Say, stop).ConfigureAwait(false);
        progress.Clear();
        terminal.Out.Write(asJson ? VisitJson.Write(report) : VisitText.Write(report));
        return report switch
        {
            { Ended: not null } => ExitCode.MachineFailed,
            { Faults.IsEmpty: false } => ExitCode.BookHasErrors,
            _ => ExitCode.Fine,
        };
    }

    // Of a book on a shelf the last publish lies with the shelf.
    private static string PublishedFolder(string path)
    {
        var own = Path.Combine(path, "published");
        var full = Path.GetFullPath(path);
        var onShelf = Path.Combine(full, "..", "published", "books", Path.GetFileName(Path.TrimEndingDirectorySeparator(full)));
        return !Directory.Exists(own) && Directory.Exists(onShelf) ? onShelf : own;
    }

    private static bool TryBase(string? text, out Uri? at)
    {
        at = null;
        if (text is null)
            return true;
        if (!Uri.TryCreate(text, UriKind.Absolute, out var uri) || (uri.Scheme != Uri.UriSchemeHttp && uri.Scheme != Uri.UriSchemeHttps))
            return false;
        at = new Uri(uri.GetLeftPart(UriPartial.Path) is var whole && whole.EndsWith('/') ? whole : whole + "/");
        return true;
    }
}
