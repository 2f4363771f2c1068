using HintBook.Books;
using HintBook.Pages;
using HintBook.Tests.Books;
using HintBook.Text;

namespace HintBook.Tests.Pages;

// Whatever an author or a maker of a theme writes, a reader's browser gets it as text.
public class EscapingTests
{
    private const string Sly = "<script>alert('1')</script>\"><img src=x onerror=alert(1)> & Söhne";

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void Titles_signs_names_notes_and_descriptions_are_shown_as_written(string theme)
    {
        var stage = A.Stage("lid") with
        {
            Title = A.Value(Sly),
            Sign = A.Value(Sly),
            Cautions = [A.Caution(CautionKind.Glass, Sly)],
            Photos = [A.Photo("a.jpg", Place.Clue, Sly, A.Mark(1, 2, Sly))],
            Moves = [new Move { Name = A.Value("lift"), Undo = new Undo([A.Value("tool")], [], Sly, A.Somewhere) }],
        };
        var book = A.Book(stage, A.Stage("jar")) with
        {
            Title = A.Value(Sly),
            Maker = new Maker(A.Value(Sly), A.Value("javascript:alert(1)")),
            Box = new Box { Things = [A.Thing("jar"), A.Thing("tool", Sly) with { Name = Sly }] },
        };
        var plan = Sites.Plan(book);

        foreach (var html in Sites.Pages(plan, theme).Values)
        {
            var page = Sites.Parse(html);
            Assert.Single(page.QuerySelectorAll("script"));
            Assert.Empty(page.QuerySelectorAll("[onerror], [src=x], a[href^=javascript]"));
        }

        var stagePage = Sites.StagePage(plan, "lid", theme);
        Assert.Equal(Sly, stagePage.QuerySelector("h1")!.TextContent);
        Assert.Equal(Sly, stagePage.QuerySelector("img")!.GetAttribute("alt"));
        Assert.Equal(Sly, stagePage.QuerySelector(".cautions .note")!.TextContent);
        Assert.Equal(Sly, stagePage.QuerySelector("meta[property='og:title']")!.GetAttribute("content"));
    }

    [Fact]
    public void HTML_in_Markdown_is_shown_as_text()
    {
        var (html, findings) = ProseHtml.Render(A.Prose("<script>alert(1)</script>\n\nAn <b onclick=x>inline</b> tag."));

        Assert.Empty(findings);
        Assert.Empty(Sites.Fragment(html.Text).Body!.QuerySelectorAll("script, b"));
        Assert.Contains("An <b onclick=x>inline</b> tag.", Sites.Fragment(html.Text).Body!.TextContent, StringComparison.Ordinal);
    }

    // The odd spellings are from the OWASP cheat sheet on filter evasion (from memory).
    [Theory]
    [InlineData("[text](javascript:alert(1))")]
    [InlineData("[text](JaVaScRiPt:alert(1))")]
    [InlineData("[text](<java\tscript:alert(1)>)")]
    [InlineData("[text](&#106;avascript:alert(1))")]
    [InlineData("[text](\\\njavascript:alert(1))")]
    [InlineData("[text](data:text/html;base64,PHNjcmlwdD4=)")]
    [InlineData("[text](vbscript:x)")]
    [InlineData("[text](file:///etc/passwd)")]
    [InlineData("[text](//elsewhere.example)")]
    [InlineData("[text](04-the-smoker.md)")]
    [InlineData("[text][there]\n\n[there]: javascript:alert(1)")]
    [InlineData("<javascript:alert(1)>")]
    public void No_link_leads_anywhere_but_to_http_https_mailto_and_places_on_the_page(string markdown)
    {
        var (html, findings) = ProseHtml.Render(A.Prose(markdown));

        Assert.Empty(Sites.Fragment(html.Text).Body!.QuerySelectorAll("a"));
        // The one with the line break is no link in CommonMark, so nothing is left out.
        if (!markdown.Contains('\n') || markdown.Contains("[there]", StringComparison.Ordinal))
            Assert.Equal(MarkdownFindings.LinkDropped, Assert.Single(findings).Code);
    }

    [Theory]
    [InlineData("[text](https://bees.example/a?b=c&d)", "https://bees.example/a?b=c&d", "noreferrer")]
    [InlineData("<http://bees.example>", "http://bees.example", "noreferrer")]
    [InlineData("[text](mailto:help@alder-row.example)", "mailto:help@alder-row.example", null)]
    [InlineData("<help@alder-row.example>", "mailto:help@alder-row.example", null)]
    [InlineData("[text](#there)", "#there", null)]
    public void Good_links_are_kept_and_tell_other_sites_nothing(string markdown, string address, string? rel)
    {
        var (html, findings) = ProseHtml.Render(A.Prose(markdown));
        var link = Sites.Fragment(html.Text).QuerySelector("a")!;

        Assert.Empty(findings);
        Assert.Equal(address, link.GetAttribute("href"));
        Assert.Equal(rel, link.GetAttribute("rel"));
    }

    [Fact]
    public void A_link_that_is_left_out_keeps_its_text_and_says_where_it_was()
    {
        var (html, findings) = ProseHtml.Render(A.Prose("See\n[the *smoker*](smoker.md) now."));

        Assert.Equal("<p>See\nthe <em>smoker</em> now.</p>\n", html.Text);
        Assert.Equal("[the *smoker*](smoker.md)", Assert.Single(findings).At.Text);
    }

    [Fact]
    public void An_image_in_the_text_is_a_finding_that_says_where_photos_go()
    {
        var (html, findings) = ProseHtml.Render(A.Prose("![the card](card.jpg)"));

        Assert.Equal("<p>the card</p>\n", html.Text);
        Assert.Equal(MarkdownFindings.ImageDropped, Assert.Single(findings).Code);
        Assert.Contains("photos:", findings[0].Help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("- ")]
    [InlineData("> ")]
    [InlineData("1. ")]
    [InlineData("*a ")]
    [InlineData("[")]
    public void Text_nested_ten_thousand_deep_is_a_finding_or_text_but_never_a_crash(string opening)
    {
        var prose = A.Prose(string.Concat(Enumerable.Repeat(opening, 10_000)) + "x");
        var (html, findings) = ProseHtml.Render(prose);

        Assert.True(findings.Any(finding => finding.Code == MarkdownFindings.TooDeep) || html.Text.Contains('x'));
    }

    [Fact]
    public void Fifty_thousand_nested_lists_are_too_deep()
    {
        var finding = Assert.Single(ProseHtml.Render(A.Prose(string.Concat(Enumerable.Repeat("- ", 50_000)) + "x")).Findings);

        Assert.Equal(MarkdownFindings.TooDeep, finding.Code);
        Assert.Equal(Severity.Error, finding.Code.Severity);
    }
}
