using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Mechanism;

/// <summary>Looks at what things lie behind, as far as the words alone tell.</summary>
internal static class BehindCheck
{
    /// <summary>Things and parts that lie behind each other, each circle once.</summary>
    public static IEnumerable<Finding> Circles(Book book, IReadOnlyDictionary<string, Named> names)
    {
        var told = new HashSet<string>();
        foreach (var named in book.Box.Names.Where(named => named.Behind is not null))
        {
            if (Circle(named, [named.Id.Value], names) is { } circle && !circle.Any(told.Contains))
            {
                told.UnionWith(circle);
                yield return HandlingFindings.BehindEachOther(named, circle);
            }
        }
    }

    /// <summary>Things and parts whose place, in words, names a part, and of which nothing says what they lie behind.</summary>
    public static IEnumerable<Finding> OnlyInWords(Book book) =>
        from named in book.Box.Names
        where named.Behind is null
        let place = named switch { Part part => part.Place, Thing { Starts: Thing.Hidden } thing => thing.Place, _ => null }
        where place is not null
        let part = book.Box.Parts.FirstOrDefault(part => part.Id.Value != named.Id.Value && Mentions(place, part))
        where part is not null
        select HandlingFindings.PlaceInWordsOnly(named, part);

    private static bool Mentions(string place, Part part) =>
        part.Also.Select(also => also.Value).Append(part.Name).Any(name => WholeWord(place, WithoutArticle(name)));

    private static string WithoutArticle(string name) => name.StartsWith("the ", StringComparison.OrdinalIgnoreCase) ? name[4..] : name;

    private static bool WholeWord(string text, string word)
    {
        for (var at = text.IndexOf(word, StringComparison.OrdinalIgnoreCase); at >= 0; at = text.IndexOf(word, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            var end = at + word.Length;
            if ((at == 0 || !char.IsLetterOrDigit(text[at - 1])) && (end == text.Length || !char.IsLetterOrDigit(text[end])))
                return true;
        }

        return false;
    }

    // The way from a name back to itself, or null.
    private static ImmutableArray<string>? Circle(Named named, ImmutableArray<string> way, IReadOnlyDictionary<string, Named> names)
    {
        foreach (var next in Mentioned(named.Behind ?? []).Distinct())
        {
            if (next == way[0])
                return way;
            if (!way.Contains(next) && names.TryGetValue(next, out var other) && Circle(other, way.Add(next), names) is { } circle)
                return circle;
        }

        return null;
    }

    private static IEnumerable<string> Mentioned(ImmutableArray<Condition> conditions) => conditions.SelectMany(condition => condition switch
    {
        InPosition one => [one.Name.Value],
        AnyOf any => any.Alternatives.SelectMany(Mentioned),
        _ => [],
    });
}
