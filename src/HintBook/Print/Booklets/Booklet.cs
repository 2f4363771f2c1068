using System.Collections.Immutable;
using System.Globalization;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Cards.Codes;
using HintBook.Cards.Typesetting;
using HintBook.Print.Flow;

namespace HintBook.Print.Booklets;

/// <summary>How answers stand in the booklet.</summary>
internal enum Veil
{
    /// <summary>As everything else.</summary>
    Upright,

    /// <summary>In mirror writing.</summary>
    Mirrored,

    /// <summary>Upside down.</summary>
    UpsideDown,

    /// <summary>Over a red pattern, for a red filter.</summary>
    RedFilter,
}

/// <summary>A booklet that has been set.</summary>
/// <param name="Pages">Its pages, as many as fit whole sheets: a multiple of four.</param>
/// <param name="Numbers">The number of each entry.</param>
/// <param name="Entries">The entries, in the order of <paramref name="Numbers"/>.</param>
internal sealed record SetBooklet(ImmutableArray<PaperPage> Pages, ImmutableArray<int> Numbers, ImmutableArray<Entry> Entries)
{
    /// <summary>How answers stand.</summary>
    public required Veil Veil { get; init; }

    /// <summary>How many pages are left empty because nothing may stand on them.</summary>
    public required int LeftEmpty { get; init; }

    /// <summary>The page of the first entry, from 1.</summary>
    public required int FirstPage { get; init; }

    /// <summary>The em of the numbers of entries, in millimetres.</summary>
    public required double NumberSize { get; init; }

    /// <summary>What stands on pages that are left empty.</summary>
    public required string SaidOfEmpty { get; init; }
}

/// <summary>Sets the hints of a book as a booklet of numbered entries.</summary>
internal static class Booklet
{
    /// <summary>How much larger an entry's number is than running text: by that whoever reads the file tells it from other numbers.</summary>
    public const double NumberScale = 1.75;

    private const double BetweenEntries = 5;
    private const double CodeSide = 26;

    // How much of the cover's height its photo may have.
    private const double CoverShare = 0.45;

    // ISO 216 A6 and A5.
    private static readonly PageFrame A6 = new(new Size(105, 148), new Rect(10, 10, 85, 124));
    private static readonly PageFrame A5 = new(new Size(148, 210), new Rect(15, 15, 118, 178));

    /// <summary>The booklet as the author wants it.</summary>
    public static SetBooklet Set(PaperBook paper) => Set(paper, IsLarge(paper), VeilOf(paper.Book.Print.Answers?.Value));

    /// <summary>How large a photo of a place may be.</summary>
    public static Size RoomForPhoto(PaperBook paper, Place place)
    {
        var room = (IsLarge(paper) ? A5 : A6).Text;
        return new(room.Width, place == Place.Front ? room.Height * CoverShare : EntryTexts.MostPhoto);
    }

    private static bool IsLarge(PaperBook paper) => paper.Book.Print.Booklet?.Value == "a5";

    /// <summary>The booklet in a size.</summary>
    /// <param name="paper">The book.</param>
    /// <param name="large">Whether it is A5, not A6.</param>
    /// <param name="veil">How answers stand.</param>
    public static SetBooklet Set(PaperBook paper, bool large, Veil veil)
    {
        var (frame, style) = large ? (A5, new PaperStyle(3.2, paper.Look.Title)) : (A6, new PaperStyle(2.9, paper.Look.Title));
        var room = frame.Text;
        var setter = new Setter(room.Width, room.Height, paper.RightToLeft);
        var entries = new EntryTexts(paper, style, room.Width).All();
        var measured = entries.Select(entry => Pieces(entry, Widest, Widest(""), setter, style, frame)).ToArray();
        var apart = Apart.Of(entries, paper.Plan.Survey);
        var order = Shuffle.Order(
            [.. measured.Select(pieces => Paginator.HeightOf(pieces) + BetweenEntries)],
            [.. measured.Select(pieces => Paginator.Fill(pieces, frame).Length)],
            (one, other) => apart[one, other],
            first: 0,
            room.Height + BetweenEntries,
            paper.Book.Identity);
        var numbers = Numbered(order, entries.Length, paper.Book);
        var byKey = entries.Index().ToDictionary(each => each.Item.Key, each => Said(numbers[each.Index]), StringComparer.Ordinal);

        var opening = Opening(paper, frame, setter, style, veil);
        var pages = opening.ToBuilder();
        foreach (var group in order)
            pages.AddRange(Pages(group, entries, key => byKey[key], numbers, setter, style, frame, veil, paper));
        while (pages.Count % 4 != 0)
            pages.Add(PaperPage.Empty(frame));
        return new(pages.ToImmutable(), numbers, entries)
        {
            Veil = veil,
            LeftEmpty = order.Count(group => group.Entries.IsEmpty),
            FirstPage = opening.Length + 1,
            NumberSize = style.Size * NumberScale,
            SaidOfEmpty = Letters.Printable(paper.Words["print_empty"]).Text,
        };
    }

