using CsCheck;
using HintBook.Photos;

namespace HintBook.Tests.Photos;

public class PictureRecordTests
{
    private static readonly ResizedPhoto Prints = Shots.Prints(Shots.Jpeg(900, 600));
    private static readonly string Written = PictureRecord.Of(Prints).Write();

    [Fact]
    public void A_record_read_back_gives_the_picture_again()
    {
        var read = PictureRecord.Read(Written, Prints.Key);
        Assert.NotNull(read);
        Assert.Equal(Prints.Picture.Files, read.Picture.Files);
        Assert.Equal(Written, read.Write());
    }

    [Fact]
    public void It_holds_the_files_that_were_written_and_no_others()
    {
        var read = PictureRecord.Read(Written, Prints.Key)!;
        var (small, bytes) = (Prints.Picture.Files[0], Prints.Bytes[0].ToArray());
        var changed = bytes.ToArray();
        changed[^3] ^= 1;

        Assert.True(read.Holds(small, bytes));
        Assert.False(read.Holds(small, changed));
        Assert.False(read.Holds(small, bytes.AsSpan(..^1)));
        Assert.False(read.Holds(small, []));
        Assert.False(read.Holds(Prints.Picture.Files[1], bytes));
        Assert.False(read.Holds(small with { Path = "pictures/other-400w.jpg" }, bytes));
    }

    [Fact]
    public void A_record_of_another_photo_is_a_miss() =>
        Assert.Null(PictureRecord.Read(Written, PhotoKey.Compute(new byte[] { 1 }, "a book", PhotoSettings.Standard)));

    [Theory]
    [InlineData("")]
    [InlineData("\n\n\n\n")]
    [InlineData("hintbook picture\n")]
    public void What_was_never_written_is_a_miss(string text) => Assert.Null(PictureRecord.Read(text, Prints.Key));

    [Fact]
    public void A_record_with_any_letter_changed_or_its_end_missing_is_a_miss()
    {
        for (var i = 0; i < Written.Length; i++)
        {
            Assert.Null(PictureRecord.Read(Written[..i], Prints.Key));
            Assert.Null(PictureRecord.Read($"{Written[..i]}{(char)(Written[i] ^ 1)}{Written[(i + 1)..]}", Prints.Key));
        }
    }

    [Fact]
    public void No_text_makes_reading_throw() =>
        Gen.String.Sample(text => PictureRecord.Read(text, Prints.Key) is null);
}
