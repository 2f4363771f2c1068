using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Cards.Typesetting;

namespace HintBook.Cards;

/// <summary>The front of a card: what anyone sees on the closed box.</summary>
/// <param name="Things">Placed from the card's own top left corner; what says which help the card leads to is left out.</param>
/// <param name="TitleCut">Whether the title had to be cut.</param>
/// <param name="CautionsLeftOut">How many cautions had no room.</param>
/// <param name="Scope">Where it is said whether the card helps with the whole box or with one step.</param>
internal sealed record CardFront(ImmutableArray<Printed> Things, bool TitleCut, int CautionsLeftOut, CardFront.ScopeLine Scope)
{
    // How well it came out: first of all nothing lies over anything else, then all cautions are there, then each has a line of its own.
    private (bool Overlaps, int LeftOut, bool Crowded) faults;

    /// <summary>How far words stand from the cut, in millimetres.</summary>
    public const double Inset = 5.2;

    // 0.353 mm to the point: titles from 20 to 8 points, nothing but the law's line under 6.
    private static readonly (double, int)[] TitleSizes =
        [(7.2, 1), (6.4, 2), (5.6, 2), (5.0, 2), (4.4, 3), (3.7, 3), (3.3, 4), (2.85, 4)];

    private static readonly (double, int)[] MakerSizes = [(3.4, 1), (3.0, 1), (2.6, 1), (2.3, 2)];
    private static readonly (double, int)[] ScopeSizes = [(2.9, 1), (2.6, 1), (2.3, 2), (2.15, 3)];
    private static readonly (double, int)[] PromiseSizes = [(2.5, 1), (2.3, 2), (2.15, 3)];
    // The first of these sizes are a title's; at the others it is one line among others.
    private const int Large = 5;
    private static readonly bool[] WithFirst = [true, false];
    private static readonly bool[] WithoutFirst = [false];
    private const double TitleLeading = 1.1;
    private const double Bottom = 4.4;
    private const double Air = 1.2;

    /// <summary>The place of the line that says what the card helps with.</summary>
    /// <param name="Left">Its left end, or its right one.</param>
    /// <param name="Top">Where its letters begin.</param>
    /// <param name="Width">Its length.</param>
    public sealed record ScopeLine(double Left, double Top, double Width);

    private sealed record Way((double, int)[] Titles, bool Promise, bool Picture);

    /// <summary>
    /// Sets a front. Large titles, the promise and the picture give way to the cautions, in this order, and small titles only then.
    /// </summary>
    public static CardFront Layout(Book book, CardWords words, CardLook? look = null, Size? size = null, CardPicture? picture = null)
    {
        var dangers = CardCautions.Of(book);
        words = words.For(book, dangers.IsEmpty ? null : dangers[0].Kind);
        var ways =
            from titles in Enumerable.Range(0, TitleSizes.Length).Chunk(Large)
            from shown in picture is null ? WithoutFirst : WithFirst
            from promise in WithFirst
            from first in titles
            select new Way(TitleSizes[first..], promise, shown);
        CardFront? best = null;
        foreach (var way in ways)
        {
            var front = Layout(book, dangers, words, look ?? CardLook.Plain, size ?? Imposition.Card, way.Picture ? picture : null, way);
            if (best is null || front.faults.CompareTo(best.faults) < 0)
                best = front;
            if (best.faults == default)
                break;
        }

        return best!;
    }

    /// <summary>What the card helps with, for one card.</summary>
    public IEnumerable<Printed> ScopeOf(Card card, CardWords words)
    {
        var things = ImmutableArray.CreateBuilder<Printed>();
        Put(things, ScopeText(words, card.Stage is null, Scope.Width), Typeface.SemiBold, Tone.Accent, Scope.Left, Scope.Top, Scope.Width);
        return things;
    }

    /// <summary>The sentence under the cautions; not <see cref="SetText.Whole"/> where the card has no room for it.</summary>
    public static SetText RulesOf(CardWords words) => CardCautions.RulesOf(words, Imposition.Card.Width - (2 * Inset));

    /// <summary>What stands for the cautions that are left out; not <see cref="SetText.Whole"/> where the card has no room for it.</summary>
    public static SetText MoreOf(CardWords words) => CardCautions.MoreOf(words, Imposition.Card.Width - (2 * Inset));

    /// <summary>The promise; not <see cref="SetText.Whole"/> where the card has no room for it.</summary>
    public static SetText PromiseOf(CardWords words, double width = 50) =>
        Paragraph.Fit(Letters.Printable(words.Promise).Text, Typeface.Regular, width, PromiseSizes);

