namespace HintBook.Browser.Tests.Reading;

/// <summary>What a reader looks for on the pages in English.</summary>
internal static class Words
{
    public const string Nudge = "Nudge";
    public const string Clue = "Clue";
    public const string Answer = "Answer";
    public const string AnswerNow = "Show the answer now";
    public const string Done = "I’ve done this";
    public const string Joined = "I have also done everything else that was open";
    public const string Hide = "Hide everything again";
    public const string Undone = "I haven’t done this after all";
    public const string Untick = "Untick everything";

    /// <summary>Where a step that is done lists what it opens.</summary>
    public const string NextList = "[data-next]";

    /// <summary>Where it lists what else is open.</summary>
    public const string BesidesList = "[data-besides]";

    public const string Again = "Start again for the next solver";
    public const string AgainYes = "Yes, forget everything";
    public const string Notes = "For the maker: notes of my way";
    public const string SaveNotes = "Save my notes";
    public const string ToFront = "Front page";
}
