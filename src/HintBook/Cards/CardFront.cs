using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Cards.Typesetting;

namespace HintBook.Cards;

/// <summary>The front of every card: what anyone sees on the closed box.</summary>
/// <param name="Things">Placed from the card's own top left corner.</param>
/// <param name="TitleCut">Whether the title had to be cut.</param>
/// <param name="CautionsLeftOut">How many cautions had no room.</param>
internal sealed record CardFront(ImmutableArray<Printed> Things, bool TitleCut, int CautionsLeftOut)
{
    private const double Left = 12;
    private const double Top = 7.5;
    private const double Width = 66;
    private const double CautionsBottom = 49;
    private const double SignSide = 4.6;
    private const double CautionLeft = Left + SignSide + 2.4;
    private const double CautionWidth = Left + Width - CautionLeft;

    // The part of an em that stands above the baseline, so that a first line's letters begin where its block does.
    private const double Ascent = 0.78;

    // Ems in millimetres: 0.353 mm to the point, so titles from 18 to 8 points and cautions in 7.
    private static readonly (double, int)[] TitleSizes = [(6.4, 1), (5.6, 2), (4.9, 2), (4.2, 3), (3.5, 3), (2.8, 4)];
    private static readonly (double, int)[] MakerSizes = [(3.0, 1), (2.5, 1), (2.2, 2)];
    private const double CautionSize = 2.45;
    private const double SmallSize = 2.0;

    // How far down the title and the maker may reach, and so how much the cautions have.
    private const double CautionsHeight = 24;

    // The most dangerous first: what kills a child within hours, what kills at once, what chokes, burns, cuts, strains.
    private static readonly ImmutableArray<CautionKind> ByDanger =
    [
        CautionKind.ButtonCell, CautionKind.Magnets, CautionKind.Mains, CautionKind.SmallParts, CautionKind.Battery,
        CautionKind.SharpEdge, CautionKind.Glass, CautionKind.FineDust, CautionKind.Heavy, CautionKind.Force,
    ];

    public static CardFront Of(Book book, CardWords words)
    {
        var title = Paragraph.Fit(Letters.Printable(book.Title.Value).Text, Typeface.SemiBold, Width, TitleSizes);
        var maker = book.Maker is { } who ? Paragraph.Fit(Letters.Printable(who.Name.Value).Text, Typeface.Regular, Width, MakerSizes) : null;
        var (cautions, leftOut) = Cautions(book.Cautions, words);
        var things = ImmutableArray.CreateBuilder<Printed>();
        things.Add(CardBack.BandAt(left: true));
        Put(things, title, Typeface.SemiBold, Tone.Ink, Left, Top);
        if (maker is not null)
            Put(things, maker, Typeface.Regular, Tone.Quiet, Left, Top + title.Height + 0.6);
        if (cautions.Length > 0)
            PutCautions(things, cautions, words);
        return new(things.ToImmutable(), !title.Whole, leftOut);
    }

    /// <summary>Adds the lines of a text, the first one's letters beginning at <paramref name="top"/>.</summary>
    public static void Put(ImmutableArray<Printed>.Builder things, SetText text, Typeface face, Tone tone, double left, double top)
    {
        for (var i = 0; i < text.Lines.Length; i++)
            things.Add(new PrintedText(left, top + (Ascent * text.Size) + (i * text.LineHeight), text.Lines[i], face, text.Size, tone));
    }

    private static void PutCautions(ImmutableArray<Printed>.Builder things, ImmutableArray<SetText> cautions, CardWords words)
    {
        var rules = Rules(words);
        var top = CautionsBottom - rules.Height - Gap - Height(cautions);
        things.Add(new PrintedSign(new(Left, top, SignSide, SignSide * 0.9)));
        foreach (var caution in cautions)
        {
            Put(things, caution, Typeface.Regular, Tone.Ink, CautionLeft, top + 0.3);
            top += caution.Height + Gap;
        }

        Put(things, rules, Typeface.Regular, Tone.Quiet, CautionLeft, top + 0.3);
    }

    private const double Gap = 0.5;

    private static double Height(ImmutableArray<SetText> cautions) => cautions.Sum(caution => caution.Height + Gap) - Gap;

    private static SetText Rules(CardWords words) =>
        Paragraph.Flow(Letters.Printable(words.LocalRules).Text, Typeface.Regular, SmallSize, CautionWidth);

    // With the author's notes if all fit so, else without them, else as many as there is room for.
    private static (ImmutableArray<SetText> Shown, int LeftOut) Cautions(ImmutableArray<Caution> cautions, CardWords words)
    {
        var room = CautionsHeight - Rules(words).Height - Gap;
        var ordered = cautions.OrderBy(caution => ByDanger.IndexOf(caution.Kind)).ToArray();
        var noted = Set(ordered.Select(caution => caution.Note is null ? words.For(caution.Kind) : $"{words.For(caution.Kind)} {caution.Note}"));
        if (Height(noted) <= room)
            return (noted, 0);

        var bare = Set(ordered.Select(caution => words.For(caution.Kind)).Distinct());
        if (Height(bare) <= room)
            return (bare, 0);

        var more = Set([words.MoreCautions]);
        var shown = bare.Length - 1;
        while (shown > 0 && Height([.. bare[..shown], .. more]) > room)
            shown--;
        return ([.. bare[..shown], .. more], bare.Length - shown);
    }

    private static ImmutableArray<SetText> Set(IEnumerable<string> texts) =>
        [.. texts.Select(text => Paragraph.Flow(Letters.Printable(text).Text, Typeface.Regular, CautionSize, CautionWidth))];
}
