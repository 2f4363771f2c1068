using CsCheck;
using HintBook.Workbench.Writing;

namespace HintBook.Tests.Workbench;

/// <summary>A text area knows line feeds alone; a file that was edited in one keeps the line ends that it had.</summary>
public class LineEndsTests
{
    private static readonly Gen<string> Texts = Gen.OneOf("lid", "a b", "", "é", "\n", "\r\n", "\r").Array[0, 12].Select(string.Concat);
    private static readonly Gen<string> Edits = Gen.OneOf("lid", "a b", "", "é", "\n").Array[0, 12].Select(string.Concat);

    [Theory]
    [InlineData("one\r\ntwo\r\n", "one\nthree\n", "one\r\nthree\r\n")]
    [InlineData("one\r\ntwo\r\n", "one\nnew\ntwo\n", "one\r\nnew\r\ntwo\r\n")]
    [InlineData("one\ntwo\r\nthree\n", "one\ntwo!\nthree\n", "one\ntwo!\nthree\n")]
    [InlineData("one\ntwo\r\nthree\n", "zero\none\ntwo\nthree\n", "zero\none\ntwo\r\nthree\n")]
    [InlineData("one", "one\ntwo", "one\ntwo")]
    [InlineData("one\r\ntwo", "one", "one")]
    public void Lines_that_stay_keep_their_ends_and_new_ones_get_those_of_the_first_line(string before, string edited, string after) =>
        Assert.Equal(after, LineEnds.Kept(before, edited));

    [Fact]
    public void A_text_that_was_not_edited_is_the_file_as_it_was() =>
        Texts.Sample(text => LineEnds.Kept(text, LineEnds.Plain(text)) == text);

    [Fact]
    public void An_edited_text_is_read_again_as_it_was_written() =>
        Gen.Select(Texts, Edits).Sample((before, edited) => LineEnds.Plain(LineEnds.Kept(before, edited)) == edited);
}
