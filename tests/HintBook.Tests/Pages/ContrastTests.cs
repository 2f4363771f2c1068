using System.Globalization;
using System.Text.RegularExpressions;
using HintBook.Pages;

namespace HintBook.Tests.Pages;

// WCAG 2.2: text 4.5:1 (1.4.3), boundaries and focus 3:1 (1.4.11). The formula is the W3C's (relative luminance, contrast ratio).
public partial class ContrastTests
{
    private const double Text = 4.5;
    private const double Shape = 3;

    // Every pair of colours that meets on a page, as the stylesheet's rules put them together.
    private static readonly (string Front, string Back, double Least)[] Pairs =
    [
        ("ink", "paper", Text), ("ink", "card", Text), ("ink", "deep", Text),
        ("soft", "paper", Text), ("soft", "card", Text), ("soft", "deep", Text),
        ("link", "paper", Text), ("link", "card", Text), ("link", "deep", Text),
        ("on-seal", "seal", Text), ("care-ink", "care", Text),
        ("care-edge", "care", Shape), ("care-edge", "paper", Shape), ("care-edge", "card", Shape),
        ("edge", "paper", Shape), ("edge", "card", Shape), ("edge", "deep", Shape),
        ("seal", "paper", Shape), ("seal", "card", Shape),
        ("focus", "paper", Shape), ("focus", "card", Shape), ("focus", "deep", Shape),
    ];

    // Hairlines between things that the text already sets apart: they carry nothing, so no ratio is asked of them.
    private static readonly string[] Decoration = ["line"];

    private static string Stylesheet => Theme.TextsOf(Theme.Default)["theme.css"];

    // The values that the W3C formula gives on white, from the table of published contrasts.
    [Theory]
    [InlineData("#000000", 21)]
    [InlineData("#777777", 4.4781)]
    [InlineData("#767676", 4.5422)]
    [InlineData("#949494", 3.0335)]
    [InlineData("#ff0000", 3.9985)]
    [InlineData("#00ff00", 1.3722)]
    [InlineData("#0000ff", 8.5925)]
    public void The_formula_gives_the_published_contrast_on_white(string colour, double ratio) =>
        Assert.Equal(ratio, Contrast(colour, "#ffffff"), 0.0001);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Every_pair_of_colours_can_be_read_by_day_and_by_night(int scheme)
    {
        var colours = Schemes()[scheme];

        var poor = Pairs
            .Select(pair => (pair, ratio: Contrast(colours[pair.Front], colours[pair.Back])))
            .Where(each => each.ratio < each.pair.Least)
            .Select(each => $"{each.pair.Front} on {each.pair.Back}: {each.ratio:0.00}");
        Assert.Empty(poor);
    }

    [Fact]
    public void Every_colour_is_named_and_tested_and_dark_names_the_same_ones()
    {
        var schemes = Schemes();
        var tested = Pairs.SelectMany(pair => new[] { pair.Front, pair.Back }).Concat(Decoration).Distinct().Order(StringComparer.Ordinal);

        Assert.Equal(2, schemes.Length);
        Assert.Equal(schemes[0].Keys.Order(StringComparer.Ordinal), tested);
        Assert.Equal(schemes[0].Keys.Order(StringComparer.Ordinal), schemes[1].Keys.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void No_rule_has_a_colour_of_its_own()
    {
        var rules = Root().Replace(Stylesheet, "");

        Assert.DoesNotMatch(@"#[0-9a-fA-F]{3,8}\b|rgba?\(|hsla?\(|oklch\(", rules);
    }

    // The first :root is for the day, the second for the night; that for paper is black on white.
    private static Dictionary<string, string>[] Schemes() =>
    [
        .. Root().Matches(Stylesheet).Take(2).Select(block => Colour().Matches(block.Value)
            .ToDictionary(colour => colour.Groups["name"].Value, colour => colour.Groups["value"].Value)),
    ];

    private static double Contrast(string one, string other)
    {
        var (light, dark) = (Math.Max(Luminance(one), Luminance(other)), Math.Min(Luminance(one), Luminance(other)));
        return (light + 0.05) / (dark + 0.05);
    }

    private static double Luminance(string colour)
    {
        return (0.2126 * Channel(1)) + (0.7152 * Channel(3)) + (0.0722 * Channel(5));

        double Channel(int at)
        {
            var c = int.Parse(colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
        }
    }

    [GeneratedRegex(@":root \{[^}]*\}", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 5000)]
    private static partial Regex Root();

    [GeneratedRegex("--(?<name>[a-z-]+): (?<value>#[0-9a-f]{6});", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 5000)]
    private static partial Regex Colour();
}
