using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Tours;

/// <summary>What a test walk does for the sake of testing it.</summary>
internal abstract record Duty
{
    /// <summary>A move of a stage or of <c>book.yaml</c> is made, so that it moves something.</summary>
    /// <param name="Act">Its number.</param>
    public sealed record Make(int Act) : Duty;

    /// <summary>A hand moves a free part, or turns a dial, to a position that the book tells apart.</summary>
    /// <param name="Variable">The part.</param>
    /// <param name="Position">The position.</param>
    public sealed record Stand(int Variable, int Position) : Duty;

    /// <summary>A reaction happens.</summary>
    /// <param name="Rule">Its number.</param>
    public sealed record See(int Rule) : Duty;

    /// <summary>A move is tried while something that it needs isn't so, and the box holds.</summary>
    /// <param name="Act">The number of the move, or the first of the acts that move the part.</param>
    /// <param name="Variable">The part that is tried to be moved; -1 for a move.</param>
    /// <param name="Others">When it can be tried: nothing else is in its way.</param>
    /// <param name="Needs">What then mustn't hold.</param>
    /// <param name="Lacks">The need as it is written; null where any of them will do.</param>
    public sealed record Refuse(int Act, int Variable, ImmutableArray<Clause> Others, ImmutableArray<Clause> Needs, Condition? Lacks) : Duty
    {
        /// <summary>What it would move; one of it must be elsewhere, or trying would tell nothing. Empty for a free part.</summary>
        public ImmutableArray<Effect> Moves { get; init; } = [];

        /// <summary>Whether all else that it asks for is never so without what mustn't hold: it can't be tried at all.</summary>
        public bool Never => Others.All(other => Implies(other, Needs) || (!Moves.IsEmpty && Moves.All(moved => Keeps(other, moved))));

        /// <summary>Whether this is the time to try it.</summary>
        public bool Holds(int[] state) => Stepper.Holds(Others, state) && !Stepper.Holds(Needs, state)
            && (Moves.IsEmpty || Moves.Any(effect => state[effect.Variable] != effect.Position && effect.Applies(state[effect.Variable])));

        private static bool Implies(Clause clause, ImmutableArray<Clause> needs) => needs.Any(need => need.Literals.All(asked =>
            clause.Literals.Any(each => each.Variable == asked.Variable && (each.Accepts & ~asked.Accepts) == 0)));

        private static bool Keeps(Clause clause, Effect effect) => clause.Literals.Any(each =>
            each.Variable == effect.Variable && (each.Accepts & effect.From & ~(1UL << effect.Position)) == 0);
    }
}
