using System.Collections.Immutable;
using HintBook.Cards.Typesetting;

namespace HintBook.Cards;

/// <summary>The sheets of cards: a side of fronts, then the same sheet's side of backs, and so on.</summary>
internal static class CardSheets
{
    private static readonly (double, int)[] ProofSizes = [(2.5, 1), (2.3, 2), (2.15, 2)];

    public static IEnumerable<PrintedPage> Layout(ImmutableArray<Card> cards, CardFront front, CardSheet sheet, CardWords words, CardLook look)
    {
        foreach (var some in cards.Chunk(sheet.PerSheet))
        {
            var fronts = some.Select((card, slot) => (sheet.Front(slot), front.Things.Concat(front.ScopeOf(card, words))));
            var backs = some.Select((card, slot) =>
                (sheet.Back(slot), Turned(CardBack.Layout(card, card.Code!, words, look, sheet.Card), sheet).AsEnumerable()));
            yield return Side(sheet, look, back: false, fronts);
            yield return Side(sheet, look, back: true, backs);
        }
    }

    /// <summary>The page of a sheet's backs; sheets and pages are counted from 0.</summary>
    public static int PageOfBacks(int sheet) => (2 * sheet) + 1;

    /// <summary>
    /// What stands on a proof, lest it be taken for a card that leads somewhere; not <see cref="SetText.Whole"/> where the card has no room for it.
    /// </summary>
    public static SetText ProofOf(CardWords words, double width = 27) =>
        Paragraph.Fit(Letters.Printable(words.Proof).Text, Typeface.SemiBold, width, ProofSizes) with { Spacing = 1.2 };

    // A sheet that is turned over a level edge puts its back's head behind its front's foot.
    private static ImmutableArray<Printed> Turned(ImmutableArray<Printed> back, CardSheet sheet) =>
        sheet.TurnsUpright ? back : [new PrintedTurned(new(0, 0, sheet.Card.Width, sheet.Card.Height), Turn.UpsideDown, back)];

    private static PrintedPage Side(CardSheet sheet, CardLook look, bool back, IEnumerable<(Rect Place, IEnumerable<Printed> Things)> faces) =>
        new(sheet.Page, [.. sheet.Marks(back), .. faces.SelectMany(face => face.Things.Select(thing => Moved(thing, face.Place)))])
        {
            Look = look,
            Bleed = sheet.ForShop ? Imposition.Bleed : null,
        };

    /// <summary>A thing that lies further right and down, by the left upper corner of a rectangle.</summary>
    internal static Printed Moved(Printed thing, Rect by) => thing switch
    {
        PrintedText text => text with { X = text.X + by.X, Baseline = text.Baseline + by.Y },
        PrintedBox box => box with { Place = Moved(box.Place, by) },
        PrintedSign sign => sign with { Place = Moved(sign.Place, by) },
        PrintedPicture picture => picture with { Place = Moved(picture.Place, by) },
        PrintedDrawing drawing => drawing with { Place = Moved(drawing.Place, by) },
        PrintedCode code => code with { X = code.X + by.X, Y = code.Y + by.Y },
        PrintedLine line => line with { X1 = line.X1 + by.X, Y1 = line.Y1 + by.Y, X2 = line.X2 + by.X, Y2 = line.Y2 + by.Y },
        PrintedStroke stroke => stroke with { Points = Moved(stroke.Points, by) },
        PrintedShape shape => shape with { Corners = Moved(shape.Corners, by) },
        PrintedTurned turned => turned with { Around = Moved(turned.Around, by), Things = [.. turned.Things.Select(each => Moved(each, by))] },
        _ => thing,
    };

    private static Rect Moved(Rect place, Rect by) => place with { X = place.X + by.X, Y = place.Y + by.Y };

    private static ImmutableArray<(double X, double Y)> Moved(ImmutableArray<(double X, double Y)> points, Rect by) =>
        [.. points.Select(point => (point.X + by.X, point.Y + by.Y))];
}
