using CsCheck;
using HintBook.Audit;

namespace HintBook.Tests.Audit;

public class SiteAuditTests
{
    [Fact]
    public void A_good_site_has_no_faults_and_every_link_is_counted()
    {
        using var site = Site.Good();
        var report = site.Audit();
        Assert.Empty(report.Faults);
        Assert.True(report.IsClean);
        Assert.Equal((7, 2), (report.Files, report.Pages));

        // Each page loads a style sheet and a script; the front page has one link and three addresses of pictures, the other two
        // links; the style sheet has one address.
        Assert.Equal((2 + 4 + 2 + 2 + 1, 2), (report.Links, report.Outgoing));
    }

    [Theory]
    [InlineData("""<a href="gone.html">x</a>""", "leads to a file that is not there")]
    [InlineData("""<a href="A7k2.html">x</a>""", "by letter case")]
    [InlineData("""<a href="a7k2.html#nowhere">x</a>""", "names a place that is not in “a7k2.html”")]
    [InlineData("""<a href="#nowhere">x</a>""", "names a place that is not in “b.html”")]
    [InlineData("""<a href="../elsewhere.html">x</a>""", "leaves the site's folder")]
    [InlineData("""<a href="look/../%2e%2e/elsewhere.html">x</a>""", "leaves the site's folder")]
    [InlineData("""<a href="/index.html">x</a>""", "begins at the server's root")]
    [InlineData("""<a href="look\site.css">x</a>""", "has a backslash")]
    [InlineData("""<a href="look/">x</a>""", "names a folder")]
    [InlineData("""<a href=".">x</a>""", "names a folder")]
    [InlineData("""<a href="javascript:go()">x</a>""", "runs a script")]
    [InlineData("""<a href=" java&#10;script:go()">x</a>""", "runs a script")]
    [InlineData("""<a href="data:text/html,x">x</a>""", "carries a document")]
    [InlineData("""<a href="steam://x">x</a>""", "has a scheme")]
    [InlineData("""<img src="gone.jpg" alt="" width="1" height="1">""", "leads to a file that is not there")]
    [InlineData("""<img src="https://else.example/x.jpg" alt="" width="1" height="1">""", "is loaded from elsewhere")]
    [InlineData("""<img src="//else.example/x.jpg" alt="" width="1" height="1">""", "is loaded from elsewhere")]
    [InlineData("""<img src="pictures/3f-400w.jpg" srcset="pictures/3f-400w.jpg 400w, gone.jpg 800w" alt="" width="1" height="1">""", "“gone.jpg” leads to")]
    [InlineData("""<img src="pictures/3f-400w.jpg" srcset=" ,pictures/3f-400w.jpg 1x,gone.jpg" alt="" width="1" height="1">""", "“gone.jpg” leads to")]
    [InlineData("""<img src="" alt="" width="1" height="1">""", "is empty")]
    [InlineData("""<img src="pictures/3f-400w.jpg" width="1" height="1">""", "has no alt")]
    [InlineData("""<img src="pictures/3f-400w.jpg" alt="" height="1">""", "has no width")]
    [InlineData("""<img src="pictures/3f-400w.jpg" alt="" width="1" height="50%">""", "has no height")]
    [InlineData("""<video src="gone.mp4"></video>""", "leads to a file that is not there")]
    [InlineData("""<video poster="gone.jpg"></video>""", "leads to a file that is not there")]
    [InlineData("""<iframe src="gone.html"></iframe>""", "leads to a file that is not there")]
    [InlineData("""<svg><use href="look/grain.svg#gone"/></svg>""", "names a place that is not in “look/grain.svg”")]
    [InlineData("""<p id="x"></p><p id="x"></p>""", "is there twice")]
    [InlineData("""<p id=""></p>""", "An id must have letters")]
    [InlineData("""<label for="nobody">x</label>""", "which is not in the page")]
    [InlineData("""<script>go()</script>""", "A script stands in the page")]
    [InlineData("""<div><style>p{}</style></div>""", "A style sheet stands in the page")]
    [InlineData("""<p style="color:red">x</p>""", "“style” belongs in a style sheet")]
    [InlineData("""<p onclick="go()">x</p>""", "“onclick” runs a script")]
    [InlineData("""<p><div></p></div>""", "not well formed")]
    [InlineData("""<p>a & b &nosuch; <b><i></b></i></p>""", "not well formed")]
    public void A_fault_in_a_page_is_found_at_its_place(string body, string message)
    {
        using var site = Site.Good().Write("b.html", Site.Page(body));
        var faults = site.Audit().Faults;
        Assert.Contains(faults, f => f.Message.Contains(message, StringComparison.Ordinal));
        Assert.All(faults, f => Assert.Equal(("b.html", 7), (f.File, f.Line)));
    }

