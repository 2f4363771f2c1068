using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Cards.Typesetting;
using HintBook.Pages;

namespace HintBook.Cards;

/// <summary>The cautions on a front, set.</summary>
/// <param name="Lines">Texts from the top, each with the sign beside its first line.</param>
/// <param name="Row">Signs in a row above them.</param>
/// <param name="LeftOut">How many cautions had no room.</param>
internal sealed record CardCautions(ImmutableArray<(SetText Text, string? Sign)> Lines, ImmutableArray<string> Row, int LeftOut)
{
    /// <summary>The sentence under them.</summary>
    public required SetText Rules { get; init; }

    /// <summary>Whether they have the room that was given.</summary>
    public bool Fits { get; private init; } = true;

    /// <summary>Whether each has a line and a sign of its own.</summary>
    public bool OnLinesOfTheirOwn { get; private init; }

    /// <summary>The part of an em that stands above the baseline, so that a first line's letters begin where its block does.</summary>
    public const double Ascent = 0.78;

    // 8 points, in millimetres.
    private const double Size = 2.83;
    private const double Leading = 1.16;
    private const double Gap = 0.45;

    // From the block's top to the middle of its capitals, whose height is 0.73 of an em.
    private const double MiddleOfLetters = Ascent - (0.73 / 2);
    private const double SignSide = 3.1;
    private const double SignColumn = SignSide + 1.5;
    private const double RowGap = 0.8;
    private const double RowHeight = SignSide + 0.7;

    // Where the cautions leave room for it, the sentence under them is as large as they are, or nearly so.
    private static readonly (double, int)[] LargeRulesSizes = [(Size, 1), (2.6, 1), (2.4, 1), (2.2, 1)];
    private static readonly (double, int)[] RulesSizes = [(2.0, 2), (1.9, 3)];
    private static readonly (double, int)[] MoreSizes = [(Size, 2)];

    // The most dangerous first: what kills a child within hours, what kills at once, what chokes, burns, harms eyes, cuts, strains.
    private static readonly ImmutableArray<CautionKind> ByDanger =
    [
        CautionKind.ButtonCell, CautionKind.Magnets, CautionKind.Mains, CautionKind.Cord, CautionKind.SmallParts, CautionKind.Allergen,
        CautionKind.Flame, CautionKind.Battery, CautionKind.BrightLight, CautionKind.Flashing, CautionKind.Liquid, CautionKind.Heat,
        CautionKind.Spring, CautionKind.Pinch, CautionKind.SharpEdge, CautionKind.Glass, CautionKind.Loud, CautionKind.FineDust,
        CautionKind.Heavy, CautionKind.Force,
    ];

    /// <summary>From the top of the signs to the end of the last line, in millimetres.</summary>
    public double Height => (Row.IsEmpty ? 0 : RowHeight) + Lines.Sum(line => line.Text.Height + Gap) - Gap;

    /// <summary>
    /// The dangers of a card, the worst first: those of the whole box, and those that bite without any hint though only a stage tells them. Of these
    /// the kind alone is said, for their notes may give the stage away.
    /// </summary>
    public static ImmutableArray<Caution> Of(Book book)
    {
        var told = book.Cautions.Select(caution => caution.Kind).ToHashSet();
        var bites = book.Stages.SelectMany(stage => stage.Cautions)
            .Where(caution => Cautions.BitesUnasked(caution.Kind) && told.Add(caution.Kind))
            .Select(caution => caution with { Note = null });
        return [.. book.Cautions.Concat(bites).OrderBy(caution => ByDanger.IndexOf(caution.Kind))];
    }

    /// <summary>The sentence that stands under the cautions.</summary>
    public static SetText RulesOf(CardWords words, double width) =>
        Paragraph.Fit(Letters.Printable(words.LocalRules).Text, Typeface.Regular, width - SignColumn, RulesSizes) with { Spacing = 1.2 };

    /// <summary>What stands for the cautions that are left out.</summary>
    public static SetText MoreOf(CardWords words, double width) =>
        Paragraph.Fit(Letters.Printable(words.MoreCautions).Text, Typeface.Regular, width - SignColumn, MoreSizes) with { Spacing = Leading };

