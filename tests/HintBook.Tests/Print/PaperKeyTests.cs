using System.Collections.Immutable;
using HintBook.Cards;
using HintBook.Cards.Typesetting;
using HintBook.Print.Flow;

namespace HintBook.Tests.Print;

/// <summary>A paper is drawn anew whenever anything that its file follows from has changed.</summary>
public class PaperKeyTests
{
    private static readonly PageFrame Frame = new(new Size(105, 148), new Rect(10, 10, 85, 124));
    private static readonly PrintedText Text = new(1, 2, "Turn", Typeface.Regular, 3, Tone.Ink);
    private static readonly PrintedPhoto Photo = new(new(1, 2, 3, 4), [1, 2]);
    private static readonly PrintedTurned Turned = new(new(1, 2, 3, 4), Turn.UpsideDown, [Photo]);
    private static readonly PrintedUnderFilter Filtered = new(new(1, 2, 3, 4), [Text]);

    private static ImmutableArray<(Printed Before, Printed After)> Things =>
    [
        (Text, Text with { Text = "Turned" }),
        (Text, Text with { X = 9 }),
        (Photo, Photo with { Jpeg = [1, 3] }),
        (Photo, Photo with { Place = new(1, 2, 3, 5) }),
        (new PrintedWhite(new(1, 2, 3, 4)), new PrintedWhite(new(1, 2, 3, 5))),
        (Turned, Turned with { Turn = Turn.Mirrored }),
        (Turned, Turned with { Around = new(1, 2, 3, 5) }),
        (Turned, Turned with { Things = [Photo with { Jpeg = [9] }] }),
        (Filtered, Filtered with { Place = new(1, 2, 3, 5) }),
        (Filtered, Filtered with { Things = [Photo] }),
    ];

    private static ImmutableArray<Func<Piece, Piece>> Changes =>
    [
        piece => piece with { Height = 9 },
        piece => piece with { Role = Role.Heading },
        piece => piece with { Continues = true },
        piece => piece with { Shows = "" },
        piece => piece with { Shows = "a lid" },
        piece => piece with { Bookmark = (1, "Lid") },
        piece => piece with { Bookmark = (2, "Lid") },
    ];

    public static TheoryData<int> EachThing => [.. Enumerable.Range(0, Things.Length)];

    public static TheoryData<int> EachChange => [.. Enumerable.Range(0, Changes.Length)];

    [Theory]
    [MemberData(nameof(EachThing))]
    public void A_changed_thing_gives_another_key(int number)
    {
        var (before, after) = Things[number];
        Assert.NotEqual(Key(Page(new Piece(5, [before]))), Key(Page(new Piece(5, [after]))));
        Assert.Equal(Key(Page(new Piece(5, [before]))), Key(Page(new Piece(5, [before with { }]))));
        Assert.NotEqual(Key(PaperPage.Empty(Frame) with { Furniture = [before] }), Key(PaperPage.Empty(Frame) with { Furniture = [after] }));
    }

    [Theory]
    [MemberData(nameof(EachChange))]
    public void A_changed_piece_gives_another_key(int number)
    {
        var piece = new Piece(5, [Text]);
        string[] keys = [Key(Page(piece)), .. Changes.Take(number + 1).Select(change => Key(Page(change(piece))))];
        Assert.Equal(keys.Length, keys.Distinct().Count());
    }

    [Fact]
    public void So_do_its_place_its_page_the_title_the_language_and_the_colours()
    {
        var page = Page(new Piece(5, [Text]));
        string[] keys =
        [
            Key(page),
            Key(page with { Pieces = [page.Pieces[0] with { X = 9 }] }),
            Key(page with { Pieces = [page.Pieces[0] with { Y = 9 }] }),
            Key(page with { Frame = Frame with { Page = new(148, 210) } }),
            PaperKey.Of("T", "en", [page, page], CardLook.Plain),
            PaperKey.Of("U", "en", [page], CardLook.Plain),
            PaperKey.Of("T", "de", [page], CardLook.Plain),
            PaperKey.Of("T", "en", [page], CardLook.Of(HintBook.Pages.Theme.BuiltIn("parlour").Theme).Look),
        ];
        Assert.Equal(keys.Length, keys.Distinct().Count());
    }

    private static PaperPage Page(Piece piece) => new(Frame, [new(1, 2, piece)], []);

    private static string Key(PaperPage page) => PaperKey.Of("T", "en", [page], CardLook.Plain);
}