    /// <summary>What a card helps with; not <see cref="SetText.Whole"/> where the card has no room for it.</summary>
    public static SetText ScopeText(CardWords words, bool wholeBox, double width = 50) =>
        Paragraph.Fit(Letters.Printable(wholeBox ? words.WholeBox : words.ThisStep).Text, Typeface.SemiBold, width, ScopeSizes);

    /// <summary>
    /// Adds the lines of a text, the first one's letters beginning at <paramref name="top"/>; those that run from right to left end at the right,
    /// and so does what stands <paramref name="atRight"/> with them.
    /// </summary>
    public static void Put(
        ImmutableArray<Printed>.Builder things, SetText text, Typeface face, Tone tone, double left, double top, double? width = null, bool atRight = false)
    {
        var fromRight = (text.RightToLeft || atRight) && width is not null;
        for (var i = 0; i < text.Lines.Length; i++)
        {
            things.Add(new PrintedText(
                fromRight ? left + width!.Value : left, top + (CardCautions.Ascent * text.Size) + (i * text.LineHeight), text.Lines[i], face, text.Size, tone)
            {
                FromRight = fromRight,
                RightToLeft = text.RightToLeft,
            });
        }
    }

    private static CardFront Layout(
        Book book, ImmutableArray<Caution> dangers, CardWords words, CardLook look, Size card, CardPicture? picture, Way way)
    {
        var things = ImmutableArray.CreateBuilder<Printed>();
        things.AddRange(CardOrnaments.Front(look, card));
        var width = card.Width - (2 * Inset);
        var column = width;
        if (picture is not null)
            column -= PutPicture(things, picture, card);

        var y = Inset;
        var atRight = ScopeText(words, wholeBox: true, column).RightToLeft;
        var title = Paragraph.Fit(Letters.Printable(book.Title.Value).Text, look.Title, column, way.Titles) with { Spacing = TitleLeading };
        Put(things, title, look.Title, Tone.Ink, Inset, y, column, atRight);
        y += title.Height + 0.7;
        if (book.Maker is { } who)
        {
            var maker = Paragraph.Fit(Letters.Printable(who.Name.Value).Text, look.Line, column, MakerSizes);
            Put(things, maker, look.Line, Tone.Quiet, Inset, y, column, atRight);
            y += maker.Height + 0.9;
        }

        var scope = new ScopeLine(Inset, y, column);
        y += Math.Max(ScopeText(words, wholeBox: true, column).Height, ScopeText(words, wholeBox: false, column).Height);
        if (way.Promise)
        {
            var (promise, tone) = ExampleHosts.IsExample(book.Address?.Value)
                ? (CardSheets.ProofOf(words, column), Tone.Warning)
                : (PromiseOf(words, column), Tone.Quiet);
            Put(things, promise, Typeface.Regular, tone, Inset, y, column);
            y += promise.Height;
        }

        if (dangers.IsEmpty)
            return new(things.ToImmutable(), !title.Whole, 0, scope) { faults = (y > card.Height - Bottom, 0, false) };
        var top = picture is null ? y : Math.Max(y, PictureBottom(card));
        var cautions = CardCautions.Set(dangers, words, width, card.Height - Bottom - top - Air);
        CardCautions.Put(things, cautions, words, look, Inset, width, card.Height - Bottom);
        return new(things.ToImmutable(), !title.Whole, cautions.LeftOut, scope)
        {
            faults = (!cautions.Fits, cautions.LeftOut, !cautions.OnLinesOfTheirOwn),
        };
    }

    private static double PictureBottom(Size card) => Inset + CardPicture.HeightFor(card) + 0.6;

    // Its keyline, and how much of the column it takes.
    private static double PutPicture(ImmutableArray<Printed>.Builder things, CardPicture picture, Size card)
    {
        var height = CardPicture.HeightFor(card);
        var width = CardPicture.WidthFor(card);
        if (picture.IsMark)
        {
            var scale = Math.Min(width / picture.Width, height / picture.Height);
            var (w, h) = (picture.Width * scale, picture.Height * scale);
            var at = new Rect(card.Width - Inset - w, Inset, w, h);
            things.Add(picture.Drawing is { } drawing ? new PrintedDrawing(at, drawing) : new PrintedPicture(at, picture));
            return width + 3;
        }

        var place = new Rect(card.Width - Inset - width, Inset, width, height);
        things.Add(new PrintedPicture(place, picture));
        things.Add(new PrintedStroke(
            [(place.X, place.Y), (place.Right, place.Y), (place.Right, place.Bottom), (place.X, place.Bottom), (place.X, place.Y)], 0.2, Tone.Frame));
        return width + 3;
    }
}