    [Theory]
    [InlineData("lang=\"en\"", "", "doesn't say its language")]
    [InlineData("<title>A page</title>", "", "needs one <title>")]
    [InlineData("<title>A page</title>", "<title> </title>", "needs one <title>")]
    [InlineData("<meta charset=\"utf-8\">", "", "doesn't say that it is UTF-8")]
    [InlineData("name=\"viewport\"", "name=\"view\"", "no <meta name=\"viewport\">")]
    [InlineData("noindex", "index", "Only the front page may be found")]
    [InlineData("look/site.css", "look/gone.css", "leads to a file that is not there")]
    [InlineData("look/site.js", "https://else.example/x.js", "is loaded from elsewhere")]
    [InlineData("<meta charset", "<base href=\"look/\"><meta charset", "changes what every address")]
    public void A_page_without_what_every_page_has_is_found(string has, string instead, string message)
    {
        using var site = Site.Good().Write("b.html", Site.Page("<p>x</p>").Replace(has, instead, StringComparison.Ordinal));
        var fault = Assert.Single(site.Audit().Faults);
        Assert.Contains(message, fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("more/index.html", 1)]
    [InlineData("en/index.html", 0)]
    public void Only_the_front_page_of_each_language_may_be_found_by_search_engines(string path, int faults)
    {
        using var site = Site.Good().Write(path, Site.Page("<p>x</p>", robots: "").Replace("look/", "../look/", StringComparison.Ordinal));
        Assert.Equal(faults, site.Audit().Faults.Length);
    }

    [Theory]
    [InlineData("p { background: url(gone.png) }", 1, 17)]
    [InlineData("p {\n  background: URL( 'gone.png' ) }", 2, 15)]
    [InlineData("/* a\nb */ @import \"gone.css\";", 2, 6)]
    [InlineData("@font-face { src: url(\"https://else.example/f.woff2\") }", 1, 19)]
    public void A_style_sheets_addresses_are_followed(string css, int line, int column)
    {
        using var site = Site.Good().Write("look/site.css", css);
        var fault = Assert.Single(site.Audit().Faults);
        Assert.Equal(("look/site.css", line, column), (fault.File, fault.Line, fault.Column));
    }

    [Theory]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'><script/></svg>", "must not hold a script")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg' onload='go()'/>", "runs a script")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'><a href='gone.html'/></svg>", "not there")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'>", "not well-formed")]
    public void A_fault_in_a_drawing_is_found(string svg, string message)
    {
        using var site = Site.Good().Write("look/grain.svg", svg);
        Assert.Contains(message, Assert.Single(site.Audit().Faults).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_page_that_is_not_utf8_is_found()
    {
        using var site = Site.Good().Write("b.html", [0x3C, 0xFF, 0xFE]);
        Assert.Equal("The file is not UTF-8 text.", Assert.Single(site.Audit().Faults).Message);
    }

    [Fact]
    public void Two_names_that_differ_by_case_alone_are_found()
    {
        using var site = Site.Good().Write("look/GRAIN.svg", "<svg xmlns='http://www.w3.org/2000/svg'/>");
        Assert.Contains(site.Audit().Faults, f => f.Message.Contains("by letter case alone", StringComparison.Ordinal));
    }

    [Fact]
    public void A_link_on_the_disk_is_found_and_not_followed()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Making a link on the disk needs special rights there.");
        using var site = Site.Good();
        File.CreateSymbolicLink(Path.Combine(site.Folder, "outside.html"), "/dev/zero");
        Directory.CreateSymbolicLink(Path.Combine(site.Folder, "around"), site.Folder);
        Assert.Equal(["around", "outside.html"], site.Audit().Faults.Select(f => f.File));
    }

    [Fact]
    public void A_folder_that_is_not_there_is_a_fault() =>
        Assert.Contains("There is no folder", Assert.Single(SiteAudit.Run("no such folder", null).Faults).Message, StringComparison.Ordinal);

    [Fact]
    public void Faults_come_in_the_same_order_every_time()
    {
        using var site = Site.Good();
        for (var i = 0; i < 60; i++)
            site.Write($"p{i}.html", $"<p id=a><p id=a><img src=gone{i}.jpg>");
        var first = site.Audit().Faults;
        Assert.Equal(first.OrderBy(f => f.File, StringComparer.Ordinal).ThenBy(f => f.Line).ThenBy(f => f.Column), first);
        Assert.Equal(first, site.Audit().Faults);
    }

    [Fact]
    public void Ten_thousand_elements_in_each_other_do_no_harm()
    {
        using var site = Site.Good().Write("b.html", Site.Page(string.Concat(Enumerable.Repeat("<div>", 10_000))));
        Assert.NotEmpty(site.Audit().Faults);
    }

    [Fact]
    public void Random_bytes_never_throw()
    {
        using var site = Site.Good();
        var pieces = Gen.OneOf(
            Gen.Byte.Array[0, 20],
            Gen.Int[0, Pieces.Length - 1].Select(i => System.Text.Encoding.UTF8.GetBytes(Pieces[i])));
        Gen.Select(pieces.Array[0, 12], Gen.Int[0, 2]).Sample(
            (parts, kind) =>
            {
                byte[] bytes = [.. parts.SelectMany(part => part)];
                var report = site.Write(new[] { "r.html", "look/r.css", "look/r.svg" }[kind], bytes).Audit(Secret);
                return report.Files >= 7;
            },
            iter: 300,
            threads: 1);
    }

    private static readonly AuditTable Secret = Table.Of(Table.Name("secret"));

    private static readonly string[] Pieces =
    [
        "<a href=", "\"", "#", "../", "%", "%0", ":", "<details>", "<summary>", "<img srcset=", ",", "<svg>",
        "<table>", "<template>", "</p>", "<!--", "url(", "/*", "secret", "é", "\u0000", "<frameset>",
        "<html xmlns='x'>", "<meta http-equiv=refresh content='0;url=", "&#xD800;", "<title>", "<select>", "<math><mi>",
    ];
}
