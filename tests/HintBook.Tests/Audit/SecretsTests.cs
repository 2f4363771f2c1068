using HintBook.Audit;

namespace HintBook.Tests.Audit;

public class SecretsTests
{
    private static readonly AuditTable Outside = new([new("b.html", ["queen clip", "5173", "Bienenkönigin"], [])]);
    private static readonly AuditTable Shown = new([new("b.html", [], ["queen clip", "5173", "Bienenkönigin"])]);

    [Theory]
    [InlineData("""<p><a href="queen-clip.html">x</a></p>""")]
    [InlineData("""<p><a href="https://alder-row.example/Queen%20Clip">x</a></p>""")]
    [InlineData("""<img src="pictures/5173.jpg" alt="" width="1" height="1">""")]
    [InlineData("""<img src="pictures/3f-400w.jpg" alt="The queen clip." width="1" height="1">""")]
    [InlineData("""<p title="QUEEN CLIP">x</p>""")]
    [InlineData("""<p aria-label="the queen-clip">x</p>""")]
    [InlineData("""<details><summary title="queen clip">Nudge</summary></details>""")]
    [InlineData("""<details open><summary>Nudge</summary><p title="queen clip">x</p></details>""")]
    [InlineData("""<details><summary>Answer</summary><p><a href="queen-clip.html">x</a></p></details>""")]
    public void A_secret_outside_is_found(string body)
    {
        using var site = Site.Good().Write("b.html", Site.Page(body)).Write("queen-clip.html", Site.Page("")).Write("pictures/5173.jpg", "-");
        Assert.Contains("met without opening anything", Assert.Single(site.Audit(Outside).Faults).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""<details><summary>Answer</summary><img src="pictures/3f-400w.jpg" alt="The queen clip." width="1" height="1"></details>""")]
    [InlineData("""<p>The queen clip is 5173.</p>""")]
    [InlineData("""<p hidden title="queen clip">x</p>""")]
    [InlineData("""<p title="queen clipper 51735 beequeen clip">x</p>""")]
    public void What_is_folded_away_or_only_looks_alike_is_not_outside(string body)
    {
        using var site = Site.Good().Write("b.html", Site.Page(body));
        Assert.Empty(site.Audit(Outside).Faults);
    }

    [Fact]
    public void Titles_and_share_previews_are_outside()
    {
        using var site = Site.Good().Write("b.html", Site.Page("", title: "The queen clip", head: "<meta property=\"og:description\" content=\"It is 5173\">"));
        Assert.Equal(["in a meta element", "in the page's title"], site.Audit(Outside).Faults.Select(f => f.Message.Contains("meta", StringComparison.Ordinal) ? "in a meta element" : "in the page's title").Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_files_own_name_is_outside()
    {
        using var site = Site.Good().Write("queen-clip.mp4", "-");
        var fault = Assert.Single(site.Audit(new([new("*", ["Queen Clip"], [])])).Faults);
        Assert.Equal(("queen-clip.mp4", "The secret “Queen Clip” stands in the file's name, where it is met without opening anything."), (fault.File, fault.Message));
    }

    [Theory]
    [InlineData("<p>Take the queen clip.</p>")]
    [InlineData("<p>Take the QUEEN\n   CLIP.</p>")]
    [InlineData("<p>Take the qu<b>een</b> <i>clip</i>.</p>")]
    [InlineData("<p>Take the queen&shy; clip&#8203;.</p>")]
    [InlineData("<details><summary>The queen clip</summary><p>x</p></details>")]
    [InlineData("<details open><summary>x</summary><p>The queen clip</p></details>")]
    [InlineData("<noscript><p>The queen clip</p></noscript>")]
    [InlineData("<p>５１７３</p>")]
    [InlineData("<p>Die BIENENKÖNIGIN</p>")]
    [InlineData("<p>Die Bienenkonigin</p>")]
    [InlineData("<p>Die Bieneko\u0308nigin Bienenko\u0308nigin</p>")]
    public void A_secret_in_visible_text_is_found(string body)
    {
        using var site = Site.Good().Write("b.html", Site.Page(body));
        var fault = Assert.Single(site.Audit(Shown).Faults);
        Assert.Contains("visible before anything is opened", fault.Message, StringComparison.Ordinal);
        Assert.Equal(7, fault.Line);
    }

    [Theory]
    [InlineData("<details><summary>Nudge</summary><p>The queen clip</p><details open><summary>queen clip</summary></details></details>")]
    [InlineData("<p>The queen</p><p>clip</p>")]
    [InlineData("<p hidden>The queen clip</p>")]
    [InlineData("<p>The queen clips, queenclip and 151730.</p>")]
    [InlineData("<template><p>queen clip</p></template>")]
    public void What_is_folded_away_or_in_two_blocks_is_not_visible(string body)
    {
        using var site = Site.Good().Write("b.html", Site.Page(body));
        Assert.Empty(site.Audit(Shown).Faults);
    }

    // Decompositions in the Unicode Character Database (UnicodeData.txt): U+0159, U+1EC7, U+03AE, U+0439 and their capitals.
    [Theory]
    [InlineData("říp", "RIP")]
    [InlineData("VIỆT", "viet")]
    [InlineData("ΚΛΕΙΔΊ ΉΛΙΟΣ", "κλειδι ηλιος")]
    [InlineData("Йод", "иод")]
    [InlineData("Łódź", "lodz")]
    public void Accents_make_no_difference(string text, string secret)
    {
        using var site = Site.Good().Write("b.html", Site.Page($"<p>{text}</p>"));
        Assert.Single(site.Audit(new([new("b.html", [], [secret])])).Faults);
    }

    [Fact]
    public void A_script_without_spaces_is_searched_letter_by_letter()
    {
        using var site = Site.Good().Write("b.html", Site.Page("<p>これは女王蜂です。</p>"));
        Assert.Single(site.Audit(new([new("b.html", [], ["女王蜂"])])).Faults);
    }

    [Fact]
    public void A_rule_holds_for_the_files_that_it_names_and_no_others()
    {
        using var site = Site.Good().Write("b.html", Site.Page("<p>5173</p>")).Write("c.html", Site.Page("<p>5173</p>"));
        Assert.Equal(["c.html"], site.Audit(new([new("c.*", [], ["5173"])])).Faults.Select(f => f.File));
    }

    [Fact]
    public void A_table_that_can_not_be_checked_is_a_fault()
    {
        using var site = Site.Good();
        var faults = site.Audit(new([new("gone.html", [], []), new("*", ["★"], [])])).Faults;
        Assert.Equal(["", "gone.html"], faults.Select(f => f.File));
    }

    [Fact]
    public void A_secret_in_a_drawing_is_found()
    {
        using var site = Site.Good().Write("look/grain.svg", "<svg xmlns='http://www.w3.org/2000/svg'><text>5173</text></svg>");
        Assert.Single(site.Audit(new([new("look/*", [], ["5173"])])).Faults);
    }
}
