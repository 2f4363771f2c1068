using HintBook.Books;
using HintBook.Pages;
using HintBook.Tests.Books;
using HintBook.Tests.Ciphers;

namespace HintBook.Tests.Pages;

/// <summary>The worked table of a code, where an answer asks for it.</summary>
public class WorkingTests
{
    private static readonly Code Number = CodeBooks.Number("16", "Five hives & one queen, seven drones,\nthree <swarms>", "number-words", "sum");

    private static readonly Working Workings = Working.Build(
        CodeBooks.Prove(Number, CodeBooks.Number("12", "one two") with { Id = A.Value("unread") }),
        WordsOf());

    private static (string Html, string[] Said) Of(string markdown, Working working)
    {
        var (html, findings) = ProseHtml.Render(A.Prose(markdown), working);
        return (html.Text, [.. findings.Select(finding => finding.Code.Id)]);
    }

    [Fact]
    public void A_paragraph_that_asks_for_a_working_becomes_a_table_that_a_screen_reader_can_tell()
    {
        var (html, said) = Of("Before.\n\n{{ working: number }}\n\nAfter.", Workings);

        var body = Sites.Fragment(html).Body!;
        Assert.Empty(said);
        Assert.Equal("number", body.QuerySelector("table.working > caption")!.TextContent);
        Assert.Equal(["What you read", "What it gives"], body.QuerySelectorAll("thead th[scope=col]").Select(cell => cell.TextContent));
        Assert.Equal(["Five 5", "one 1", "seven 7", "three 3", "Together 5173"], Rows(body.QuerySelectorAll("tbody")[0]));
        Assert.Equal(["5 + 1 + 7 + 3 16"], Rows(body.QuerySelectorAll("tbody")[1]));
        Assert.Equal(["Before.", "After."], body.QuerySelectorAll("p").Select(paragraph => paragraph.TextContent));
    }

    [Fact]
    public void The_working_of_a_stencil_shows_its_block_with_the_holes_marked()
    {
        var code = CodeBooks.Code("BIT", "BEE\nHIV\nANT", null, "", CodeBooks.Step("stencil", "1-1", "2-2", "3-3"));
        var (html, _) = Of("{{ working: number }}", Working.Build(CodeBooks.Prove(code), WordsOf()));

        var block = Sites.Fragment(html).QuerySelector("td.block pre")!;
        Assert.Equal("B E EH I VA N T", block.TextContent);
        Assert.Equal(2, block.QuerySelectorAll("br").Length);
        Assert.Equal(["B", "I", "T"], block.QuerySelectorAll("mark").Select(mark => mark.TextContent));
    }

    [Fact]
    public void A_clue_of_each_copy_is_told_to_nobody()
    {
        var code = Number with { Answer = A.Value(""), AnswerByCopy = A.Value("number"), Clue = null, ClueByCopy = A.Value("letter") };
        var copy = new Copy(A.Value("001"), [new(A.Value("number"), A.Value("16")), new(A.Value("letter"), Number.Clue!.Value)]);
        var proofs = HintBook.Ciphers.Proofs.Prove(A.Book() with { Box = new Box { Codes = [code] }, Copies = [copy] });
        var (html, finding) = Working.Build(proofs, WordsOf()).TableOf("number", A.Somewhere);

        Assert.Equal("", html.Text);
        Assert.Contains("every copy has a clue of its own", finding!.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_stands_in_a_clue_is_text_on_the_page()
    {
        var (html, _) = Of("{{ working: number }}", Working.Build(
            CodeBooks.Prove(CodeBooks.Code("<i>", "<i>", null, "", CodeBooks.Step("reverse"), CodeBooks.Step("reverse"))), WordsOf()));

        Assert.Null(Sites.Fragment(html).QuerySelector("i"));
        Assert.Contains("&lt;i&gt;", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{{ working: numbre }}", "HB7211")]
    [InlineData("{{ working: unread }}", "HB7212")]
    [InlineData("Look: {{ working: number }}", "HB7213")]
    public void A_working_that_cannot_be_shown_is_a_finding(string markdown, string code)
    {
        Assert.Equal([code], Of(markdown, Workings).Said);
        Assert.DoesNotContain("<table", Of(markdown, Workings).Html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_working_before_the_answer_is_a_finding_and_shows_nothing()
    {
        var (html, said) = Of("{{ working: number }}", Workings.BeforeTheAnswer);

        Assert.Equal(["HB7213"], said);
        Assert.DoesNotContain("5173", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_book_shows_its_workings_in_answers_alone()
    {
        var stage = A.Stage("lid", A.Gives("jar")) with { Answer = A.Prose("{{ working: number }}"), Clue = A.Prose("{{ working: number }}") };
        var book = A.Book(stage);
        book = book with { Box = book.Box with { Codes = [Number] } };
        var (prose, findings) = ProseSet.Build(
            book, Working.Build(HintBook.Ciphers.Proofs.Prove(book), WordsOf()), OwnValues.Build(book, WordsOf()));

        Assert.Contains("<table", prose.Of(stage.Answer)!.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("<table", prose.Of(stage.Clue)!.Text, StringComparison.Ordinal);
        Assert.Equal(["HB7213"], findings.Select(finding => finding.Code.Id));
    }

    private static string[] Rows(AngleSharp.Dom.IElement body) =>
        [.. body.QuerySelectorAll("tr").Select(row => $"{row.QuerySelector("th[scope=row]")!.TextContent} {row.QuerySelector("td")!.TextContent}")];

    private static ThemeWords WordsOf() => Theme.BuiltIn(Theme.Default).Theme!.WordsIn(A.Value("en")).Words;
}