    private static Veil VeilOf(string? name) => name switch
    {
        "upright" => Veil.Upright,
        "mirrored" => Veil.Mirrored,
        "red-filter" => Veil.RedFilter,
        _ => Veil.UpsideDown,
    };

    // No number is wider, so that an entry with its own is never higher than it was measured.
    private static string Widest(string key) => "888";

    private static string Said(int number) => number.ToString(CultureInfo.InvariantCulture);

    // From 1, in the order of the pages. A number that opens a lock of the box belongs to the lock alone, and so does the same from its end: a text beside it
    // may speak of reading backwards.
    private static ImmutableArray<int> Numbered(ImmutableArray<PageGroup> order, int entries, Book book)
    {
        var answers = book.Box.Codes.Select(code => code.Answer.Value).Concat(book.Copies.SelectMany(copy => copy.Values.Select(value => value.Value.Value)))
            .SelectMany(answer => new[] { answer, string.Concat(answer.Reverse()) })
            .ToHashSet(StringComparer.Ordinal);
        var numbers = new int[entries];
        var number = 0;
        foreach (var entry in order.SelectMany(group => group.Entries))
        {
            do
                number++;
            while (answers.Contains(Said(number)));
            numbers[entry] = number;
        }

        return [.. numbers];
    }

    private static ImmutableArray<Piece> Pieces(
        Entry entry, Func<string, string> numbers, string number, Setter setter, PaperStyle style, PageFrame frame)
    {
        var pieces = Pieces(entry.Text(numbers), number, setter, style);
        if (Paginator.Fill(pieces, frame) is not [var only])
        {
            // With photos beside each other it may fit one page.
            var beside = Pieces(Beside(entry.Text(numbers), setter), number, setter, style);
            if (Paginator.Fill(beside, frame) is not [var narrow])
                return WithVeiledWhole(pieces, frame);
            only = narrow;
        }

        // Its photos may have been made lower for that.
        return [.. only.Pieces.Select(placed => placed.Piece)];
    }

    // An entry of two pages has what is veiled on the second one, where that has room for all of it: a step isn't parted from its picture, and the booklet
    // is turned once.
    private static ImmutableArray<Piece> WithVeiledWhole(ImmutableArray<Piece> pieces, PageFrame frame)
    {
        var first = pieces.TakeWhile(piece => !piece.IsVeiled).Count();
        if (first == pieces.Length || Paginator.HeightOf(pieces[first..]) > frame.Text.Height)
            return pieces;
        return
        [
            .. pieces[..(first - 1)],
            pieces[first - 1] with { WithNext = false },
            pieces[first] with { OnNewPage = true },
            .. pieces[(first + 1)..],
        ];
    }

    private static EntryText Beside(EntryText text, Setter setter) => text with { Open = Beside(text.Open, setter), Veiled = Beside(text.Veiled, setter) };

    // The last two photos, of which the first one is tied to the text above them.
    private static ImmutableArray<Block> Beside(ImmutableArray<Block> blocks, Setter setter) =>
        blocks is [.., TogetherBlock { Parts: [.. var above, PhotoBlock one] } together, PhotoBlock other] && setter.HasRoomBeside([one, other])
            ? [.. blocks[..^2], together with { Parts = [.. above, new PhotoRowBlock([one, other]) { Before = one.Before }] }]
            : blocks;

