using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Cards.Codes;
using HintBook.Cards.Kept;
using HintBook.Cards.ReadingBack;
using HintBook.Cards.Typesetting;
using HintBook.Text;

namespace HintBook.Cards;

/// <summary>The cards of a book, ready to be written and printed.</summary>
/// <param name="Files">
/// Relative to the print folder: <c>cards.pdf</c>, <c>which-card.pdf</c> for the maker, <c>test-sheet.pdf</c>, then <c>qr/box.svg</c>,
/// <c>qr/box.png</c> and so on.
/// </param>
/// <param name="ReadBack">What was read from these very files.</param>
public sealed record CardSet(ImmutableArray<MadeFile> Files, ReadBack ReadBack)
{
    /// <summary>The files with the sheets.</summary>
    public ImmutableArray<string> Sheets { get; init; } = ["cards.pdf"];

    /// <summary>No cards.</summary>
    public static CardSet None { get; } = new([], new(0, 0, 0));
}

/// <summary>Makes the QR cards of a book and reads every code back.</summary>
public static class CardPrint
{
    /// <summary>
    /// Lays the cards out, draws them, and reads each code back from its picture and from the finished PDF with a reader
    /// that has nothing to do with the writer. With an error among the findings the files must not be written.
    /// </summary>
    /// <param name="book">The book.</param>
    /// <param name="addresses">Where its pages live; every stage of the book has a name there.</param>
    /// <param name="paper">The sheet to print on.</param>
    /// <param name="words">What the cards say besides the author's own words.</param>
    /// <param name="work">Counts what is made, and the codes that are decoded.</param>
    /// <param name="look">How the theme's cards look.</param>
    /// <param name="picture">The maker's mark or the box's photo; null for none.</param>
    /// <param name="kept">What earlier runs made and read; null where nothing was kept.</param>
    /// <param name="copies">The copies of a sealed book, each of which has cards of its own; empty where all have the same.</param>
    public static (CardSet Set, Findings Findings) Print(
        Book book,
        Addresses addresses,
        Paper paper,
        CardWords words,
        WorkLog? work = null,
        CardLook? look = null,
        CardPicture? picture = null,
        KeptWork? kept = null,
        ImmutableArray<CodedCopy> copies = default)
    {
        if (addresses.Base is null)
            return (CardSet.None, Findings.Of([CardFindings.WithoutAddress(book.Title.At)]));

        var cards = CardList.Build(book, addresses, copies.IsDefault ? [] : copies);
        var (sheet, wrongSize) = CardSheet.Of(book.Print, paper);
        look ??= CardLook.Plain;
        var front = CardFront.Layout(book, words, look, sheet.Card, picture);
        var findings = Findings.Of(
            [.. wrongSize is null ? [] : new[] { wrongSize }, .. Legibility.In(book, words), .. OverflowCheck.In(book, cards, front, sheet, look, words)]);
        return findings.AnyError ? (CardSet.None, findings) : Print(book, cards, front, sheet, look, paper, words, findings, work, kept);
    }

    /// <summary>Prints cards whose codes may be any: what they say is found out by reading them.</summary>
    internal static (CardSet Set, Findings Findings) Print(
        Book book,
        ImmutableArray<Card> cards,
        CardFront front,
        CardSheet sheet,
        CardLook look,
        Paper paper,
        CardWords words,
        Findings findings,
        WorkLog? work = null,
        KeptWork? kept = null)
    {
        kept ??= new();
        var title = Letters.Printable(book.Title.Value).Text;
        var pdf = Pdf("cards.pdf", CardSheets.Layout(cards, front, sheet, words, look));
        var whichCard = MakersSheet.Layout(cards, title, paper, words);
        var pictures = cards.AsParallel().AsOrdered().Select(Picture).ToImmutableArray();
        var (readBack, unread) = ReadBack.Run(book, cards, pictures, pdf, sheet, work, kept);
        ImmutableArray<MadeFile> files =
        [
            new("cards.pdf", () => pdf),
            .. whichCard.IsEmpty ? [] : new[] { new MadeFile("which-card.pdf", () => Pdf("which-card.pdf", whichCard)) },
            .. sheet.ForShop ? [] : new[] { new MadeFile("test-sheet.pdf", () => Pdf("test-sheet.pdf", TestSheet.Layout(sheet))) },
            .. cards.SelectMany((card, i) => Pictures(card, pictures[i], CardBack.ModuleOf(card.Code!, sheet.Card))),
        ];
        return (new(files, readBack), findings.And(unread));

        byte[] Pdf(string file, IEnumerable<PrintedPage> pages)
        {
            ImmutableArray<PrintedPage> all = [.. pages];
            return kept.Take(WorkKey.OfPdf(book.Title.Value, all), () =>
            {
                work?.Did(Work.MakePdf, file);
                return StablePdf.Make(book.Title.Value, document =>
                {
                    foreach (var page in all)
                        PdfDrawing.Add(document, page);
                });
            });
        }

        byte[] Picture(Card card)
        {
            var module = CardBack.ModuleOf(card.Code!, sheet.Card);
            return kept.Take(WorkKey.OfPicture(card.Code!, module), () =>
            {
                work?.Did(Work.MakePicture, card.Name);
                return QrImages.Png(card.Code!, module);
            });
        }
    }

    private static IEnumerable<MadeFile> Pictures(Card card, byte[] png, double module) =>
    [
        new($"qr/{card.File}.svg", () => QrImages.Svg(card.Code!, card.Says, module)),
        new($"qr/{card.File}.png", () => png),
    ];
}
