using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism.Model;
using HintBook.Text;

namespace HintBook.Mechanism.Answers;

/// <summary>Why something never holds.</summary>
/// <param name="Why">Sentences: the cause, then the way to it.</param>
/// <param name="Help">What to write instead, at the link that is wrong.</param>
/// <param name="AskedAt">Where the cause is written: what is asked for there never comes about. Null where it is written nowhere.</param>
/// <param name="Kind">What is to be seen at that place: <see cref="NothingGives"/>, <see cref="InACircle"/> or <see cref="NeverSo"/>.</param>
internal sealed record Cause(string Why, string Help, Span? AskedAt, string Kind)
{
    /// <summary>The place of the cause, for a finding that stands elsewhere. Findings of one cause have the same.</summary>
    public ImmutableArray<Related> Related => AskedAt is { } at ? [new Related(at, Kind)] : [];

    /// <summary>Something is asked for that nothing gives.</summary>
    public const string NothingGives = "Nothing gives what is asked for here.";

    /// <summary>Something is asked for that itself waits for what it gives.</summary>
    public const string InACircle = "What is asked for here waits, in a circle, for itself.";

    /// <summary>Conditions are asked for that never hold together.</summary>
    public const string NeverSo = "What is asked for here is never so.";
}

/// <summary>Something that asks for conditions, as far as it matters for why they never hold.</summary>
/// <param name="Says">What a person would call it, for sentences: <c>“The lid”</c>.</param>
/// <param name="When">The alternatives.</param>
/// <param name="Moves">The variables that it changes itself.</param>
/// <param name="Asks">The conditions as they are written.</param>
internal sealed record Asker(string Says, ImmutableArray<Clause> When, ImmutableArray<int> Moves, IEnumerable<Condition> Asks)
{
    /// <summary>A move or a free part.</summary>
    public static Asker Of(Book book, Act act) =>
        new(Describe(book, act.Step), act.When, [.. act.Effects.Select(effect => effect.Variable)], Needs(book, act.Step));

    /// <summary>A reaction.</summary>
    public static Asker Of(Book book, Rule rule) => new(
        Describe(book.Box.Reactions[rule.Number]), rule.When, [.. rule.Effects.Select(effect => effect.Variable)], book.Box.Reactions[rule.Number].When);

    /// <summary>What a person would call a step.</summary>
    public static string Describe(Book book, Step step) => step.Kind == StepKind.FreeMove
        ? $"moving {book.Box.Parts.First(part => part.Id.Value == step.Leaves[0].Name).Name}"
        : $"“{step.Says}”";

    /// <summary>A reaction by what it does.</summary>
    public static string Describe(Reaction reaction) =>
        $"the reaction “{string.Join(", ", reaction.Changes.Select(change => $"{change.Name.Value}: {change.Position.Value}"))}”";

    /// <summary>Where a name is asked for: in the conditions themselves, or in what the things that are moved lie behind.</summary>
    /// <param name="machine">The machine that <see cref="Moves"/> counts the variables of.</param>
    /// <param name="name">What is asked for.</param>
    public Span? PlaceOf(Machine machine, string name)
    {
        var moved = Moves.Select(variable => machine.Variables[variable].Id).ToHashSet();
        var behind = machine.Book.Box.Names.OrderByDescending(named => moved.Contains(named.Id.Value)).SelectMany(named => named.Behind ?? []);
        return Asks.Concat(behind).SelectMany(Flat).FirstOrDefault(one => one.Name.Value == name)?.At;
    }

    /// <summary>Where its conditions begin.</summary>
    public Span? FirstPlace => Asks.SelectMany(Flat).FirstOrDefault()?.At;

    private static ImmutableArray<Condition> Needs(Book book, Step step) => step.Kind switch
    {
        StepKind.StageMove => book.Stages.First(stage => stage.Id.Value == step.Stage).Moves[step.Move].Needs,
        StepKind.BookMove => book.Box.Moves[step.Move].Needs,
        StepKind.FreeMove => book.Box.Parts.First(part => part.Id.Value == step.Leaves[0].Name).Needs,
        _ => [],
    };

    private static IEnumerable<InPosition> Flat(Condition condition) => condition switch
    {
        AnyOf any => any.Alternatives.SelectMany(all => all.SelectMany(Flat)),
        InPosition one => [one],
        _ => [],
    };
}
