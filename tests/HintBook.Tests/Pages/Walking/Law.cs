namespace HintBook.Tests.Pages.Walking;

/// <summary>What “Where am I?” must do for whoever asks it.</summary>
public enum Law
{
    /// <summary>The pages of every book that nothing is wrong with can be made.</summary>
    IsMade,

    /// <summary>Every reader ends at a stage that is next, or the maker is told that places can't be told apart.</summary>
    Arrives,

    /// <summary>A page names nothing that isn't known to everybody who comes to it.</summary>
    NamesNothingEarly,

    /// <summary>Title and sign of the stage at the end name nothing that isn't known either.</summary>
    EndsWithoutTelling,

    /// <summary>A sign is shown only to those who know all that is known wherever its stage is next.</summary>
    ShowsSignsInTime,

    /// <summary>A line can be answered by looking: it asks, in the site's words, about a thing or a part that shows and isn't moved at will.</summary>
    AsksWhatShows,

    /// <summary>No answers lead round in a circle.</summary>
    HasNoLoop,

    /// <summary>Every page but the first has a way back to it.</summary>
    LeadsBack,

    /// <summary>The sign of a stage that a page doesn't show isn't in its file.</summary>
    HidesTheOtherSigns,
}

/// <summary>A law that is broken, and where.</summary>
internal sealed record Breach(Law Law, string Says);
