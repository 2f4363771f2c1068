using System.Collections;
using System.Collections.Immutable;
using HintBook.Audit;

namespace HintBook.Tests.Audit;

/// <summary>What may stand where in a finished site.</summary>
public class SecretsTests
{
    private static readonly AuditTable Three = Table.Of(Table.Name("queen clip"), Table.Code("5173"), Table.Name("Bienenkönigin"));
    private static readonly ImmutableDictionary<string, BitArray> NoFolds = ImmutableDictionary<string, BitArray>.Empty;

    [Theory]
    [InlineData("""<p><a href="queen-clip.html">x</a></p>""", "in an address")]
    [InlineData("""<p><a href="https://alder-row.example/Queen%20Clip">x</a></p>""", "in an address")]
    [InlineData("""<img src="pictures/5173.jpg" alt="" width="1" height="1">""", "in an address")]
    [InlineData("""<img src="pictures/3f-400w.jpg" alt="The queen clip." width="1" height="1">""", "“alt”")]
    [InlineData("""<p title="QUEEN CLIP">x</p>""", "“title”")]
    [InlineData("""<p aria-label="the queen-clip">x</p>""", "“aria-label”")]
    [InlineData("""<p data-says="the queen-clip">x</p>""", "“data-says”")]
    [InlineData("""<p class="big queen-clip">x</p>""", "“class”")]
    [InlineData("""<p id="queen-clip">x</p>""", "“id”")]
    [InlineData("""<p>x</p><!-- the queen clip -->""", "in a comment")]
    [InlineData("""<script type="application/json">{"says": "The queen clip"}</script>""", "in data")]
    [InlineData("""<script type="application/json">{"says": [5173]}</script>""", "in data")]
    [InlineData("""<style>p::before { content: "the queen clip" }</style>""", "in a style sheet")]
    [InlineData("""<template><p>queen clip</p></template>""", "in the text")]
    [InlineData("""<p hidden>The queen clip</p>""", "in the text")]
    [InlineData("""<noscript><p>The queen clip</p></noscript>""", "in the text")]
    [InlineData("""<dialog>The queen clip</dialog>""", "in the text")]
    [InlineData("""<details><summary title="queen clip">Nudge</summary></details>""", "“title”")]
    [InlineData("""<details class="nudge"><summary>Nudge</summary>The queen clip</details>""", "in the text")]
    [InlineData("""<details class="nudge"><summary>Nudge</summary><p>The queen clip</p></details>""", "in the text")]
    [InlineData("""<details data-keep="nudge"><summary>Nudge</summary><details><summary>queen clip</summary></details></details>""", "in the text")]
    [InlineData("""<details class="clue"><summary>The queen clip</summary><p>x</p></details>""", "in the text")]
    [InlineData("""<details class="clue" open><summary>x</summary><p>The queen clip</p></details>""", "in the text")]
    [InlineData("""<details class="clue"><summary>x</summary><p>The number 5173</p></details>""", "in the text")]
    [InlineData("""<details class="answer"><summary>x</summary><p><a href="queen-clip.html">x</a></p></details>""", "in an address")]
    [InlineData("""<details class="answer"><summary>x</summary><p data-code="5173">x</p></details>""", "“data-code”")]
    [InlineData("""<details class="answer"><summary>x</summary><!-- 5173 --></details>""", "in a comment")]
    public void A_secret_that_is_told_too_early_is_found(string body, string where)
    {
        using var site = Site.Good().Write("b.html", Site.Page(body)).Write("queen-clip.html", "").Write("pictures/5173.jpg", "-");
        Assert.Contains(site.Audit(Three).Faults, fault =>
            fault is { File: "b.html", Line: 6 or 7, Secret: not null, IsSure: true }
            && fault.Message.Contains(where, StringComparison.Ordinal));
    }

    [Fact]
    public void A_secret_in_a_comment_is_found_on_its_own_line()
    {
        using var site = Site.Good().Write("b.html", Site.Page("<p>x</p>\n<p>y</p>\n  <!-- the queen clip -->"));

        var fault = Assert.Single(site.Audit(Three).Faults, fault => fault.Secret is not null);
        var line = File.ReadLines(Path.Combine(site.Folder, "b.html")).Index().First(each => each.Item.Contains("<!--", StringComparison.Ordinal));
        Assert.Equal((line.Index + 1, 3), (fault.Line, fault.Column));
    }

