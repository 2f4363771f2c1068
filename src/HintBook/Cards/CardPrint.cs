using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Cards.Codes;
using HintBook.Cards.ReadingBack;
using HintBook.Cards.Typesetting;
using HintBook.Text;

namespace HintBook.Cards;

/// <summary>The cards of a book, ready to be written and printed.</summary>
/// <param name="Files">Relative to the print folder: <c>cards.pdf</c>, then <c>qr/box.svg</c>, <c>qr/box.png</c> and so on.</param>
/// <param name="ReadBack">What was read from these very files.</param>
public sealed record CardSet(ImmutableArray<MadeFile> Files, ReadBack ReadBack)
{
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
    /// <param name="work">Counts the codes that are decoded.</param>
    public static (CardSet Set, Findings Findings) Print(Book book, Addresses addresses, Paper paper, CardWords words, WorkLog? work = null)
    {
        if (addresses.Base is null)
            return (CardSet.None, Findings.Of([CardFindings.WithoutAddress(book.Title.At)]));

        var cards = CardList.Build(book, addresses);
        var front = CardFront.Layout(book, words);
        var findings = Findings.Of([.. Legibility.In(book, words), .. OverflowCheck.In(book, cards, front, paper, words)]);
        return findings.AnyError ? (CardSet.None, findings) : Print(book, cards, front, paper, words, findings, work);
    }

    /// <summary>Prints cards whose codes may be any: what they say is found out by reading them.</summary>
    internal static (CardSet Set, Findings Findings) Print(
        Book book, ImmutableArray<Card> cards, CardFront front, Paper paper, CardWords words, Findings findings, WorkLog? work = null)
    {
        var title = Letters.Printable(book.Title.Value).Text;
        ImmutableArray<PrintedPage> pages = [.. CardSheets.Layout(cards, front, paper, words), .. MakersSheet.Layout(cards, title, paper, words)];
        var pdf = StablePdf.Make(book.Title.Value, document =>
        {
            foreach (var page in pages)
                PdfDrawing.Add(document, page);
        });
        var pictures = cards.AsParallel().AsOrdered().Select(card => QrImages.Png(card.Code!, CardBack.ModuleOf(card.Code!))).ToImmutableArray();
        var (readBack, unread) = ReadBack.Run(book, cards, pictures, pdf, paper, work);
        return (new([new("cards.pdf", () => pdf), .. cards.SelectMany((card, i) => Pictures(card, pictures[i]))], readBack), findings.And(unread));
    }

    private static IEnumerable<MadeFile> Pictures(Card card, byte[] png) =>
    [
        new($"qr/{card.Name}.svg", () => QrImages.Svg(card.Code!, card.Says, CardBack.ModuleOf(card.Code!))),
        new($"qr/{card.Name}.png", () => png),
    ];
}
