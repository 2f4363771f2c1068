using HintBook.Books;
using HintBook.Mechanism.Graph;
using HintBook.Text;

namespace HintBook.Mechanism;

/// <summary>From a book to what is known of its box: the one door of this room.</summary>
public static class Surveyor
{
    /// <summary>
    /// Surveys a box. Names are checked first: where one dangles, or a file couldn't be read, the graph would only repeat the
    /// same mistake in other words, so it is left alone.
    /// </summary>
    /// <param name="book">The book.</param>
    /// <param name="whole">Whether every file of the book could be read.</param>
    /// <returns>The survey, or null where there are mistakes to mend first; and the findings.</returns>
    public static (Survey? Survey, Findings Findings) Survey(Book book, bool whole)
    {
        var names = Findings.Of(NameCheck.Of(book));
        if (names.AnyError || !whole)
            return (null, names);
        var graph = GainGraph.Of(book);
        var all = Spread.Whole(graph);
        return (GraphSurvey.Of(graph, all), Findings.Of(GraphCheck.In(graph, all)));
    }
}
