using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Checking;

namespace HintBook.Publishing;

/// <summary>Which of its own values a card of a copy shows.</summary>
internal sealed class OwnOfCopies
{
    private readonly Dictionary<string, Copy> copies;
    private readonly Dictionary<string, HashSet<string>> said;

    public OwnOfCopies(Examined book)
    {
        Book[] languages = [book.Book, .. book.Book.Translations];
        copies = book.Book.Copies.DistinctBy(copy => copy.Serial.Value).ToDictionary(copy => copy.Serial.Value, StringComparer.Ordinal);
        // A translation may say what the original doesn't. A page has its values under each name that was ever printed.
        var ofStages = languages.SelectMany(each => each.Stages).ToLookup(stage => stage.Id.Value, StringComparer.Ordinal);
        said = book.Addresses.Names
            .SelectMany(names => names.Value, (names, page) => (Page: page, Stages: ofStages[names.Key]))
            .ToDictionary(each => each.Page, each => each.Stages.SelectMany(OwnMark.SaidIn).ToHashSet(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    /// <summary>The names and values of a copy: all of them for the whole box, and for the page of one stage those that its answer says.</summary>
    /// <param name="serial">The copy's serial.</param>
    /// <param name="page">The page's name; null for the whole box.</param>
    public ImmutableArray<(string Name, string Value)> Of(string serial, string? page) =>
    [
        .. from value in copies.TryGetValue(serial, out var copy) ? copy.Values : []
           where page is null || said[page].Contains(value.Name.Value)
           select (value.Name.Value, value.Value.Value),
    ];
}
