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
    private const double Left = 10;
    private const double Top = 7.5;
    private const double Width = 69;
    private const double CautionsBottom = 49.5;
    private const double SignSide = 4.4;
    private const double CautionLeft = Left + SignSide + 2.2;
    private const double CautionWidth = Left + Width - CautionLeft;

    // The part of an em that stands above the baseline, so that a first line's letters begin where its block does.
    private const double Ascent = 0.78;

    // Ems in millimetres: 0.353 mm to the point, so titles from 18 to 8 points and cautions from 7 to 6.
    private static readonly (double, int)[] TitleSizes = [(6.4, 1), (5.6, 1), (5.0, 1), (5.6, 2), (4.6, 2), (3.9, 3), (3.3, 3), (2.8, 4)];
    private static readonly (double, int)[] MakerSizes = [(3.0, 1), (2.5, 1), (2.2, 2)];
    private static readonly (double, int)[] RulesSizes = [(2.0, 3)];
    private static readonly (double, int)[] MoreSizes = [(2.1, 2)];
    private const double Gap = 0.5;

    // Between the maker's name and the sign.
    private const double Air = 2.5;

    // The most dangerous first: what kills a child within hours, what kills at once, what chokes, burns, cuts, strains.
    private static readonly ImmutableArray<CautionKind> ByDanger =
    [
        CautionKind.ButtonCell, CautionKind.Magnets, CautionKind.Mains, CautionKind.SmallParts, CautionKind.Battery,
        CautionKind.SharpEdge, CautionKind.Glass, CautionKind.FineDust, CautionKind.Heavy, CautionKind.Force,
    ];

    // The title gives way to the cautions: it is set as large as leaves out the fewest of them.
    public static CardFront Layout(Book book, CardWords words) =>
        Enumerable.Range(0, TitleSizes.Length).Select(first => Layout(book, words, TitleSizes[first..])).MinBy(front => front.CautionsLeftOut)!;

    private static CardFront Layout(Book book, CardWords words, (double, int)[] titleSizes)
    {
        var title = Paragraph.Fit(Letters.Printable(book.Title.Value).Text, Typeface.SemiBold, Width, titleSizes);
        var maker = book.Maker is { } who ? Paragraph.Fit(Letters.Printable(who.Name.Value).Text, Typeface.Regular, Width, MakerSizes) : null;
        var makerTop = Top + title.Height + 0.6;
        var rules = RulesOf(words);
        var bottom = CautionsBottom - rules.Height - Gap;
        var (cautions, leftOut) = Cautions(book.Cautions, words, bottom - makerTop - (maker?.Height ?? 0) - Air);

        var things = ImmutableArray.CreateBuilder<Printed>();
        things.Add(CardBack.BandAt(left: true));
        Put(things, title, Typeface.SemiBold, Tone.Ink, Left, Top);
        if (maker is not null)
            Put(things, maker, Typeface.Regular, Tone.Quiet, Left, makerTop);
        if (cautions.Length > 0)
        {
            PutCautions(things, cautions, bottom - Height(cautions));
            Put(things, rules, Typeface.Regular, Tone.Quiet, CautionLeft, bottom + Gap);
        }

        return new(things.ToImmutable(), !title.Whole, leftOut);
    }

    /// <summary>The sentence under the cautions; not <see cref="SetText.Whole"/> where the card has no room for it.</summary>
    public static SetText RulesOf(CardWords words) =>
        Paragraph.Fit(Letters.Printable(words.LocalRules).Text, Typeface.Regular, CautionWidth, RulesSizes);

    /// <summary>What stands for the cautions that are left out; not <see cref="SetText.Whole"/> where the card has no room for it.</summary>
    public static SetText MoreOf(CardWords words) =>
        Paragraph.Fit(Letters.Printable(words.MoreCautions).Text, Typeface.Regular, CautionWidth, MoreSizes);

    /// <summary>Adds the lines of a text, the first one's letters beginning at <paramref name="top"/>.</summary>
    public static void Put(ImmutableArray<Printed>.Builder things, SetText text, Typeface face, Tone tone, double left, double top)
    {
        for (var i = 0; i < text.Lines.Length; i++)
            things.Add(new PrintedText(left, top + (Ascent * text.Size) + (i * text.LineHeight), text.Lines[i], face, text.Size, tone));
    }

    private static void PutCautions(ImmutableArray<Printed>.Builder things, ImmutableArray<SetText> cautions, double top)
    {
        things.Add(new PrintedSign(new(Left, top - 0.3, SignSide, SignSide * 0.9)));
        foreach (var caution in cautions)
        {
            Put(things, caution, Typeface.Regular, Tone.Ink, CautionLeft, top);
            top += caution.Height + Gap;
        }
    }

    private static double Height(ImmutableArray<SetText> cautions) => cautions.Sum(caution => caution.Height + Gap) - Gap;

    // One to a line with the author's notes if all fit so; else without the notes; else as one paragraph; else as many as
    // there is room for.
    private static (ImmutableArray<SetText> Shown, int LeftOut) Cautions(ImmutableArray<Caution> cautions, CardWords words, double room)
    {
        var ordered = cautions.OrderBy(caution => ByDanger.IndexOf(caution.Kind)).ToArray();
        var noted = ordered.Select(caution => caution.Note is null ? words.Cautions[caution.Kind] : $"{words.Cautions[caution.Kind]} {caution.Note}").ToArray();
        var bare = ordered.Select(caution => words.Cautions[caution.Kind]).Distinct().ToArray();
        ImmutableArray<SetText>[] ways =
        [
            [.. noted.Select(text => Set(text, 2.6))],
            [.. noted.Select(text => Set(text, 2.3))],
            [.. bare.Select(text => Set(text, 2.45))],
            [Set(string.Join(' ', bare), 2.3)],
            [Set(string.Join(' ', bare), 2.1)],
        ];
        if (Array.Find(ways, way => Height(way) <= room) is { IsDefault: false } shown)
            return (shown, 0);

        var kept = bare.Length - 1;
        while (kept > 0 && Set(Some(kept), 2.1).Height > room)
            kept--;
        return ([kept == 0 ? MoreOf(words) : Set(Some(kept), 2.1)], bare.Length - kept);

        string Some(int count) => string.Join(' ', [.. bare[..count], words.MoreCautions]);
    }

    private static SetText Set(string text, double size) =>
        Paragraph.Flow(Letters.Printable(text).Text, Typeface.Regular, size, CautionWidth);
}
