using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Cards.Typesetting;

namespace HintBook.Cards;

/// <summary>The sheets of cards: a side of fronts, then the same sheet's side of backs, and so on.</summary>
internal static class CardSheets
{
    // Below all else on both sides of a card, clear of the cut.
    private const double ProofLeft = 10;
    private const double ProofWidth = 65;
    private const double ProofBaseline = 51.8;

    private static readonly (double, int)[] ProofSizes = [(2.3, 1), (2.0, 1), (1.7, 1)];

    public static IEnumerable<PrintedPage> Layout(ImmutableArray<Card> cards, CardFront front, Paper paper, CardWords words)
    {
        foreach (var sheet in cards.Chunk(Imposition.PerSheet))
        {
            yield return Side(paper, sheet.Select((card, slot) => (Imposition.Front(paper, slot), front.Things.Concat(ProofOn(card, words)))));
            yield return Side(
                paper,
                sheet.Select((card, slot) => (Imposition.Back(paper, slot), CardBack.Layout(card, card.Code!, words).Concat(ProofOn(card, words)))));
        }
    }

    /// <summary>The page of a sheet's backs; sheets and pages are counted from 0.</summary>
    public static int PageOfBacks(int sheet) => (2 * sheet) + 1;

    /// <summary>What stands on a proof; not <see cref="SetText.Whole"/> where the card has no room for it.</summary>
    public static SetText ProofOf(CardWords words) => Paragraph.Fit(Letters.Printable(words.Proof).Text, Typeface.SemiBold, ProofWidth, ProofSizes);

    /// <summary>What is added to both sides of a card whose address can lead nowhere, lest it be taken for one that does.</summary>
    public static IEnumerable<Printed> ProofOn(Card card, CardWords words) => ExampleHosts.IsExample(card.Address) && ProofOf(words) is var proof
        ? proof.Lines.Select(line => new PrintedText(ProofLeft, ProofBaseline, line, Typeface.SemiBold, proof.Size, Tone.Warning))
        : [];

    private static PrintedPage Side(Paper paper, IEnumerable<(Rect Place, IEnumerable<Printed> Things)> faces) =>
        new(Size.Of(paper), [.. Imposition.CropMarks(paper), .. faces.SelectMany(face => face.Things.Select(thing => Moved(thing, face.Place)))]);

    private static Printed Moved(Printed thing, Rect by) => thing switch
    {
        PrintedText text => text with { X = text.X + by.X, Baseline = text.Baseline + by.Y },
        PrintedBox box => box with { Place = Moved(box.Place, by) },
        PrintedSign sign => sign with { Place = Moved(sign.Place, by) },
        PrintedCode code => code with { X = code.X + by.X, Y = code.Y + by.Y },
        PrintedLine line => line with { X1 = line.X1 + by.X, Y1 = line.Y1 + by.Y, X2 = line.X2 + by.X, Y2 = line.Y2 + by.Y },
        _ => thing,
    };

    private static Rect Moved(Rect place, Rect by) => place with { X = place.X + by.X, Y = place.Y + by.Y };
}
