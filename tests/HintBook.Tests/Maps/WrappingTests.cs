using CsCheck;
using HintBook.Maps;

namespace HintBook.Tests.Maps;

public class WrappingTests
{
    [Theory]
    [InlineData("", "")]
    [InlineData("The roof", "The roof")]
    [InlineData("The lid of the box", "The lid of", "the box")]
    [InlineData("one two three four five six seven eight", "one two", "three four", "five six…")]
    [InlineData("Donaudampfschiff", "Donaudampf", "schiff")]
    [InlineData("a\nb\tc  d", "a b c d")]
    public void Titles_are_broken_into_lines_of_ten_letters(string title, params string[] lines) =>
        Assert.Equal(lines, Wrapping.Lines(title, 10, text => text.Length));

    [Fact]
    public void No_title_has_more_than_three_lines_or_a_line_that_is_too_wide() =>
        Gen.String.Sample(title =>
        {
            var lines = Wrapping.Lines(title, 120, text => Lettering.Width(text, 14));
            Assert.InRange(lines.Length, 1, Wrapping.MostLines);
            Assert.All(lines, line => Assert.InRange(Lettering.Width(line, 14), 0, 120));
        });

    [Fact]
    public void A_title_that_fits_loses_no_letter() =>
        Gen.String[Gen.Char["abc mi"], 0, 30].Sample(title =>
            Assert.Equal(
                title.Replace(" ", ""), string.Concat(Wrapping.Lines(title, 200, text => Lettering.Width(text, 14))).Replace(" ", "")));

    [Fact]
    public void Letters_that_people_see_as_one_stay_together() =>
        Assert.Equal(["e\u0301", "e\u0301"], Wrapping.Lines("e\u0301e\u0301", 2, text => text.Length));

    [Theory]
    [InlineData("a\u0001b", "a b")]
    [InlineData("a\uFFFFb", "a\uFFFDb")]
    public void What_xml_cannot_carry_is_replaced(string text, string clean) => Assert.Equal(clean, Wrapping.Clean(text));

    [Fact]
    public void Half_a_surrogate_pair_is_replaced() => Assert.Equal("half \uFFFD of it", Wrapping.Clean("half \uD83D of it"));
}
