using System.Collections.Immutable;
using System.Globalization;
using HintBook.Cards;
using HintBook.Cards.Typesetting;
using HintBook.Print.Flow;

namespace HintBook.Print.Papers;

/// <summary>What stands at the foot of every page.</summary>
internal static class Furniture
{
    // The baseline of the foot above the page's lower edge, in millimetres, clear of what printers can't reach.
    private const double FromBelow = 8;
    private const double Size = 2.5;

    /// <summary>The pages with a line and their number.</summary>
    /// <param name="pages">The pages, in order.</param>
    /// <param name="line">What stands at the left.</param>
    public static ImmutableArray<PaperPage> Numbered(ImmutableArray<PaperPage> pages, string line) =>
        [.. pages.Select((page, i) => page with { Furniture = Foot(page.Frame, line, $"{(i + 1).ToString(CultureInfo.InvariantCulture)} / {pages.Length}") })];

    private static ImmutableArray<Printed> Foot(PageFrame frame, string line, string number)
    {
        var baseline = frame.Page.Height - FromBelow;
        var room = frame.Text.Width - Letters.Width(number, Typeface.Regular, Size) - 4;
        var words = Paragraph.Fit(Letters.Printable(line).Text, Typeface.Regular, room, [(Size, 1)]).Lines;
        return
        [
            .. words.Select(text => new PrintedText(
                frame.Text.X, baseline, text, Typeface.Regular, Size, Tone.Quiet, RightToLeft: BidiLevels.RightToLeft(text))),
            new PrintedText(frame.Text.Right, baseline, number, Typeface.Regular, Size, Tone.Quiet, FromRight: true),
        ];
    }
}
