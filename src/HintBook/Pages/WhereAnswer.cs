using System.Collections.Immutable;

namespace HintBook.Pages;

/// <summary>One answer to the first question of “Where am I?”, and where it leads. It holds in every language of the book.</summary>
/// <param name="Parts">The ids of what the reader moved last of all that shows on the closed box; none where nothing was moved yet.</param>
/// <param name="Levels">The ids of the stages whose signs are shown, those of the next level once the reader is past all of one.</param>
internal sealed record WhereAnswer(ImmutableArray<string> Parts, ImmutableArray<ImmutableArray<string>> Levels);
