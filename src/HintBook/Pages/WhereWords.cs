using HintBook.Books;
using HintBook.Mechanism.Places;

namespace HintBook.Pages;

/// <summary>What a line of “Where am I?” says.</summary>
internal static class WhereWords
{
    /// <summary>A label and what is said of it: a sentence glued together would be wrong in half of the languages.</summary>
    public static string Of(Book book, ThemeWords words, WhereaboutsLine line)
    {
        var named = book.Box.Names.First(named => named.Id.Value == line.Placed.Name);
        var says = (named as Part)?.Details.GetValueOrDefault(line.Placed.Position)?.Says?.Value;
        return Capital((named, line.Says) switch
        {
            (_, LineSays.OutOfSight) => words.Say("where_out_of_sight", ("part", named.Name)),
            (Thing, LineSays.Is) => words.Say("where_in_hand", ("thing", named.Name)),
            (Thing, _) => words.Say("where_not_in_hand", ("thing", named.Name)),
            (_, LineSays.Is) when says is not null => words.Say("where_position", ("part", named.Name), ("position", says)),
            (_, LineSays.Is) => words.Say("where_as_it_came", ("part", named.Name)),
            _ => words.Say("where_moved", ("part", named.Name)),
        });
    }

    private static string Capital(string line) => line.Length == 0 ? line : char.ToUpperInvariant(line[0]) + line[1..];
}
