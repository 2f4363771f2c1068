using System.Collections.Immutable;

namespace HintBook.Audit.Sealed;

/// <summary>The keys that the cards find in their slots.</summary>
/// <param name="Keys">The key of each table that a card opened; of the whole box under <see cref="SlotTables.Box"/>.</param>
/// <param name="Opened">How many cards opened their slot.</param>
/// <param name="Faults">Cards that open nothing, or more than they may.</param>
internal sealed record CardKeys(ImmutableDictionary<string, byte[]> Keys, int Opened, ImmutableArray<AuditFault> Faults)
{
    /// <summary>What they found there.</summary>
    public ImmutableArray<OpenedSlot> Slots { get; private init; } = [];

    /// <summary>Tries every card.</summary>
    /// <param name="tag">The tag of the book.</param>
    /// <param name="epoch">The tag of the epoch.</param>
    /// <param name="tables">The slots.</param>
    /// <param name="cards">The cards.</param>
    public static CardKeys Of(byte[] tag, byte[] epoch, SlotTables tables, SealedCards cards)
    {
        string[] names = [.. tables.Names];
        var tried = cards.InUse.AsParallel().AsOrdered().Select(card => (Card: card, Slot: Open(card, TableOf(card))))
            .Select(each => (each.Card, each.Slot, Key: each.Slot?[..Unsealing.KeyLength])).ToArray();
        var keys = tried.Where(each => each.Key is not null).GroupBy(each => TableOf(each.Card), each => each.Key ?? [], StringComparer.Ordinal)
            .ToImmutableDictionary(same => same.Key, same => same.First(), StringComparer.Ordinal);
        return new(
            keys,
            tried.Count(each => each.Key is not null),
            [
                .. from each in tried
                   where each.Key is null
                   select Fault(each.Card, $"{Named(each.Card)} opens nothing: its slot is empty, damaged, or made for another card."),
                .. from each in tried
                   where each.Key is { } key && !key.AsSpan().SequenceEqual(keys[TableOf(each.Card)])
                   select Fault(each.Card, $"{Named(each.Card)} gives another key than the cards of other copies."),
                .. from each in tried
                   where each.Slot is not null && !OwnInSlot.Matches(each.Slot[Unsealing.KeyLength..], each.Card)
                   select Fault(each.Card, $"{Named(each.Card)} shows other values of a copy's own than it must."),
                .. cards.InUse.AsParallel().AsOrdered().Where(card => NextTo(card) != TableOf(card) && Open(card, NextTo(card)) is not null)
                    .Select(card => Fault(card, $"{Named(card)} opens the table “{NextTo(card)}”, which isn't its own.")),
                .. cards.Retired.AsParallel().AsOrdered().Where(card => Open(card, TableOf(card)) is not null)
                    .Select(card => Fault(card, $"{Named(card)} is retired or was replaced, and still opens its slot.")),
            ])
        {
            Slots = [.. from each in tried where each.Slot is not null select new OpenedSlot(each.Card, FileOf(each.Card), each.Slot[Unsealing.KeyLength..])],
        };

        // Each card is tried at one table that isn't its own.
        string NextTo(SealedCard card) => names.Length == 0 ? TableOf(card) : names[(Array.IndexOf(names, TableOf(card)) + 1) % names.Length];

        // The key of the pages is the first part of a slot; what follows are the copy's own values.
        byte[]? Open(SealedCard card, string table)
        {
            if (SealedCode.Read(card.Code) is not { } code || code.IsOfOneStage != card.Page is not null || tables.At(table, code.Number) is not { } slot)
                return null;
            var context = Unsealing.Fields("slot", tag, epoch, table == SlotTables.Box ? "" : table, code.Number);
            return Unsealing.Open(code.Key, context, slot);
        }
    }

    private static string TableOf(SealedCard card) => card.Page ?? SlotTables.Box;

    private static AuditFault Fault(SealedCard card, string message) =>
        new(FileOf(card), 0, 0, message);

    private static string FileOf(SealedCard card) => SlotTables.FileOf(TableOf(card), SealedCode.Read(card.Code)?.Number ?? 0);

    private static string Named(SealedCard card) => $"The card of copy {card.Serial}{(card.Page is null ? "" : $" for the page {card.Page}")}";
}
