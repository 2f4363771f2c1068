using System.Collections.Immutable;

namespace HintBook.Pages;

/// <summary>A rendered page with what is sealed taken out of it.</summary>
/// <param name="Html">The page; of a book that isn't sealed, the whole page.</param>
/// <param name="Pieces">What was taken out, in the order of the page.</param>
public sealed record PageInPieces(ReadOnlyMemory<byte> Html, ImmutableArray<PieceOfPage> Pieces);

/// <summary>A piece of a page that is sealed.</summary>
/// <param name="Name">What it is, such as <c>clue</c>; on a page about several stages, the page name of one.</param>
/// <param name="Html">What it says.</param>
/// <param name="At">Where in the page its sealed bytes go, as base64: an offset in bytes, within the quotes of an attribute.</param>
public sealed record PieceOfPage(string Name, string Html, int At);
