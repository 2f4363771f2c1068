using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Sittings.Page;

/// <summary>One sitting from its beginning: what was done when.</summary>
/// <param name="Who">Whose it is.</param>
/// <param name="Steps">Each stage that was noted, in the order of the rows: its number from 1, the minutes from the beginning, whether it was given up.</param>
/// <param name="Untimed">At how many of them nobody looked at a clock: they add nothing to the minutes.</param>
internal sealed record SittingLine(string Who, ImmutableArray<(int Stage, double Minutes, bool GaveUp)> Steps, int Untimed)
{
    /// <summary>How many stages were done.</summary>
    public int Done => Steps.Count(step => !step.GaveUp);

    /// <summary>The minutes of all of it.</summary>
    public double Minutes => Steps.IsEmpty ? 0 : Steps[^1].Minutes;

    /// <summary>
    /// The first sittings of a book, in the order of its files, and how many there are. Rows that name nobody can't be told apart, and are no sitting.
    /// </summary>
    /// <param name="book">The book.</param>
    /// <param name="most">How many are wanted.</param>
    public static (ImmutableArray<SittingLine> First, int All) Of(Book book, int most)
    {
        var numbers = book.Stages.Index().ToDictionary(each => each.Item.Id.Value, each => each.Index + 1);
        var sittings = book.Sittings.Where(row => row.Who.Length > 0).ToLookup(row => row.Who);
        return ([.. sittings.Take(most).Select(rows => Of(rows.Key, [.. rows], numbers))], sittings.Count);
    }

    private static SittingLine Of(string who, ImmutableArray<SatStage> rows, Dictionary<string, int> numbers)
    {
        var minutes = 0.0;
        return new(
            who,
            [.. rows.Select(row => (numbers[row.Stage], minutes += row.Minutes ?? 0, row.GaveUp))],
            rows.Count(row => row.Minutes is null));
    }
}
