using HintBook.Pages;
using HintBook.Tests.Books;

namespace HintBook.Tests.Pages;

// What stands in a page's head is seen in tabs, bookmarks, searches and shared links: it says only what the closed box shows.
public class HeadTests
{
    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void A_pages_title_says_which_box_but_never_which_stage(string theme)
    {
        Assert.Equal("Step · A box", Sites.StagePage(Sites.Everything(), "lid", theme).Title);
    }

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void No_head_says_anything_of_a_stage(string theme)
    {
        foreach (var html in Sites.Pages(Sites.Everything(), theme).Values)
        {
            var head = Sites.Parse(html).Head!.OuterHtml;
            Assert.All(["lid", "left", "right", "herring", "jar"], secret => Assert.DoesNotContain(secret, head, StringComparison.Ordinal));
        }
    }

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void Search_engines_may_list_the_front_page_alone(string theme)
    {
        var listed = Sites.Pages(Sites.Everything(), theme)
            .Where(page => Sites.Parse(page.Value).QuerySelector("meta[name=robots][content=noindex]") is null)
            .Select(page => page.Key);

        Assert.Equal(["index.html"], listed);
    }

    [Fact]
    public void The_share_preview_is_the_front_photo_of_the_closed_box()
    {
        var preview = Sites.StagePage(Sites.Everything(), "jar").QuerySelector("meta[property='og:image']")!;

        Assert.Equal("https://alder-row.example/box/pictures/front.jpg-1600.jpg", preview.GetAttribute("content"));
    }

    // W3C Content Security Policy Level 3; an inline script or style, or an address elsewhere, would be refused by it.
    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void Every_page_allows_only_the_site_itself_and_needs_nothing_else(string theme)
    {
        foreach (var html in Sites.Pages(Sites.Everything(), theme).Values)
        {
            var page = Sites.Parse(html);
            Assert.Equal(
                "default-src 'self'; connect-src 'none'; font-src 'none'; frame-src 'none'; object-src 'none'; form-action 'none'; base-uri 'none'",
                page.QuerySelector("meta[http-equiv='Content-Security-Policy']")!.GetAttribute("content"));
            Assert.All(page.QuerySelectorAll("script"), script => Assert.Equal("", script.TextContent));
            Assert.Empty(page.QuerySelectorAll("style, [style], form, iframe, base"));
            Assert.DoesNotContain(page.All.SelectMany(each => each.Attributes), each => each.Name.StartsWith("on", StringComparison.Ordinal));
            Assert.All(page.QuerySelectorAll("[src], link[rel=stylesheet], link[rel=icon]"), each =>
                Assert.DoesNotContain(":", each.GetAttribute("src") ?? each.GetAttribute("href")!, StringComparison.Ordinal));
        }
    }

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void Every_link_inside_the_site_names_a_file_that_is_there(string theme)
    {
        var plan = Sites.Everything();
        var (site, _) = Site.Build(plan, Theme.BuiltIn(theme).Theme);
        var there = site.Files.Select(file => file.Path)
            .Concat(plan.Films.Values.SelectMany(film => film.Captions.Select(film.CaptionsIn).Append(film.Path).Append(film.ChaptersIn("en"))))
            .Concat(plan.Pictures.Values.SelectMany(picture => picture.Files).Select(file => file.Path))
            .ToHashSet(StringComparer.Ordinal);

        foreach (var html in Sites.Texts(site.Files).Values)
        {
            var page = Sites.Parse(html);
            var leads = page.QuerySelectorAll("a[href], link[href]").Select(each => each.GetAttribute("href")!)
                .Concat(page.QuerySelectorAll("[src]").Select(each => each.GetAttribute("src")!))
                .Concat(page.QuerySelectorAll("[srcset]").SelectMany(each => each.GetAttribute("srcset")!.Split(", ").Select(one => one.Split(' ')[0])))
                .Where(address => !address.StartsWith('#') && !address.StartsWith("mailto:", StringComparison.Ordinal))
                .Select(address => address.Split('#')[0]);
            Assert.All(leads, address => Assert.Contains(address, there));
        }
    }

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void An_older_address_keeps_working_and_says_where_the_page_is_now(string theme)
    {
        var plan = Sites.Everything();
        var names = plan.Addresses.Names;
        plan = plan with { Addresses = plan.Addresses with { Names = names.SetItem("lid", [.. names["lid"], "k7qm3x0a"]) } };
        var older = Sites.Parse(Sites.Pages(plan, theme)["k7qm3x0a.html"]);

        Assert.Equal(plan.Addresses.PageOf("lid"), older.QuerySelector("link[rel=canonical]")!.GetAttribute("href"));
        Assert.Equal("lid-title", older.QuerySelector("h1")!.TextContent);
        Assert.Equal(names["lid"][0], older.DocumentElement.GetAttribute("data-page"));
    }

    [Fact]
    public void Two_books_keep_what_a_reader_did_apart()
    {
        var one = Sites.Plan(A.Book(A.Stage("lid")) with { Id = A.Value("one") });
        var two = Sites.Plan(A.Book(A.Stage("lid")) with { Id = A.Value("two") });

        Assert.NotEqual(Key(one), Key(two));
        static string? Key(SitePlan plan) => Sites.StagePage(plan, "lid").DocumentElement.GetAttribute("data-book");
    }

    // Languages and their direction: Unicode CLDR, characterOrder (from memory).
    [Theory]
    [InlineData("en", "ltr")]
    [InlineData("ar", "rtl")]
    [InlineData("he-IL", "rtl")]
    [InlineData("fa", "rtl")]
    [InlineData("az-Arab", "rtl")]
    [InlineData("ks-Deva", "ltr")]
    [InlineData("ja", "ltr")]
    public void A_page_runs_in_its_languages_direction(string language, string direction)
    {
        var plan = Sites.Plan(A.Book(A.Stage("lid")) with { Language = A.Value(language) });
        var page = Sites.Parse(Sites.Texts(Site.Build(plan, Theme.BuiltIn(Theme.Default).Theme).Site.Files)["index.html"]);

        Assert.Equal(language, page.DocumentElement.GetAttribute("lang"));
        Assert.Equal(direction, page.DocumentElement.GetAttribute("dir"));
    }
}
