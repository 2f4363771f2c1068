using CsCheck;
using HintBook.Sealing;

namespace HintBook.Tests.Sealing;

/// <summary>
/// Whatever is sealed opens at its own place alone: with the right key or with that of the other place, an exchanged piece, slot or segment never opens.
/// </summary>
public class ExchangedTests
{
    private static Gen<string> OneOf(params string[] names) => Gen.Int[0, names.Length - 1].Select(i => names[i]);

    private static readonly Gen<string> Name = Gen.String[Gen.Char['a', 'c'], 1, 3];

    private static readonly Gen<PiecePlace> Pieces =
        Gen.Select(Gen.Int[1, 3], Gen.Int[1, 3], OneOf("en", "de"), Name, OneOf("nudge", "clue", "answer"), OneOf("one", "two"))
            .Select((book, epoch, language, page, piece, text) => new PiecePlace(book, epoch, language, page, piece, text));

    private static readonly Gen<SlotPlace> Copies = Gen.Select(Gen.Int[1, 3], Gen.Int[1, 3], OneOf("", "abc", "abd"), Gen.Int[0, 5], Gen.Int[1, 2])
        .Select((book, epoch, table, number, issue) => new SlotPlace(book, epoch, table, number, issue));

    // Another book, epoch, language, page, piece, or another text, and with it another version of the page.
    [Fact]
    public void A_piece_at_the_place_of_another_never_opens() => Gen.Select(Pieces, Pieces).Sample((here, there) =>
    {
        var (key, _, closed) = Sealed(here);
        var (otherKey, context, otherClosed) = Sealed(there);
        return Seal.Open(otherKey, context, otherClosed) is not null
            && (here == there || (Seal.Open(otherKey, context, closed) is null && Seal.Open(key, context, closed) is null));
    });

    // Another book, epoch, table, number, or another issue of the card.
    [Fact]
    public void A_slot_at_the_place_of_another_never_opens() => Gen.Select(Copies, Copies).Sample((here, there) =>
    {
        var (key, _, closed) = Sealed(here);
        var (otherKey, context, otherClosed) = Sealed(there);
        return Seal.Open(otherKey, context, otherClosed) is not null
            && (here == there || (Seal.Open(otherKey, context, closed) is null && Seal.Open(key, context, closed) is null));
    });

    // Of another book, another file, at another place, or where it isn't the last.
    [Fact]
    public void A_segment_at_the_place_of_another_never_opens()
    {
        var one = new byte[(2 * SealedFile.SegmentLength) + 1];
        var two = new byte[one.Length];
        two[^1] = 1;
        var segments = new[] { Book(1), Book(2) }
            .SelectMany(book => new[] { one, two }.SelectMany(content => SealedFile.Of(book.Files, content) is var file
                ? file.Segments.Select((closed, k) => (file.Key, Context: SealedFile.ContextOf(book.Tag, file.Name, k, k == 2), Closed: closed))
                : []))
            .ToArray();

        Assert.Equal(12, segments.Length);
        foreach (var here in segments)
        {
            foreach (var there in segments)
            {
                Assert.Equal(here.Context == there.Context, Seal.Open(there.Key, there.Context, here.Closed) is not null);
                Assert.Equal(here.Context == there.Context, Seal.Open(here.Key, there.Context, here.Closed) is not null);
            }
        }
    }

    [Fact]
    public void A_slot_in_which_any_bit_is_turned_never_opens()
    {
        var (key, context, closed) = Sealed(new SlotPlace(1, 1, "abc", 3, 1));

        Assert.NotNull(Seal.Open(key, context, closed));
        Assert.All(Enumerable.Range(0, closed.Length * 8), bit =>
        {
            var turned = closed.ToArray();
            turned[bit / 8] ^= (byte)(1 << (bit % 8));
            Assert.Null(Seal.Open(key, context, turned));
        });
    }

    private static (byte[] Key, byte[] Context, byte[] Closed) Sealed(PiecePlace place)
    {
        var epoch = Book(place.Book).Epoch(place.Epoch);
        string[] names = ["nudge", "clue", "answer"];
        var key = epoch.PageKey(place.Page);
        var page = SealedPage.Of(
            epoch, place.Language, place.Page, [.. names.Select(name => new Piece(name, Padding.Pad(name == "clue" ? place.Text : "the same", 1024), key))]);
        var context = SealedPage.ContextOf(epoch, place.Language, place.Page, page.Version, place.Piece);
        return (key, context, page.Pieces.Single(piece => piece.Name == place.Piece).Sealed);
    }

    private static (byte[] Key, byte[] Context, byte[] Closed) Sealed(SlotPlace place)
    {
        var epoch = Book(place.Book).Epoch(place.Epoch);
        var card = Book(place.Book).CardKey($"{place.Number}", place.Issue);
        var slots = Slots.Of(epoch, place.Table, 64, [new(place.Number, card, [])]);
        var key = place.Table.Length == 0 ? card : BookKeys.PageCardKey(card, place.Table);
        return (key, Slots.ContextOf(epoch, place.Table, place.Number), slots[place.Number]);
    }

    private static BookKeys Book(int id) => new(new(new byte[BookSecret.Length]), $"box-{id}");

    private sealed record PiecePlace(int Book, int Epoch, string Language, string Page, string Piece, string Text);

    private sealed record SlotPlace(int Book, int Epoch, string Table, int Number, int Issue);
}