    /// <summary>
    /// One to a line, with the author's notes as far as there is room, those of the worst dangers first; else as one paragraph under a row of signs;
    /// else as many as there is room for.
    /// </summary>
    /// <param name="dangers">The worst first.</param>
    /// <param name="words">What the card says of them.</param>
    /// <param name="width">The length of a line with its sign.</param>
    /// <param name="room">From the top of the signs to the end of the sentence under them.</param>
    public static CardCautions Set(ImmutableArray<Caution> dangers, CardWords words, double width, double room)
    {
        var rules = RulesOf(words, width);
        var set = Set(dangers, words, width, room - rules.Height - Gap, rules);
        var large = Paragraph.Fit(Letters.Printable(words.LocalRules).Text, Typeface.Regular, width - SignColumn, LargeRulesSizes) with { Spacing = 1.2 };
        return large.Whole && set.Height + Gap + large.Height <= room ? set with { Rules = large } : set;
    }

    private static CardCautions Set(ImmutableArray<Caution> dangers, CardWords words, double width, double room, SetText rules)
    {
        var lineWidth = width - SignColumn;
        var bare = dangers.DistinctBy(caution => words.Cautions[caution.Kind]).ToArray();
        var own = OneToALine(bare, _ => false);
        if (own.Height <= room)
            return WithNotes(own);

        string[] texts = [.. bare.Select(caution => words.Cautions[caution.Kind])];
        ImmutableArray<string> signs = [.. bare.Select(caution => caution.Kind).Distinct().Select(CautionSigns.Of)];
        var row = (signs.Length * (SignSide + RowGap)) - RowGap <= lineWidth;
        var paragraph = Flow(string.Join(' ', texts));
        var together = row
            ? new CardCautions([(paragraph, null)], signs, 0) { Rules = rules }
            : new([(paragraph, CautionSigns.General)], [], 0) { Rules = rules };
        if (together.Height <= room)
            return together;

        var kept = texts.Length - 1;
        while (kept > 0 && Flow(string.Join(' ', [.. texts[..kept], words.MoreCautions])).Height > room)
            kept--;
        var some = kept == 0 ? MoreOf(words, width) : Flow(string.Join(' ', [.. texts[..kept], words.MoreCautions]));
        return new([(some, CautionSigns.General)], [], texts.Length - kept) { Fits = some.Height <= room, Rules = rules };

        CardCautions WithNotes(CardCautions set)
        {
            var noted = new HashSet<Caution>();
            foreach (var caution in dangers.Where(caution => caution.Note is not null))
            {
                noted.Add(caution);
                var all = OneToALine([.. dangers.Where(each => noted.Contains(each) || bare.Contains(each))], noted.Contains);
                if (all.Height <= room)
                    set = all;
                else
                    noted.Remove(caution);
            }

            return set;
        }

        CardCautions OneToALine(Caution[] cautions, Func<Caution, bool> noted)
        {
            var lines = cautions.Select(caution => (Flow(Says(caution, noted(caution))), (string?)CautionSigns.Of(caution.Kind)));
            return new([.. lines], [], 0) { OnLinesOfTheirOwn = true, Rules = rules };
        }

        string Says(Caution caution, bool noted) => noted ? $"{words.Cautions[caution.Kind]} {caution.Note}" : words.Cautions[caution.Kind];

        SetText Flow(string text) => Paragraph.Flow(Letters.Printable(text).Text, Typeface.Regular, Size, lineWidth) with { Spacing = Leading };
    }

    /// <summary>Puts them and the sentence under them on a card.</summary>
    public static void Put(
        ImmutableArray<Printed>.Builder things, CardCautions cautions, CardWords words, CardLook look, double left, double width, double bottom)
    {
        var rules = cautions.Rules;
        var rightToLeft = rules.RightToLeft;
        var textLeft = rightToLeft ? left : left + SignColumn;
        var top = bottom - rules.Height - Gap - cautions.Height;
        var tone = rules.Size < LargeRulesSizes[^1].Item1 ? Tone.Quiet : Tone.Ink;
        CardFront.Put(things, rules, Typeface.Regular, tone, textLeft, bottom - rules.Height, width - SignColumn);
        if (look.Ornament != Ornament.Rule)
            things.Add(new PrintedStroke([(left, top - 1.1), (left + width, top - 1.1)], 0.15, Tone.Frame));
        foreach (var (index, sign) in cautions.Row.Index())
            things.Add(new PrintedSign(new(textLeft + (index * (SignSide + RowGap)), top, SignSide, SignSide), sign));
        if (!cautions.Row.IsEmpty)
            top += RowHeight;
        foreach (var (text, sign) in cautions.Lines)
        {
            var signLeft = rightToLeft ? left + width - SignSide : left;
            if (sign is not null)
                things.Add(new PrintedSign(new(signLeft, top + (MiddleOfLetters * text.Size) - (SignSide / 2), SignSide, SignSide), sign));
            CardFront.Put(things, text, Typeface.Regular, Tone.Ink, textLeft, top, width - SignColumn);
            top += text.Height + Gap;
        }
    }
}
