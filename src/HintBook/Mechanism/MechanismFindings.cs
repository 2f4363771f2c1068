using HintBook.Books;
using HintBook.Mechanism.Answers;
using HintBook.Text;

namespace HintBook.Mechanism;

/// <summary>What the exact mechanism tells an author.</summary>
internal static class MechanismFindings
{
    /// <summary>The box cannot be explored as written.</summary>
    public static readonly FindingCode CannotExplore = new("HB2191", Severity.Warning, "the mechanism is too large to look into");

    /// <summary>A limit ended the proof.</summary>
    public static readonly FindingCode NotProved = new("HB2192", Severity.Warning, "not proved that the box opens");

    /// <summary>No way leads to the goal.</summary>
    public static readonly FindingCode NeverOpensCode = new("HB2201", Severity.Error, "the box can't be opened");

    /// <summary>No way leads to a stage.</summary>
    public static readonly FindingCode StageNeverReachedCode = new("HB2202", Severity.Error, "a stage that can't be reached");

    /// <summary>The goal holds before anything is done.</summary>
    public static readonly FindingCode SolvedAtStartCode = new("HB2206", Severity.Error, "a box that is open from the start");

    /// <summary>No way leads to where a move is possible.</summary>
    public static readonly FindingCode NeverPossibleCode = new("HB2207", Severity.Warning, "handling that can never happen");

    /// <summary>Reactions go round for ever.</summary>
    public static readonly FindingCode ReactionsLoop = new("HB2120", Severity.Error, "reactions that never settle");

    /// <summary>Reactions leave the box in different states by their order.</summary>
    public static readonly FindingCode ReactionsDisagree = new("HB2121", Severity.Error, "reactions that disagree");

    /// <summary>The goal can't be reached any more.</summary>
    public static readonly FindingCode DeadEnd = new("HB2131", Severity.Error, "a dead end");

    /// <summary>The goal can't be reached any more, but the move that closed the door has an undo.</summary>
    public static readonly FindingCode DeadEndWithUndo = new("HB2132", Severity.Warning, "a dead end that undo gets out of");

    /// <summary>A limit ended the search for dead ends.</summary>
    public static readonly FindingCode DeadEndsNotProved = new("HB2133", Severity.Warning, "not proved that nobody gets stuck");

    /// <summary>The goal without a stage.</summary>
    public static readonly FindingCode Shortcut = new("HB2140", Severity.Warning, "a shortcut");

    /// <summary>A lock whose settings can all be tried.</summary>
    public static readonly FindingCode OpensByTrying = new("HB2150", Severity.Warning, "a lock that opens by trying");

    /// <summary>The shipped state can't be reached again.</summary>
    public static readonly FindingCode NoReset = new("HB2301", Severity.Warning, "the box can't be reset");

    /// <summary>Something must be replaced.</summary>
    public static readonly FindingCode MustReplace = new("HB2302", Severity.Note, "something to replace at every reset");

    /// <summary>A limit ended the search for a reset plan.</summary>
    public static readonly FindingCode ResetNotProved = new("HB2303", Severity.Warning, "not proved that the box can be reset");

    /// <summary>No way leads to the goal.</summary>
    public static Finding NeverOpens(Span at, Cause cause) => NeverOpensCode.At(at, $"The goal can't be reached. {cause.Why}", cause.Help, cause.Related);

    /// <summary>The goal holds before anything is done.</summary>
    public static Finding SolvedAtStart(Span at) => SolvedAtStartCode.At(
        at,
        "The goal holds before anything has been done.",
        "The first position of every part is how the box leaves you: “goal” must ask for something that isn't so yet.");

    /// <summary>No way leads to a stage, nor to some others for the same reason.</summary>
    public static Finding StageNeverReached(Stage stage, Cause cause, IEnumerable<Stage> others) => StageNeverReachedCode.At(
        stage.Title.At,
        $"The stage “{stage.Title.Value}” can't be reached. {cause.Why}",
        cause.Help,
        [.. cause.Related, .. others.Select(other => new Related(other.Title.At, "This stage can't be reached for the same reason."))]);

    /// <summary>Something that can never be done or happen.</summary>
    public static Finding NeverPossible(Span at, string described, Cause cause) => NeverPossibleCode.At(
        at,
        $"{char.ToUpperInvariant(described[0])}{described[1..]} can never happen. {cause.Why}",
        $"{cause.Help} If it is there for nothing, take it out.",
        cause.Related);
}
