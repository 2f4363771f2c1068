using System.CommandLine;
using System.Globalization;
using HintBook.Cards.ReadingBack;
using HintBook.Print;
using HintBook.Publishing;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary><c>cards BOOK</c>: makes the printed cards alone.</summary>
internal static class CardsVerb
{
    public static Command Make(Terminal terminal, CancellationToken stop) => PublishingVerb.Make(
        "cards",
        "Make the printed QR cards alone.",
        (book, options) => Pipeline.PrintCards(book, options, stop),
        report => $"Cards for “{TerminalText.Shown(report.Book)}”\n  {Told(report)}\n  checked  {PrintVerb.Audited(report)}\n",
        terminal);

    /// <summary>What the report says of the cards.</summary>
    public static string Told(Report report) => report.Cards.Cards == 0
        ? $"cards    none, since {(report.HasAddress ? "“make” under “print” in book.yaml doesn't name them" : "the book has no address")}"
        : $"cards    {Words.List([.. report.CardSheets.Select(file => Path.Combine(report.Folder, "print", file))])}: "
            + $"{Words.Count(report.Cards.Cards, "card")}; "
            + $"codes read back from the pictures: {report.Cards.FromPictures}, from the PDF: {report.Cards.FromPdf}"
            + Kept(report.Cards)
            + (report.Cards.Figures is { } figures ? $"\n           {Measured(figures)}" : "")
            + (report.CardsBeforePages > 0 ? $"\n           {Ahead(report.CardsBeforePages)}" : "")
            + (report.CardsAreProofs ? $"\n           {Proofs}" : "");

    private static string Kept(ReadBack cards) => cards is { KeptFromPictures: 0, KeptFromPdf: 0 }
        ? ""
        : $"\n           not read again, since an earlier run read the same bytes: {cards.KeptFromPictures} of the pictures, {cards.KeptFromPdf} of the PDF";

    /// <summary>What was read of the codes on papers; null where there are none.</summary>
    public static string? OnPapers(PaperReadBack codes) => codes.Codes == 0
        ? null
        : $"codes    on papers, read back from the PDF: {codes.Read} of {codes.Codes}"
            + (codes.Kept == 0 ? "" : $", of which an earlier run read {codes.Kept} from the same bytes")
            + (codes.Figures is { } figures ? $"\n           {Measured(figures)}" : "");

    private static string Measured(CodeFigures figures) => string.Create(
        CultureInfo.InvariantCulture,
        $"smallest square {Math.Floor(figures.Module * 100) / 100:0.00} mm, read from {Math.Floor(figures.Distance / 10):0} cm, ")
        + string.Create(
            CultureInfo.InvariantCulture,
            $"free edge around the code (quiet zone) {Math.Round(figures.QuietZone, 1):0.#} squares wide, contrast {figures.Contrast:0} to 1");

    private static string Ahead(int pages) =>
        $"publish before you hand them out: {Words.Count(pages, "card")} {(pages == 1 ? "leads" : "lead")} to no page of the site as it was published last";

    private const string Proofs = "proofs, since the address is one for examples: set “address” in book.yaml before you print for a box";
}
