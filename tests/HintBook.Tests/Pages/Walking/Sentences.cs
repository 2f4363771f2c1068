using System.Text.RegularExpressions;
using HintBook.Books;
using HintBook.Tests.House;

namespace HintBook.Tests.Pages.Walking;

/// <summary>What a line of “Where am I?” asks: one part or thing, and what is said of it.</summary>
/// <param name="Of">The part or thing.</param>
/// <param name="Position">The position that is named, or null where none is.</param>
/// <param name="IsTrue">Whether it is so while everything is where it is.</param>
internal sealed record Question(Named Of, string? Position, Func<IReadOnlyDictionary<string, string>, bool> IsTrue);

/// <summary>Understands lines: all that can be said of a box, word for word as the English words of the site have it.</summary>
internal sealed partial class Sentences
{
    private static readonly Dictionary<string, string> Words = Entry()
        .Matches(File.ReadAllText(Path.Combine(Repository.Root, "themes", "shared", "words.en.yaml")))
        .ToDictionary(entry => entry.Groups["key"].Value, entry => entry.Groups["text"].Value);

    private readonly ILookup<string, Question> meant;
    private readonly Dictionary<string, string?> attained;

    public Sentences(Book book)
    {
        attained = book.Box.Names.ToDictionary(named => named.Id.Value, named => named.Attained);
        meant = book.Box.Parts.SelectMany(Of).Concat(book.Box.Things.SelectMany(Of))
            .ToLookup(each => each.Says, each => each.Asks, StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>What a line asks; nothing or several where it isn't to be understood.</summary>
    public IEnumerable<Question> Meant(string line) => meant[line];

    private IEnumerable<(string Says, Question Asks)> Of(Part part) =>
    [
        (Filled("where_as_it_came", part.Name), new Question(part, null, at => Shows(part, at) && at[part.Id.Value] == part.Positions[0])),
        (Filled("where_moved", part.Name), new Question(part, null, at => Shows(part, at) && at[part.Id.Value] != part.Positions[0])),
        (Filled("where_out_of_sight", part.Name), new Question(part, null, at => !Shows(part, at))),
        .. part.Positions.Where(position => part.Details.GetValueOrDefault(position)?.Says is not null).Select(position => (
            Filled("where_position", part.Name, part.Say(position)),
            new Question(part, position, at => Shows(part, at) && at[part.Id.Value] == position))),
    ];

    private static IEnumerable<(string Says, Question Asks)> Of(Thing thing) =>
    [
        (Filled("where_in_hand", thing.Name), new Question(thing, null, at => at[thing.Id.Value] == Thing.InHand)),
        (Filled("where_not_in_hand", thing.Name), new Question(thing, null, at => at[thing.Id.Value] != Thing.InHand)),
    ];

    private bool Shows(Part part, IReadOnlyDictionary<string, string> at) => part.Seen || part.ShowsWhen.All(condition => Holds(condition, at));

    private bool Holds(Condition condition, IReadOnlyDictionary<string, string> at) => condition switch
    {
        InPosition { Positions.IsEmpty: true } need => at[need.Name.Value] == attained[need.Name.Value],
        InPosition need => need.Positions.Any(position => position.Value == at[need.Name.Value]),
        AnyOf any => any.Alternatives.Any(all => all.All(each => Holds(each, at))),
        _ => throw new InvalidOperationException("a kind of condition that the tests don't know"),
    };

    private static string Filled(string key, string name, string position = "") => Words[key]
        .Replace("{part}", name, StringComparison.Ordinal)
        .Replace("{thing}", name, StringComparison.Ordinal)
        .Replace("{position}", position, StringComparison.Ordinal);

    [GeneratedRegex("^(?<key>where_[a-z_]+): \"(?<text>.*)\"$", RegexOptions.Multiline)]
    private static partial Regex Entry();
}
