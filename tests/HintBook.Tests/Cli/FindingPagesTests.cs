using HintBook.Cli;
using HintBook.Tests.Cli.GuidePages;
using HintBook.Text;

namespace HintBook.Tests.Cli;

/// <summary>Every code has a page in the guide, and what the page says of its two books is so.</summary>
public class FindingPagesTests
{
    public static TheoryData<string> Pages => [.. FindingPages.Codes];

    [Fact]
    public void Every_code_has_a_page()
    {
        string[] without = [.. FindingCodes.All.Select(code => code.Id).Except(FindingPages.Codes)];
        Assert.True(without.Length == 0, $"{without.Length} codes have no page: {string.Join(", ", without)}");
    }

    [Fact]
    public void No_page_is_about_a_code_that_is_not_there() => Assert.Empty(FindingPages.Codes.Except(FindingCodes.All.Select(code => code.Id)));

    [Fact]
    public void Of_the_book_that_all_pages_share_nothing_is_said()
    {
        using var book = new TriedBook([]);
        Assert.Empty(book.Check().Findings);
        Assert.Empty(book.Publish().Findings);
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void The_first_book_has_the_finding_and_the_mended_one_has_no_error(string code)
    {
        var text = TextOf(code);
        var page = FindingPage.Parse(text);
        using var wrong = new TriedBook(page.Wrong);
        using var mended = new TriedBook(page.Mended);

        var (ofWrong, ofMended) = wrong.Check() is var told && told.Has(code) ? (told, mended.Check()) : (wrong.Publish(), mended.Publish());

        Assert.True(ofWrong.Has(code), $"The first book hasn't {code}. What is said of it:\n{ofWrong.Said}");
        Assert.DoesNotContain(ofWrong.Errors, other => other != code && !text.Contains(other, StringComparison.Ordinal));
        Assert.False(ofMended.Has(code), $"The mended book has {code}:\n{ofMended.Said}");
        Assert.True(ofMended.Said.Exit == ExitCode.Fine && !ofMended.Errors.Any(), $"The mended book isn't good:\n{ofMended.Said}");
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_has_the_form_that_all_have(string code)
    {
        var text = TextOf(code);
        var page = FindingPage.Parse(text);

        Assert.Equal(FindingCodes.Of(code)!.Title, page.Title, ignoreCase: true);
        // A file's name keeps its small letters.
        var first = page.Title.Split(' ')[0];
        Assert.True(!char.IsLower(first[0]) || first.Contains('.', StringComparison.Ordinal), "The title begins with a small letter.");
        Assert.InRange(page.Prose.Length, 1, 3);
        Assert.DoesNotContain('\r', text);
        Assert.EndsWith("\n", text, StringComparison.Ordinal);
        Assert.All(page.ProseLines, line => Assert.InRange(line.Length, 0, 130));
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_lists_what_differs_from_the_shared_book_and_how_all_of_it_reads_when_it_is_mended(string code)
    {
        var page = FindingPage.Parse(TextOf(code));

        Assert.NotEmpty(page.Wrong);
        Assert.DoesNotContain(page.Wrong, file => FindingPages.Start.GetValueOrDefault(file.Path) == file.Body);
        Assert.Empty(page.Wrong.Select(file => file.Path).Where(FindingPages.Start.ContainsKey).Except(page.Mended.Select(file => file.Path)));
    }

    [Theory]
    [InlineData("HB2101", "HB2101 is an error")]
    [InlineData("hb2140", "HB2140 is a warning")]
    [InlineData("Hb2302", "HB2302 is a note")]
    public void The_guide_prints_a_page_and_what_the_finding_weighs(string asked, string weight)
    {
        var said = Said.By("guide", asked);

        Assert.Equal(ExitCode.Fine, said.Exit);
        var lines = said.Out.Split('\n');
        Assert.StartsWith("# ", lines[0], StringComparison.Ordinal);
        Assert.StartsWith(weight, lines[2], StringComparison.Ordinal);
        Assert.Contains("## Mended", lines);
    }

    [Fact]
    public void A_code_that_is_not_there_is_answered_with_the_nearest()
    {
        var said = Said.By("guide", "HB2100");

        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        Assert.Contains("Write instead: HB2101", said.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_codes_are_listed_each_with_its_weight_and_title()
    {
        var lines = Said.By("guide", "--findings").Out.TrimEnd().Split('\n');

        Assert.Equal(FindingCodes.All.Length, lines.Length);
        Assert.Contains("HB2101  error    a name that nothing declares", lines);
    }

    [Fact]
    public void The_list_of_codes_is_asked_for_without_a_page() => Assert.Equal(ExitCode.WrongUsage, Said.By("guide", "captive", "--findings").Exit);

    [Fact]
    public void The_shared_book_can_be_read_too() => Assert.Contains(
        "```markdown stages/02-the-lid.md", Said.By("guide", FindingPages.SharedBookName).Out, StringComparison.Ordinal);

    private static string TextOf(string code) => FindingPages.Of(code)!;
}
