using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Cards.Codes;
using HintBook.Cards.Kept;
using HintBook.Cards.ReadingBack;
using HintBook.Print.Flow;
using HintBook.Text;

namespace HintBook.Print;

/// <summary>How many codes of papers were read from the pixels of the finished files and said what they should.</summary>
/// <param name="Codes">How many there are.</param>
/// <param name="Read">How many were read.</param>
/// <param name="Kept">How many of these weren't read now but in an earlier run, from the same bytes.</param>
/// <param name="Figures">What was measured on them; null where there are none.</param>
public sealed record PaperReadBack(int Codes, int Read, int Kept, CodeFigures? Figures)
{
    /// <summary>No codes.</summary>
    public static PaperReadBack None { get; } = new(0, 0, 0, null);

    /// <summary>Those of several files.</summary>
    public static PaperReadBack Of(IEnumerable<PaperReadBack> several) => several.Aggregate(None, (all, one) => new(
        all.Codes + one.Codes,
        all.Read + one.Read,
        all.Kept + one.Kept,
        CodeFigures.Worst(new[] { all.Figures, one.Figures }.OfType<CodeFigures>())));
}

/// <summary>Reads the codes on papers back as those of cards are: their pages are turned into pixels, with all that is painted beside them.</summary>
internal static class PaperCodes
{
    /// <summary>Whether a page has a code.</summary>
    public static bool AreOn(IEnumerable<PaperPage> pages) => pages.Any(page => On(page).Any());

    /// <summary>Reads all codes of a file.</summary>
    /// <param name="book">The book.</param>
    /// <param name="file">The file's name.</param>
    /// <param name="pdf">The finished file.</param>
    /// <param name="pages">What was drawn in it.</param>
    /// <param name="kept">What earlier runs read.</param>
    /// <param name="work">Counts what is read.</param>
    public static (PaperReadBack Counts, ImmutableArray<Finding> Findings) Read(
        Book book, string file, byte[] pdf, ImmutableArray<PaperPage> pages, KeptWork kept, WorkLog? work)
    {
        var coded = pages.Select((page, number) => (Number: number, Codes: On(page).ToArray())).Where(page => page.Codes.Length > 0).ToArray();
        var read = new Readings(kept).Pages(
            pdf,
            [.. coded.Select(page => new CodedPage(page.Number, OnHead: false, [.. page.Codes.Select(code => code.Place)]))],
            (page, code) => work?.Did(Work.DecodePaper, $"{file} {coded[page].Number} {code}"));
        var judged = coded.Zip(read)
            .SelectMany(page => page.First.Codes.Zip(page.Second, (code, found) => (Found: found, Finding: Judge(file, page.First.Number, code.Says, found))))
            .ToArray();
        return (
            new(
                judged.Length,
                judged.Count(code => code.Finding is null),
                judged.Count(code => code.Finding is null && code.Found.IsKept),
                CodeFigures.Worst(judged.Select(code => code.Found.Figures).OfType<CodeFigures>())),
            [.. judged.Select(code => code.Finding).OfType<Finding>()]);

        Finding? Judge(string name, int page, string says, ReadCode found)
        {
            var at = book.Address?.At ?? book.Title.At;
            var where = $"{name}, page {page + 1}";
            // What opens sealed help is told to nobody.
            return found.Says is null ? CardFindings.PaperCannotBeRead(at, where)
                : found.Says == says ? null
                : CardFindings.PaperReadsAs(at, where, says.Split('#')[0], says.Contains('#', StringComparison.Ordinal) ? null : found.Says);
        }
    }

    private static IEnumerable<(Rect Place, string Says)> On(PaperPage page) =>
        from placed in page.Pieces
        where placed.Piece.Shows is not null
        from code in placed.Piece.Things.OfType<PrintedCode>()
        let quiet = QrMatrix.QuietZone * code.Module
        let side = code.Code.SizeWithQuietZone * code.Module
        select (new Rect(placed.X + code.X - quiet, placed.Y + code.Y - quiet, side, side), placed.Piece.Shows!);
}
