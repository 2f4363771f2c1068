using System.Collections.Immutable;

namespace HintBook.Handbook;

/// <summary>A page of the handbook as it is written.</summary>
/// <param name="Name">Its name without an ending, such as <c>03-your-first-box</c>; the finished page is <c>03-your-first-box.html</c>.</param>
/// <param name="Text">Markdown whose first line is the title.</param>
public sealed record HandbookText(string Name, string Text);

/// <summary>All that the handbook is made from, besides what the program knows itself.</summary>
/// <param name="Chapters">In reading order.</param>
/// <param name="Devices">Pages that chapters lead to, each on one thing that a box can do.</param>
/// <param name="Findings">A page for each finding, named after its code.</param>
public sealed record HandbookTexts(
    ImmutableArray<HandbookText> Chapters, ImmutableArray<HandbookText> Devices, ImmutableArray<HandbookText> Findings);
