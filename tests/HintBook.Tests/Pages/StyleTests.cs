using System.Globalization;
using System.Text.RegularExpressions;
using HintBook.Pages;
using HintBook.Tests.Books;

namespace HintBook.Tests.Pages;

// What each theme's stylesheet does for ears, for scripts and on paper. How it looks is tried in a browser.
public partial class StyleTests
{
    // CSS Generated Content 3: what comes after the stroke is what is spoken; before it stands the same for browsers that don't know that.
    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void A_sign_that_a_style_draws_is_not_spoken(string theme)
    {
        var drawn = Content().Matches(Style(theme)).Select(match => match.Groups["text"].Value).Where(text => text.Length > 0).ToArray();
        var silent = Silent().Matches(Style(theme)).Select(match => match.Groups["text"].Value).ToArray();
        Assert.Equal(drawn, silent);
    }

    // W3C, Requirements for Japanese Text Layout, 3.1.7 (characters not starting a line); Arabic and Japanese type has no slant (common practice, no source).
    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void Japanese_breaks_between_phrases_and_neither_it_nor_Arabic_is_slanted(string theme)
    {
        Assert.Contains(":lang(ja) { word-break: auto-phrase; line-break: strict; }", Style(theme), StringComparison.Ordinal);
        Assert.Matches(@"html :is\(:lang\(ar\),[^{]*:lang\(ja\),[^{]*:not\(#none\) \{ font-style: normal;", Style(theme));
    }

    // A poster's own triangle would lie under the one that the browser draws.
    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void The_poster_of_a_film_leaves_its_middle_to_the_browser(string theme) =>
        Assert.All(
            Move().Matches(Theme.TextsOf(theme)["film.svg"]),
            move => Assert.False(double.Parse(move.Groups["x"].Value, CultureInfo.InvariantCulture) is > 2 and < 14, move.Value));

    [Fact]
    public void Each_film_on_the_solution_page_has_a_title_of_its_own()
    {
        var plan = Sites.Plan(A.Book(
            A.Stage("lid") with { Clip = A.Clip("one.mp4", 1, 2) },
            A.Stage("tray") with { Clip = A.Clip("one.mp4", 2, 3) },
            A.Stage("jar") with { Clip = A.Clip("other.mp4", 1, 2) }));
        var titles = Sites.Parse(Sites.Pages(plan)["solution.html"]).QuerySelectorAll("video").Select(film => film.GetAttribute("aria-label")!).ToArray();

        Assert.Equal(
            [
                "Film 1 of 2", "Film 2 of 2",
                "“lid-title”: the film, from 0:01 to 0:02", "“tray-title”: the film, from 0:02 to 0:03", "“jar-title”: the film, from 0:01 to 0:02",
            ],
            titles);
    }

    private static string Style(string theme) => Theme.TextsOf(theme)["theme.css"];

    [GeneratedRegex("content: \"(?<text>[^\"]*)\";")]
    private static partial Regex Content();

    [GeneratedRegex("content: \"(?<text>[^\"]+)\" / \"\";")]
    private static partial Regex Silent();

    [GeneratedRegex(@"[M]\s*(?<x>[\d.]+)")]
    private static partial Regex Move();
}