    private static ImmutableArray<Piece> Pieces(EntryText text, string number, Setter setter, PaperStyle style)
    {
        var veiled = setter.Set(text.Veiled);
        ImmutableArray<Piece> pieces =
        [
            .. setter.Set([TextBlock.Of(number, new TextStyle(style.Size * NumberScale, Typeface.SemiBold) { Leading = 1.1 }) with { WithNext = true }]),
            .. setter.Set(text.Open),
            .. veiled.Select(piece => piece with { IsVeiled = true }),
            .. setter.Set(text.Last),
        ];
        // Where an entry goes on is said on the page on which it ends.
        var last = pieces.Length - 2;
        return last > 0 ? pieces.SetItem(last, pieces[last] with { WithNext = true }) : pieces;
    }

    private static IEnumerable<PaperPage> Pages(
        PageGroup group,
        ImmutableArray<Entry> entries,
        Func<string, string> numbers,
        ImmutableArray<int> numberOf,
        Setter setter,
        PaperStyle style,
        PageFrame frame,
        Veil veil,
        PaperBook paper)
    {
        if (group.Entries.IsEmpty)
            return [LeftEmpty(paper, frame, style)];
        var set = group.Entries.Select(entry => Pieces(entries[entry], numbers, Said(numberOf[entry]), setter, style, frame)).ToArray();
        var foot = Foot(frame, group.Entries.Select(entry => numberOf[entry]), style);
        if (group.Pages > 1)
        {
            var pages = Paginator.Fill(set[0], frame).Select(page => page with { Pieces = Veiled(page.Pieces, frame.Text.Width, veil), Furniture = foot });
            // An entry may need a page less than when it was measured; what follows stays where it was put.
            return pages.Concat(Enumerable.Repeat(LeftEmpty(paper, frame, style), group.Pages)).Take(group.Pages);
        }

        var placed = ImmutableArray.CreateBuilder<PlacedPiece>();
        var y = frame.Text.Y;
        foreach (var (index, pieces) in set.Index())
        {
            var room = frame.Text with { Y = y };
            if (index > 0)
                placed.Add(new(room.X, y - (BetweenEntries / 2), new(0, [new PrintedBox(new(0, 0, room.Width, 0.15), Tone.Rule)]) { Role = Role.Artifact }));
            placed.AddRange(Veiled(Paginator.Place(pieces, room), room.Width, veil));
            y += Paginator.HeightOf(pieces) + BetweenEntries;
        }

        return [new(frame, placed.ToImmutable(), foot)];
    }

    // What is veiled on a page is turned as one, so that it reads from its own beginning.
    private static ImmutableArray<PlacedPiece> Veiled(ImmutableArray<PlacedPiece> pieces, double width, Veil veil)
    {
        PlacedPiece[] hidden = [.. pieces.Where(placed => placed.Piece.IsVeiled)];
        if (veil == Veil.Upright || hidden.Length == 0)
            return pieces;
        var (top, bottom) = (hidden[0].Y, hidden[^1].Y + hidden[^1].Piece.Height);
        var around = new Rect(0, 0, width, bottom - top);
        ImmutableArray<Printed> things =
        [
            .. from placed in hidden
               let upright = veil == Veil.RedFilter ? Tinted(placed.Piece) : placed.Piece.Things
               from thing in Moving.By(upright, placed.X - hidden[0].X, placed.Y - top)
               select thing,
        ];
        Printed turned = veil == Veil.RedFilter
            ? new PrintedUnderFilter(around, things)
            : new PrintedTurned(around, veil == Veil.Mirrored ? Turn.Mirrored : Turn.UpsideDown, things);
        var at = pieces.IndexOf(hidden[0]);
        return [.. pieces[..at], new(hidden[0].X, top, new Piece(around.Height, [turned])), .. pieces[at..].Where(placed => !placed.Piece.IsVeiled)];
    }

    // A photo can't be tinted so that it is lost: it stands upside down.
    private static ImmutableArray<Printed> Tinted(Piece piece) => piece.Things.OfType<PrintedPhoto>().FirstOrDefault() is { } picture
        ? [new PrintedTurned(picture.Place, Turn.UpsideDown, piece.Things)]
        : piece.Things;