    [Theory]
    [InlineData("""<details class="clue"><summary>Clue</summary><p>The queen clip</p></details>""")]
    [InlineData(
        """
        <details class="nudge"><summary>Nudge</summary>
        <details class="tier clue"><summary>Clue</summary><p>The queen clip</p></details></details>
        """)]
    [InlineData("""<details data-keep="answer"><summary>Answer</summary><p>The queen clip: 5173. Bienenkönigin.</p></details>""")]
    [InlineData(
        """
        <details data-keep="answer"><summary>Answer</summary>
        <img src="pictures/3f-400w.jpg" alt="The queen clip." width="1" height="1"></details>
        """)]
    [InlineData("""<p>The queen</p><p>clip</p>""")]
    [InlineData("""<svg viewBox="0 0 51 73"><path d="M5 1 7 3"/><circle cx="51" cy="73" r="5173"/></svg>""")]
    [InlineData("""<img src="pictures/3f-400w.jpg" alt="" width="5173" height="5173">""")]
    [InlineData("""<figure><video src="pictures/3f-400w.jpg#t=51,73" aria-label="5:17, 3:45"></video><figcaption>5:17, 3:45</figcaption></figure>""")]
    public void What_may_be_told_there_or_only_looks_alike_is_not_found(string body)
    {
        using var site = Site.Good().Write("b.html", Site.Page(body));
        Assert.Empty(site.Audit(Three).Faults.Where(fault => fault.Secret is not null));
    }

    [Theory]
    [InlineData("<p>Take the qu<b>een</b> <i>clip</i>.</p>")]
    [InlineData("<p>Take the queen&shy; clip&#8203;.</p>")]
    [InlineData("<p>51<sub>73</sub></p>")]
    [InlineData("<p>Die Bieneko\u0308nigin Bienenko\u0308nigin</p>")]
    public void A_secret_is_found_across_elements_and_entities(string body)
    {
        using var site = Site.Good().Write("b.html", Site.Page(body));
        Assert.Single(site.Audit(Three).Faults);
    }

    [Theory]
    [InlineData("<ul><li>5</li><li>1</li><li>7</li><li>3</li></ul>")]
    [InlineData("<ol><li>First wheel: 5</li><li>Second wheel: 1</li><li>Third wheel: 7</li><li>Last wheel: 3</li></ol>")]
    [InlineData("<table><tbody><tr><td>5</td><td>1</td></tr><tr><td>7</td><td>3</td></tr></tbody></table>")]
    [InlineData("<div><p>Set the first wheel to 5.</p><p>The second goes to 1.</p><p>The third goes to 7, the last to 3.</p></div>")]
    [InlineData("<svg viewBox='0 0 9 9'><text>5</text><text>1</text><g><text>7</text></g><text>3</text></svg>")]
    public void A_code_that_is_told_over_items_and_cells_is_a_doubt(string body)
    {
        using var site = Site.Good().Write("b.html", Site.Page(body));
        var fault = Assert.Single(site.Audit(Three).Faults);
        Assert.Equal(("5173", false), (fault.Secret!, fault.IsSure));
    }

    [Theory]
    [InlineData("<p>Take the queen<br>clip.</p>")]
    [InlineData("<p>Take the <ruby>queen<rp>(</rp><rt>Königin</rt><rp>)</rp></ruby> clip.</p>")]
    [InlineData("<p>Look <ruby>here<rt>queen clip</rt></ruby>.</p>")]
    [InlineData("<div>Take the queen <div>clip</div></div>")]
    [InlineData("<p>Take the <x-word>queen</x-word> <label>clip</label>.</p>")]
    [InlineData("<svg viewBox='0 0 9 9'><text>Take the <tspan x='0'>queen</tspan><tspan x='0' dy='9'>clip</tspan></text></svg>")]
    [InlineData("<p data-queenclip=''>x</p>")]
    [InlineData("<p data-says='openQueenClip'>x</p>")]
    [InlineData("<queen-clip>x</queen-clip>")]
    public void A_name_is_found_over_line_breaks_and_in_names_of_attributes(string body)
    {
        using var site = Site.Good().Write("b.html", Site.Page(body));
        Assert.Equal("queen clip", Assert.Single(site.Audit(Three).Faults).Secret);
    }

    [Theory]
    [InlineData("look/site.css", ".queen-clip { color: red }")]
    [InlineData("look/site.css", "#queenClip, p { color: red }")]
    [InlineData("look/site.css", ":root { --queen-clip: 1px }")]
    [InlineData("look/site.js", "var queenClip = 1;")]
    [InlineData("look/site.js", "show({ queen_clip: true });")]
    [InlineData("data.json", "{ \"queenClip\": 1 }")]
    [InlineData("data.json", "{ \"code\": [5, 1, 7, 3] }")]
    [InlineData("look/site.js", "if (set === 5173) open();")]
    public void A_secret_in_the_names_and_numbers_of_programs_is_found(string path, string text)
    {
        using var site = Site.Good().Write("b.html", Site.Page("")).Write(path, text);
        Assert.NotEmpty(site.Audit(Three).Faults.Where(fault => fault.Secret is not null));
    }

