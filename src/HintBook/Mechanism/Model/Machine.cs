using System.Collections.Immutable;
using System.Runtime.InteropServices;
using HintBook.Books;

namespace HintBook.Mechanism.Model;

/// <summary>A box as the explorers see it: names are numbers, positions are numbers, conditions are flat.</summary>
internal sealed record Machine
{
    /// <summary>The most positions that one part may have: a set of them is one machine word.</summary>
    public const int MostPositions = 64;

    /// <summary>The book it was made from.</summary>
    public required Book Book { get; init; }

    /// <summary>What can have a position, declared names first, then the marks of stages already done.</summary>
    public required ImmutableArray<Variable> Variables { get; init; }

    /// <summary>The position of each variable when the box is shipped, before any reaction; all 0 as the book has it.</summary>
    public required ImmutableArray<int> Start { get; init; }

    /// <summary>What a solver can do.</summary>
    public required ImmutableArray<Act> Acts { get; init; }

    /// <summary>What the box does by itself, in the order of the file.</summary>
    public required ImmutableArray<Rule> Rules { get; init; }

    /// <summary>When the box is solved: at least one of these clauses holds.</summary>
    public required ImmutableArray<Clause> Goal { get; init; }

    /// <summary>The acts that are moves of each stage, in the author's order of both.</summary>
    public required ImmutableArray<ImmutableArray<int>> StageActs { get; init; }

    /// <summary>The same box at rest at the start, if its reactions can't disagree; otherwise as it is.</summary>
    public Machine AtRest() =>
        Refused is null && !Packed.ReactionConflicts.Any(this) && new Stepper(this).Start() is { } rest ? this with { Start = [.. rest] } : this;

    /// <summary>For each variable that lies behind something: what must hold for a hand to get at it.</summary>
    public ImmutableDictionary<int, ImmutableArray<Clause>> Behind { get; init; } = ImmutableDictionary<int, ImmutableArray<Clause>>.Empty;

    /// <summary>For each part that isn't seen on the closed box but sometimes inside: when its position can be seen.</summary>
    public ImmutableDictionary<int, ImmutableArray<Clause>> ShowsWhen { get; init; } = ImmutableDictionary<int, ImmutableArray<Clause>>.Empty;

    /// <summary>Why the book cannot be explored at all, or null.</summary>
    public string? Refused { get; init; }

    /// <summary>Some variables, and all on which it depends whether reactions move these.</summary>
    public HashSet<int> WithCauses(IEnumerable<int> variables)
    {
        var all = variables.ToHashSet();
        for (var changed = Rules.Length > 0; changed;)
        {
            changed = false;
            foreach (var rule in Rules.Where(rule => rule.Effects.Any(effect => all.Contains(effect.Variable))))
            {
                foreach (var literal in rule.When.SelectMany(clause => clause.Literals))
                    changed |= all.Add(literal.Variable);
            }
        }

        return all;
    }

    /// <summary>What to write instead where <see cref="Refused"/> says that the book can't be explored.</summary>
    public string? RefusedHelp { get; init; }
}

/// <summary>Something with finitely many positions, numbered from 0; 0 is how the box leaves the maker.</summary>
/// <param name="Id">The declared id, or a made-up one for a mark.</param>
/// <param name="Positions">The positions in order.</param>
/// <param name="Named">What declares it; null for a mark.</param>
/// <param name="Gone">The position that nothing leads out of (a thing used up), or -1.</param>
internal sealed record Variable(string Id, ImmutableArray<string> Positions, Named? Named, int Gone)
{
    /// <summary>Whether solvers carry it in their heads, so that resetting the box need not touch it.</summary>
    public bool IsKnowledge => Named is Fact or Code or null;

    /// <summary>The set of all its positions.</summary>
    public ulong All => ulong.MaxValue >> (64 - Positions.Length);

    /// <summary>The set of all its positions but the one that nothing leads out of.</summary>
    public ulong NotGone => Gone < 0 ? All : All & ~(1UL << Gone);

    /// <summary>Whether something that has this effect may leave it where it is, other than because it is gone for good.</summary>
    public bool MayStay(Effect effect) => (NotGone & ~effect.From & ~(1UL << effect.Position)) != 0;
}

/// <summary>A variable is in one of some positions: bit p of <paramref name="Accepts"/> stands for position p.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Literal(int Variable, ulong Accepts)
{
    /// <summary>Whether a position will do.</summary>
    public bool Takes(int position) => (Accepts >> position & 1) != 0;
}

/// <summary>All of its literals hold; ordered by variable, each variable at most once.</summary>
internal sealed record Clause(ImmutableArray<Literal> Literals);

/// <summary>A variable goes to a position if it is in one of some others; elsewhere it stays, and what else happens happens.</summary>
/// <param name="Variable">Its number.</param>
/// <param name="Position">Where it goes.</param>
/// <param name="From">Bit p stands for position p: from there it goes. What is gone for good is no such position but for putting back.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Effect(int Variable, int Position, ulong From = ulong.MaxValue)
{
    /// <summary>Whether it takes place in a position, be it that it changes nothing.</summary>
    public bool Applies(int position) => (From >> position & 1) != 0;
}

/// <summary>Something that a solver can do whenever one of its clauses holds.</summary>
/// <param name="Step">What it is called and where it comes from.</param>
/// <param name="When">The alternatives.</param>
/// <param name="Effects">What changes, one effect a variable.</param>
/// <param name="Stage">The number of the stage that it is a move of, or -1.</param>
internal sealed record Act(Step Step, ImmutableArray<Clause> When, ImmutableArray<Effect> Effects, int Stage)
{
    /// <summary>Whether a hand moves a free part to a position by it.</summary>
    public bool Puts(int variable, int position) =>
        Step.Kind == StepKind.FreeMove && Effects is [var only] && only.Variable == variable && only.Position == position;
}

/// <summary>Something that the box does by itself.</summary>
/// <param name="Number">Its place in the book, from 0.</param>
/// <param name="When">The alternatives.</param>
/// <param name="Effects">What changes, one effect a variable.</param>
internal sealed record Rule(int Number, ImmutableArray<Clause> When, ImmutableArray<Effect> Effects);
