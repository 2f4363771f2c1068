using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using HintBook.Pages;

namespace HintBook.Tests.Pages;

// W3C Media Fragments URI 1.0, 4.2.1 and 4.2.2: "t=" npttimedef, where a time is seconds with at most a fraction, and the end lies behind the start.
public partial class MediaFragmentTests
{
    // From the W3C's test cases for temporal fragments (TC0001 t=3,7, TC0002 t=3, TC0009 t=3.5,7.25 and the like; their numbers from memory).
    [Theory]
    [InlineData(3, 7.0, "film.mp4#t=3,7")]
    [InlineData(3, null, "film.mp4#t=3")]
    [InlineData(0, 7.0, "film.mp4#t=0,7")]
    [InlineData(3.5, 7.25, "film.mp4#t=3.5,7.25")]
    [InlineData(3723, null, "film.mp4#t=3723")]
    public void A_part_is_written_as_the_cases_write_it(double from, double? to, string fragment) =>
        Assert.Equal(fragment, FilmView.PartOf("film.mp4", TimeSpan.FromSeconds(from), to is { } end ? TimeSpan.FromSeconds(end) : null));

    [Fact]
    public void Whatever_the_times_are_the_fragment_is_in_the_grammar_and_says_them() =>
        Gen.Select(Gen.Int[0, 100_000_000], Gen.Int[1, 100_000_000]).Sample((from, length) =>
        {
            var (start, end) = (TimeSpan.FromMilliseconds(from), TimeSpan.FromMilliseconds((double)from + length));
            var match = Fragment().Match(FilmView.PartOf("f", start, end));

            Assert.True(match.Success);
            Assert.Equal((start, end), (Time("from"), Time("to")));

            TimeSpan Time(string name) => TimeSpan.FromMilliseconds((double)(decimal.Parse(match.Groups[name].ValueSpan, CultureInfo.InvariantCulture) * 1000));
        });

    // npt-sec = 1*DIGIT [ "." *DIGIT ]
    [GeneratedRegex(@"^f#t=(?<from>[0-9]+(\.[0-9]*)?),(?<to>[0-9]+(\.[0-9]*)?)$", RegexOptions.ExplicitCapture)]
    private static partial Regex Fragment();
}
