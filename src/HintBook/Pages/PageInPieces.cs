using System.Collections.Immutable;

namespace HintBook.Pages;

/// <summary>A rendered page with what is sealed taken out of it.</summary>
/// <param name="Html">The page; of a book that isn't sealed, the whole page.</param>
/// <param name="Pieces">What was taken out, in the order of the page.</param>
public sealed record PageInPieces(ReadOnlyMemory<byte> Html, ImmutableArray<PieceOfPage> Pieces);

/// <summary>A piece of a page that is sealed.</summary>
/// <param name="Name">Which piece of its page it is: no two have one name.</param>
/// <param name="Of">What it is, such as <c>clue</c>; on a page about several stages, the page name of one.</param>
/// <param name="Html">What it says.</param>
/// <param name="At">Where in the page its sealed bytes go, as base64: an offset in bytes, within the quotes of an attribute.</param>
public sealed record PieceOfPage(string Name, string Of, string Html, int At);

/// <summary>A page that can be sealed.</summary>
/// <param name="Path">Its file in the site.</param>
/// <param name="Language">The language of its texts.</param>
/// <param name="Print">Renders it.</param>
public sealed record SealablePage(string Path, string Language, Func<PageInPieces> Print)
{
    /// <summary>Its name among the keys: an opaque page name, <c>index</c>, <c>solution</c>, <c>reset</c> or a question of “where am I?”.</summary>
    public string Name => System.IO.Path.GetFileNameWithoutExtension(Path);
}
