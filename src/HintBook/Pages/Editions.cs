using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Photos;

namespace HintBook.Pages;

/// <summary>A book as it stands on a shelf.</summary>
/// <param name="Folder">Its folder in the site, such as <c>beekeeper/</c>.</param>
/// <param name="Book">The book.</param>
/// <param name="Pictures">Its published pictures, by file.</param>
public sealed record ShelvedBook(string Folder, Book Book, IReadOnlyDictionary<string, Picture> Pictures);

/// <summary>The editions of one box on a shelf.</summary>
/// <param name="Name">The name that they share; null for a box of one edition.</param>
/// <param name="Books">Their books, in the order of the shelf; one or more.</param>
public sealed record EditionsOfBox(string? Name, ImmutableArray<ShelvedBook> Books)
{
    /// <summary>The page that asks an owner which of them their box is.</summary>
    public string Page => $"which-{Name}.html";
}

/// <summary>Which books of a shelf are editions of one box.</summary>
public static class Editions
{
    /// <summary>The boxes of a shelf, each with its editions, in the order in which they are met.</summary>
    public static ImmutableArray<EditionsOfBox> Of(IEnumerable<ShelvedBook> books) =>
    [
        .. from shelved in books
           let name = shelved.Book.Shelf?.EditionOf?.Value
           group shelved by name ?? $"/{shelved.Folder}" into box
           select new EditionsOfBox(box.First().Book.Shelf?.EditionOf?.Value, [.. box]),
    ];

    /// <summary>
    /// The serials by which an edition's boxes are known on the shelf. A sealed book has none there: how many boxes there are is nobody's business.
    /// </summary>
    public static ImmutableArray<string> SerialsOf(Book book) => book.Sealed is not null ? [] : [.. book.Copies.Select(copy => copy.Serial.Value)];
}