    private static PaperPage LeftEmpty(PaperBook paper, PageFrame frame, PaperStyle style)
    {
        var says = Letters.Printable(paper.Words["print_empty"]).Text;
        var x = frame.Text.X + ((frame.Text.Width - Letters.Width(says, Typeface.Regular, style.Size)) / 2);
        return new(frame, [], [new PrintedText(x, frame.Page.Height / 2, says, Typeface.Regular, style.Size, Tone.Quiet, RightToLeft: paper.RightToLeft)]);
    }

    // The first and the last number of the page, where a thumb looks for them.
    private static ImmutableArray<Printed> Foot(PageFrame frame, IEnumerable<int> numbers, PaperStyle style)
    {
        int[] all = [.. numbers];
        var says = all.Length == 1 ? Said(all[0]) : $"{Said(all[0])} – {Said(all[^1])}";
        var x = (frame.Page.Width - Letters.Width(says, Typeface.Regular, style.Size)) / 2;
        return [new PrintedText(x, frame.Page.Height - 6, says, Typeface.Regular, style.Size, Tone.Quiet)];
    }

    // A cover, and how the booklet is read with the dangers of the box behind it.
    private static ImmutableArray<PaperPage> Opening(PaperBook paper, PageFrame frame, Setter setter, PaperStyle style, Veil veil)
    {
        var how = Paginator.Fill(setter.Set([.. How(paper, style, veil)]), frame).ToList();
        // The first question stands on a right-hand page, so that the way there is short.
        if (how.Count % 2 == 0)
            how.Add(PaperPage.Empty(frame));
        return [Cover(paper, frame, setter, style), .. how];
    }

    private static IEnumerable<Block> How(PaperBook paper, PaperStyle style, Veil veil)
    {
        yield return TextBlock.Of(paper.Words["how"], style.Heading) with { Role = Role.Heading, Bookmark = 1 };
        yield return TextBlock.Of(paper.Words["print_booklet_how"], style.Body) with { Before = style.Gap };
        if (veil != Veil.Upright)
        {
            var key = veil switch { Veil.Mirrored => "print_mirrored", Veil.RedFilter => "print_filter", _ => "print_upside_down" };
            yield return TextBlock.Of(paper.Words[key], style.Body) with { Before = style.Gap };
        }

        foreach (var block in paper.AgeLimit(style))
            yield return block;
        foreach (var caution in paper.ShortCautions(style))
            yield return caution;
        yield return TextBlock.Of(paper.Words.LocalRules, style.Quiet) with { Before = style.Gap };
    }

    private static PaperPage Cover(PaperBook paper, PageFrame frame, Setter setter, PaperStyle style)
    {
        var front = paper.Photos(paper.Book.Photos, Place.Front, frame.Text.Width, frame.Text.Height * CoverShare, style).Take(1);
        ImmutableArray<Block> blocks =
        [
            TextBlock.Of(paper.Book.Title.Value, style.Title with { Size = style.Size * 2.3 }) with { Role = Role.Title, Bookmark = 1 },
            TextBlock.Of(paper.Words["print_booklet"], style.Heading) with { Before = style.Gap },
            .. front.Select(photo => photo with { Before = 3 * style.Gap }),
            .. paper.Book.Maker is { } maker
                ? [TextBlock.Of(paper.Words.Say("made_by", ("maker", maker.Name.Value)), style.Quiet) with { Before = 2 * style.Gap }]
                : (Block[])[],
            .. paper.Mark(36, 14).Select(mark => mark with { Before = style.Gap }),
            .. paper.Plan.Addresses.Base is { } address && QrMatrix.Encode(CardList.Ascii(address)) is { } code && paper.Book.Photos.IsEmpty
                ? [new CodeBlock(code, CodeSide, CardList.Ascii(address)) { Before = 2 * style.Gap }]
                : (Block[])[],
        ];
        return new(frame, Paginator.Place(setter.Set(blocks), frame.Text), Ornament(paper, frame));
    }

    // The border and the emblem of the theme's cards, clear of what printers can't reach.
    private static ImmutableArray<Printed> Ornament(PaperBook paper, PageFrame frame)
    {
        const double inset = 5, side = 9;
        var x = paper.RightToLeft ? frame.Text.Right - side : frame.Text.X;
        return
        [
            .. CardOrnaments.Border(paper.Look, frame.Page, inset),
            .. CardOrnaments.Emblem(paper.Look, x, frame.Page.Height - (2 * inset) - 1 - side, side),
        ];
    }
}
