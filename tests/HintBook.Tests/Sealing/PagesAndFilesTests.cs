using CsCheck;
using HintBook.Sealing;

namespace HintBook.Tests.Sealing;

public class PagesAndFilesTests
{
    private static readonly BookKeys Keys = new(new(new byte[BookSecret.Length]), "a-box");
    private static readonly EpochKeys Epoch = Keys.Epoch(1);

    [Theory]
    [InlineData(0, 1024)]
    [InlineData(1020, 1024)]
    [InlineData(1021, 2048)]
    [InlineData(65_532, 65_536)]
    [InlineData(65_533, null)]
    public void Texts_are_padded_to_powers_of_two(int longest, int? size) => Assert.Equal(size, Padding.SizeFor(longest));

    [Fact]
    public void What_is_padded_reads_as_it_was() =>
        Gen.String[0, 300].Where(text => !text.Any(char.IsSurrogate)).Sample(text => Padding.Unpad(Padding.Pad(text, 2048)) == text);

    [Fact]
    public void A_length_that_cannot_be_reads_as_nothing()
    {
        Assert.Null(Padding.Unpad([0, 0, 0, 9, 1, 2]));
        Assert.Null(Padding.Unpad([255, 255, 255, 255, 1, 2]));
        Assert.Null(Padding.Unpad([0, 0]));
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 1024)]
    [InlineData(8_000, 8_192)]
    [InlineData(16_385, 18_432)]
    [InlineData(122_000, 122_880)]
    public void A_file_grows_by_an_eighth_at_most(long length, long size) => Assert.Equal(size, Padding.SizeOfFile(length));

    [Fact]
    public void No_file_grows_by_more_than_an_eighth_or_1_KiB() =>
        Gen.Long[1, 1L << 40].Sample(length => Padding.SizeOfFile(length) - length is >= 0 and var more && more < Math.Max(1024, length / 8 + 1));

    [Fact]
    public void An_old_piece_does_not_open_in_a_corrected_page()
    {
        var before = Sealed("en", "83wf3vhk", "old clue");
        var after = Sealed("en", "83wf3vhk", "new clue");

        Assert.NotEqual(before.Version, after.Version);
        Assert.Null(Opened("en", "83wf3vhk", after.Version, "clue", before));
        // The nudge is the same in both, and yet it is of the page that it stood in.
        Assert.Null(Opened("en", "83wf3vhk", after.Version, "nudge", before));
        Assert.Equal("new clue", Opened("en", "83wf3vhk", after.Version, "clue", after));
    }

    [Fact]
    public void A_piece_opens_in_its_own_language_page_and_place_alone()
    {
        var page = Sealed("en", "83wf3vhk", "a clue");

        Assert.Null(Opened("de", "83wf3vhk", page.Version, "clue", page));
        Assert.Null(Opened("en", "7m5x9r4t", page.Version, "clue", page));
        Assert.Null(Seal.Open(Epoch.PageKey("83wf3vhk"), SealedPage.ContextOf(Epoch, "en", "83wf3vhk", page.Version, "nudge"), page.Pieces[1].Sealed));
        Assert.Null(Seal.Open(Epoch.PageKey("83wf3vhk"), SealedPage.ContextOf(Keys.Epoch(2), "en", "83wf3vhk", page.Version, "clue"), page.Pieces[1].Sealed));
    }

    [Fact]
    public void A_gate_opens_with_its_word_however_it_is_typed_and_with_no_other()
    {
        var record = Gate.Record(Epoch, "83wf3vhk", "Queen Bee 7");

        Assert.Equal(Epoch.GateKey("83wf3vhk"), Gate.Open(Epoch, "83wf3vhk", "queen-bee 7", record));
        Assert.Null(Gate.Open(Epoch, "83wf3vhk", "queen bee 8", record));
        Assert.Null(Gate.Open(Epoch, "83wf3vhk", "Queen Bee 7", record, number: 3));
    }

    [Fact]
    public void The_segments_of_a_film_open_in_their_order_and_to_the_last_one()
    {
        var content = new byte[SealedFile.SegmentLength * 2 + 5];
        new Random(1).NextBytes(content);

        var film = SealedFile.Of(Keys.Files, content);

        Assert.Equal(16, film.Name.Length);
        Assert.Equal(3, film.Segments.Length);
        var opened = film.Segments.SelectMany((segment, k) => Seal.Open(film.Key, SealedFile.ContextOf(Keys.Tag, film.Name, k, k == 2), segment) ?? []);
        Assert.Equal(content, opened);
        Assert.Null(Seal.Open(film.Key, SealedFile.ContextOf(Keys.Tag, film.Name, 0, isLast: false), film.Segments[1]));
        // What was cut after the second segment has no last one.
        Assert.Null(Seal.Open(film.Key, SealedFile.ContextOf(Keys.Tag, film.Name, 1, isLast: true), film.Segments[1]));
    }

    [Fact]
    public void An_empty_file_has_a_segment_all_the_same() => Assert.Equal(Seal.Overhead, Assert.Single(SealedFile.Of(Keys.Files, []).Segments).Length);

    private static SealedPage Sealed(string language, string page, string clue) => SealedPage.Of(
        Epoch,
        language,
        page,
        [new("nudge", Padding.Pad("a nudge", 1024), Epoch.PageKey(page)), new("clue", Padding.Pad(clue, 1024), Epoch.PageKey(page))]);

    private static string? Opened(string language, string page, byte[] version, string piece, SealedPage from)
    {
        var closed = from.Pieces.Single(each => each.Name == piece).Sealed;
        return Seal.Open(Epoch.PageKey(page), SealedPage.ContextOf(Epoch, language, page, version, piece), closed) is { } text ? Padding.Unpad(text) : null;
    }
}
