using System.Collections.Immutable;
using HintBook.Cards;
using HintBook.Cards.Codes;
using HintBook.Cards.Typesetting;
using HintBook.Print.Flow;

namespace HintBook.Print.Papers;

/// <summary>
/// The label for the underside of the box, or for its carton: A6 across, one for each copy if there are copies, or that of one copy. It tells what anyone
/// may see. Which marks the law wants on it depends on the place and on the box: there is room for them, and they are left to the maker.
/// </summary>
internal static class BoxLabel
{
    private const double Margin = 6;
    private const double RightColumn = 42;
    private const double Gutter = 5;
    private const double CodeSide = 32;
    private const double LeastField = 18;
    private const double BorderInset = 2.2;

    private static readonly (double, int)[] AddressSizes = [(2.8, 3), (2.6, 4), (2.4, 4), (2.2, 6)];

    // ISO 216 A6, across.
    private static readonly Size Page = new(148, 105);
    private static readonly double[] Sizes = [3.6, 3.4, 3.2, 3.0, 2.82, 2.6, 2.4, 2.2];

    /// <summary>The labels, and whether everything that belongs on them is there.</summary>
    public static (ImmutableArray<PaperPage> Pages, bool Whole) Layout(PaperBook paper)
    {
        var room = new Rect(Margin, Margin, Page.Width - (2 * Margin), Page.Height - (2 * Margin));
        var first = room with { Width = room.Width - RightColumn - Gutter };
        var second = new Rect(first.Right + Gutter, room.Y, RightColumn, room.Height);
        var (left, right) = paper.RightToLeft
            ? (first with { X = room.Right - first.Width }, second with { X = room.X })
            : (first, second);
        var sizes = Sizes.Select(size => new PaperStyle(size, paper.Look.Title)).ToArray();
        var style = Array.Find(sizes, each => Fits(paper, Left(paper, each), left)) ?? sizes[^1];
        (string? Serial, string? Secret)[] copies = paper.Serial is { } only
            ? [(only, paper.Copies.FirstOrDefault(copy => copy.Serial == only)?.CodeOf(null))]
            : !paper.Copies.IsEmpty ? [.. paper.Copies.Select(copy => (copy.Serial, copy.CodeOf(null)))]
            : paper.Book.Copies.IsEmpty ? [(null, null)]
            : [.. paper.Book.Copies.Select(copy => (copy.Serial.Value, (string?)null))];
        ImmutableArray<PaperPage> pages =
        [
            .. copies.Select(copy => new PaperPage(
                new(Page, room),
                [.. Placed(paper, Left(paper, style), left), .. Placed(paper, WithField(paper, Right(paper, copy), right), right)],
                [.. Setter.Frame(new(0.5, 0.5, Page.Width - 1, Page.Height - 1), Tone.Rule), .. CardOrnaments.Border(paper.Look, Page, BorderInset)])),
        ];
        return (pages, Fits(paper, Left(paper, style), left) && Fits(paper, WithField(paper, Right(paper, copies[0]), right), right));
    }

    private static ImmutableArray<PlacedPiece> Placed(PaperBook paper, IEnumerable<Block> blocks, Rect room) =>
        Paginator.Place(new Setter(room.Width, room.Height, paper.RightToLeft).Set(blocks), room);

    private static bool Fits(PaperBook paper, IEnumerable<Block> blocks, Rect room) =>
        Paginator.HeightOf(new Setter(room.Width, room.Height, paper.RightToLeft).Set(blocks)) <= room.Height;

    private static IEnumerable<Block> Left(PaperBook paper, PaperStyle style)
    {
        foreach (var mark in paper.Mark(36, 10))
            yield return mark;
        yield return TextBlock.Of(paper.Book.Title.Value, style.Title with { Size = style.Size * 1.7 }) with { Role = Role.Title, Bookmark = 1 };
        if (paper.Book.Maker is { } maker)
            yield return TextBlock.Of(paper.Words.Say("made_by", ("maker", maker.Name.Value)), style.Body) with { Before = style.Gap * 0.4 };
        foreach (var age in paper.AgeLimit(style))
            yield return age;
        foreach (var caution in paper.ShortCautions(style))
            yield return caution;
        if (!paper.Book.Cautions.IsEmpty)
            yield return TextBlock.Of(paper.Words.LocalRules, style.Quiet) with { Before = style.Gap * 0.5 };
        yield return TextBlock.Of(paper.Words["care"], style.Subheading) with { Before = style.Gap, WithNext = true };
        yield return TextBlock.Of($"{paper.Words["care_force_text"]} {paper.Words["care_place_text"]}", style.Body);
    }

    private static IEnumerable<Block> Right(PaperBook paper, (string? Serial, string? Secret) copy)
    {
        var style = new PaperStyle(2.6, paper.Look.Title);
        var (serial, secret) = copy;
        if (paper.Plan.Addresses.Base is { } address && SaysOf(address, secret) is var says && QrMatrix.Encode(says) is { } code)
        {
            yield return TextBlock.Of(paper.Words["card_stuck"], style.Heading);
            yield return new CodeBlock(code, CodeSide, says) { Before = 1 };
            // A little narrower than the column: words that are added up are a little wider than those that are measured as one.
            var typed = Paragraph.FitAddress(Letters.Printable(address).Text, style.Body.Face, RightColumn - 0.5, AddressSizes);
            yield return TextBlock.Of(string.Join('\n', typed.Lines), style.Body with { Size = typed.Size }) with { Before = 1, ReadsLeftToRight = true };
            if (secret is not null)
                yield return TextBlock.Of(CodedCopy.Grouped(secret), style.Body) with { Before = 1, ReadsLeftToRight = true };
        }

        if (serial is not null)
        {
            yield return TextBlock.Of(paper.Words["print_serial"], style.Quiet) with { Before = 2, WithNext = true };
            yield return TextBlock.Of(serial, style.Heading);
        }
    }

    private static string SaysOf(string address, string? secret) => secret is null ? CardList.Ascii(address) : $"{CardList.Ascii(address)}#{secret}";

    // The field takes what is left.
    private static IEnumerable<Block> WithField(PaperBook paper, IEnumerable<Block> blocks, Rect room)
    {
        const double gap = 3;
        Block[] above = [.. blocks];
        var left = room.Height - gap - Paginator.HeightOf(new Setter(room.Width, room.Height, paper.RightToLeft).Set(above));
        return above.Append(new FieldBlock(paper.Words["print_marks"], Math.Max(LeastField, left), new PaperStyle(2.6).Quiet) { Before = gap });
    }
}
