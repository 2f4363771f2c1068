using System.Collections.Immutable;
using AngleSharp.Dom;
using HintBook.Books;
using HintBook.Pages;
using HintBook.Tests.Books;

namespace HintBook.Tests.Pages;

// The care page, and the mail to the maker: both stand in the open and say nothing of what is inside.
public class CareAndHelpTests
{
    [Fact]
    public void The_care_page_speaks_of_cleaning_finish_children_and_of_when_to_stop()
    {
        var topics = Care(A.Book(A.Stage("lid"))).QuerySelectorAll("h2").Select(each => each.TextContent);

        Assert.Equal(["No force", "Cleaning", "The finish", "Where it stands", "Children", "When to stop"], topics);
    }

    [Theory]
    [InlineData(CautionKind.Magnets, "Magnets")]
    [InlineData(CautionKind.ButtonCell, "Batteries")]
    [InlineData(CautionKind.Battery, "Batteries")]
    public void What_the_whole_box_is_dangerous_for_gets_words_of_its_own(CautionKind kind, string topic) =>
        Assert.Contains(topic, Care(A.Book(A.Stage("lid")) with { Cautions = [A.Caution(kind)] }).QuerySelectorAll("h2").Select(each => each.TextContent));

    [Theory]
    [InlineData("cleaning")]
    [InlineData("finish")]
    [InlineData("place")]
    public void The_makers_words_on_the_piece_replace_the_usual_ones(string topic)
    {
        var page = Care(A.Book(A.Stage("lid")) with { CareTopics = Topic(topic, "A drop of *linseed oil*.") }).Body!.TextContent;

        Assert.Contains("A drop of linseed oil.", page, StringComparison.Ordinal);
        Assert.DoesNotContain(English[$"care_{topic}_text"], page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("force")]
    [InlineData("magnets")]
    [InlineData("batteries")]
    [InlineData("children")]
    [InlineData("stop")]
    public void The_makers_words_on_what_can_hurt_come_before_the_usual_ones_which_stay(string topic)
    {
        var page = Care(A.Book(A.Stage("lid")) with { CareTopics = Topic(topic, "Mind the *hinge*.") }).Body!.TextContent;

        Assert.True(page.IndexOf("Mind the hinge.", StringComparison.Ordinal) is var own and >= 0
            && page.IndexOf(English[$"care_{topic}_text"], StringComparison.Ordinal) > own);
    }

    [Fact]
    public void The_age_that_the_maker_gives_stands_on_every_page_that_says_one()
    {
        var plan = Sites.Plan(A.Book(A.Stage("lid") with { Cautions = [A.Caution(CautionKind.SmallParts)] }) with
        {
            Cautions = [A.Caution(CautionKind.SmallParts) with { Under = 8 }, A.Caution(CautionKind.Heavy) with { Under = 6 }],
        });
        var pages = Sites.Pages(plan);

        Assert.Contains("Not for children under 8. Only children that", pages["care.html"], StringComparison.Ordinal);
        Assert.All([pages["index.html"], pages[plan.Addresses.PageOf("lid")], pages["solution.html"], pages["care.html"]], page =>
        {
            Assert.Contains("from children under 8,", page, StringComparison.Ordinal);
            Assert.DoesNotMatch("under (3|6|three)", page);
        });
    }

    [Fact]
    public void Without_an_age_of_the_makers_it_is_the_least()
    {
        var page = Sites.Pages(Sites.Plan(A.Book(A.Stage("lid")) with { Cautions = [A.Caution(CautionKind.SmallParts)] }))["index.html"];
        Assert.Contains("from children under 3,", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_danger_met_in_one_stage_is_not_told_there()
    {
        var book = A.Book(A.Stage("lid") with { Cautions = [A.Caution(CautionKind.Magnets)] });
        Assert.DoesNotContain("Magnets", Care(book).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void The_makers_own_words_come_first_and_local_rules_have_the_last()
    {
        var main = Care(A.Book(A.Stage("lid")) with { Care = A.Prose("Oil the *hinge*.") }).QuerySelector("main")!;

        Assert.Equal("Oil the hinge.", main.QuerySelector(".prose")!.TextContent.Trim());
        Assert.Contains("local rules", main.LastElementChild!.TextContent, StringComparison.Ordinal);
    }

    // RFC 6068, section 2: mailto:addr?subject=…&body=…; section 5: a line of the body ends in %0D%0A.
    [Fact]
    public void The_mail_to_the_maker_names_box_and_page_and_asks_for_the_copy()
    {
        var plan = Sites.Everything();
        var page = plan.Addresses.Names["lid"][0];
        var mail = Mail(plan, page);

        Assert.StartsWith("mailto:help@alder-row.example?subject=", mail, StringComparison.Ordinal);
        var fields = mail.Split('?')[1].Split('&').ToDictionary(field => field.Split('=')[0], field => Uri.UnescapeDataString(field.Split('=')[1]));
        Assert.Equal(["body", "subject"], fields.Keys.Order(StringComparer.Ordinal));
        Assert.Contains(page, fields["subject"], StringComparison.Ordinal);
        Assert.Contains($"Box: A box\r\nPage: {page}\r\nNumber on my box", fields["body"], StringComparison.Ordinal);
        Assert.DoesNotContain("lid", mail, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mailto:help@alder-row.example?cc=desk@alder-row.example", "mailto:help@alder-row.example?cc=desk@alder-row.example&subject=")]
    [InlineData("https://alder-row.example/help?from=box#write", "https://alder-row.example/help?from=box#write")]
    public void An_address_with_a_query_keeps_it(string help, string start) => Assert.StartsWith(
        start,
        Mail(Sites.Plan(A.Book(A.Stage("lid")) with { Maker = new Maker(A.Value("Alder Row Workshop"), A.Value(help)) }), null),
        StringComparison.Ordinal);

    private static ThemeWords English => Theme.BuiltIn(Theme.Default).Theme.Words["en"];

    private static ImmutableSortedDictionary<string, Prose> Topic(string name, string text) =>
        ImmutableSortedDictionary<string, Prose>.Empty.Add(name, A.Prose(text));

    private static IDocument Care(Book book) => Sites.Parse(Sites.Pages(Sites.Plan(book))["care.html"]);

    private static string Mail(SitePlan plan, string? page) =>
        Sites.Parse(Sites.Pages(plan)[page is null ? "index.html" : $"{page}.html"]).QuerySelector("footer a[rel=noreferrer]")!.GetAttribute("href")!;
}
