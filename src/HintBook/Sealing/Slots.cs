using System.Collections.Immutable;
using System.Globalization;

namespace HintBook.Sealing;

/// <summary>One copy in a table of slots.</summary>
/// <param name="Number">Its slot.</param>
/// <param name="CardKey">The key of its card.</param>
/// <param name="Own">Its own values, padded to the same size in the whole table; empty where there are none.</param>
internal sealed record SlotHolder(int Number, byte[] CardKey, byte[] Own);

/// <summary>
/// The envelopes of the copies: for each copy the page key (or the box key), sealed with the key of its card. A slot is found by the number on the card, never
/// by trying. Free numbers hold bytes that look like a slot.
/// </summary>
internal static class Slots
{
    /// <summary>Slots in one file.</summary>
    public const int InAFile = 128;

    private const int Fewest = 64;

    /// <summary>How many slots a table has for numbers below this: 64, 96, 128, 192, 256, 384, 512, 768 and so on.</summary>
    /// <param name="copies">Copies, at most 32,768.</param>
    public static int RoomFor(int copies)
    {
        var room = Fewest;
        while (room < copies)
            room = int.IsPow2(room) ? room / 2 * 3 : room / 3 * 4;
        return room;
    }

    /// <summary>The slots of a table in their order.</summary>
    /// <param name="epoch">The epoch's keys.</param>
    /// <param name="page">The page's name; empty for the whole box.</param>
    /// <param name="room">How many slots.</param>
    /// <param name="holders">The copies that have one.</param>
    public static byte[][] Of(EpochKeys epoch, string page, int room, IEnumerable<SlotHolder> holders)
    {
        var key = page.Length == 0 ? epoch.BoxKey : epoch.PageKey(page);
        var slots = new byte[room][];
        var own = 0;
        foreach (var holder in holders)
        {
            own = holder.Own.Length;
            var parent = page.Length == 0 ? holder.CardKey : BookKeys.PageCardKey(holder.CardKey, page);
            slots[holder.Number] = Seal.Close(parent, ContextOf(epoch, page, holder.Number), [.. key, .. holder.Own]);
        }

        for (var number = 0; number < room; number++)
            slots[number] ??= epoch.NobodysSlot(Seal.Overhead + key.Length + own, page, number);
        return slots;
    }

    /// <summary>The files of a table: classic scripts, since a page on a memory stick may read nothing else.</summary>
    /// <param name="epoch">The epoch's keys.</param>
    /// <param name="page">The page's name; empty for the whole box.</param>
    /// <param name="slots">The slots, all of one size.</param>
    /// <returns>Path in the site, and content.</returns>
    public static ImmutableArray<(string Path, string Content)> Files(EpochKeys epoch, string page, byte[][] slots) =>
        [.. slots.Chunk(InAFile).Select((chunk, shard) => FileOf(epoch, page.Length == 0 ? "box" : page, shard, chunk))];

    /// <summary>Where a slot belongs.</summary>
    public static byte[] ContextOf(EpochKeys epoch, string page, int number) => Field.Join("slot", epoch.BookTag, epoch.Tag, page, number);

    private static (string Path, string Content) FileOf(EpochKeys epoch, string table, int shard, byte[][] slots)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"k/{table}-{shard}");
        var bytes = Convert.ToBase64String([.. slots.SelectMany(slot => slot)]);
        var epochTag = Convert.ToHexStringLower(epoch.Tag);
        return (name + ".js", string.Create(CultureInfo.InvariantCulture, $"hintbook.take(\"{name}\",\"{epochTag}\",{slots[0].Length},\"{bytes}\")\n"));
    }
}
