using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Mechanism.Graph;

/// <summary>Something that can be gained: a name in a position, or a stage done.</summary>
/// <param name="Name">The part, thing, fact or code; for a stage done, the stage's id.</param>
/// <param name="Position">The position; null for a stage done.</param>
internal readonly record struct Gain(string Name, string? Position);

/// <summary>One move as this graph sees it: once its wants hold, its gains are made and never lost.</summary>
/// <param name="Wants">What must hold.</param>
/// <param name="Gains">What is gained.</param>
/// <param name="Stage">The index of the stage it belongs to, or null for handling and reactions.</param>
internal sealed record GainStep(Want Wants, ImmutableArray<int> Gains, int? Stage);

/// <summary>
/// The box with every loss left out: a position that was reached stays reached, a thing that was held stays held. What can't
/// be gained here can't be gained in the box either.
/// </summary>
internal sealed class GainGraph
{
    private readonly Dictionary<Gain, int> numbers = [];
    private readonly List<Gain> gains = [];

    private GainGraph(Book book)
    {
        Book = book;
        foreach (var named in book.Box.Names)
            Names.TryAdd(named.Id.Value, named);
        foreach (var (number, stage) in book.Stages.Index())
            StageNumbers.TryAdd(stage.Id.Value, number);
        AtStart = [.. Names.Values.Select(named => NumberOf(new Gain(named.Id.Value, named.Positions[0])))];
        Goal = WantOf(book.Goal);
        Steps =
        [
            .. book.Box.Parts.Where(part => part.Free || part.Turns).Select(Free),
            .. book.Box.Moves.Select(move => StepOf(move, null)),
            .. book.Box.Reactions.Select(reaction => new GainStep(WantOf(reaction.When), GainsOf(reaction.Changes), null)),
            .. book.Stages.SelectMany(StepsOf),
        ];
        Wanting = Steps.SelectMany((step, index) => step.Wants.Gains.Distinct().Select(gain => (gain, index)))
            .ToLookup(pair => pair.gain, pair => pair.index);
    }

    public Book Book { get; }

    public Dictionary<string, Named> Names { get; } = [];

    /// <summary>The number of each stage in the author's order, by its id.</summary>
    public Dictionary<string, int> StageNumbers { get; } = [];

    public ImmutableArray<int> AtStart { get; }

    public Want Goal { get; }

    public ImmutableArray<GainStep> Steps { get; }

    /// <summary>For each gain the steps that want it.</summary>
    public ILookup<int, int> Wanting { get; }

    /// <summary>How many different gains are spoken of.</summary>
    public int Count => gains.Count;

    public Gain this[int number] => gains[number];

    /// <summary>Builds the graph of a book whose names have been checked.</summary>
    public static GainGraph Build(Book book) => new(book);

    /// <summary>The number of "this stage is done".</summary>
    public int Done(int stage) => NumberOf(new Gain(Book.Stages[stage].Id.Value, null));

    private GainStep Free(Part part) => new(
        new AllWanted([WantOf(part.Needs), Open(part, null, [])]),
        [.. part.Positions.Select(position => NumberOf(new Gain(part.Id.Value, position)))],
        null);

    private IEnumerable<GainStep> StepsOf(Stage stage, int index)
    {
        var after = stage.After.Select(id => (Want)new GainWanted(NumberOf(new Gain(id.Value, null))));
        foreach (var move in stage.Moves)
        {
            var step = StepOf(move, index);
            yield return step with { Wants = new AllWanted([step.Wants, .. after]) };
        }

        // A stage is done when each of its moves could be made.
        yield return new GainStep(
            new AllWanted([.. stage.Moves.Select(WantOf), .. after]),
            [Done(index)],
            index);
    }

    private GainStep StepOf(Move move, int? stage) =>
        new(WantOf(move), GainsOf(move.Changes), stage);

    // Its needs, and what lies open now or once it is made for a hand to get at what it moves.
    private AllWanted WantOf(Move move)
    {
        if (move.FromOutside)
            return WantOf(move.Needs);
        var changes = move.Changes.GroupBy(change => change.Name.Value).ToDictionary(group => group.Key, group => group.Last().Position.Value);
        var reaching =
            from change in changes
            where Names.TryGetValue(change.Key, out var named) && named.Behind is { IsEmpty: false }
            let named = Names[change.Key]
            select (Want)new AnyWanted([.. Untouched(named, change.Value), Open(named, null, []), Open(named, changes, [])]);
        return new AllWanted([.. WantOf(move.Needs).Wants, .. reaching]);
    }

    // A part that is there already isn't moved; a thing that was found already is taken from nowhere.
    private IEnumerable<Want> Untouched(Named named, string position) => named is Thing && position != Thing.Hidden
        ? named.Positions.Where(other => other != Thing.Hidden).Select(other => new GainWanted(NumberOf(new Gain(named.Id.Value, other))))
        : [new GainWanted(NumberOf(new Gain(named.Id.Value, position)))];

    private Want Open(Named named, Dictionary<string, string>? changed, ImmutableHashSet<string> within) =>
        named.Behind is not { } behind || within.Contains(named.Id.Value) ? Want.Nothing
        : new AllWanted([.. behind.Select(condition => Open(condition, changed, within.Add(named.Id.Value)))]);

    private Want Open(Condition condition, Dictionary<string, string>? changed, ImmutableHashSet<string> within) => condition switch
    {
        AnyOf any => new AnyWanted([.. any.Alternatives.Select(all => (Want)new AllWanted([.. all.Select(each => Open(each, changed, within))]))]),
        InPosition one when Names.TryGetValue(one.Name.Value, out var named) => new AllWanted(
        [
            changed is not null && changed.TryGetValue(one.Name.Value, out var position) && PositionsOf(one).Contains(position)
                ? Want.Nothing
                : WantOf(condition),
            Open(named, changed, within),
        ]),
        _ => WantOf(condition),
    };

    private ImmutableArray<int> GainsOf(ImmutableArray<Change> changes) =>
        [.. changes.Select(change => NumberOf(new Gain(change.Name.Value, change.Position.Value)))];

    private AllWanted WantOf(ImmutableArray<Condition> conditions) => new([.. conditions.Select(WantOf)]);

    private Want WantOf(Condition condition) => condition switch
    {
        AnyOf any => new AnyWanted([.. any.Alternatives.Select(all => (Want)WantOf(all))]),
        InPosition one => Any([.. PositionsOf(one).Select(position => (Want)new GainWanted(NumberOf(new Gain(one.Name.Value, position))))]),
        _ => Want.Nothing,
    };

    private IEnumerable<string> PositionsOf(InPosition condition) =>
        condition.Positions.IsEmpty
            ? [Names.GetValueOrDefault(condition.Name.Value)?.Attained ?? Fact.Known]
            : condition.Positions.Select(position => position.Value);

    private static Want Any(ImmutableArray<Want> wants) => wants.Length == 1 ? wants[0] : new AnyWanted(wants);

    private int NumberOf(Gain gain)
    {
        if (!numbers.TryGetValue(gain, out var number))
        {
            number = gains.Count;
            numbers.Add(gain, number);
            gains.Add(gain);
        }

        return number;
    }
}
