using System.Globalization;
using AngleSharp.Dom;
using HintBook.Books;
using HintBook.Pages;
using HintBook.Tests.Books;

namespace HintBook.Tests.Pages;

// A reader gets one help at a time, and nothing of a later one or of a later stage before it is asked for.
public class TierTests
{
    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void Every_page_is_HTML_without_a_single_error(string theme)
    {
        foreach (var (path, html) in Sites.Pages(Sites.Everything(), theme))
            Assert.True(Sites.Parse(html).QuerySelector("h1") is not null, path);
    }

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void A_stage_page_shows_its_title_and_sign(string theme)
    {
        var uncovered = Sites.Uncovered(Sites.StagePage(Sites.Everything(), "lid", theme));

        Assert.Contains("lid-title", uncovered, StringComparison.Ordinal);
        Assert.Contains("lid-sign", uncovered, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void Nothing_of_a_later_tier_or_stage_is_uncovered(string theme)
    {
        var plan = Sites.Everything();
        string[] later = ["-nudge", "-clue", "-answer", "-reset", "-mark", "-alt", "#t="];
        foreach (var stage in plan.Book.Stages.Select(stage => stage.Id.Value))
        {
            var uncovered = Sites.Uncovered(Sites.StagePage(plan, stage, theme));
            var others = plan.Book.Stages.Select(other => other.Id.Value).Where(other => other != stage);
            Assert.All(later.Concat(others.Select(other => $"{other}-")), word => Assert.DoesNotContain(word, uncovered, StringComparison.Ordinal));
        }
    }

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void The_front_page_names_only_the_stages_that_are_open_from_the_start(string theme)
    {
        var text = Sites.Pages(Sites.Everything(), theme)["index.html"];

        Assert.Contains("lid-title", text, StringComparison.Ordinal);
        Assert.All(["left", "right", "herring", "jar"], later => Assert.DoesNotContain($"{later}-", text, StringComparison.Ordinal));
        Assert.All(["-nudge", "-clue", "-answer"], tier => Assert.DoesNotContain(tier, text, StringComparison.Ordinal));
    }

    public static TheoryData<string, string> EndPages =>
        [.. from theme in Theme.BuiltInNames from page in new[] { "solution.html", "reset.html" } select (theme, page)];

    [Theory]
    [MemberData(nameof(EndPages))]
    public void The_pages_for_the_end_uncover_no_stage_before_their_warning_is_passed(string theme, string page)
    {
        var document = Sites.Parse(Sites.Pages(Sites.Everything(), theme)[page]);

        Assert.DoesNotContain("lid", Sites.Uncovered(document), StringComparison.Ordinal);
        Assert.Contains("lid-title", document.Body!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(document.QuerySelector(".warning"));
    }

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void The_clue_lies_inside_the_nudge_and_the_answer_inside_the_clue(string theme)
    {
        var page = Sites.StagePage(Sites.Everything(), "lid", theme);

        Assert.Equal(["lid-nudge", "lid-clue", "lid-answer"], page.QuerySelectorAll(".prose > p").Select(each => each.TextContent));
        Assert.Equal([1, 2, DepthOfAnswer(theme)], page.QuerySelectorAll(".prose").Select(DepthOf));
    }

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void A_tiers_photos_lie_inside_the_tier_and_show_with_its_text(string theme)
    {
        var page = Sites.StagePage(Sites.Everything(), "lid", theme);

        Assert.Equal(
            [("lid-sign-alt", 1), ("lid-nudge-alt", 1), ("lid-clue-alt", 2), ("lid-answer-alt", DepthOfAnswer(theme))],
            page.QuerySelectorAll("img").Select(image => (image.GetAttribute("alt")!, DepthOf(image))));
    }

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void Every_details_element_begins_with_its_summary(string theme)
    {
        foreach (var html in Sites.Pages(Sites.Everything(), theme).Values)
            Assert.All(Sites.Parse(html).QuerySelectorAll("details"), each => Assert.Equal("summary", each.FirstElementChild!.LocalName));
    }

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void Cautions_stand_in_the_open_before_the_help(string theme)
    {
        var page = Sites.StagePage(Sites.Everything(), "lid", theme);
        var cautions = page.QuerySelector(".cautions")!;

        Assert.Equal(0, DepthOf(cautions));
        Assert.Contains("The rim.", cautions.TextContent, StringComparison.Ordinal);
        Assert.Contains("licensed", cautions.TextContent, StringComparison.Ordinal);
        Assert.True(cautions.CompareDocumentPosition(page.QuerySelector(".tier")!).HasFlag(DocumentPositions.Following));
    }

    // W3C Media Fragments URI 1.0, 4.2.1: t=begin,end in seconds.
    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void The_film_plays_only_the_part_that_shows_the_stage(string theme)
    {
        var film = Sites.StagePage(Sites.Everything(), "lid", theme).QuerySelector("video")!;

        Assert.Equal("films/film.mp4#t=136,183", film.GetAttribute("src"));
        Assert.Equal("none", film.GetAttribute("preload"));
        Assert.Equal(DepthOfAnswer(theme), DepthOf(film));
    }

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void Marks_are_a_numbered_list_beside_the_photo(string theme)
    {
        var answer = Sites.StagePage(Sites.Everything(), "lid", theme).QuerySelector(".answer")!;

        Assert.Equal(["lid-answer-mark", "lid-second-mark"], answer.QuerySelectorAll("figcaption ol li").Select(mark => mark.TextContent));
        Assert.Equal(["1", "2"], answer.QuerySelectorAll("svg text").Select(number => number.TextContent));
        var drawing = answer.QuerySelector("svg[role=img]")!;
        Assert.Equal("0 0 1600 1200", drawing.GetAttribute("viewBox"));
        Assert.Equal("762", drawing.QuerySelector("circle.point")!.GetAttribute("cy"));
        Assert.Equal("1: lid-answer-mark; 2: lid-second-mark", drawing.GetAttribute("aria-label"));
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(100, 100)]
    [InlineData(99.9, 0.1)]
    public void A_mark_at_the_edge_stays_inside_the_picture(double x, double y)
    {
        var plan = Sites.Plan(A.Book(A.Stage("lid") with { Photos = [A.Photo("card.jpg", Place.Clue, "A card.", A.Mark(x, y, "the corner"))] }));
        var circle = Sites.StagePage(plan, "lid").QuerySelector("svg[role=img] circle:not([class])")!;
        var radius = Number("r");

        Assert.InRange(Number("cx"), radius, 1600 - radius);
        Assert.InRange(Number("cy"), radius, 1200 - radius);

        double Number(string attribute) => double.Parse(circle.GetAttribute(attribute)!, CultureInfo.InvariantCulture);
    }

    // The veil is drawn by the theme, so it can give away no more than the picture's shape.
    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void What_stands_before_a_picture_is_the_same_whatever_the_picture_shows(string theme)
    {
        var plan = Sites.Plan(A.Book(A.Stage("lid") with { Photos = [Veiled("one"), Veiled("other")] }));
        var veils = Sites.StagePage(plan, "lid", theme).QuerySelectorAll(".veiled > summary").Select(summary => summary.OuterHtml).ToArray();

        Assert.Equal(2, veils.Length);
        Assert.Equal(veils[0], veils[1]);
        Assert.DoesNotContain("img", veils[0], StringComparison.Ordinal);

        static Photo Veiled(string name) => A.Photo($"{name}.jpg", Place.Clue, name) with { Shows = [A.Value("jar")] };
    }

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void A_photo_that_was_not_published_is_left_out(string theme)
    {
        var plan = Sites.Everything();
        plan = plan with { Pictures = plan.Pictures.Remove("lid-clue.jpg") };

        Assert.DoesNotContain("lid-clue-alt", Sites.StagePage(plan, "lid", theme).Body!.InnerHtml, StringComparison.Ordinal);
    }

    // A theme may ask once more before it shows the answer.
    private static int DepthOfAnswer(string theme) => Theme.TextsOf(theme)["parts/answer.html"].Contains("answer_now", StringComparison.Ordinal) ? 4 : 3;

    private static int DepthOf(IElement element) => element.Ancestors<IElement>().Count(each => each.LocalName == "details");
}
