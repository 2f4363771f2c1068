using System.Globalization;
using System.Text.RegularExpressions;
using HintBook.Pages;

namespace HintBook.Tests.Pages;

// WCAG 2.2: text 4.5:1 (1.4.3), boundaries and focus 3:1 (1.4.11). The formula is the W3C's (relative luminance, contrast ratio).
public partial class ContrastTests
{
    // Which colours meet on a page, as the rules of each theme's stylesheet put them together: every front on every back.
    private static readonly Dictionary<string, Meeting[]> Meetings = new(StringComparer.Ordinal)
    {
        ["parlour"] =
        [
            Text("ink soft link", "paper card deep"), Text("on-seal", "seal"), Text("care-ink", "care"),
            Shape("edge focus", "paper card deep"), Shape("seal", "paper card"), Shape("care-edge", "care paper card"),
        ],
        ["plain"] =
        [
            Text("text quiet link", "page"), Shape("rule focus", "page"),
        ],
        // Text may run over the lines of the squared paper.
        ["workshop"] =
        [
            Text("ink pencil pen", "sheet panel tone grid"), Text("on-pen", "pen"), Text("care-ink", "care"),
            Shape("line focus", "sheet panel tone grid"), Shape("care-line", "care sheet panel"),
        ],
    };

    // Hairlines between things that the text already sets apart, and the white ground of the maker's mark, which is a picture of its own:
    // they carry nothing, so no ratio is asked of them.
    private static readonly Dictionary<string, string[]> Decoration = new(StringComparer.Ordinal)
    {
        ["parlour"] = ["line", "mark"],
        ["plain"] = ["mark"],
        ["workshop"] = ["mark"],
    };

    public static TheoryData<string, int> Looks => [.. from theme in Theme.BuiltInNames from scheme in new[] { 0, 1 } select (theme, scheme)];

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
    [MemberData(nameof(Looks))]
    public void Every_pair_of_colours_can_be_read_by_day_and_by_night(string theme, int scheme)
    {
        var colours = Schemes(theme)[scheme];

        var poor =
            from meeting in Meetings[theme]
            from front in meeting.Fronts
            from back in meeting.Backs
            let ratio = Contrast(colours[front], colours[back])
            where ratio < meeting.Least
            select $"{front} on {back}: {ratio:0.00}";
        Assert.Empty(poor);
    }

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void Every_colour_is_named_and_tested_and_dark_names_the_same_ones(string theme)
    {
        var schemes = Schemes(theme);
        var tested = Meetings[theme]
            .SelectMany(meeting => meeting.Fronts.Concat(meeting.Backs))
            .Concat(Decoration[theme])
            .Distinct()
            .Order(StringComparer.Ordinal);

        Assert.Equal(2, schemes.Length);
        Assert.Equal(schemes[0].Keys.Order(StringComparer.Ordinal), tested);
        Assert.Equal(schemes[0].Keys.Order(StringComparer.Ordinal), schemes[1].Keys.Order(StringComparer.Ordinal));
    }

    // CSS Color 4: hexadecimal and functional notations, and the names that a stylesheet is most likely to hold.
    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void No_rule_has_a_colour_of_its_own(string theme)
    {
        var rules = Comment().Replace(Root().Replace(Stylesheet(theme), ""), "");

        Assert.DoesNotMatch(@"#[0-9a-fA-F]{3,8}\b", rules);
        Assert.DoesNotMatch(@"rgba?\(|hsla?\(|hwb\(|(ok)?l(ab|ch)\(|\bcolor\(", rules);
        Assert.DoesNotMatch(@":[^;{]*\b(black|white|gr[ae]y|red|green|blue|yellow|silver)\b", rules);
    }

    private static string Stylesheet(string theme) => Theme.TextsOf(theme)["theme.css"];

    // The first :root is for the day, the second for the night; that for paper is black on white.
    private static Dictionary<string, string>[] Schemes(string theme) =>
    [
        .. Root().Matches(Stylesheet(theme)).Take(2).Select(block => Colour().Matches(block.Value)
            .ToDictionary(colour => colour.Groups["name"].Value, colour => colour.Groups["value"].Value)),
    ];

    private static Meeting Text(string fronts, string backs) => new(fronts.Split(' '), backs.Split(' '), 4.5);

    private static Meeting Shape(string fronts, string backs) => new(fronts.Split(' '), backs.Split(' '), 3);

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

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.CultureInvariant | RegexOptions.Singleline, matchTimeoutMilliseconds: 5000)]
    private static partial Regex Comment();

    /// <summary>Colours that meet.</summary>
    /// <param name="Fronts">Names of the colours in front.</param>
    /// <param name="Backs">Names of the colours that each of them stands on.</param>
    /// <param name="Least">The least contrast asked of each pair.</param>
    private sealed record Meeting(string[] Fronts, string[] Backs, double Least);
}
