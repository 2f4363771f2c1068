using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism.Model;
using HintBook.Mechanism.Reduced;
using HintBook.Text;

namespace HintBook.Mechanism.Answers;

/// <summary>
/// What can be attained if nothing that was once so ever stopped being so (the delete relaxation: Bonet and Geffner 2001). What isn't
/// attained even then never is; whatever is found here explains why something can't be reached.
/// </summary>
internal sealed class WaitingReasons
{
    /// <summary>How many links of a chain are told; more don't help anybody.</summary>
    private const int MostLinks = 8;

    private readonly Machine machine;
    private readonly IReadOnlyList<ulong> attained;

    /// <summary>Attains whatever can be, from the shipped box.</summary>
    public WaitingReasons(Machine machine)
    {
        this.machine = machine;
        attained = new DeleteRelaxation(machine).Attained;
    }

    /// <summary>By variable: the positions that it may come to have; no others ever.</summary>
    public IReadOnlyList<ulong> Attainable => attained;

    /// <summary>Whether one of some clauses may come to hold.</summary>
    public bool Holds(IEnumerable<Clause> when) => when.Any(clause => clause.Literals.All(Holds));

    /// <summary>Why a condition never holds, as sentences about "it": what waits for what, down to something that nothing gives or round a circle.</summary>
    public string Explain(ImmutableArray<Clause> when)
    {
        if (Missing(when) is not { } first)
            return NeverTogether(when);
        var told = new List<Literal>();
        var links = new List<string> { $"It waits for {Said(first)}" };
        for (var here = first; ;)
        {
            told.Add(here);
            if (GiverOf(here) is not { } giver)
                return $"{Linked(links)}, which nothing in the book gives.";
            if (Missing(giver.When) is not { } next)
                return $"{Linked(links)}; that comes from {giver.Described}, which asks for what is never so at the same time.";
            var closes = told.IndexOf(next);
            links.Add($"that comes from {giver.Described}, which {(closes >= 0 ? "again " : "")}waits for {Said(next)}");
            if (closes >= 0)
                return Linked(links) + Circle(told[closes..]);
            here = next;
        }
    }

    // A long chain is cut in the middle: its end is the cause.
    private static string Linked(List<string> links) =>
        string.Join("; ", links.Count <= MostLinks ? links : [.. links.Take(MostLinks / 2), "…", .. links.TakeLast(MostLinks / 2)]);

    /// <summary>
    /// The literal at which the chain of causes of a condition that never holds ends: one that nothing gives, or the first written of a circle.
    /// Null if nothing is missing.
    /// </summary>
    public Literal? Root(ImmutableArray<Clause> when)
    {
        var told = new List<Literal>();
        for (var here = Missing(when); here is { } asked; here = GiverOf(asked) is { } giver ? Missing(giver.When) : null)
        {
            if (told.IndexOf(asked) is >= 0 and var closes)
                return told[closes..].MinBy(literal => literal.Variable);
            told.Add(asked);
        }

        return told.Count > 0 ? told[^1] : null;
    }

    // What the alternative that lacks least lacks first.
    private Literal? Missing(IEnumerable<Clause> when) => when
        .Select(clause => clause.Literals.Where(literal => !Holds(literal)).ToArray())
        .OrderBy(lacking => lacking.Length)
        .FirstOrDefault() is [var first, ..] ? first : null;

    private (string Described, ImmutableArray<Clause> When)? GiverOf(Literal asked)
    {
        var acts = machine.Acts.Where(act => Gives(act.Effects, asked)).Select(act => (Described(act.Step), act.When));
        var rules = machine.Rules.Where(rule => Gives(rule.Effects, asked)).Select(rule => ("what the box does by itself", rule.When));
        var givers = acts.Concat(rules).Where(giver => !Holds(giver.When)).OrderBy(giver => giver.When.IsEmpty).ToList();
        return givers.Count > 0 ? givers[0] : null;
    }

    private static bool Gives(ImmutableArray<Effect> effects, Literal asked) =>
        effects.Any(effect => effect.Variable == asked.Variable && asked.Takes(effect.Position));

    /// <summary>What a person would call a step.</summary>
    public string Described(Step step) => step.Kind == StepKind.FreeMove
        ? $"moving {machine.Book.Box.Parts.First(part => part.Id.Value == step.Leaves[0].Name).Name}"
        : $"“{step.Says}”";

    private string NeverTogether(ImmutableArray<Clause> when) => when switch
    {
        [] => "It asks for something that is never so.",
        [{ Literals: [var only] }] => $"It asks for {Said(only)}, which never comes about.",
        [var clause] => $"It asks for {Words.List(clause.Literals.Select(Said))}, which are never so at the same time.",
        _ => "None of the alternatives that it asks for ever comes about.",
    };

    private string Circle(List<Literal> circle) => circle.Count == 1
        ? $". So {Name(circle[0])} is behind the lock that it opens."
        : $". So each is behind the lock that it opens: {string.Join(" ← ", circle.Append(circle[0]).Select(Name))}.";

    private string Name(Literal literal) => $"“{machine.Variables[literal.Variable].Id.Split('/')[0]}”";

    private string Said(Literal literal)
    {
        var variable = machine.Variables[literal.Variable];
        var wanted = variable.Positions.Where((_, p) => literal.Takes(p)).ToArray();
        return variable.Named switch
        {
            null => $"the stage {Name(literal)}",
            Thing when wanted is [Thing.InHand] => $"{Name(literal)} in hand",
            Fact or Code => $"{Name(literal)} to be known",
            _ => $"{Name(literal)} to be {Words.List(wanted, "or")}",
        };
    }

    private bool Holds(Literal literal) => (attained[literal.Variable] & literal.Accepts) != 0;
}
