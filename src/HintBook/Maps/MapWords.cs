using HintBook.Text;

namespace HintBook.Maps;

/// <summary>Everything a map says that the author didn't write, in one language.</summary>
public sealed record MapWords
{
    /// <summary>The map's name; <c>{book}</c> is the title of the box.</summary>
    public required string Title { get; init; }

    /// <summary>The map's name where the box isn't named.</summary>
    public required string TitleOfNumbers { get; init; }

    /// <summary>How to read the map.</summary>
    public required string About { get; init; }

    /// <summary>How to read broken arrows.</summary>
    public required string AboutBroken { get; init; }

    /// <summary>Which stages are open from the start; <c>{stages}</c> are their numbers.</summary>
    public required string First { get; init; }

    /// <summary>What opens a stage; <c>{stage}</c> is its number, <c>{stages}</c> are those before it.</summary>
    public required string After { get; init; }

    /// <summary>Stages of which one is enough; <c>{stages}</c> are their numbers.</summary>
    public required string OneOf { get; init; }

    /// <summary>What stands between two members of a list, with its spaces.</summary>
    public required string Comma { get; init; }

    /// <summary>What stands before the last of several that are all needed, with its spaces.</summary>
    public required string And { get; init; }

    /// <summary>What stands before the last of several of which one is enough, with its spaces.</summary>
    public required string Or { get; init; }

    /// <summary>The legend's word for a stage on the way.</summary>
    public required string Stage { get; init; }

    /// <summary>The legend's word for the goal.</summary>
    public required string Goal { get; init; }

    /// <summary>The legend's word for a stage that may be left out.</summary>
    public required string Optional { get; init; }

    /// <summary>The legend's word for a red herring.</summary>
    public required string RedHerring { get; init; }

    /// <summary>The legend's word for a stage that no way leads to.</summary>
    public required string Unreachable { get; init; }

    /// <summary>The legend's words for a whole arrow.</summary>
    public required string Needed { get; init; }

    /// <summary>The legend's words for a broken arrow.</summary>
    public required string OneEnough { get; init; }

    /// <summary>The words of a theme that are for maps: those whose keys begin with <c>map_</c>, and what joins a list.</summary>
    /// <param name="words">The theme's words by key.</param>
    /// <exception cref="KeyNotFoundException">One is missing.</exception>
    public static MapWords Of(IReadOnlyDictionary<string, string> words) => new()
    {
        Title = words["map_title"],
        TitleOfNumbers = words["map_title_numbers"],
        About = words["map_about"],
        AboutBroken = words["map_about_broken"],
        First = words["map_first"],
        After = words["map_after"],
        OneOf = words["map_one_of"],
        Comma = words["list_comma"],
        And = words["list_and"],
        Or = words["list_or"],
        Stage = words["map_stage"],
        Goal = words["map_goal"],
        Optional = words["map_optional"],
        RedHerring = words["map_red_herring"],
        Unreachable = words["map_unreachable"],
        Needed = words["map_needed"],
        OneEnough = words["map_one_enough"],
    };

    internal string TitleOf(string book) => Title.Replace("{book}", book, StringComparison.Ordinal);

    internal string FirstAre(IEnumerable<string> stages) => First.Replace("{stages}", Words.Join(stages, Comma, And), StringComparison.Ordinal);

    /// <summary>What opens a stage: all of some, and one of others.</summary>
    internal string Opens(int stage, IEnumerable<string> all, string[] some)
    {
        string[] oneOf = some.Length > 0 ? [OneOf.Replace("{stages}", Words.Join(some, Comma, Or), StringComparison.Ordinal)] : [];
        return After
            .Replace("{stages}", Words.Join([.. all, .. oneOf], Comma, And), StringComparison.Ordinal)
            .Replace("{stage}", $"{stage}", StringComparison.Ordinal);
    }
}
