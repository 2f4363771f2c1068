using System.Collections.Immutable;
using HintBook.Cards.Typesetting;

namespace HintBook.Cards;

/// <summary>The pages that tell the maker which card belongs to which stage. They give everything away and stay with the maker.</summary>
internal static class MakersSheet
{
    private const double Margin = 20;
    private const double RowHeight = 6.4;
    private const double RowsTop = 50;
    private const double TextSize = 3.0;
    private const double NameWidth = 30;
    private const double IdWidth = 44;

    /// <summary>As many pages as the cards need, the box's own among them; none where there is no card of a stage.</summary>
    public static ImmutableArray<PrintedPage> Layout(ImmutableArray<Card> cards, string title, Paper paper, CardWords words)
    {
        var size = Size.Of(paper);
        var rows = (int)((size.Height - Margin - RowsTop) / RowHeight);
        if (cards.All(card => card.Stage is null))
            return [];
        var pages = cards.DistinctBy(card => card.Name).Chunk(rows).ToArray();
        return [.. pages.Select((page, index) => new PrintedPage(size, Things(page, title, paper, words, $"{index + 1} / {pages.Length}")))];
    }

    /// <summary>What stands above the rows; a text that is not <see cref="SetText.Whole"/> has no room there.</summary>
    public static IEnumerable<(SetText Text, Typeface Face, Tone Tone, double Left, double Baseline)> Heads(Paper paper, CardWords words)
    {
        var right = Size.Of(paper).Width - Margin;
        var titleLeft = Margin + NameWidth;
        var idLeft = right - IdWidth;
        yield return (Set(words.WhichCard, Typeface.SemiBold, 6.4, Margin, right), Typeface.SemiBold, Tone.Ink, Margin, 26);
        yield return (Set(words.KeepThisSheet, Typeface.SemiBold, 3.5, Margin, right), Typeface.SemiBold, Tone.Warning, Margin, 33.5);
        yield return (Set(words.Card, Typeface.Regular, 2.5, Margin, titleLeft), Typeface.Regular, Tone.Quiet, Margin, RowsTop - 2);
        yield return (Set(words.Stage, Typeface.Regular, 2.5, titleLeft, idLeft), Typeface.Regular, Tone.Quiet, titleLeft, RowsTop - 2);
        yield return (Set(words.Id, Typeface.Regular, 2.5, idLeft, right), Typeface.Regular, Tone.Quiet, idLeft, RowsTop - 2);
    }

    private static ImmutableArray<Printed> Things(Card[] cards, string title, Paper paper, CardWords words, string number)
    {
        var size = Size.Of(paper);
        var right = size.Width - Margin;
        var titleLeft = Margin + NameWidth;
        var idLeft = right - IdWidth;
        var things = ImmutableArray.CreateBuilder<Printed>();
        foreach (var head in Heads(paper, words))
            Put(things, head.Text, head.Face, head.Tone, head.Left, head.Baseline);
        Line(things, title, Typeface.Regular, TextSize, Tone.Quiet, Margin, right, 39);
        things.Add(new PrintedLine(Margin, RowsTop, right, RowsTop, Tone.Ink));
        for (var i = 0; i < cards.Length; i++)
        {
            var bottom = RowsTop + ((i + 1) * RowHeight);
            var stage = cards[i].Stage;
            Line(things, cards[i].Name, Typeface.SemiBold, TextSize, Tone.Ink, Margin, titleLeft, bottom - 2);
            Line(things, stage?.Title.Value ?? words.WholeBox, Typeface.Regular, TextSize, Tone.Ink, titleLeft, idLeft, bottom - 2);
            if (stage is not null)
                Line(things, stage.Id.Value, Typeface.Regular, 2.5, Tone.Quiet, idLeft, right, bottom - 2);
            things.Add(new PrintedLine(Margin, bottom, right, bottom, Tone.Rule));
        }

        things.Add(new PrintedText(right, size.Height - 12, number, Typeface.Regular, 2.5, Tone.Quiet, FromRight: true));
        return things.ToImmutable();
    }

    private static void Line(
        ImmutableArray<Printed>.Builder things,
        string text,
        Typeface face,
        double size,
        Tone tone,
        double left,
        double right,
        double baseline) =>
        Put(things, Set(text, face, size, left, right), face, tone, left, baseline);

    private static void Put(ImmutableArray<Printed>.Builder things, SetText text, Typeface face, Tone tone, double left, double baseline) =>
        things.AddRange(text.Lines.Select(line => new PrintedText(left, baseline, line, face, text.Size, tone) { RightToLeft = text.RightToLeft }));

    private static SetText Set(string text, Typeface face, double size, double left, double right)
    {
        const double gap = 3;
        return Paragraph.Fit(Letters.Printable(text).Text, face, right - left - gap, [(size, 1), (size * 0.85, 1), (size * 0.7, 1)]);
    }
}
