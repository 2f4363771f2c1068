using System.Collections.Immutable;

namespace HintBook.Sealing;

/// <summary>
/// What a card of the whole box opens of a published site: enough to seal corrected texts anew, once the key of the book is lost. Tables of slots can't be
/// made with it, so they are carried over as they are.
/// </summary>
public sealed class OpenedBox
{
    /// <summary>What a card opened.</summary>
    /// <param name="card">The card.</param>
    /// <param name="keys">What follows from the key that stood in its slot.</param>
    /// <param name="own">What stood there behind the key: the copy's own values, padded.</param>
    /// <param name="tables">The tables of slots: each file's path in the site, and its content.</param>
    internal OpenedBox(CardCode card, EpochKeys keys, byte[] own, ImmutableSortedDictionary<string, byte[]> tables) =>
        (Card, Keys, Own, Tables) = (card, keys, own, tables);

    internal CardCode Card { get; }

    internal EpochKeys Keys { get; }

    internal byte[] Own { get; }

    internal ImmutableSortedDictionary<string, byte[]> Tables { get; }

    /// <inheritdoc/>
    public override string ToString() => "a box that a card opened";
}

/// <summary>The letters of a card as somebody typed them. They belong into no message, so nothing prints them.</summary>
/// <param name="letters">What was typed.</param>
public sealed class TypedCard(string letters)
{
    internal CardReading Read() => CardCode.Read(letters);

    /// <inheritdoc/>
    public override string ToString() => "the letters of a card";
}
