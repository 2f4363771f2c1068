using HintBook.Sealing;

namespace HintBook.Tests.Sealing;

public class KeyFileTests
{
    private static readonly BookSecret Secret = new([.. Enumerable.Range(0, BookSecret.Length).Select(each => (byte)each)]);

    // The tag of the worked example in the format's description.
    [Fact]
    public void It_names_its_book_in_the_open() => Assert.Equal("c3e665ed98bdad78", KeyFile.Of(Secret, "beekeepers-cabinet").Tag);

    [Fact]
    public void What_is_written_is_read_back_and_fits_its_book_alone()
    {
        var read = KeyFile.Read(KeyFile.Of(Secret, "beekeepers-cabinet").ToText().Replace("\n", "\r\n", StringComparison.Ordinal));

        Assert.NotNull(read);
        Assert.Equal(Secret.ToGroups(), read.Secret.ToGroups());
        Assert.True(read.Fits("beekeepers-cabinet"));
        Assert.False(read.Fits("beekeepers-cabinet-2"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("book c3e665ed98bdad78\n")]
    [InlineData("book c3e665ed98bdad78\nsecret 0000\n")]
    public void A_file_that_is_not_whole_is_no_key(string text) => Assert.Null(KeyFile.Read(text));

    [Fact]
    public void A_wrong_letter_is_noticed()
    {
        var text = KeyFile.Of(Secret, "beekeepers-cabinet").ToText();
        var groups = Secret.ToGroups();
        var wrong = groups[..^1] + (groups[^1] == '7' ? '8' : '7');

        Assert.Null(KeyFile.Read(text.Replace(groups, wrong, StringComparison.Ordinal)));
    }
}
