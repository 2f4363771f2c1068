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

    private static IDocument Care(Book book) => Sites.Parse(Sites.Pages(Sites.Plan(book))["care.html"]);

    private static string Mail(SitePlan plan, string? page) =>
        Sites.Parse(Sites.Pages(plan)[page is null ? "index.html" : $"{page}.html"]).QuerySelector("footer a[rel=noreferrer]")!.GetAttribute("href")!;
}
