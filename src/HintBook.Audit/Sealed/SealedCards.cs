using System.Collections.Immutable;

namespace HintBook.Audit.Sealed;

/// <summary>The cards of a sealed site, and what may be read with a card only.</summary>
/// <param name="InUse">The cards that open it.</param>
/// <param name="Retired">Cards that must open nothing any more.</param>
public sealed record SealedCards(ImmutableArray<SealedCard> InUse, ImmutableArray<SealedCard> Retired)
{
    /// <summary>Texts that may stand in no file in the open, besides the secrets: titles and signs of stages, names of photos.</summary>
    public ImmutableArray<SealedText> Texts { get; init; } = [];

    /// <summary>Keys that no card gives and no file may hold: the secret of the book, and what follows from it.</summary>
    public ImmutableArray<SealedKey> Keys { get; init; } = [];

    /// <summary>The gates that all readers open with one word.</summary>
    public ImmutableArray<SealedGate> Gates { get; init; } = [];
}

/// <summary>The gate of a page.</summary>
/// <param name="Page">The name of the page.</param>
/// <param name="Word">What is typed there.</param>
public sealed record SealedGate(string Page, string Word)
{
    /// <summary>The gate without its word, which belongs into no message.</summary>
    public override string ToString() => $"the gate of {Page}";
}

/// <summary>A key that stays with the maker.</summary>
/// <param name="Of">What it is, for people, such as <c>the secret of the book</c>.</param>
/// <param name="Bytes">The key.</param>
public sealed record SealedKey(string Of, ImmutableArray<byte> Bytes)
{
    /// <summary>What it is, without the key, which belongs into no message.</summary>
    public override string ToString() => Of;
}

/// <summary>A card.</summary>
/// <param name="Serial">The serial of its copy.</param>
/// <param name="Code">Its 32 letters.</param>
/// <param name="Page">The name of the page that it opens; null for a card of the whole box.</param>
public sealed record SealedCard(string Serial, string Code, string? Page)
{
    /// <summary>What its copy has of its own and the card shows, by names; nothing else may be in its slot.</summary>
    public ImmutableArray<(string Name, string Value)> Own { get; init; } = [];

    /// <summary>The gates that the owner of its copy opens with codes of its own; their records are in its slot.</summary>
    public ImmutableArray<SealedGate> Gates { get; init; } = [];

    /// <summary>The card without its code, which belongs into no message.</summary>
    public override string ToString() => Page is null ? $"the card of copy {Serial}" : $"the card of copy {Serial} for {Page}";
}

/// <summary>A text that may be read with a card only.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Sure">Whether it can't stand anywhere by chance; otherwise it counts only in the letter case in which it is written, and as a doubt.</param>
public sealed record SealedText(string Text, bool Sure);
