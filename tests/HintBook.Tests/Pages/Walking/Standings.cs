using System.Numerics;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Tests.Mechanism;

namespace HintBook.Tests.Pages.Walking;

/// <summary>
/// What holds of a reader in each state of a box, each by its definition and the long way round: what is known there, how far the goal is, which stages are
/// next. It shares nothing with the mechanism but <see cref="StageSurvey.OpensAfter"/>, by which stand-ins are defined.
/// </summary>
internal sealed class Standings
{
    private readonly Book book;
    private readonly Dictionary<(string, string), int> bits = [];
    private readonly BigInteger[] known;
    private readonly int?[] distance;
    private readonly SortedSet<string>[] next;
    private readonly SortedSet<string>[] sought;
    private readonly Dictionary<string, BigInteger> certain = [];

    /// <summary>Works all of it out.</summary>
    /// <param name="book">The book.</param>
    /// <param name="rests">The states of its box, up to the goal.</param>
    /// <param name="stages">When each stage opens.</param>
    /// <param name="everyday">Names that mean nothing in a text, since they are words of every day.</param>
    public Standings(Book book, IReadOnlyList<Rest> rests, IReadOnlyDictionary<string, StageSurvey> stages, params IEnumerable<string> everyday)
    {
        (this.book, Rests) = (book, rests);
        Naming = new(book, everyday);
        known = Known();
        distance = Distances();
        next = Next();
        Live = [.. Enumerable.Range(0, rests.Count).Where(s => !rests[s].Solved && distance[s] is not null)];
        Meet(state => next[state]);
        string[] neverNext = [.. book.Stages.Select(stage => stage.Id.Value).Where(stage => !certain.ContainsKey(stage))];
        Meet(state => rests[state].Acts.Select(arrow => arrow.Stage).OfType<string>().Intersect(neverNext));

        sought = [.. Enumerable.Range(0, rests.Count).Select(s => new SortedSet<string>(
            distance[s] is null ? [] : next[s].SelectMany(stage => StandIns(s, stage, stages, [])), StringComparer.Ordinal))];
    }

    /// <summary>The states, the start first.</summary>
    public IReadOnlyList<Rest> Rests { get; }

    /// <summary>The states before the goal from which it can be reached.</summary>
    public IReadOnlyList<int> Live { get; }

    /// <summary>What texts name.</summary>
    public Naming Naming { get; }

    /// <summary>How many stages' moves are still missing at the least; null in a dead end.</summary>
    public int? Distance(int state) => distance[state];

    /// <summary>The stages that are next: a way on that needs no other stage's move leads to a move of theirs that brings the goal nearer.</summary>
    public IReadOnlySet<string> NextAt(int state) => next[state];

    /// <summary>The stages where a reader may end: those that are next, or what stands in for one whose title or sign would tell too much.</summary>
    public IReadOnlySet<string> SoughtAt(int state) => sought[state];

    /// <summary>Whether a position was attained on every way to a state.</summary>
    public bool Knows(int state, string name, string position) => bits.TryGetValue((name, position), out var bit) && !(known[state] >> bit).IsEven;

    /// <summary>Whether all is known in a state that is known wherever a stage is next; of one that never is, wherever it is open.</summary>
    public bool KnowsAllBefore(int state, string stage) => certain.TryGetValue(stage, out var before) && (before & known[state]) == before;

    /// <summary>Whether a name may be said in a state: it shows on the closed box, or what it stands for was met on every way.</summary>
    public bool MayName(int state, Named named) => named.Seen || named switch
    {
        Part part => part.ShowsAt(part.Positions[0]) || part.Positions.Skip(1).Any(position => Knows(state, part.Id.Value, position)),
        _ => Knows(state, named.Id.Value, named.Attained ?? ""),
    };

    /// <summary>Whether a position of a part may be said: it shows on the closed box, or was attained on every way.</summary>
    public bool MayName(int state, Part part, string position) =>
        MayName(state, part)
        && (position == part.Positions[0] || part.Details.GetValueOrDefault(position)?.Seen == true || Knows(state, part.Id.Value, position));

    /// <summary>What a text names and may not be said in a state.</summary>
    public IEnumerable<string> ToldTooEarly(int state, string text) =>
        Naming.In(text).Where(named => !MayName(state, named)).Select(named => named.Id.Value);

    /// <summary>A state as a person reads it: what isn't as it came.</summary>
    public string Say(int state) => string.Join(", ", book.Box.Names
        .Where(named => Rests[state].At[named.Id.Value] != named.Positions[0])
        .Select(named => $"{named.Id.Value}={Rests[state].At[named.Id.Value]}")
        .DefaultIfEmpty("as it came"));

