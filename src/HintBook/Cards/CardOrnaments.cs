namespace HintBook.Cards;

/// <summary>What is drawn around the words of a card: a ground over the bleed, and lines. Straight stretches only, which the reader of cards knows.</summary>
internal static class CardOrnaments
{
    /// <summary>How far frames stand from the cut, in millimetres: a cutter is off by less.</summary>
    public const double Inset = 2.4;

    private const double Bleed = Imposition.Bleed;
    private const double Square = 4;
    private const int Sides = 28;

    /// <summary>The ground of a front and what is drawn on it.</summary>
    public static IEnumerable<Printed> Front(CardLook look, Size card)
    {
        yield return new PrintedBox(new(-Bleed, -Bleed, card.Width + (2 * Bleed), card.Height + (2 * Bleed)), Tone.Ground);
        switch (look.Ornament)
        {
            case Ornament.Keyhole:
                foreach (var line in Border(look, card, Inset))
                    yield return line;
                break;
            case Ornament.Drawing:
                foreach (var line in Grid(-Bleed, card.Width + Bleed, card.Height))
                    yield return line;
                foreach (var line in Border(look, card, Inset))
                    yield return line;
                break;
            default:
                yield return new PrintedBox(new(-Bleed, -Bleed, card.Width + (2 * Bleed), Bleed + 1.8), Tone.Accent);
                break;
        }
    }

    /// <summary>The border of a paper that belongs to the cards, without their ground: printers at home reach neither its edge nor beyond.</summary>
    /// <param name="look">The theme's look.</param>
    /// <param name="page">The paper.</param>
    /// <param name="inset">How far the border stands from its edges, in millimetres.</param>
    public static IEnumerable<Printed> Border(CardLook look, Size page, double inset) => look.Ornament switch
    {
        Ornament.Keyhole => [Frame(page, inset, 0.35, notch: 2.2), Frame(page, inset + 0.8, 0.12, notch: 2.2)],
        Ornament.Drawing => [Frame(page, inset, 0.35, notch: 0)],
        _ => [new PrintedBox(new(inset, inset, page.Width - (2 * inset), 1.2), Tone.Accent)],
    };

    /// <summary>The ground beside the code and what is drawn on it.</summary>
    /// <param name="look">The theme's look.</param>
    /// <param name="card">The card.</param>
    /// <param name="left">Where the ground begins; it runs off the other three edges.</param>
    public static IEnumerable<Printed> Back(CardLook look, Size card, double left)
    {
        yield return new PrintedBox(new(left, -Bleed, card.Width + Bleed - left, card.Height + (2 * Bleed)), Tone.Panel);
        switch (look.Ornament)
        {
            case Ornament.Keyhole:
                yield return new PrintedStroke([(left + 0.9, -Bleed), (left + 0.9, card.Height + Bleed)], 0.35, Tone.Frame);
                yield return new PrintedStroke([(left + 1.7, -Bleed), (left + 1.7, card.Height + Bleed)], 0.12, Tone.Frame);
                break;
            case Ornament.Drawing:
                foreach (var line in Grid(left, card.Width + Bleed, card.Height).Select(line => line with { Tone = Tone.Faint }))
                    yield return line;
                yield return new PrintedStroke([(left, -Bleed), (left, card.Height + Bleed)], 0.35, Tone.Accent);
                break;
            default:
                yield return new PrintedBox(new(left, -Bleed, 0.9, card.Height + (2 * Bleed)), Tone.Accent);
                break;
        }
    }

    /// <summary>The theme's emblem in a square; nothing for a theme without ornament.</summary>
    public static IEnumerable<Printed> Emblem(CardLook look, double x, double y, double side)
    {
        var (middle, unit) = (x + (side / 2), side / 18);
        switch (look.Ornament)
        {
            // A keyhole: a disc over a skirt.
            case Ornament.Keyhole:
                yield return new PrintedShape([.. PrintersMarks.Circle(middle, y + (5 * unit), 5 * unit, Sides)], Tone.Accent);
                yield return new PrintedShape(
                    [
                        (middle - (2.2 * unit), y + (8 * unit)), (middle + (2.2 * unit), y + (8 * unit)),
                        (middle + (4 * unit), y + side), (middle - (4 * unit), y + side),
                    ],
                    Tone.Accent);
                break;

            // A circle with its centre lines, as on a drawing.
            case Ornament.Drawing:
                yield return new PrintedStroke([.. PrintersMarks.Circle(middle, y + (side / 2), side * 0.36, Sides)], 0.3, Tone.Accent);
                yield return new PrintedStroke([(x, y + (side / 2)), (x + side, y + (side / 2))], 0.15, Tone.Accent);
                yield return new PrintedStroke([(middle, y), (middle, y + side)], 0.15, Tone.Accent);
                break;
        }
    }

    // Cut corners at the notch, so that the frame reads as drawn and not as a box.
    private static PrintedStroke Frame(Size card, double inset, double thickness, double notch)
    {
        var (left, top, right, bottom) = (inset, inset, card.Width - inset, card.Height - inset);
        (double, double)[] corners = notch == 0
            ? [(left, top), (right, top), (right, bottom), (left, bottom), (left, top)]
            :
            [
                .. Bow(left, top, notch, 1, 1), .. Bow(right, top, notch, -1, 1).Reverse(),
                .. Bow(right, bottom, notch, -1, -1), .. Bow(left, bottom, notch, 1, -1).Reverse(), (left, top + notch),
            ];
        return new([.. corners], thickness, notch == 0 ? Tone.Accent : Tone.Frame);
    }

    // A quarter of a circle around a corner, from the upright side to the level one.
    private static IEnumerable<(double, double)> Bow(double x, double y, double radius, int right, int down) =>
        Enumerable.Range(0, 9).Select(i => Math.SinCos(i * Math.PI / 16)).Select(at => (x + (right * radius * at.Sin), y + (down * radius * at.Cos)));

    private static IEnumerable<PrintedStroke> Grid(double left, double right, double height)
    {
        for (var x = Math.Ceiling(left / Square) * Square; x < right; x += Square)
            yield return new([(x, -Bleed), (x, height + Bleed)], 0.1, Tone.Faint);
        for (var y = Math.Ceiling(-Bleed / Square) * Square; y < height + Bleed; y += Square)
            yield return new([(left, y), (right, y)], 0.1, Tone.Faint);
    }
}
