using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Cards.Codes;

namespace HintBook.Cards;

/// <summary>A card that is to be printed.</summary>
/// <param name="Name">What tells it from the others and gives nothing away: <c>box</c>, or the name of a stage's page.</param>
/// <param name="Stage">The stage it helps with; null for the box's own card. For the maker's eyes only.</param>
/// <param name="Address">The address as it is printed in letters.</param>
/// <param name="Code">The address as it is printed in a QR code; null where no code is large enough.</param>
internal sealed record Card(string Name, Stage? Stage, string Address, QrMatrix? Code)
{
    /// <summary>The name of the box's own card.</summary>
    public const string Box = "box";

    /// <summary>Whose card it is; null where all copies have the same.</summary>
    public CodedCopy? Copy { get; init; }

    /// <summary>The code that opens its help, in 32 letters; null where the help lies open.</summary>
    public string? Secret { get; init; }

    /// <summary>What the code says.</summary>
    public string Says => Secret is null ? CardList.Ascii(Address) : $"{CardList.Ascii(Address)}#{Secret}";

    /// <summary>The same for people's eyes, where a secret doesn't belong.</summary>
    public string Shown => Secret is null ? Says : $"{CardList.Ascii(Address)}#{new string('•', Secret.Length)}";

    /// <summary>The name of its own files, without an ending.</summary>
    public string File => Copy is null ? Name : $"{Copy.Folder}/{Name}";
}

/// <summary>Which cards a book has.</summary>
internal static class CardList
{
    /// <summary>
    /// The box's card first, then those of the stages in the author's order, as far as the author wants them; of a sealed book, one copy after the other.
    /// </summary>
    public static ImmutableArray<Card> Build(Book book, Addresses addresses, ImmutableArray<CodedCopy> copies) =>
        [.. Uncoded(book, addresses, copies).AsParallel().AsOrdered().Select(card => card with { Code = QrMatrix.Encode(card.Says) })];

    /// <summary>The same cards without the squares of their codes.</summary>
    public static IEnumerable<Card> Uncoded(Book book, Addresses addresses, ImmutableArray<CodedCopy> copies)
    {
        Card[] cards = [.. Wanted(book, addresses).Select(card => new Card(card.Name, card.Stage, card.Address, null))];
        return copies.IsEmpty
            ? cards
            : copies.SelectMany(copy => cards.Select(card => card with { Copy = copy, Secret = copy.CodeOf(card.Stage is null ? null : card.Name) }));
    }

    /// <summary>The same without their codes.</summary>
    public static IEnumerable<(string Name, Stage? Stage, string Address)> Wanted(Book book, Addresses addresses)
    {
        IEnumerable<(string Name, Stage? Stage, string Address)> box = [(Card.Box, null, addresses.Base!)];
        var stages =
            from stage in book.Stages
            select (Name: addresses.Names[stage.Id.Value][0], Stage: (Stage?)stage, Address: addresses.PrintedFor(stage.Id.Value)!);
        return book.Cards switch
        {
            CardChoice.Box => box,
            CardChoice.Stages => stages,
            _ => box.Concat(stages),
        };
    }

    /// <summary>An address as every reader understands it: a host in other letters as its ASCII name, other signs in per cent.</summary>
    public static string Ascii(string address) =>
        address.All(char.IsAscii) || !Uri.TryCreate(address, UriKind.Absolute, out var uri)
            ? address
            : new UriBuilder(uri) { Host = uri.IdnHost }.Uri.AbsoluteUri;
}
