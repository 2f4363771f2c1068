using System.Text;
using HintBook.Text;

namespace HintBook.Publishing.Visits;

/// <summary>Compares what a host answered with what was published.</summary>
internal static class FileCheck
{
    private const string UploadAgain = "Upload everything in “site” again, every name as it is written there, small letters and folders included.";

    // A browser doesn't take a worker from its cache for longer than a day either (W3C Service Workers, "Update").
    private static readonly TimeSpan KeptAtMost = TimeSpan.FromDays(1);

    /// <summary>Everything that is wrong with an answer; where nothing came, only that.</summary>
    public static IEnumerable<VisitFault> Faults(VisitedFile file, Answer answer)
    {
        var found = Redirects(file, answer).Concat(Missing(file, answer) is { } missing
            ? [missing]
            : Content(file, answer).Concat(Type(file, answer)).Concat(Keeping(file, answer)));
        return found.Select(fault => new VisitFault(file.Address, file.Card, fault.Message, fault.Help));
    }

    /// <summary>Whether an answer holds a published file, or its beginning.</summary>
    public static bool Holds(Answer answer, string file)
    {
        if (!File.Exists(file))
            return false;
        using var published = File.OpenRead(file);
        var content = new byte[answer.Content.Length];
        var read = published.ReadAtLeast(content, content.Length, throwOnEndOfStream: false);
        return content.AsSpan(0, read).SequenceEqual(answer.Content)
            && (answer.GoesOn ? answer.Length is null || answer.Length == published.Length : published.Length == read);
    }

    /// <summary>Whether a page leads on by a refresh.</summary>
    public static bool Refreshes(Answer answer) =>
        Encoding.UTF8.GetString(answer.Content).Contains("http-equiv=\"refresh\"", StringComparison.OrdinalIgnoreCase);

    private static (string Message, string Help)? Missing(VisitedFile file, Answer answer) => answer switch
    {
        _ when !File.Exists(file.File) => ("It isn't in the last publish.", "Publish the book again, then upload the site."),
        { Failure: { } failure } => ($"It {failure}.", "Try the address in a browser. If that fails too, ask the host."),
        { Status: 401 or 403 } => ($"The host refuses it (status {answer.Status}).", "Tell the host that everybody may read these files, without a password."),
        { Status: 404 or 410 } => ($"It isn't there (status {answer.Status}).", UploadAgain),
        { Status: not (200 or 206) } => (
            $"The host answers with status {answer.Status}.", "Try again later. If it stays, tell the host this address and the status."),
        _ => null,
    };

    private static IEnumerable<(string Message, string Help)> Redirects(VisitedFile file, Answer answer)
    {
        if (answer.Redirects.FirstOrDefault(to => to.Fragment.Length > 0) is { } cut)
        {
            yield return (
                $"It is redirected to {cut}, and what stands behind “#” in the address is lost.",
                "Tell the host to redirect to an address without a “#”: a browser then keeps what stood there (RFC 9110, 10.2.2).");
        }

        if (file.Address.Scheme == Uri.UriSchemeHttps && answer.Redirects.FirstOrDefault(to => to.Scheme != Uri.UriSchemeHttps) is { } open)
            yield return ($"It is redirected to {open}, without https.", "Tell the host to redirect to addresses with https only.");
        if (answer.Redirects.Length > 0 && new Uri(answer.From, ".") is var folder && folder != new Uri(file.Address, "."))
        {
            yield return (
                $"It is redirected into another folder, {folder}, so the links on it lead elsewhere.",
                "If the site lives there now, write that as “address” in book.yaml; otherwise tell the host not to redirect.");
        }
    }

    private static IEnumerable<(string Message, string Help)> Content(VisitedFile file, Answer answer)
    {
        if (Holds(answer, file.File))
            yield break;
        yield return Refreshes(answer)
            ? ("Another page is there, which leads on by a refresh: what stands behind “#” in the address is lost.",
                "Tell the host to redirect with status 301 instead.")
            : ("What is there isn't what was published.",
                "Upload the site again. If the host changes files on the way (adds scripts, makes them smaller), have that switched off.");
    }

    private static IEnumerable<(string Message, string Help)> Type(VisitedFile file, Answer answer)
    {
        var right = MediaTypes.Of(file.Path);
        if (right.Length > 0 && !right.Contains(answer.Type))
        {
            yield return (
                $"The host calls it {answer.Type ?? "nothing"}, and browsers need {Words.List(right.Take(2), "or")}.",
                $"Tell the host to send {Path.GetExtension(file.Path)} files as “Content-Type: {right[0]}”.");
        }

        if (file.Path.EndsWith(".html", StringComparison.Ordinal) && answer.Charset is not (null or "utf-8" or "utf8"))
        {
            yield return (
                $"The host says that it is written in {answer.Charset}, and it is written in UTF-8: letters with accents come out wrong.",
                "Tell the host to send .html files as “Content-Type: text/html; charset=utf-8”.");
        }
    }

    // What carries its content's hash in its name may be kept for ever.
    private static IEnumerable<(string Message, string Help)> Keeping(VisitedFile file, Answer answer)
    {
        var changes = file.Path.EndsWith(".html", StringComparison.Ordinal) || !file.Path.Contains('/', StringComparison.Ordinal);
        if (changes && answer.KeptFor > KeptAtMost)
        {
            yield return (
                $"Browsers may keep it for {Days(answer.KeptFor.Value)} without asking: what you mend reaches nobody before.",
                $"Tell the host to send {Path.GetExtension(file.Path)} files with “Cache-Control: no-cache”.");
        }
    }

    private static string Days(TimeSpan time) => Words.Count((int)Math.Ceiling(Math.Min(time.TotalDays, 100_000)), "day");
}
