using System.Collections.Immutable;

namespace HintBook.Cards;

/// <summary>The sheets of cards: a side of fronts, then the same sheet's side of backs, and so on.</summary>
internal static class CardSheets
{
    public static IEnumerable<PrintedPage> Layout(ImmutableArray<Card> cards, CardFront front, Paper paper, CardWords words)
    {
        foreach (var sheet in cards.Chunk(Imposition.PerSheet))
        {
            yield return Side(paper, sheet.Select((_, slot) => (Imposition.Front(paper, slot), front.Things)));
            yield return Side(paper, sheet.Select((card, slot) => (Imposition.Back(paper, slot), CardBack.Layout(card, card.Code!, words))));
        }
    }

    /// <summary>The page of a sheet's backs; sheets and pages are counted from 0.</summary>
    public static int PageOfBacks(int sheet) => (2 * sheet) + 1;

    private static PrintedPage Side(Paper paper, IEnumerable<(Rect Place, ImmutableArray<Printed> Things)> faces) =>
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
