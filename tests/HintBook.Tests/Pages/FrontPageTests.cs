using AngleSharp.Dom;
using HintBook.Books;
using HintBook.Pages;
using HintBook.Tests.Books;

namespace HintBook.Tests.Pages;

// The first page: who made what, a look at it, two ways in, then dangers, the story, how hints work, and the rest.
public class FrontPageTests
{
    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void Its_pieces_stand_in_the_order_in_which_a_reader_wants_them(string theme)
    {
        var page = Front(Sites.Everything(), theme);
        string[] pieces = ["h1", ".maker", "figure", ".ways", ".cautions", ".welcome", ".how", ".way", ".first", ".where", "footer"];

        Assert.All(pieces.Zip(pieces.Skip(1)), pair => Assert.True(
            page.QuerySelector(pair.First)!.CompareDocumentPosition(page.QuerySelector(pair.Second)!).HasFlag(DocumentPositions.Following),
            $"{pair.First} doesn't stand before {pair.Second}."));
    }

    [Fact]
    public void The_maker_stands_by_name_or_by_the_mark_that_says_the_name()
    {
        var plan = Sites.Everything();
        Assert.Equal("Made by Alder Row Workshop.", Front(plan).QuerySelector("header .maker")!.TextContent);

        var logo = A.Photo("mark.png", Place.Logo, "Alder Row Workshop");
        var marked = plan with
        {
            Book = plan.Book with { Maker = plan.Book.Maker! with { Logo = logo } },
            Pictures = plan.Pictures.Add("mark.png", A.Picture("mark.png")),
        };
        var mark = Front(marked).QuerySelector("header .maker img")!;
        Assert.Equal("Made by Alder Row Workshop.", mark.GetAttribute("alt"));
        Assert.Equal("pictures/mark.png-400.jpg", mark.GetAttribute("src"));
    }

    [Fact]
    public void Start_leads_to_the_first_step_or_to_the_list_where_there_are_several()
    {
        var one = Sites.Plan(A.Book(A.Stage("lid"), A.Stage("tray")));
        Assert.Equal(one.Addresses.PageOf("lid"), Front(one).QuerySelector("[data-start]")!.GetAttribute("href"));

        var book = A.Book(A.Stage("lid"), A.Stage("tray"));
        var several = Front(Sites.Plan(book, A.Survey(book)));
        Assert.Equal("#first", several.QuerySelector("[data-start]")!.GetAttribute("href"));
        Assert.Equal(2, several.QuerySelectorAll("#first li").Length);
    }

    // A fold that is open: without script its danger is told in full.
    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void Each_danger_of_the_box_is_an_open_fold(string theme)
    {
        var fold = Assert.Single(Front(Sites.Everything(), theme).QuerySelectorAll(".cautions details"));

        Assert.True(fold.HasAttribute("open"));
        Assert.Equal("Heavy", fold.QuerySelector("summary")!.TextContent.Trim());
        Assert.Contains("It weighs 6 kg.", fold.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_box_without_photo_maker_dangers_or_story_has_its_two_ways_in() =>
        Assert.Equal(2, Front(Sites.Plan(A.Book(A.Stage("lid")))).QuerySelectorAll(".ways a").Length);

    private static IDocument Front(SitePlan plan, string theme = Theme.Default) => Sites.Parse(Sites.Pages(plan, theme)["index.html"]);
}
