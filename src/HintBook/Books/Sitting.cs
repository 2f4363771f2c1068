using HintBook.Text;

namespace HintBook.Books;

/// <summary>The most help that somebody took at a stage.</summary>
public enum HelpTaken
{
    /// <summary>None.</summary>
    Nothing,

    /// <summary>The nudge.</summary>
    Nudge,

    /// <summary>The nudge and the clue.</summary>
    Clue,

    /// <summary>All of it.</summary>
    Answer,
}

/// <summary>How one person fared at one stage while somebody watched, or by their own notes.</summary>
/// <param name="Who">What the maker calls the person or the group; the same for all stages of one sitting.</param>
/// <param name="Stage">The stage's id.</param>
/// <param name="Minutes">How long they took; null where nobody looked at a clock.</param>
/// <param name="Help">The most help they took.</param>
/// <param name="GaveUp">Whether they went no further.</param>
/// <param name="Remark">What was noted; empty where nothing was.</param>
/// <param name="At">The row.</param>
public sealed record SatStage(string Who, string Stage, double? Minutes, HelpTaken Help, bool GaveUp, string Remark, Span At);
