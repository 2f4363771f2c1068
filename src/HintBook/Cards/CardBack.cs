using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using HintBook.Books;
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

    /// <summary>How many drops the mark of a card has.</summary>
    public const int Drops = 8;

    // The code with its quiet zone keeps off the cut; what is visibly dark begins four modules further in.
    private const double CodeInset = 2.5;

    // What the words beside it need, and a side that phones read from half a metre.
    private const double BesideCode = 38;
    private const double LargestCode = 52;
    private const double Inset = 5;
    private const double ColumnInset = 4.2;

    private static readonly (double, int)[] HeadSizes = [(6.4, 1), (5.4, 1), (4.4, 2), (3.6, 2), (2.7, 2)];
    private static readonly (double, int)[] ScanSizes = [(2.6, 3), (2.4, 4), (2.15, 5)];
    private static readonly (double, int)[] AddressSizes = [(2.5, 3), (2.3, 4), (2.15, 5)];
    private static readonly (double, int)[] SecretSizes = [(2.3, 3), (2.15, 4)];
    private static readonly (double, int)[] NameSizes = [(2.3, 1), (2.1, 1)];

    /// <summary>The side of the code with its quiet zone, in millimetres.</summary>
    public static double SideOn(Size card) => Math.Min(Math.Min(card.Height - (2 * CodeInset), card.Width - BesideCode), LargestCode);

    /// <summary>The side of a code's modules on the card, in millimetres.</summary>
    public static double ModuleOf(QrMatrix code, Size? card = null) => SideOn(card ?? Imposition.Card) / code.SizeWithQuietZone;

    /// <summary>Where the code stands on a sheet, with its quiet zone.</summary>
    /// <param name="card">The card's place.</param>
    public static Rect CodeOn(Rect card)
    {
        var side = SideOn(new(card.Width, card.Height));
        return new(card.X + CodeInset, card.Y + ((card.Height - side) / 2), side, side);
    }

    /// <summary>The address in letters; not <see cref="SetText.Whole"/> where the card has no room for it.</summary>
    public static SetText AddressOf(string address, Size? card = null) =>
        Paragraph.FitAddress(Letters.Printable(address).Text, Typeface.SemiBold, ColumnOf(card ?? Imposition.Card).Width, AddressSizes) with { Spacing = 1.2 };

    /// <summary>
    /// The letters that open the help, in groups of four; null on a card that needs none, not <see cref="SetText.Whole"/> where there is no room.
    /// </summary>
    public static SetText? SecretOf(Card card, Size size) => card.Secret is not { } secret ? null : Paragraph.Fit(
        CodedCopy.Grouped(secret), Typeface.SemiBold, ColumnOf(size).Width, SecretSizes) with
    { Spacing = 1.2 };

    /// <summary>Whether all that belongs on a card with letters of its own stands on it; of other cards, that they have none.</summary>
    public static bool HasRoomFor(Card card, CardWords words, CardLook look, Size size) => SecretOf(card, size) is not { } secret
        || (secret.Whole && FootOf(card, ColumnOf(size)).Whole && TextsOf(card, words, look, size).Height <= ColumnOf(size).Height);

    /// <summary>The head beside the code; not <see cref="SetText.Whole"/> where the card has no room for it.</summary>
    public static SetText HeadOf(CardWords words, CardLook? look = null, Size? card = null) => Paragraph.Fit(
        Letters.Printable(words.Stuck).Text, (look ?? CardLook.Plain).Title, ColumnOf(card ?? Imposition.Card).Width, HeadSizes) with
    { Spacing = 1.1 };

    /// <summary>What to do with the code; not <see cref="SetText.Whole"/> where the card has no room for it.</summary>
    public static SetText ScanOf(CardWords words, Size? card = null) => Paragraph.Fit(
        Letters.Printable(words.Scan).Text, Typeface.Regular, ColumnOf(card ?? Imposition.Card).Width, ScanSizes) with
    { Spacing = 1.22 };

    /// <summary>Everything on a back, placed from the card's own top left corner.</summary>
    public static ImmutableArray<Printed> Layout(Card card, QrMatrix code, CardWords words, CardLook? look = null, Size? size = null)
    {
        var (style, whole) = (look ?? CardLook.Plain, size ?? Imposition.Card);
        var module = ModuleOf(code, whole);
        var square = CodeOn(new(0, 0, whole.Width, whole.Height));
        var quiet = QrMatrix.QuietZone * module;
        var column = ColumnOf(whole);
        var (head, scan, address, secret, height) = TextsOf(card, words, style, whole);
        var things = ImmutableArray.CreateBuilder<Printed>();
        things.AddRange(CardOrnaments.Back(style, whole, square.Right + 0.6));
        things.Add(new PrintedCode(square.X + quiet, square.Y + quiet, module, code));

        var y = column.Y;
        var emblem = style.Ornament == Ornament.Rule ? 0 : 7.0;
        if (column.Height - height >= emblem + 1.5 && emblem > 0)
        {
            things.AddRange(CardOrnaments.Emblem(style, head.RightToLeft ? column.Right - emblem : column.X, y, emblem));
            y += emblem + 1.5;
        }

        CardFront.Put(things, head, style.Title, Tone.Ink, column.X, y, column.Width);
        y += head.Height + 1;
        CardFront.Put(things, scan, Typeface.Regular, Tone.Ink, column.X, y, column.Width);
        y += scan.Height + 0.9;
        CardFront.Put(things, address, Typeface.SemiBold, Tone.Ink, column.X, y, column.Width, atRight: scan.RightToLeft);
        y += address.Height + 0.6;
        if (secret is not null)
        {
            CardFront.Put(things, secret, Typeface.SemiBold, Tone.Ink, column.X, y, column.Width, atRight: scan.RightToLeft);
            y += secret.Height + SecretGap;
        }

        if (ExampleHosts.IsExample(card.Address))
            CardFront.Put(things, CardSheets.ProofOf(words, column.Width), Typeface.SemiBold, Tone.Warning, column.X, y, column.Width);

        PutMark(things, card, column);
        return things.ToImmutable();
    }

    // As large as all of them fit, and their height with what stands between and below.
    private static (SetText Head, SetText Scan, SetText Address, SetText? Secret, double Height) TextsOf(
        Card card, CardWords words, CardLook look, Size size)
    {
        var column = ColumnOf(size);
        var (head, scan, address, secret) = (HeadOf(words, look, size), ScanOf(words, size), AddressOf(card.Address, size), SecretOf(card, size));
        for (var level = 1; level < ScanSizes.Length && Height() > column.Height; level++)
        {
            head = Set(words.Stuck, look.Title, column, HeadSizes[(2 * level)..]) with { Spacing = head.Spacing };
            scan = Set(words.Scan, Typeface.Regular, column, ScanSizes[level..]) with { Spacing = scan.Spacing };
            address = Paragraph.FitAddress(Letters.Printable(card.Address).Text, Typeface.SemiBold, column.Width, AddressSizes[level..]) with
            {
                Spacing = address.Spacing,
            };
        }

        return (head, scan, address, secret, Height());

        double Height() => head.Height + scan.Height + address.Height + (secret is null ? 0 : secret.Height + SecretGap) + 2.5 + MarkHeight
            + (ExampleHosts.IsExample(card.Address) ? CardSheets.ProofOf(words, column.Width).Height : 0);
    }

    /// <summary>
    /// Which drops of a card's mark are filled: bits of a digest of its name, so that two cards can be told apart at a glance and nobody learns anything.
    /// </summary>
    public static ImmutableArray<bool> MarkOf(string name)
    {
        var digest = SHA256.HashData(Encoding.UTF8.GetBytes($"hintbook mark\n{name}"))[0];
        return [.. Enumerable.Range(0, Drops).Select(bit => ((digest >> bit) & 1) == 1)];
    }

    private const double MarkHeight = 5.2;
    private const double SecretGap = 0.6;

    private static SetText Set(string text, Typeface face, Rect column, (double, int)[] sizes) =>
        Paragraph.Fit(Letters.Printable(text).Text, face, column.Width, sizes);

    // What tells the card from others: the name of its page, the serial of its copy.
    private static SetText FootOf(Card card, Rect column)
    {
        var serial = card.Copy is { } copy ? Letters.Printable(copy.Serial).Text : null;
        var text = card.Stage is null ? serial ?? "" : serial is null ? card.Name : $"{card.Name} · {serial}";
        return Paragraph.Fit(text, Typeface.Regular, column.Width, NameSizes);
    }

    // A row of lozenges at the foot, filled and hollow, over the card's name.
    private static void PutMark(ImmutableArray<Printed>.Builder things, Card card, Rect column)
    {
        if (card.Stage is null && card.Copy is null)
            return;
        const double half = 0.85, step = 2.5;
        var y = column.Bottom - 3.6;
        foreach (var (at, filled) in card.Stage is null ? [] : MarkOf(card.Name).Index())
        {
            var x = column.X + half + (at * step);
            ImmutableArray<(double, double)> lozenge = [(x, y - half), (x + half, y), (x, y + half), (x - half, y), (x, y - half)];
            things.Add(filled ? new PrintedShape(lozenge[..4], Tone.Accent) : new PrintedStroke(lozenge, 0.18, Tone.Accent));
        }

        var name = FootOf(card, column);
        CardFront.Put(things, name, Typeface.Regular, Tone.Quiet, column.X, column.Bottom - (CardCautions.Ascent * name.Size));
    }

    private static Rect ColumnOf(Size card)
    {
        var left = CodeOn(new(0, 0, card.Width, card.Height)).Right + 0.6 + ColumnInset - 0.8;
        return new(left, Inset, card.Width - left - 3.8, card.Height - (2 * Inset) + 0.8);
    }
}
