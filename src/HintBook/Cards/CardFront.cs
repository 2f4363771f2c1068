using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Cards.Typesetting;
using HintBook.Pages;

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
    private const double SignColumn = 4.4;
    private const double CautionLeft = Left + SignColumn + 2.2;
    private const double CautionWidth = Left + Width - CautionLeft;

    // The part of an em that stands above the baseline, so that a first line's letters begin where its block does.
    private const double Ascent = 0.78;

    // From there to the middle of its capitals, whose height is 0.73 of an em.
    private const double MiddleOfLetters = Ascent - (0.73 / 2);

    // Ems in millimetres: 0.353 mm to the point, so titles from 18 to 8 points and cautions from 7 to 6.
    private static readonly (double, int)[] TitleSizes = [(6.4, 1), (5.6, 1), (5.0, 1), (5.6, 2), (4.6, 2), (3.9, 3), (3.3, 3), (2.8, 4)];
    private static readonly (double, int)[] MakerSizes = [(3.0, 1), (2.5, 1), (2.2, 2)];
    private static readonly (double, int)[] RulesSizes = [(2.0, 3)];
    private static readonly (double, int)[] MoreSizes = [(2.1, 2)];
    private static readonly double[] TogetherSizes = [2.3, 2.1];
    private const double Gap = 0.5;

    // Between the maker's name and the sign.
    private const double Air = 2.5;

    // Small enough to stand at one line each, at every size of the letters.
    private const double SignSide = 3.2;
    private const double RowGap = 0.8;
    private const double RowHeight = SignSide + 0.7;

    // The most dangerous first: what kills a child within hours, what kills at once, what chokes, burns, harms eyes, cuts, strains.
    private static readonly ImmutableArray<CautionKind> ByDanger =
    [
        CautionKind.ButtonCell, CautionKind.Magnets, CautionKind.Mains, CautionKind.Cord, CautionKind.SmallParts, CautionKind.Allergen,
        CautionKind.Flame, CautionKind.Battery, CautionKind.BrightLight, CautionKind.Flashing, CautionKind.Liquid, CautionKind.Heat,
        CautionKind.Spring, CautionKind.Pinch, CautionKind.SharpEdge, CautionKind.Glass, CautionKind.Loud, CautionKind.FineDust,
        CautionKind.Heavy, CautionKind.Force,
    ];

    // The title gives way to the cautions: it is set as large as leaves out the fewest of them.
    public static CardFront Layout(Book book, CardWords words)
    {
        CautionKind? worst = book.Cautions.IsEmpty ? null : book.Cautions.Select(caution => caution.Kind).MinBy(ByDanger.IndexOf);
        words = words.For(book, worst);
        return Enumerable.Range(0, TitleSizes.Length).Select(first => Layout(book, words, TitleSizes[first..])).MinBy(front => front.CautionsLeftOut)!;
    }

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
        if (!cautions.Lines.IsEmpty)
        {
            PutCautions(things, cautions, bottom - cautions.Height);
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

    private static void PutCautions(ImmutableArray<Printed>.Builder things, SetCautions cautions, double top)
    {
        foreach (var (index, sign) in cautions.Row.Index())
            things.Add(new PrintedSign(new(CautionLeft + (index * (SignSide + RowGap)), top, SignSide, SignSide), sign));
        if (!cautions.Row.IsEmpty)
            top += RowHeight;
        foreach (var (text, sign) in cautions.Lines)
        {
            if (sign is not null)
                things.Add(new PrintedSign(new(Left + SignColumn - SignSide, top + (MiddleOfLetters * text.Size) - (SignSide / 2), SignSide, SignSide), sign));
            Put(things, text, Typeface.Regular, Tone.Ink, CautionLeft, top);
            top += text.Height + Gap;
        }
    }

    // One to a line with the author's notes if all fit so; else without the notes; else as one paragraph under a row of signs, or with the general one
    // beside it; else as many as there is room for.
    private static (SetCautions Shown, int LeftOut) Cautions(ImmutableArray<Caution> cautions, CardWords words, double room)
    {
        var ordered = cautions.OrderBy(caution => ByDanger.IndexOf(caution.Kind)).ToArray();
        var bare = ordered.DistinctBy(caution => words.Cautions[caution.Kind]).ToArray();
        string[] texts = [.. bare.Select(caution => words.Cautions[caution.Kind])];
        ImmutableArray<string> signs = [.. bare.Select(caution => caution.Kind).Distinct().Select(CautionSigns.Of)];
        SetCautions[] ways =
        [
            OneToALine(ordered, Noted, 2.6),
            OneToALine(ordered, Noted, 2.3),
            OneToALine(bare, caution => words.Cautions[caution.Kind], 2.45),
            .. TogetherSizes.Where(_ => Fits(signs)).Select(size => Together(null, signs, size)),
            .. TogetherSizes.Select(size => Together(CautionSigns.General, [], size)),
        ];
        if (Array.Find(ways, way => way.Height <= room) is { } shown)
            return (shown, 0);

        var kept = texts.Length - 1;
        while (kept > 0 && Set(Some(kept), 2.1).Height > room)
            kept--;
        return (new([(kept == 0 ? MoreOf(words) : Set(Some(kept), 2.1), CautionSigns.General)], []), texts.Length - kept);

        SetCautions Together(string? beside, ImmutableArray<string> row, double size) => new([(Set(string.Join(' ', texts), size), beside)], row);

        string Noted(Caution caution) => caution.Note is null ? words.Cautions[caution.Kind] : $"{words.Cautions[caution.Kind]} {caution.Note}";

        string Some(int count) => string.Join(' ', [.. texts[..count], words.MoreCautions]);
    }

    private static SetCautions OneToALine(Caution[] cautions, Func<Caution, string> says, double size) =>
        new([.. cautions.Select(caution => (Set(says(caution), size), (string?)CautionSigns.Of(caution.Kind)))], []);

    private static bool Fits(ImmutableArray<string> row) => (row.Length * (SignSide + RowGap)) - RowGap <= CautionWidth;

    private static SetText Set(string text, double size) =>
        Paragraph.Flow(Letters.Printable(text).Text, Typeface.Regular, size, CautionWidth);

    // What stands of the cautions: signs in a row, and texts below it, each with the sign beside its first line.
    private sealed record SetCautions(ImmutableArray<(SetText Text, string? Sign)> Lines, ImmutableArray<string> Row)
    {
        public double Height => (Row.IsEmpty ? 0 : RowHeight) + Lines.Sum(line => line.Text.Height + Gap) - Gap;
    }
}
