using HintBook.Books;
using HintBook.Mechanism.Answers;
using HintBook.Mechanism.Model;
using HintBook.Mechanism.Packed;
using HintBook.Text;

namespace HintBook.Mechanism;

/// <summary>
/// A box compiled and explored once: what <see cref="Solver"/> and <see cref="ResetPlan"/> both start from. Immutable but for its budget, which
/// each of them continues on its own.
/// </summary>
public sealed class Explored
{
    private readonly Budget budget;

    private Explored(Book book, Budget budget, WorkLog? work)
    {
        (Book, this.budget) = (book, budget);
        work?.Did(Work.Compile);
        Machine = Compiler.Compile(book);
        work?.Did(Work.Explore);
        (Result, Fault, Graph) = ExplorationStrategy.Explore(Machine, budget);
    }

    /// <summary>The book.</summary>
    public Book Book { get; }

    /// <summary>Its box in numbers.</summary>
    internal Machine Machine { get; }

    /// <summary>What exploring it found out.</summary>
    internal ExplorationResult Result { get; }

    /// <summary>Where its reactions disagree or never settle, or null.</summary>
    internal ReactionFault? Fault { get; }

    /// <summary>Every state with the acts between them, where every state was looked at; or null.</summary>
    internal StateGraph? Graph { get; }

    /// <summary>Compiles and explores a book. Never throws for a book's sake: what a limit cuts off is not proved.</summary>
    /// <param name="book">The book.</param>
    /// <param name="limits">What may be used.</param>
    /// <param name="progress">Told after the first second.</param>
    /// <param name="work">Counts how often the box is compiled and explored.</param>
    /// <param name="stop">Ends it at once; the rest is then not proved.</param>
    public static Explored Explore(
        Book book,
        SolveLimits limits,
        IProgress<SolveProgress>? progress = null,
        WorkLog? work = null,
        CancellationToken stop = default) =>
        Explore(book, limits, TimeProvider.System, progress, work, stop);

    /// <summary>The same, with a clock that is passed in.</summary>
    internal static Explored Explore(
        Book book,
        SolveLimits limits,
        TimeProvider time,
        IProgress<SolveProgress>? progress,
        WorkLog? work,
        CancellationToken stop) =>
        new(book, new Budget(limits, time, progress, stop), work);

    /// <summary>What is left of the budget after exploring; one for each who asks, so that two may ask at the same time.</summary>
    internal Budget Continued() => budget.Fork(Graph?.Bytes ?? 0);
}
