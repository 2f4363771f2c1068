using System.CommandLine;
using HintBook.Publishing;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary><c>cards BOOK</c>: makes the printed cards alone.</summary>
internal static class CardsVerb
{
    public static Command Of(Terminal terminal, CancellationToken stop)
    {
        var book = Options.Book();
        var output = Options.Out("The output folder (default: `published` in the book).");
        var paper = Options.Paper();
        var notes = Options.Notes();
        var verb = new Command("cards", "Make the printed QR cards alone.") { book, output, paper, notes };
        verb.SetAction(parsed =>
        {
            using var progress = new Progress(terminal);
            var options = new PublishOptions
            {
                Output = parsed.GetValue(output),
                Paper = Options.PaperOf(parsed.GetValue(paper)!),
                Say = progress.Say,
            };
            var outcome = Pipeline.PrintCards(parsed.GetValue(book)!, options, stop);
            progress.Clear();
            return Ending.Of(outcome, parsed.GetValue(notes), terminal, report => $"Cards for “{report.Book}”\n  {Told(report)}\n");
        });
        return verb;
    }

    /// <summary>What the report says of the cards.</summary>
    public static string Told(Report report) => report.Cards.Cards == 0
        ? "cards    none, since the book has no address"
        : $"cards    {Path.Combine(report.Folder, "print", "cards.pdf")}: {Words.Count(report.Cards.Cards, "card")}; "
            + $"codes read back from the pictures: {report.Cards.FromPictures}, from the PDF: {report.Cards.FromPdf}";
}
