using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;

namespace HintBook.Sittings;

/// <summary>A step of help that most of those who read it needed more than.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="Step">The step.</param>
/// <param name="WentOn">Of those who read it, those who needed the next one, or gave up.</param>
public sealed record Rewrite(Stage Stage, HelpTaken Step, Proportion WentOn);

/// <summary>What sittings tell of a book: of each stage, and of the whole box.</summary>
/// <param name="People">How many people sat at it.</param>
/// <param name="Stages">Each stage, in the author's order.</param>
/// <param name="Way">The stages that everybody must do, in an order in which they can be done; the numbers of <see cref="WholeBox"/> count these.</param>
/// <param name="Whole">How long the whole box takes; null where there is no sitting.</param>
public sealed record BoxSittings(int People, ImmutableArray<StageSittings> Stages, ImmutableArray<StageSittings> Way, WholeBox? Whole)
{
    /// <summary>How often the box is opened by chance where nothing else is asked for.</summary>
    public const int UsualRuns = 10_000;

    /// <summary>The steps of help to rewrite, the most surely useless first.</summary>
    public ImmutableArray<Rewrite> Rewrites { get; } = RewritesOf(Stages);

    // What a stage takes of which nobody knows anything, in minutes.
    private const double Unknown = 10;

    /// <summary>What the sittings of a book tell.</summary>
    /// <param name="book">The book.</param>
    /// <param name="survey">What is proved of it.</param>
    /// <param name="runs">How often the box is opened by chance.</param>
    public static BoxSittings Of(Book book, Survey survey, int runs = UsualRuns)
    {
        var stages = StageSittings.Of(book);
        ImmutableArray<StageSittings> way =
        [
            .. from each in stages
               where !each.Stage.Optional && !each.Stage.RedHerring
               let surveyed = survey.Stages[each.Stage.Id.Value]
               where surveyed.Reachable
               orderby surveyed.Layer
               select each,
        ];
        var people = book.Sittings.Select(row => row.Who).Distinct().Count();
        return new(people, stages, way, people == 0 ? null : WholeBox.Of(TasksOf(way, survey), [.. way.Select(TimeOf)], runs));
    }

    /// <summary>The steps of help to rewrite, the most surely useless first.</summary>
    /// <param name="stages">What sittings tell of each stage.</param>
    public static ImmutableArray<Rewrite> RewritesOf(ImmutableArray<StageSittings> stages) =>
    [
        .. from each in stages
           let rewrite = each.Rewrite
           where rewrite is not null
           orderby rewrite.Value.WentOn.Bounds.Low descending
           select new Rewrite(each.Stage, rewrite.Value.Step, rewrite.Value.WentOn),
    ];

    private static ImmutableArray<Timed> TasksOf(ImmutableArray<StageSittings> way, Survey survey)
    {
        var numbers = way.Index().ToDictionary(each => each.Item.Stage.Id.Value, each => each.Index);
        return
        [
            .. from each in way.Index()
               let id = each.Item.Stage.Id.Value
               select new Timed(id,
               [
                   .. from opens in survey.Stages[id].OpensAfter
                      let known = opens.Where(before => numbers.TryGetValue(before, out var number) && number < each.Index)
                          .Select(before => numbers[before]).ToImmutableArray()
                      where !known.IsEmpty
                      select known,
               ]),
        ];
    }

    // The author's own minutes, if there are any: half of that if all goes well, and twice as much if not.
    private static StageTime TimeOf(StageSittings stage)
    {
        var likely = stage.Minutes?.Median ?? stage.Stage.Minutes ?? Unknown;
        return new(stage.Times, new(likely / 2, likely, likely * 2));
    }
}
