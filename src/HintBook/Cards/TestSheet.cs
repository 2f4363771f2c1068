using System.Globalization;
using HintBook.Cards.Typesetting;

namespace HintBook.Cards;

/// <summary>
/// A sheet of two sides that tells what a printer does: a square of 100 mm and rulers to measure, and scales on which, against the light, the offset of the
/// backs is read off: a cross on the front, and on the back two scales of ±10 mm around where it should meet, with the entry of
/// <c>book.yaml</c> that the two numbers go into.
/// </summary>
internal static class TestSheet
{
    private const double Edge = 8;
    private const double Side = 100;
    private const double Most = 10;
    private const double Text = 3;

    public static IEnumerable<PrintedPage> Layout(CardSheet sheet)
    {
        var (page, x, y) = (sheet.Page, sheet.Page.Width / 2, sheet.Page.Height / 2);
        Rect square = new(x - (Side / 2), y - (Side / 2), Side, Side);
        yield return new(page, [.. Rulers(page), .. Square(square), .. Cross(x, y, Most), Label(x + 2, square.Bottom - 2, "100 mm")]);
        yield return new(page,
        [
            .. Scales(x, y), Label(x + Most + 2, y + 1, "+x"), Label(x + 2, y + Most + 4, "+y"), Label(x + 2, y + Most + 10, "print: { offset: [ x, y ] }"),
        ]);
    }

    private static PrintedText Label(double x, double baseline, string text) => new(x, baseline, text, Typeface.Regular, Text, Tone.Ink);

    private static IEnumerable<Printed> Square(Rect at) =>
    [
        new PrintedStroke([(at.X, at.Y), (at.Right, at.Y), (at.Right, at.Bottom), (at.X, at.Bottom), (at.X, at.Y)], PrintedLine.Thickness, Tone.Ink),
    ];

    private static IEnumerable<Printed> Cross(double x, double y, double arm) =>
        [new PrintedLine(x - arm, y, x + arm, y, Tone.Ink), new PrintedLine(x, y - arm, x, y + arm, Tone.Ink)];

    // Along the upper and the left edge: a tick each millimetre, a longer one each five, the longest each ten with its number.
    private static IEnumerable<Printed> Rulers(Size page)
    {
        for (var at = 0; at <= page.Width - (2 * Edge); at++)
        {
            yield return new PrintedLine(Edge + at, Edge, Edge + at, Edge + Tick(at), Tone.Ink);
            if (at % 10 == 0 && at > 0)
                yield return Label(Edge + at + 0.4, Edge + 8, at.ToString(CultureInfo.InvariantCulture));
        }

        for (var at = 0; at <= page.Height - (2 * Edge); at++)
        {
            yield return new PrintedLine(Edge, Edge + at, Edge + Tick(at), Edge + at, Tone.Ink);
            if (at % 10 == 0 && at > 0)
                yield return Label(Edge + 6, Edge + at + 1, at.ToString(CultureInfo.InvariantCulture));
        }
    }

    private static double Tick(int at) => at % 10 == 0 ? 5 : at % 5 == 0 ? 3.5 : 2;

    private static IEnumerable<Printed> Scales(double x, double y)
    {
        yield return new PrintedLine(x - Most, y, x + Most, y, Tone.Ink);
        yield return new PrintedLine(x, y - Most, x, y + Most, Tone.Ink);
        for (var half = -20; half <= 20; half++)
        {
            var (at, length) = (half / 2.0, half % 10 == 0 ? 3 : half % 2 == 0 ? 2 : 1.0);
            yield return new PrintedLine(x + at, y - length, x + at, y, Tone.Ink);
            yield return new PrintedLine(x, y + at, x + length, y + at, Tone.Ink);
        }
    }
}
