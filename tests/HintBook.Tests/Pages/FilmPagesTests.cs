using HintBook.Pages;
using HintBook.Tests.Books;

namespace HintBook.Tests.Pages;

public class FilmPagesTests
{
    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void A_film_that_lives_elsewhere_is_a_plain_link_with_the_moment_and_nothing_of_it_is_loaded(string theme)
    {
        var plan = Elsewhere();

        var page = Sites.StagePage(plan, "lid", theme);

        var link = Assert.Single(page.QuerySelectorAll("details.answer .elsewhere a, details[data-keep=answer] .elsewhere a").DistinctBy(each => each));
        Assert.Equal("https://films.example/box?t=136", link.GetAttribute("href"));
        Assert.Equal("external noopener noreferrer", link.GetAttribute("rel"));
        Assert.Contains("films.example", link.ParentElement!.TextContent, StringComparison.Ordinal);
        Assert.Empty(page.QuerySelectorAll("video, iframe, embed, object, [src^=http]"));
    }

    [Fact]
    public void The_solution_page_links_to_the_whole_of_it_and_to_each_part()
    {
        var page = Sites.Parse(Sites.Pages(Elsewhere())["solution.html"]);

        Assert.Equal(
            ["https://films.example/box?t=0", "https://films.example/box?t=136", "https://films.example/box?t=136"],
            page.QuerySelectorAll("a[href^='https://films.example']").Select(link => link.GetAttribute("href")));
        Assert.Equal("2:16 lid-title", page.QuerySelector(".chapters li")!.TextContent);
    }

    [Fact]
    public void A_part_of_a_second_is_before_the_moment_and_not_after_it() =>
        Assert.Equal("https://films.example/0/?t=59", FilmView.MomentOf("https://films.example/0/?t={seconds}", TimeSpan.FromSeconds(59.9)));

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void A_link_that_leads_to_the_start_of_a_film_promises_no_moment(string theme)
    {
        const string address = "https://films.example/box";

        var link = Assert.Single(Sites.StagePage(Elsewhere(address), "lid", theme)
            .QuerySelectorAll("details.answer .elsewhere a, details[data-keep=answer] .elsewhere a").DistinctBy(each => each));

        Assert.Equal((address, "The whole film"), (link.GetAttribute("href"), link.TextContent));
    }

    [Fact]
    public void The_chapters_of_such_a_film_are_told_without_links()
    {
        var page = Sites.Parse(Sites.Pages(Elsewhere("https://films.example/box"))["solution.html"]);

        Assert.Equal("2:16 lid-title", page.QuerySelector(".chapters li")!.TextContent);
        Assert.Empty(page.QuerySelectorAll(".chapters a"));
    }

    private static SitePlan Elsewhere(string address = "https://films.example/box?t={seconds}")
    {
        var book = A.Book(A.Stage("lid") with { Clip = A.Clip(null, 136, 183) }, A.Stage("jar", A.Gives("jar"))) with
        {
            FilmAddress = A.Value(address),
        };
        return Sites.Plan(book);
    }
}
