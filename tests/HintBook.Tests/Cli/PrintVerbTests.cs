using HintBook.Tests.Publishing;

namespace HintBook.Tests.Cli;

/// <summary>What <c>print</c> says on the screen.</summary>
public class PrintVerbTests
{
    // Worked out here once more, from the inks (WCAG 2.2, relative luminance): letters (0, 195, 210) on white are 2.2 to 1 with bare eyes; through a filter
    // that lets all red and three in a hundred of the rest through, they are (0.03 × 0.4368 + 0.05) against (0.2126 + 0.03 × 0.7874 + 0.05).
    [Fact]
    public void The_contrasts_of_answers_under_a_red_filter_are_said()
    {
        using var desk = new BookAndOutput();
        desk.Change("book.yaml", "\ntitle:", "\nprint: { answers: red-filter }\ntitle:");
        var said = Said.By("print", desk.Book, "booklet", "--out", desk.Output).Out;
        Assert.Contains("through a red filter letters 4.5 to 1 and the pattern", said, StringComparison.Ordinal);
        Assert.Contains("without it letters 2.2 to 1 in a pattern of", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_a_filter_nothing_is_said_where_answers_stand_upside_down()
    {
        using var desk = new BookAndOutput();
        Assert.DoesNotContain("filter", Said.By("print", desk.Book, "booklet", "--out", desk.Output).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void What_an_earlier_run_read_is_said_to_be_so()
    {
        using var desk = new BookAndOutput();
        Assert.DoesNotContain("not read again", Said.By("print", desk.Book, "--out", desk.Output).Out, StringComparison.Ordinal);
        var again = Said.By("print", desk.Book, "--out", desk.Output).Out;
        Assert.Contains("checked again for spoilers; not read again, since an earlier run read the same bytes: ", again, StringComparison.Ordinal);
    }
}
