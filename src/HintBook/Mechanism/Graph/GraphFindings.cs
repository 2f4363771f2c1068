using HintBook.Books;
using HintBook.Text;

namespace HintBook.Mechanism.Graph;

/// <summary>What can be wrong with the way in which the stages of a box depend on each other.</summary>
internal static class GraphFindings
{
    public static readonly FindingCode GoalOutOfReachCode = new("HB2201", Severity.Error, "the box can't be opened");
    public static readonly FindingCode StageOutOfReachCode = new("HB2202", Severity.Error, "a stage that can't be reached");
    public static readonly FindingCode TrailCode = new("HB2203", Severity.Error, "a stage stands before one that it needs");
    public static readonly FindingCode NothingGivesCode = new("HB2204", Severity.Error, "something needed that nothing gives");
    public static readonly FindingCode UnneededCode = new("HB2205", Severity.Warning, "a thing that nobody needs");
    public static readonly FindingCode SolvedAtStartCode = new("HB2206", Severity.Error, "a box that is open from the start");
    public static readonly FindingCode HandlingOutOfReachCode = new("HB2207", Severity.Warning, "handling that can never happen");

    public static Finding GoalOutOfReach(Span at, string why) => new()
    {
        Code = GoalOutOfReachCode,
        At = at,
        Message = $"The goal can't be reached. {why}",
        Help = "Let a stage or a move that can be made give what is missing, or correct the `needs` of the last link.",
    };

    public static Finding SolvedAtStart(Span at) => new()
    {
        Code = SolvedAtStartCode,
        At = at,
        Message = "The goal holds before anything has been done.",
        Help = "The first position of every part is how the box leaves you: `goal` must ask for something that isn't so yet.",
    };

    public static Finding StageOutOfReach(Stage stage, string why) => new()
    {
        Code = StageOutOfReachCode,
        At = stage.Title.At,
        Message = $"The stage “{stage.Title.Value}” can't be reached. {why}",
        Help = "Correct its `needs`, or let an earlier stage give what it waits for.",
    };

    public static Finding HandlingOutOfReach(Step step, string why) => new()
    {
        Code = HandlingOutOfReachCode,
        At = step.At,
        Message = $"{char.ToUpperInvariant(step.Described[0])}{step.Described[1..]} can never happen. {why}",
        Help = "Correct its conditions, or take it out.",
    };

    public static Finding Trail(Stage stage, string lacks, Stage? giver) => new()
    {
        Code = TrailCode,
        At = stage.Title.At,
        Message = giver is null
            ? $"“{stage.Title.Value}” stands too early in the trail: it waits for {lacks}."
            : $"“{stage.Title.Value}” stands before “{giver.Title.Value}”, but waits for {lacks}, which comes from there.",
        Help = giver is null
            ? "Give its file a higher number."
            : $"Give {stage.File.Path} a higher number than {giver.File.Path}, or correct its `needs`.",
        Related = giver is null ? [] : [new Related(giver.Title.At, "This stage has to come first.")],
    };

    public static Finding NothingGives(InPosition condition, string described, string change) => new()
    {
        Code = NothingGivesCode,
        At = condition.At,
        Message = $"This needs {described}, and nothing gives that.",
        Help = $"Write `{change}` in a stage or a move, or take it out of the needs.",
    };

    public static Finding Unneeded(Named named) => new()
    {
        Code = UnneededCode,
        At = named.Id.At,
        Message = $"Nothing needs `{named.Id.Value}`.",
        Help = named is Code
            ? "Put it into the `needs` of the stage where it is set, or take it out."
            : "Put it into the `needs` of what it is for. If it leads nowhere on purpose, write `red-herring: true`.",
    };
}