    // The greatest solution of K(t) = positions(t) ∪ ⋂ over acts s→t of (K(s) ∪ made(act)): all is known at first, and taken away until nothing changes.
    private BigInteger[] Known()
    {
        var everything = BigInteger.MinusOne;
        var all = Enumerable.Repeat(everything, Rests.Count).ToArray();
        var at = Rests.Select(rest => rest.At.Aggregate(BigInteger.Zero, (sum, pair) => sum | Bit(pair.Key, pair.Value))).ToArray();
        all[0] = at[0];
        var open = new Queue<int>([0]);
        while (open.TryDequeue(out var from))
        {
            foreach (var arrow in Rests[from].Acts)
            {
                var now = all[arrow.To] & (at[arrow.To] | all[from] | Made(arrow));
                if (now == all[arrow.To])
                    continue;
                all[arrow.To] = now;
                open.Enqueue(arrow.To);
            }
        }

        return all;
    }

    // What is known in all states in which a stage is one of some.
    private void Meet(Func<int, IEnumerable<string>> stages)
    {
        foreach (var state in Live)
        {
            foreach (var stage in stages(state))
                certain[stage] = certain.TryGetValue(stage, out var before) ? before & known[state] : known[state];
        }
    }

    private BigInteger Made(Arrow arrow) => arrow.Stage is null ? BigInteger.Zero : Bit("made", arrow.Name);

    private BigInteger Bit(string name, string position)
    {
        if (!bits.TryGetValue((name, position), out var bit))
            bits[(name, position)] = bit = bits.Count;
        return BigInteger.One << bit;
    }

    // Handling costs nothing, nor does a stage's move that was certainly made already.
    private int Cost(int from, Arrow arrow) => arrow.Stage is null || Knows(from, "made", arrow.Name) ? 0 : 1;

    private int?[] Distances()
    {
        var before = Before();
        var all = Rests.Select(rest => rest.Solved ? 0 : (int?)null).ToArray();
        var open = new PriorityQueue<int, int>(Enumerable.Range(0, all.Length).Where(s => all[s] is 0).Select(s => (s, 0)));
        while (open.TryDequeue(out var to, out var far))
        {
            if (far > all[to])
                continue;
            foreach (var (from, arrow) in before[to])
            {
                var through = far + Cost(from, arrow);
                if (all[from] is { } least && least <= through)
                    continue;
                all[from] = through;
                open.Enqueue(from, through);
            }
        }

        return all;
    }

    private SortedSet<string>[] Next()
    {
        var before = Before();
        var all = Enumerable.Range(0, Rests.Count).Select(s => new SortedSet<string>(
            distance[s] is not { } far
                ? []
                : Rests[s].Acts.Where(arrow => Cost(s, arrow) == 1 && distance[arrow.To] == far - 1).Select(arrow => arrow.Stage ?? ""),
            StringComparer.Ordinal)).ToArray();
        var open = new Queue<int>(Enumerable.Range(0, all.Length).Where(s => all[s].Count > 0));
        while (open.TryDequeue(out var to))
        {
            foreach (var (from, arrow) in before[to])
            {
                if (Cost(from, arrow) > 0 || distance[from] != distance[to] || all[to].IsSubsetOf(all[from]))
                    continue;
                all[from].UnionWith(all[to]);
                open.Enqueue(from);
            }
        }

        return all;
    }

    private List<(int From, Arrow Arrow)>[] Before()
    {
        var all = Rests.Select(_ => new List<(int, Arrow)>()).ToArray();
        foreach (var (from, rest) in Rests.Index())
        {
            foreach (var arrow in rest.Acts)
                all[arrow.To].Add((from, arrow));
        }

        return all;
    }

    // A stage itself if its title and sign tell nothing new in a state; else the nearest before it of which that is true.
    private IEnumerable<string> StandIns(int state, string id, IReadOnlyDictionary<string, StageSurvey> stages, HashSet<string> asked)
    {
        var stage = book.Stages.First(each => each.Id.Value == id);
        if (!ToldTooEarly(state, stage.Title.Value).Concat(ToldTooEarly(state, stage.Sign.Value)).Any())
            return [id];
        return asked.Add(id)
            ? stages[id].OpensAfter.SelectMany(group => group).SelectMany(before => StandIns(state, before, stages, asked))
            : [];
    }
}
