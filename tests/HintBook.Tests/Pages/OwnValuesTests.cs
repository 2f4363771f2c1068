using HintBook.Books;
using HintBook.Pages;
using HintBook.Tests.Books;

namespace HintBook.Tests.Pages;

/// <summary>Where an answer says what each copy has of its own.</summary>
public class OwnValuesTests
{
    private static readonly Book Sealed = A.Book() with
    {
        Sealed = A.Somewhere,
        Copies = [CopyOf("001", "number"), CopyOf("002", "number"), CopyOf("003") with { Retired = true }],
    };

    [Fact]
    public void An_answer_leaves_a_place_for_it_and_no_value()
    {
        var (html, findings) = In(Sealed, "Set **{{ copy: number }}**, then pull.");

        Assert.Empty(findings);
        var place = Sites.Fragment(html.Text).QuerySelector("strong > span")!;
        Assert.Equal(("number", "auto"), (place.GetAttribute("data-own"), place.GetAttribute("dir")));
        Assert.Equal("(what belongs to your own box)", place.TextContent);
        Assert.DoesNotContain("5173", html.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_put_into_a_tag()
    {
        var (html, _) = In(Sealed, "[there](https://alder-row.example/ \"{{ copy: number }}\")");

        Assert.Empty(Sites.Fragment(html.Text).QuerySelectorAll("span"));
    }

    [Theory]
    [InlineData("nummer", "HB7214", "Write instead: number")]
    [InlineData("engraving", "HB7214", "Write it under “own” of each copy")]
    public void A_name_that_a_copy_in_use_lacks_is_told(string name, string code, string help)
    {
        var finding = Assert.Single(In(Sealed, $"Set {{{{ copy: {name} }}}}.").Findings);

        Assert.Equal(code, finding.Code.Id);
        Assert.StartsWith(help, finding.Help, StringComparison.Ordinal);
        Assert.Contains("for the copies 001 and 002.", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_book_that_lies_open_cant_say_it()
    {
        var finding = Assert.Single(In(Sealed with { Sealed = null }, "Set {{ copy: number }}.").Findings);

        Assert.Equal("HB7215", finding.Code.Id);
        Assert.Contains("lie open", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void No_text_before_the_answer_may_say_it()
    {
        var prose = A.Prose("Look at {{ copy: number }}.");

        var finding = Assert.Single(OwnValues.Build(Sealed, Words).BeforeTheAnswer.In(prose, ProseHtml.Render(prose)).Findings);

        Assert.Equal("HB7215", finding.Code.Id);
        Assert.Contains("only in an answer", finding.Message, StringComparison.Ordinal);
    }

    private static ThemeWords Words => Theme.BuiltIn(Theme.Default).Theme!.WordsIn(A.Value("en")).Words;

    private static RenderedProse In(Book book, string markdown)
    {
        var prose = A.Prose(markdown);
        return OwnValues.Build(book, Words).In(prose, ProseHtml.Render(prose));
    }

    private static Copy CopyOf(string serial, params string[] names) =>
        new(A.Value(serial), [.. names.Select(name => new CopyValue(A.Value(name), A.Value("5173")))]);
}
