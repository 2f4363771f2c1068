using System.Net;
using HintBook.Audit;

namespace HintBook.Tests.Audit.Elsewhere;

/// <summary>
/// How much of what sentences by people who haven't read the audit give away is found, and how much of what is found gives something away. The words
/// and rules were chosen with <c>tuning</c>; what lies in <c>held-out</c> is run once, before anyone reads it. The first runs are dated in
/// <c>Spoilers/Elsewhere/README.md</c>.
/// </summary>
public class SentencesTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData("tuning")]
    [InlineData("ours")]
    [InlineData("held-out")]
    public void Nearly_all_that_is_told_is_found_and_nearly_all_that_is_found_is_told(string half)
    {
        var books = BookOfSentences.Of(half);
        if (half == "held-out" && books.IsEmpty)
            Assert.Skip("The folder “held-out” is empty: nothing is measured on sentences that nobody has read.");
        Assert.NotEmpty(books);
        var tally = new Tally(output.WriteLine);
        foreach (var book in books)
            Count(book, tally);
        tally.Print(half);
        // Recall of all but what its author calls a riddle. Held out: what the last eight gave when they were first run; the aims are .93 and .97.
        // Of ours, the last books were written for the check of the source and not read here.
        // Nine books of “tuning” have innocent lines that were written to be taken for something else: without them its precision is .994.
        var (recall, precision, stopped) = half switch { "tuning" => (0.96, 0.988, 0), "ours" => (0.925, 0.977, 0), _ => (0.985, 0.99, 0) };
        Assert.True(tally.RecallOfSaid >= recall, $"recall {tally.RecallOfSaid:0.000}");
        Assert.True(tally.Precision >= precision, $"precision {tally.Precision:0.000}");
        Assert.InRange(tally.Stopped, 0, stopped);
    }

    // Each sentence stands on a page of its own, and one audit reads them all.
    private static void Count(BookOfSentences book, Tally tally)
    {
        using var site = Site.Good();
        foreach (var (number, (_, text, _)) in book.Sentences.Index())
            site.Write($"s{number}.html", Site.Page($"<p>{Html(text)}</p>"));
        var faults = SiteAudit.Run(site.Folder, book.Table).Faults.Where(fault => fault.Secret is not null).ToLookup(fault => fault.File);
        foreach (var (number, (told, text, isRiddle)) in book.Sentences.Index())
            tally.Count(told, [.. faults[$"s{number}.html"]], id => isRiddle && told.Contains(id) ? Tally.Riddle : KindOf(id), $"{book.Name}: {text}");

        string KindOf(string id) => book.Secrets.Single(secret => secret.Id == id).Kind;
    }

    private static string Html(string text) =>
        WebUtility.HtmlEncode(text).Replace("&lt;br&gt;", "<br>", StringComparison.Ordinal).Replace('⏎', '\n');
}
