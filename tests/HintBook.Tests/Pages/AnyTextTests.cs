using CsCheck;
using HintBook.Books;
using HintBook.Pages;
using HintBook.Tests.Books;

namespace HintBook.Tests.Pages;

// Laws that hold for any text whatever.
public class AnyTextTests
{
    // Letters that mean something in Markdown or HTML, now and then a control character or half of a surrogate pair.
    private static readonly Gen<string> Text = Gen.OneOf(
        Gen.String,
        Gen.Char["<>&\"'/=[]()!*_`#-+:\\ \n\tax1\u0000\u000b\u0085\ud800\udc00é🐝"].Array[0, 60].Select(letters => new string(letters)));

    [Fact]
    public void Any_title_sign_and_name_give_good_HTML_that_says_the_same() => Text.Sample(
        text =>
        {
            var stage = A.Stage("lid") with { Title = A.Value(text), Sign = A.Value(text) };
            var plan = Sites.Plan(A.Book(stage) with { Title = A.Value(text), Id = A.Value("box") });
            var page = Sites.StagePage(plan, "lid");
            Assert.Equal(Readable(text), Readable(page.QuerySelector("h1")!.TextContent));
            Assert.Equal(Readable(text), Readable(page.QuerySelector("meta[property='og:title']")!.GetAttribute("content")!));
            Assert.Single(page.QuerySelectorAll("script"));
        },
        iter: 100);

    [Fact]
    public void Any_Markdown_gives_good_HTML_or_a_finding_and_no_element_that_Markdown_does_not_make() => Text.Sample(
        text =>
        {
            string[] made = ["p", "h3", "h4", "h5", "h6", "em", "strong", "a", "code", "pre", "ul", "ol", "li", "blockquote", "hr", "br"];
            var body = Sites.Fragment(ProseHtml.Render(A.Prose(text)).Html.Text).Body!;
            Assert.All(body.QuerySelectorAll("*"), element => Assert.Contains(element.LocalName, made));
            Assert.All(body.QuerySelectorAll("a"), link => Assert.True(Link.Leads(link.GetAttribute("href")!)));
        },
        iter: 1000);

    // Without what no HTML may hold: control characters and halves of pairs become the replacement character.
    private static string Readable(string text) =>
        string.Concat(text.Where(letter => !char.IsControl(letter) && !char.IsSurrogate(letter) && letter is not '\ufffd'));
}
