using CsCheck;
using HintBook.Text;

namespace HintBook.Tests.Text;

public class SourceFileTests
{
    [Theory]
    [InlineData("", 0, 1, 1)]
    [InlineData("ab\ncd", 0, 1, 1)]
    [InlineData("ab\ncd", 2, 1, 3)]
    [InlineData("ab\ncd", 3, 2, 1)]
    [InlineData("ab\ncd", 5, 2, 3)]
    [InlineData("ab\r\ncd", 4, 2, 1)]
    [InlineData("\n\n", 2, 3, 1)]
    [InlineData("🐝x", 2, 1, 3)]
    public void Places_count_from_one_in_utf_16_units(string text, int offset, int line, int column) =>
        Assert.Equal((line, column), new SourceFile("book.yaml", text).PlaceOf(offset));

    [Theory]
    [InlineData(-1, 1, 1)]
    [InlineData(99, 1, 4)]
    public void Offsets_outside_the_file_are_drawn_to_its_ends(int offset, int line, int column) =>
        Assert.Equal((line, column), new SourceFile("book.yaml", "abc").PlaceOf(offset));

    [Theory]
    [InlineData(0, "")]
    [InlineData(1, "one")]
    [InlineData(2, "two")]
    [InlineData(3, "")]
    [InlineData(4, "")]
    public void Lines_come_without_their_breaks(int line, string text) =>
        Assert.Equal(text, new SourceFile("book.yaml", "one\r\ntwo\n").LineAt(line));

    [Fact]
    public void The_place_of_an_offset_leads_back_to_its_letter() =>
        Gen.String[Gen.Char["ab\n\r\té"], 1, 60].Sample(text =>
        {
            var file = new SourceFile("book.yaml", text);
            for (var i = 0; i < text.Length; i++)
            {
                var (line, column) = file.PlaceOf(i);
                Assert.True(text[i] is '\n' or '\r' || file.LineAt(line)[column - 1] == text[i]);
            }
        });

    [Fact]
    public void The_span_of_the_whole_file_covers_its_text() =>
        Assert.Equal("a\nb", new SourceFile("book.yaml", "a\nb").Whole.Text);

    [Fact]
    public void A_file_that_could_not_be_read_still_has_a_first_place() =>
        Assert.Equal((1, 1), SourceFile.Unread("stages/x.md").PlaceOf(0));
}
