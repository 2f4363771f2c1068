using CsCheck;
using HintBook.Text;

namespace HintBook.Tests.Text;

public class NearestTests
{
    // Worked by hand. "ca" to "abc" is 3 by optimal string alignment (2 if swapped letters could be edited again): the usual
    // example for the difference between the two, from memory.
    [Theory]
    [InlineData("", "", 0)]
    [InlineData("", "abc", 3)]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("smoker", "smokre", 1)]
    [InlineData("ca", "abc", 3)]
    [InlineData("Roof", "roof", 0)]
    public void Edits_are_counted_letter_by_letter(string left, string right, int edits) =>
        Assert.Equal(edits, Nearest.Edits(left, right));

    [Fact]
    public void Edits_are_the_same_in_both_directions() =>
        Gen.Select(Gen.String.AlphaNumeric, Gen.String.AlphaNumeric).Sample((left, right) =>
            Nearest.Edits(left, right) == Nearest.Edits(right, left));

    [Fact]
    public void No_more_edits_than_the_longer_word_has_letters_and_no_fewer_than_the_lengths_differ() =>
        Gen.Select(Gen.String.AlphaNumeric, Gen.String.AlphaNumeric).Sample((left, right) =>
            Nearest.Edits(left, right) <= Math.Max(left.Length, right.Length)
            && Nearest.Edits(left, right) >= Math.Abs(left.Length - right.Length));

    [Theory]
    [InlineData("smoekr", "smoker")]
    [InlineData("hive_tool", "hive-tool")]
    [InlineData("nedes", "needs")]
    [InlineData("elephant", null)]
    public void The_name_that_was_probably_meant(string written, string? meant) =>
        Assert.Equal(meant, Nearest.To(written, ["smoker", "hive-tool", "needs", "roof"]));

    [Fact]
    public void Ties_do_not_depend_on_the_order_of_candidates() =>
        Gen.Shuffle(new[] { "dial-c", "dial-a", "dial-b" }).Sample(names => Nearest.To("dial-x", names) == "dial-a");
}
