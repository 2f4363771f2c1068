using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace HintBook.Starting.Drafting;

/// <summary>Something that is often named in a film, and so may be a thing or a part of the box.</summary>
/// <param name="Id">A name for it in the book's files.</param>
/// <param name="Called">What it is called.</param>
/// <param name="Steps">The numbers of the steps in which it is named, from 0, in their order.</param>
public sealed record NamedThing(string Id, string Called, ImmutableArray<int> Steps);

/// <summary>Finds what is named often.</summary>
public static partial class NamedThings
{
    private const int Often = 3;

    /// <summary>What is named at least three times, in the order of its first mention.</summary>
    /// <param name="steps">The steps of the film.</param>
    /// <param name="language">The language of what is said, as a BCP 47 tag.</param>
    public static ImmutableArray<NamedThing> In(ImmutableArray<FilmStep> steps, string language)
    {
        var words = DraftWords.Of(language);
        var found =
            (from step in steps.Index()
             from said in step.Item.Said
             from Match match in words.Named.Matches(said.Text)
             select (Step: step.Index, Words: match.Groups["name"].Value.ToLowerInvariant().Split(' '))).ToArray();
        var times = found.SelectMany(each => Beginnings(each.Words)).GroupBy(name => name).ToDictionary(each => each.Key, each => each.Count());
        var mentions =
            from each in found
            let name = WholeName(each.Words, times)
            let noun = NounOf(name, words)
            where !words.NoThings.Contains(noun) && !words.NoThings.Contains(name)
            select (each.Step, Name: name, Noun: noun);
        var taken = new HashSet<string>();
        return
        [
            .. from thing in mentions.GroupBy(each => each.Noun).Where(each => each.Count() >= Often)
               let called = CalledMost(thing.Select(each => each.Name).ToArray())
               let id = IdOf(called)
               where id.Length > 0 && taken.Add(id)
               select new NamedThing(id, called, [.. thing.Select(each => each.Step).Distinct()]),
        ];
    }

    private static IEnumerable<string> Beginnings(string[] words) => Enumerable.Range(1, words.Length).Select(count => string.Join(' ', words[..count]));

    // A word behind a name belongs to it if it stands there nearly always: “brass thimble”, but not “lid lies”.
    private static string WholeName(string[] words, Dictionary<string, int> times)
    {
        var beginnings = Beginnings(words).ToArray();
        var last = 0;
        while (last + 1 < beginnings.Length && times[beginnings[last + 1]] * 3 >= times[beginnings[last]] * 2)
            last++;
        return beginnings[last];
    }

    // Without the ending of the plural.
    private static string NounOf(string name, DraftWords words)
    {
        var parts = name.Split(' ');
        var noun = words.NounIsFirst ? parts[0] : parts[^1];
        return noun is [.., _, not 's', 's'] ? noun[..^1] : noun;
    }

    // The name of several words, if half of the mentions have it: the others leave out what everybody knows by then.
    private static string CalledMost(string[] names)
    {
        var counted = names.GroupBy(name => name).OrderByDescending(each => each.Count()).ToArray();
        return counted.FirstOrDefault(each => each.Key.Contains(' ') && each.Count() * 2 >= names.Length)?.Key ?? counted[0].Key;
    }

    private static string IdOf(string called) => NoNameSign().Replace(called, "-").Trim('-');

    [GeneratedRegex(@"[^\p{L}\p{N}]+")]
    private static partial Regex NoNameSign();
}
