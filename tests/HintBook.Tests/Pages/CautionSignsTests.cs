using System.Text.RegularExpressions;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Pages;
using HintBook.Tests.Books;

namespace HintBook.Tests.Pages;

// The signs of dangers: our own drawings, the same on pages and cards.
public class CautionSignsTests
{
    public static TheoryData<CautionKind> Kinds => [.. Enum.GetValues<CautionKind>()];

    [Fact]
    public void Each_danger_has_a_sign_of_its_own()
    {
        var signs = Enum.GetValues<CautionKind>().Select(CautionSigns.Of).ToArray();
        Assert.Equal(20, signs.Distinct().Count());
        Assert.DoesNotContain(CautionSigns.General, signs);
    }

    // SVG 2, 9.3: moveto, lineto, cubic curveto and closepath, absolute.
    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_sign_is_written_in_four_commands(CautionKind kind) =>
        Assert.Matches(new Regex(@"^(M[\d. ]+|L[\d. ]+|C[\d. ]+|Z ?)+$"), CautionSigns.Of(kind));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void No_line_of_a_sign_leaves_its_square(CautionKind kind)
    {
        var points = SignLines.In(CautionSigns.Of(kind)).SelectMany(line => line).ToArray();
        Assert.All(points, point =>
        {
            Assert.InRange(point.X, CautionSigns.Line / 2, CautionSigns.Side - (CautionSigns.Line / 2));
            Assert.InRange(point.Y, CautionSigns.Line / 2, CautionSigns.Side - (CautionSigns.Line / 2));
        });
        Assert.True(points.Max(point => point.X) - points.Min(point => point.X) >= 10 && points.Max(point => point.Y) - points.Min(point => point.Y) >= 10);
    }

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void A_page_shows_each_sign_beside_its_danger(string theme)
    {
        var kinds = Enum.GetValues<CautionKind>();
        var plan = Sites.Plan(A.Book(A.Stage("lid")) with { Cautions = [.. kinds.Select(kind => A.Caution(kind))] });
        var dangers = Sites.Parse(Sites.Pages(plan, theme)["index.html"]).QuerySelectorAll(".cautions details");

        Assert.Equal(kinds.Select(CautionSigns.Of), dangers.Select(danger => danger.QuerySelector("svg path")!.GetAttribute("d")!));
        Assert.All(dangers, danger => Assert.Equal("true", danger.QuerySelector("svg")!.GetAttribute("aria-hidden")));
        Assert.Equal(kinds.Select(Cautions.NameOf), dangers.Select(danger => danger.ClassName));
    }

    // A quarter of a circle by a cubic curve is nowhere farther from the circle than 3 in 10,000 (known error of the usual approximation; from memory).
    [Fact]
    public void A_circle_on_a_card_is_round()
    {
        var coin = SignLines.In(CautionSigns.Of(CautionKind.ButtonCell))[0];
        Assert.All(coin, point => Assert.Equal(9, Math.Sqrt(Math.Pow(point.X - 12, 2) + Math.Pow(point.Y - 12, 2)), 0.01));
        Assert.Equal(coin[0], coin[^1]);
    }
}
