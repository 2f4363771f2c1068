using System.Text;
using HintBook.Checking;
using HintBook.Tests.Publishing;
using HintBook.Text;

namespace HintBook.Tests.Checking;

/// <summary>
/// A process that stays up checks a book again and again: what a changed file doesn't touch isn't done again,
/// and what is said is what a fresh check says.
/// </summary>
public class AgainTests
{
    [Fact]
    public void A_changed_text_leaves_the_mechanism_and_the_codes_alone()
    {
        using var book = new WholeExample();
        var results = new RunResults();
        Check.Run(book.Folder, new() { Results = results });
        Change(book, "stages/01-the-roof.md", "# Nudge", "# Nudge\n\nTake your time.\n");

        var log = new WorkLog();
        Check.Run(book.Folder, new() { Results = results, Work = log });

        Assert.DoesNotContain(log.Times.Keys, did => did.Work is Work.Compile or Work.Explore or Work.ProveCodes or Work.FindPlaces);
    }

    [Fact]
    public void A_change_among_the_keys_is_explored_anew()
    {
        using var book = new WholeExample();
        var results = new RunResults();
        Check.Run(book.Folder, new() { Results = results });
        Change(book, "stages/01-the-roof.md", "\ntitle:", "\n\ntitle:");

        var log = new WorkLog();
        Check.Run(book.Folder, new() { Results = results, Work = log });

        Assert.Contains((Work.Explore, ""), log.Times.Keys);
    }

    [Theory]
    [InlineData("stages/01-the-roof.md", "\nsign: ", "\nsign: Look - ")]
    [InlineData("stages/09-the-well.md", "\ntitle: The well", "\ntitle: The deep well")]
    [InlineData("book.yaml", "says: ", "says: Now ")]
    public void The_pages_of_where_am_I_after_a_change_are_those_of_a_fresh_check(string file, string from, string to)
    {
        using var book = new WholeExample();
        var results = new RunResults();
        Check.Run(book.Folder, new() { Results = results });
        Change(book, file, from, to);

        var again = Check.Run(book.Folder, new() { Results = results });

        Assert.Equal(WhereOf(Check.Run(book.Folder)), WhereOf(again));
        Assert.NotEmpty(WhereOf(again));
    }

    [Theory]
    [InlineData("stages/01-the-roof.md", "# Nudge", "# Nudge\n\nIt is the brass bee.\n")]
    [InlineData("stages/02-the-glass.md", "# Answer", "# Anser")]
    [InlineData("stages/12-the-cell.md", "\ntitle:", "\nneeds: [ nothing-there ]\ntitle:")]
    [InlineData("book.yaml", "goal:", "gaol:")]
    public void What_is_said_after_a_change_is_what_a_fresh_check_says(string file, string from, string to)
    {
        using var book = new WholeExample();
        var results = new RunResults();
        Check.Run(book.Folder, new() { Results = results });
        Change(book, file, from, to);

        var again = Check.Run(book.Folder, new() { Results = results });

        Assert.Equal(Said(Check.Run(book.Folder)), Said(again));
        Assert.NotEmpty(Said(again));
    }

    private static string WhereOf(Checked book)
    {
        var examined = book is Sound sound ? sound.Examined : ((Faulty)book).Examined;
        Assert.NotNull(examined);
        return string.Concat(examined.Site.Where.Pages.Select(page => Encoding.UTF8.GetString(
            examined.Site.Files.Single(file => file.Path == page.File).Content().Span)));
    }

    private static string Said(Checked book) => FindingsText.Write(book.Findings, withNotes: true);

    private static void Change(WholeExample book, string file, string from, string to)
    {
        var path = Path.Combine(book.Folder, file);
        var text = File.ReadAllText(path);
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(path, text.Replace(from, to, StringComparison.Ordinal));
    }
}