    [Fact]
    public void Titles_and_share_previews_are_outside()
    {
        const string head =
            """
            <meta property="og:description" content="It is 5173">
            <meta property="og:image" content="https://alder-row.example/queen-clip.jpg">
            """;
        using var site = Site.Good().Write("b.html", Site.Page("", title: "The queen clip", head: head));
        Assert.Equal(3, site.Audit(Three).Faults.Count(fault =>
            fault.Message.Contains("in the page's title", StringComparison.Ordinal)
            || fault.Message.Contains("in a meta element", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("look/Queen-Clip.svg", "<svg xmlns='http://www.w3.org/2000/svg'/>", "in the file's name")]
    [InlineData("queen clip.mp4", "-", "in the file's name")]
    [InlineData("look/grain.svg", "<svg xmlns='http://www.w3.org/2000/svg'><text>5173</text></svg>", "in a drawing")]
    [InlineData("look/grain.svg", "<svg xmlns='http://www.w3.org/2000/svg'><text>5<tspan>1</tspan>73</text></svg>", "in a drawing")]
    [InlineData("look/grain.svg", "<svg xmlns='http://www.w3.org/2000/svg'><!-- 5173 --></svg>", "in a comment")]
    [InlineData("look/grain.svg", "<svg xmlns='http://www.w3.org/2000/svg' data-name='queen clip'/>", "“data-name”")]
    [InlineData("look/site.css", "p::after { content: 'the queen clip' }", "in the style sheet")]
    [InlineData("look/site.css", "p::after { content: 'the \\71ueen clip' }", "in the style sheet")]
    [InlineData("look/site.css", "/* the queen clip */", "in the style sheet")]
    [InlineData("look/site.js", "say('the queen clip');", "in the script")]
    [InlineData("look/site.js", "say(`the \\u0071ueen clip`); // x", "in the script")]
    [InlineData("sw.js", "// the queen clip", "in the script")]
    [InlineData("app.webmanifest", "{ \"name\": \"The queen clip\" }", "in the data")]
    [InlineData("data.json", "{ \"queen clip\": 1 }", "in the data")]
    [InlineData("data.json", "{ queen clip: 1 ", "in the data")]
    [InlineData("notes.txt", "Take the queen clip.", "in the text")]
    [InlineData("more.vtt", "WEBVTT\n\nTake the queen clip.", "in the captions")]
    public void A_secret_in_any_other_file_is_found(string path, string text, string where)
    {
        using var site = Site.Good().Write("b.html", Site.Page("")).Write(path, text);
        var fault = Assert.Single(site.Audit(Three).Faults, fault => fault.Secret is not null);
        Assert.Equal(path, fault.File);
        Assert.True(fault.IsSure);
        Assert.Contains(where, fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_chapters_of_the_film_belong_to_the_whole_solution()
    {
        using var site = Site.Good().Write("b.html", Site.Page("")).Write("films/3f.vtt", "WEBVTT\n\nTake the queen clip.");
        Assert.Empty(site.Audit(Three).Faults);
    }

    [Theory]
    [InlineData("look/site.css", "p { mask: none } /* the mask */")]
    [InlineData("look/site.js", "on('mask', 1000); // mask")]
    public void A_lone_word_in_a_program_is_a_doubt_at_the_most(string path, string text)
    {
        using var site = Site.Good().Write("b.html", Site.Page("")).Write(path, text);
        var report = site.Audit(Table.Of(Table.Name("mask"), Table.Code("1000")));
        Assert.NotEmpty(report.Faults);
        Assert.All(report.Faults, fault => Assert.False(fault.IsSure));
        Assert.True(report.IsClean);
    }

    [Fact]
    public void A_page_that_is_not_in_the_table_may_say_only_what_anyone_may_know()
    {
        using var site = Site.Good()
            .Write("b.html", Site.Page(""))
            .Write("c.html", Site.Page("<details class=\"answer\"><summary>x</summary><p>5173</p></details>"));
        Assert.Equal(["c.html"], site.Audit(Three).Faults.Select(fault => fault.File));
    }

    [Fact]
    public void An_element_that_speaks_of_another_page_may_say_what_that_page_shows()
    {
        using var site = Site.Good()
            .Write("b.html", Site.Page(
                """
                <ul><li data-page="c"><a href="c.html">The queen clip</a><p>5173</p></li>
                <li><a href="c.html">The queen clip</a></li></ul>
                """))
            .Write("c.html", Site.Page("<p>The queen clip</p>"));
        var table = Three with { Pages = Three.Pages.Add(new("c.html", Table.Set(3, 0), NoFolds)) };
        Assert.Equal(["5173", "queen clip"], site.Audit(table).Faults.Select(fault => fault.Secret).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData(true, 1)]
    [InlineData(false, 2)]
    public void On_a_page_that_leads_readers_on_a_link_may_say_what_its_page_shows(bool isSignpost, int found)
    {
        using var site = Site.Good()
            .Write("b.html", Site.Page(""))
            .Write("where.html", Site.Page("<ul><li><a href=\"c.html\">The queen clip</a></li><li><a href=\"c.html\">5173</a></li></ul>"))
            .Write("c.html", Site.Page("<p>The queen clip</p>"));
        var (shown, where) = (new AuditPage("c.html", Table.Set(3, 0), NoFolds), new AuditPage("where.html", Table.Set(3), NoFolds));
        var table = Three with { Pages = [.. Three.Pages, shown, where with { IsSignpost = isSignpost }] };
        Assert.Equal(found, site.Audit(table).Faults.Length);
    }

    [Fact]
    public void What_stands_behind_a_warning_may_say_everything_and_what_stands_before_it_nothing()
    {
        var table = Three with { Pages = Three.Pages.Add(new("s.html", Table.Set(3), NoFolds.Add("*", new(3, defaultValue: true)))) };
        using var site = Site.Good()
            .Write("b.html", Site.Page(""))
            .Write("s.html", Site.Page("<p>5173</p><details><summary>x</summary><p>The queen clip</p></details>"));
        Assert.Equal(["5173"], site.Audit(table).Faults.Select(fault => fault.Secret));
    }

    [Fact]
    public void A_page_behind_a_warning_must_not_be_found_by_search_engines()
    {
        using var site = Site.Good().Write("s.html", Site.Page("<p>x</p>", robots: ""));
        Assert.Contains("noindex", Assert.Single(site.Audit().Faults).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_secret_within_a_longer_name_that_is_known_is_not_told()
    {
        var table = Table.Of(Table.Name("smoker"), Table.Name("bee smoker")) with { Outside = Table.Set(2, 1) };
        using var site = Site.Good().Write("b.html", Site.Page("")).Write("note.txt", "A bee smoker; a smoker.");
        Assert.Equal(["smoker"], site.Audit(table).Faults.Select(fault => fault.Secret));
        site.Write("note.txt", "A bee smoker.");
        Assert.Empty(site.Audit(table).Faults);
    }

    [Theory]
    [InlineData("It holds a small battery; keep it dry.", 0)]
    [InlineData("Find the battery; keep it dry.", 1)]
    public void What_the_theme_says_on_every_site_gives_nothing_away(string text, int found)
    {
        var table = Table.Of(Table.Name("battery")) with { SaidEverywhere = ["It holds a small battery; keep it {how}."] };
        using var site = Site.Good().Write("b.html", Site.Page($"<p>{text}</p>"));
        Assert.Equal(found, site.Audit(table).Faults.Length);
    }

    [Fact]
    public void A_picture_stands_only_where_what_it_shows_may_be_known()
    {
        const string Img = """<img src="pictures/3f-400w.jpg" alt="" width="1" height="1">""";
        var table = Three with
        {
            Pictures = Three.Pictures.Add("3f", [0, 1]),
            Pages = Three.Pages.Add(new("index.html", new(3, defaultValue: true), Three.Pages[0].Folds)),
        };
        const string answer = $"""<details class="answer"><summary>y</summary>{Img}</details>""";
        using var site = Site.Good().Write("b.html", Site.Page($"""<details class="clue"><summary>x</summary>{Img}{answer}</details>"""));
        var fault = Assert.Single(site.Audit(table).Faults);
        Assert.Equal(("b.html", "5173"), (fault.File, fault.Secret));
        Assert.Contains("shows the secret", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_more_may_be_certain_a_secret_is_a_doubt()
    {
        using var site = Site.Good().Write("b.html", Site.Page("<p>5173 and the queen clip</p>"));
        var table = Three with { Pages = [Three.Pages[0] with { Sure = Table.Set(3, 1) }] };
        Assert.Equal([("5173", true), ("queen clip", false)], site.Audit(table).Faults.Select(fault => (fault.Secret!, fault.IsSure)).Order());
    }

    [Fact]
    public void A_table_that_can_not_be_checked_is_a_fault()
    {
        using var site = Site.Good();
        var faults = site.Audit(Table.Of(Table.Name("★"))).Faults;
        Assert.Equal(["", "b.html"], faults.Select(fault => fault.File));
    }
}
