using System.Collections.Immutable;

namespace HintBook.Workbench.Writing;

/// <summary>What a maker wants done with the stages, as the page sends it.</summary>
/// <param name="Do"><c>new</c>, <c>rename</c>, <c>move</c>, <c>split</c> or <c>delete</c>.</param>
/// <param name="Stage">The id of the stage that it is done to; for <c>new</c> the one that it comes after, empty for the first.</param>
/// <param name="To">The new id for <c>rename</c>.</param>
/// <param name="Title">The title of what is made by <c>new</c> and <c>split</c>.</param>
/// <param name="Place">The place that it moves to, from 1.</param>
/// <param name="Goes">
/// What goes to the second stage by <c>split</c>: <c>does:lid</c>, <c>gives:pin</c>, <c>takes:card</c>, or <c>move:2</c> for the third of its moves.
/// </param>
internal sealed record StageWish(string Do, string Stage = "", string To = "", string Title = "", int Place = 0, ImmutableArray<string>? Goes = null);

/// <summary>What came of a wish.</summary>
internal abstract record StagePlan
{
    /// <summary>It can be done.</summary>
    /// <param name="Says">What it means, sentence by sentence: for printed addresses, for other files.</param>
    /// <param name="Change">The files.</param>
    /// <param name="Opens">The file that the maker wants to see afterwards; null for none.</param>
    public sealed record Ready(ImmutableArray<string> Says, FilesChange Change, string? Opens) : StagePlan;

    /// <summary>It can't be done.</summary>
    /// <param name="Why">A sentence for the maker.</param>
    public sealed record Refused(string Why) : StagePlan;
}
