using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Pages;
using HintBook.Print.Flow;

namespace HintBook.Print.Papers;

/// <summary>The list of the reset page, with boxes to tick and what must be replaced, on a sheet for both sides.</summary>
internal static class ResetSheet
{
    private const double MarginX = 16;
    private const double Top = 14;
    private const double Bottom = 18;
    private const double Gutter = 9;
    private const double TickRoom = 6.5;
    private const double MostPhoto = 40;

    /// <summary>How large a photo may be.</summary>
    public static Size RoomForPhoto(Paper paper) => new((Size.Of(paper).Width - (2 * MarginX) - Gutter) / 2, MostPhoto);

    /// <summary>Its pages: two columns below a head.</summary>
    public static ImmutableArray<PaperPage> Layout(PaperBook paper)
    {
        var page = Size.Of(paper.Paper);
        var style = new PaperStyle(3.0, paper.Look.Title);
        var room = new Rect(MarginX, Top, page.Width - (2 * MarginX), page.Height - Top - Bottom);
        var head = Paginator.Place(new Setter(room.Width, room.Height, paper.RightToLeft).Set(Head(paper, style)), room);
        var used = head.IsEmpty ? 0 : head[^1].Y + head[^1].Piece.Height + (2 * style.Gap) - Top;
        var column = (room.Width - Gutter) / 2;
        var setter = new Setter(column, room.Height, paper.RightToLeft);
        var pieces = setter.Set(List(paper, style, column));
        var pages = Columns(pieces, room, column, head, used, page, paper.RightToLeft);
        return Furniture.Numbered(pages, $"{paper.Book.Title.Value} · {paper.Words["reset"]}");
    }

    private static IEnumerable<Block> Head(PaperBook paper, PaperStyle style) =>
    [
        .. Heads.Of(paper, paper.Words["reset"], style),
        TextBlock.Of($"{paper.Words["print_reset_for"]} {paper.Words["reset_order"]}", style.Body) with { Before = style.Gap },
    ];

    private static IEnumerable<Block> List(PaperBook paper, PaperStyle style, double column)
    {
        var words = new ResetWords(paper.Book, paper.Words);
        var prose = paper.Prose(style);
        var replaced = Replaced(paper);
        return
        [
            .. paper.CautionsOf(paper.Book.Cautions, style),
            TextBlock.Of(paper.Words.LocalRules, style.Quiet) with { Before = style.Gap * 0.6 },
            .. replaced.IsEmpty ? [] : (Block[])
            [
                TextBlock.Of(paper.Words["print_replace"], style.Heading) with { Before = 2 * style.Gap, Role = Role.Heading, Bookmark = 2 },
                .. replaced.Select(name => Tick(name, style)),
            ],
            .. paper.PutBack.SelectMany(entry => Entry(paper, words, prose, style, entry, column)),
        ];
    }

    private static ImmutableArray<string> Replaced(PaperBook paper) =>
    [
        .. from id in paper.Plan.Survey.WayBack.Replaces
           let named = paper.Book.Box.Names.FirstOrDefault(named => named.Id.Value == id)
           select Capital(named?.Name ?? id),
    ];

    private static string Capital(string name) => name.Length == 0 ? name : char.ToUpperInvariant(name[0]) + name[1..];

    private static IEnumerable<Block> Entry(PaperBook paper, ResetWords words, ProseBlocks prose, PaperStyle style, ResetEntry entry, double column)
    {
        if (entry.Stage is { } stage)
            yield return TextBlock.Of(stage.Title.Value, style.Heading) with { Before = 2.2 * style.Gap, Role = Role.Heading, Bookmark = 2 };
        foreach (var caution in paper.CautionsOf(entry.Cautions, style))
            yield return caution with { WithNext = true };
        foreach (var item in entry.Items)
        {
            foreach (var block in Item(paper, words, prose, style, item, column))
                yield return block;
        }
    }

    private static IEnumerable<Block> Item(PaperBook paper, ResetWords words, ProseBlocks prose, PaperStyle style, ResetItem item, double column) => item switch
    {
        ResetLine line => [Tick(words.Of(line), style)],
        ResetNote note => PaperBook.WithPhotos(
            [
                .. note.Says is { } says ? new[] { TextBlock.Of(says, style.Body) with { Indent = TickRoom, Before = style.Gap * 0.7 } } : [],
                .. prose.Of(note.Text)
                    .Select(block => block is TextBlock text ? text with { Indent = text.Indent + TickRoom, Before = style.Gap * 0.7 } : block),
            ],
            note.HasPhotos ? [.. paper.Photos(note.Stage.Photos, Place.Reset, column, MostPhoto, style)] : []),
        _ => [],
    };

    private static TextBlock Tick(string says, PaperStyle style) => TextBlock.Of(says, style.Body) with
    {
        Indent = TickRoom,
        Marker = new Marker.TickBox(),
        Before = style.Gap * 0.7,
    };

    // The first page's columns begin below the head. The last page's columns are made as equally long as they can be.
    private static ImmutableArray<PaperPage> Columns(
        ImmutableArray<Piece> pieces, Rect room, double column, ImmutableArray<PlacedPiece> head, double used, Size page, bool rightToLeft)
    {
        var pages = ImmutableArray.CreateBuilder<PaperPage>();
        // Photos stay as high as they are: with lower ones a column could be made shorter and shorter.
        ImmutableArray<Piece> left = [.. pieces.Select(piece => piece with { Lower = [] })];
        while (pages.Count == 0 || !left.IsEmpty)
        {
            var isFirst = pages.Count == 0;
            var place = isFirst ? new Rect(room.X, room.Y + used, room.Width, room.Height - used) : room;
            var height = Shortest(left, column, place.Height);
            var placed = ImmutableArray.CreateBuilder<PlacedPiece>();
            if (isFirst)
                placed.AddRange(head);
            for (var i = 0; i < 2 && !left.IsEmpty; i++)
            {
                var area = new Rect(place.X + ((rightToLeft ? 1 - i : i) * (column + Gutter)), place.Y, column, height);
                var filled = Paginator.Fill(left, new(page, area))[0].Pieces;
                placed.AddRange(filled);
                left = left[filled.Length..];
            }

            pages.Add(new(new(page, room), placed.ToImmutable(), []));
        }

        return pages.ToImmutable();
    }

    private static double Shortest(ImmutableArray<Piece> pieces, double column, double most)
    {
        if (Count(most) > 2)
            return most;
        var (low, high) = (0.0, most);
        for (var i = 0; i < 20; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Count(middle) <= 2 && Fits(middle) ? (low, middle) : (middle, high);
        }

        return high;

        int Count(double height) => pieces.IsEmpty ? 0 : Filled(height).Length;

        bool Fits(double height) => pieces.IsEmpty || Filled(height).All(each => Paginator.HeightOf(each.Pieces.Select(placed => placed.Piece)) <= height);

        ImmutableArray<PaperPage> Filled(double height) => Paginator.Fill(pieces, new(default, new Rect(0, 0, column, height)));
    }
}
