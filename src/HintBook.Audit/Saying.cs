namespace HintBook.Audit;

/// <summary>Something that a reader can meet.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Line">Where, from 1.</param>
/// <param name="Column">From 1.</param>
/// <param name="Where">The kind of place, as a sentence goes on: <c>in the title</c>.</param>
internal readonly record struct Saying(string Text, int Line, int Column, string Where);
