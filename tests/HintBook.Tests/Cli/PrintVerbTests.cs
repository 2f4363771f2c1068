using HintBook.Tests.Publishing;

namespace HintBook.Tests.Cli;

/// <summary>What <c>print</c> says on the screen.</summary>
public class PrintVerbTests
{
    // Worked out once more from the inks by another program (WCAG 2.2, relative luminance; hard light by ISO 32000-1), for a filter that lets all red and three
    // in a hundred of the rest through.
    [Fact]
    public void The_contrasts_of_answers_under_a_red_filter_are_said()
    {
        using var desk = new BookAndOutput();
        desk.Change("book.yaml", "\ntitle:", "\nprint: { answers: red-filter }\ntitle:");
        var said = Said.By("print", desk.Book, "booklet", "--out", desk.Output).Out;
        Assert.Contains("through a red filter letters 4.5 to 1 with the pattern, at least 3.8; ", said, StringComparison.Ordinal);
        Assert.Contains("without it at most 1.2 in light and dark", said, StringComparison.Ordinal);
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

    [Theory]
    [InlineData("\nprint: { make: [ reset ] }\n", "cards    none, since “make” under “print” in book.yaml doesn't name them")]
    [InlineData(null, "cards    none, since the book has no address")]
    public void Why_a_publish_makes_no_cards_is_said(string? print, string said)
    {
        using var desk = new BookAndOutput();
        if (print is null)
            desk.Change("book.yaml", "\naddress:", "\n# address:");
        else
            File.AppendAllText(Path.Combine(desk.Book, "book.yaml"), print);

        Assert.Contains(said, Said.By("publish", desk.Book, "--out", desk.Output).Out, StringComparison.Ordinal);
    }
}
