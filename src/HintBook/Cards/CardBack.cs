using System.Collections.Immutable;
using HintBook.Cards.Codes;
using HintBook.Cards.Typesetting;

namespace HintBook.Cards;

/// <summary>The back of a card: the code, the address in letters, and nothing of the stage.</summary>
internal static class CardBack
{
    /// <summary>
    /// The smallest side of a module that phones read well, in millimetres. Guides disagree (0.4 to 0.75 mm); ISO/IEC 18004
    /// leaves it to the application.
    /// </summary>
    public const double LeastModule = 0.4;

    // The code with its quiet zone; what is visibly dark begins four modules further in.
    private static readonly Rect CodeSquare = new(2.5, 2.5, 39, 39);

    private const double BandWidth = 3.5;
    private const double WordsLeft = 44;
    private const double WordsWidth = 34;
    private const double AddressLeft = 6;
    private const double AddressTop = 43.2;
    private const double AddressWidth = 72;

    private static readonly (double, int)[] HeadSizes = [(7.0, 1), (5.6, 1), (4.4, 2), (3.4, 2), (2.8, 3)];
    private static readonly (double, int)[] ScanSizes = [(2.9, 4), (2.5, 5), (2.1, 6)];
    private static readonly (double, int)[] AddressSizes = [(2.6, 1), (2.3, 1), (2.1, 1), (2.1, 2), (1.9, 3)];
    private static readonly (double, int)[] NameSizes = [(2.6, 1), (2.1, 1)];

    /// <summary>The side of a code's modules on the card, in millimetres.</summary>
    public static double ModuleOf(QrMatrix code) => CodeSquare.Width / code.SizeWithQuietZone;

    /// <summary>Where the code stands on a sheet, with its quiet zone.</summary>
    /// <param name="card">The card's place.</param>
    public static Rect CodeOn(Rect card) => CodeSquare with { X = card.X + CodeSquare.X, Y = card.Y + CodeSquare.Y };

    /// <summary>The address in letters; not <see cref="SetText.Whole"/> where the card has no room for it.</summary>
    public static SetText AddressOf(string address) =>
        Paragraph.Fit(Letters.Printable(address).Text, Typeface.Regular, AddressWidth, AddressSizes, Paragraph.AddressBreaks);

    /// <summary>The head beside the code; not <see cref="SetText.Whole"/> where the card has no room for it.</summary>
    public static SetText HeadOf(CardWords words) =>
        Paragraph.Fit(Letters.Printable(words.Stuck).Text, Typeface.SemiBold, WordsWidth, HeadSizes);

    /// <summary>What to do with the code; not <see cref="SetText.Whole"/> where the card has no room for it.</summary>
    public static SetText ScanOf(CardWords words) =>
        Paragraph.Fit(Letters.Printable(words.Scan).Text, Typeface.Regular, WordsWidth, ScanSizes);

    /// <summary>Everything on a back, placed from the card's own top left corner.</summary>
    public static ImmutableArray<Printed> Layout(Card card, QrMatrix code, CardWords words)
    {
        var module = ModuleOf(code);
        var quiet = QrMatrix.QuietZone * module;
        var (head, scan) = (HeadOf(words), ScanOf(words));

        var things = ImmutableArray.CreateBuilder<Printed>();
        things.Add(BandAt(left: false));
        things.Add(new PrintedCode(CodeSquare.X + quiet, CodeSquare.Y + quiet, module, code));
        CardFront.Put(things, head, Typeface.SemiBold, Tone.Ink, WordsLeft, CodeSquare.Y + quiet);
        CardFront.Put(things, scan, Typeface.Regular, Tone.Ink, WordsLeft, CodeSquare.Y + quiet + head.Height + 0.8);
        if (card.Stage is not null)
        {
            var name = Paragraph.Fit(card.Name, Typeface.SemiBold, WordsWidth, NameSizes);
            CardFront.Put(things, name, Typeface.SemiBold, Tone.Quiet, WordsLeft, CodeSquare.Bottom - quiet - name.Size);
        }

        CardFront.Put(things, AddressOf(card.Address), Typeface.Regular, Tone.Ink, AddressLeft, AddressTop);
        return things.ToImmutable();
    }

    /// <summary>The band of colour that runs off three edges: on the front at the left, and on the back behind it.</summary>
    public static PrintedBox BandAt(bool left)
    {
        var width = Imposition.Bleed + BandWidth;
        var x = left ? -Imposition.Bleed : Imposition.Card.Width - BandWidth;
        return new(new(x, -Imposition.Bleed, width, Imposition.Card.Height + (2 * Imposition.Bleed)), Tone.Band);
    }
}
