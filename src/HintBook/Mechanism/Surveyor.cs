using HintBook.Books;
using HintBook.Mechanism.Graph;
using HintBook.Mechanism.Places;
using HintBook.Text;

namespace HintBook.Mechanism;

/// <summary>From a book to what is known of its box: the one door of this room.</summary>
public static class Surveyor
{
    /// <summary>
    /// What publishing allows a survey: 256 MiB and a number of states. Time doesn't end it, since what was proved must not depend on how fast a machine is.
    /// </summary>
    public static SolveLimits Limits { get; } = new(256L << 20, TimeSpan.MaxValue);

    /// <summary>
    /// Surveys a box. Names are checked first: where one dangles, or a file couldn't be read, the mechanism would only repeat the
    /// same mistake in other words, so it is left alone.
    /// </summary>
    /// <param name="book">The book.</param>
    /// <param name="whole">Whether every file of the book could be read.</param>
    /// <param name="limits">What it may use; null for <see cref="Limits"/>.</param>
    /// <param name="progress">Told after the first second.</param>
    /// <param name="stop">Ends it at once; the rest is then not proved.</param>
    /// <param name="work">Counts how often the box is compiled and explored.</param>
    /// <returns>The survey, or null where there are mistakes to mend first; and the findings.</returns>
    public static (Survey? Survey, Findings Findings) Survey(
        Book book,
        bool whole,
        SolveLimits? limits = null,
        IProgress<SolveProgress>? progress = null,
        WorkLog? work = null,
        CancellationToken stop = default)
    {
        var names = Findings.Of(NameCheck.Run(book));
        if (names.AnyError || !whole)
            return (null, names);
        var explored = Explored.Explore(book, limits ?? Limits, progress, work, stop);
        // The way back has a core of its own.
        var planned = Task.Run(() => ResetPlan.Find(explored), CancellationToken.None);
        var graph = GainGraph.Build(book);
        var all = GainReachability.Whole(graph);
        var solution = Solver.ForPages(explored);
        var stages = GraphSurvey.Survey(graph, all, solution.Stages);
        var back = planned.GetAwaiter().GetResult();
        if (solution.Opens is not Claim.Proved)
            back = ResetPlan.None(solution.Opens is Claim.Refuted ? "the box can't be opened" : "it isn't known whether the box opens");
        var survey = new Survey
        {
            Opens = solution.Opens,
            NoDeadEnds = solution.NoDeadEnds,
            WayBack = back,
            Stages = stages,
            Standings = (explored.Graph is { } states ? StandingsOfGraph.Read(states, explored.Continued()) : null)
                ?? StandingsOfStages.Read(explored.Machine, stages) ?? Standings.NotKnown(explored.Machine),
            First = [.. book.Stages.Select(stage => stage.Id.Value).Where(id => stages[id] is { Reachable: true, OpensAfter.IsEmpty: true })],
        };
        return (survey, Findings.Of(
        [
            .. BehindCheck.OnlyInWords(book),
            .. UndoCheck.Contradictions(book),
            .. OneCause.Told([.. solution.Findings, .. GraphCheck.In(graph, all, stages)]),
            .. back.Findings,
            .. PositionWordsCheck.In(book, back.Plan),
        ]));
    }
}
