using HintBook.Pages;
using HintBook.Tests.Books;

namespace HintBook.Tests.Pages;

// HTML that an author asked for may set text. It can't open what is closed, and it can't load, run or style anything.
public class OwnHtmlTests
{
    [Theory]
    [InlineData("H<sub>2</sub>O", "<p>H<sub>2</sub>O</p>\n")]
    [InlineData("<table><tr><td>a</td></tr></table>", "<table><tbody><tr><td>a</td></tr></tbody></table>\n")]
    [InlineData("<kbd>A</kbd> and **b**", "<p><kbd>A</kbd> and <strong>b</strong></p>\n")]
    public void What_sets_text_stays(string markdown, string html) => Assert.Equal(html, Html(markdown).Html);

    [Theory]
    [InlineData("<script>alert(1)</script>", "script")]
    [InlineData("a <img src=x onerror=alert(1)> b", "<img>")]
    [InlineData("<p onclick=alert(1)>x</p>", "onclick")]
    [InlineData("<p style='display:none'>x</p>", "style")]
    [InlineData("<iframe src=https://elsewhere.example></iframe>", "<iframe>")]
    [InlineData("<a href='javascript:alert(1)'>x</a>", "href")]
    [InlineData("<svg><script>alert(1)</script></svg>", "<svg>")]
    [InlineData("<base href=https://elsewhere.example>", "<base>")]
    [InlineData("<form action=/x><input></form>", "<form>")]
    [InlineData("<style>p{}</style>", "<style>")]
    public void What_loads_runs_or_styles_is_left_out_and_told(string markdown, string leftOut)
    {
        var (html, findings) = Html(markdown);

        Assert.DoesNotContain("alert", html.Replace("&lt;", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("elsewhere", html, StringComparison.Ordinal);
        Assert.DoesNotContain("style", html, StringComparison.Ordinal);
        Assert.Contains(findings, finding => finding.Code == MarkdownFindings.MarkupDropped && finding.Message.Contains(leftOut, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("</details></details></div> free")]
    [InlineData("</div></main></body> free")]
    [InlineData("<div><p><b>free")]
    [InlineData("<!-- free")]
    public void No_stray_tag_opens_what_is_closed(string nudge)
    {
        var book = A.Book(A.Stage("lid") with { Nudge = A.Prose(nudge) }) with { Html = true };
        var (site, _) = Site.Build(Sites.Plan(book), Theme.BuiltIn(Theme.Default).Theme);
        var page = Sites.Parse(Sites.Texts(site.Files)[A.Addresses(book).PageOf("lid")]);

        Assert.DoesNotContain("free", Sites.Uncovered(page), StringComparison.Ordinal);
        Assert.DoesNotContain("lid-answer", Sites.Uncovered(page), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_being_asked_for_it_is_shown_as_it_was_written() =>
        Assert.Equal("<p>H&lt;sub&gt;2&lt;/sub&gt;O</p>\n", ProseHtml.Render(A.Prose("H<sub>2</sub>O")).Html.Text);

    private static (string Html, IReadOnlyList<HintBook.Text.Finding> Findings) Html(string markdown)
    {
        var (html, findings) = ProseHtml.Render(A.Prose(markdown), html: true);
        return (html.Text, findings);
    }
}
