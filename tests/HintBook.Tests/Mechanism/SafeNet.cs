using HintBook.Books;

namespace HintBook.Tests.Mechanism;

/// <summary>
/// A Petri net that never has two tokens in one place, as a book: each place is a part, <c>empty</c> or <c>marked</c>, and each transition a move. Places are
/// declared by being named.
/// </summary>
internal sealed class SafeNet(string marked)
{
    private readonly HashSet<string> atFirst = [.. Names(marked)];
    private readonly List<string> places = [.. Names(marked)];
    private readonly List<(string Name, string[] Takes, string[] Puts)> transitions = [];

    /// <summary>Adds a transition.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="takes">The places it takes a token from, parted by blanks.</param>
    /// <param name="puts">The places it puts one into; what stands in both is only looked at.</param>
    public SafeNet Transition(string name, string takes, string puts)
    {
        transitions.Add((name, Names(takes), Names(puts)));
        foreach (var place in Names($"{takes} {puts}").Where(place => !places.Contains(place)))
            places.Add(place);
        return this;
    }

    /// <summary>The book.</summary>
    /// <param name="goal">The places that are marked in a solved box.</param>
    public Book Book(string goal)
    {
        var box = new BoxBuilder();
        foreach (var place in places)
            box.Part(place, atFirst.Contains(place) ? ["marked", "empty"] : ["empty", "marked"]);
        foreach (var (name, takes, puts) in transitions)
            box.Move(name, All(takes), $"{All(takes.Except(puts), "empty")}, {All(puts.Except(takes))}");
        return box.Goal(All(Names(goal))).Build();
    }

    private static string All(IEnumerable<string> places, string position = "marked") => string.Join(", ", places.Select(place => $"{place}={position}"));

    private static string[] Names(string places) => places.Split(' ', StringSplitOptions.RemoveEmptyEntries);
}
