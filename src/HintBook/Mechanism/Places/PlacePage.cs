using System.Collections.Immutable;
using HintBook.Mechanism.Answers;

namespace HintBook.Mechanism.Places;

/// <summary>One page of “where am I?”: signs, then lines of which the first true one counts, then “none of these”.</summary>
/// <param name="Places">Where a reader of this page may stand; on pages for a wanted stage, each with the stage.</param>
/// <param name="Signs">The stages whose signs are shown, by number; each is an answer and leads to its stage.</param>
/// <param name="Lines">The lines with where they lead.</param>
/// <param name="None">Where “none of these” leads; null where somebody is sure to have found an answer.</param>
internal sealed record PlacePage(Bits Places, ImmutableArray<int> Signs, ImmutableArray<(Line Line, PlaceEnd To)> Lines, PlaceEnd? None)
{
    /// <summary>Where a reader goes on for whom an answer is true, and who wants another stage than it leads to; null where no other is next.</summary>
    public PlaceEnd? Other { get; init; }

    /// <summary>Whether the page looks for one stage of several that are next: its readers come from <see cref="Other"/>.</summary>
    public bool ForWanted { get; init; }
}

/// <summary>Where an answer leads.</summary>
internal abstract record PlaceEnd
{
    /// <summary>To a stage that is next wherever the answer is true.</summary>
    /// <param name="Number">The stage.</param>
    public sealed record ToStage(int Number) : PlaceEnd;

    /// <summary>To another page.</summary>
    /// <param name="Places">Where its readers may stand: with <paramref name="ForWanted"/> the page's key.</param>
    /// <param name="ForWanted">Whether that page looks for one stage of several that are next.</param>
    public sealed record ToPage(Bits Places, bool ForWanted) : PlaceEnd;

    /// <summary>To the stage that was certainly done last, since nothing tells these places apart.</summary>
    /// <param name="Number">The stage to go on from, or -1 where none is certain.</param>
    /// <param name="Places">The places.</param>
    public sealed record Lost(int Number, Bits Places) : PlaceEnd;
}
