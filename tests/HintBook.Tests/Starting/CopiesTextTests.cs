using System.Collections.Immutable;
using HintBook.Reading;
using HintBook.Starting.Edition;
using HintBook.Text;

namespace HintBook.Tests.Starting;

public class CopiesTextTests
{
    private static readonly NewCopy[] Two = [new("004", [("lock", "5173"), ("verse", "Five \"bees\",\none \\ queen")]), new("005", [])];

    [Theory]
    [InlineData("copies:\n  \"003\": { own: { lock: \"6284\" } }\n")]
    [InlineData("# Mine.\ncopies:\n  \"003\":\n    own:   # by hand\n      lock: \"6284\"\n    note: kept back")]
    [InlineData("copies:\r\n  \"003\": { sold: true }\r\n\r\n# The end.\r\n")]
    public void What_stands_there_stays_to_the_letter_and_the_new_ones_come_behind_it(string text)
    {
        var changed = CopiesText.With(text, Two);

        Assert.NotNull(changed);
        Assert.StartsWith(text, changed, StringComparison.Ordinal);
        Assert.Equal(["003", "004", "005"], Read(changed).Select(copy => copy.Serial.Value));
        Assert.Equal("Five \"bees\",\none \\ queen", Read(changed)[1]["verse"]?.Value);
        Assert.Equal(text.Contains('\r', StringComparison.Ordinal), changed.EndsWith("\r\n", StringComparison.Ordinal));
    }

    [Fact]
    public void A_first_file_says_what_it_is_for()
    {
        var text = CopiesText.With(null, Two);

        Assert.NotNull(text);
        Assert.Contains("keep this file to yourself", text, StringComparison.Ordinal);
        Assert.Equal(2, Read(text).Length);
    }

    [Theory]
    [InlineData("copies: { \"003\": { sold: true } }\n")]
    [InlineData("copies:\n    \"003\": { sold: true }\n")]
    [InlineData("copies: [ nothing\n")]
    [InlineData("copies:\n  \"004\": { sold: true }\n")]
    public void Where_nothing_can_be_put_behind_the_last_line_nothing_is_changed(string text) => Assert.Null(CopiesText.With(text, Two));

    [Theory]
    [InlineData(
        "copies:\n  \"003\": { sold: true }   # the first\n  \"004\": { sold: true }\n",
        "copies:\n  \"003\": { retired: true, sold: true }   # the first\n  \"004\": { sold: true }\n")]
    [InlineData("copies:\n  \"003\":\n    own:\n      lock: \"6284\"\n", "copies:\n  \"003\":\n    retired: true\n    own:\n      lock: \"6284\"\n")]
    [InlineData("copies:\r\n  \"003\":\r\n      sold: true\r\n", "copies:\r\n  \"003\":\r\n      retired: true\r\n      sold: true\r\n")]
    public void A_retired_copy_gets_one_entry_more(string text, string expected) => Assert.Equal(expected, CopiesText.Retired(text, "003"));

    [Theory]
    [InlineData("copies:\n  \"003\": {}\n")]
    [InlineData("copies:\n  \"003\": { retired: false }\n")]
    [InlineData("copies:\n  \"007\": { sold: true }\n")]
    public void Where_the_place_is_not_found_nothing_is_changed(string text) => Assert.Null(CopiesText.Retired(text, "003"));

    private static ImmutableArray<HintBook.Books.Copy> Read(string text)
    {
        var findings = new List<Finding>();
        var copies = Copies.In(new SourceFile(Copies.FileName, text), findings);
        Assert.Empty(findings);
        return copies;
    }
}
