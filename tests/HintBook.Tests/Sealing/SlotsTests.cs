using System.Globalization;
using CsCheck;
using HintBook.Sealing;

namespace HintBook.Tests.Sealing;

public class SlotsTests
{
    private static readonly BookKeys Keys = new(new(new byte[BookSecret.Length]), "a-box");

    [Theory]
    [InlineData(0, 64)]
    [InlineData(64, 64)]
    [InlineData(65, 96)]
    [InlineData(97, 128)]
    [InlineData(129, 192)]
    [InlineData(256, 256)]
    [InlineData(257, 384)]
    [InlineData(500, 512)]
    [InlineData(20_000, 24_576)]
    [InlineData(32_768, 32_768)]
    public void A_table_has_room_in_a_few_sizes_only(int copies, int room) => Assert.Equal(room, Slots.RoomFor(copies));

    [Fact]
    public void Every_copy_opens_its_own_slot_and_no_other()
    {
        var epoch = Keys.Epoch(1);
        var holders = Holders(40);
        var slots = Slots.Of(epoch, "83wf3vhk", 64, holders);

        foreach (var holder in holders)
        {
            var key = BookKeys.PageCardKey(holder.CardKey, "83wf3vhk");
            // Each slot is tried as what it is, and as the copy's own.
            var opened = Enumerable.Range(0, slots.Length).Where(number => new[] { number, holder.Number }.Any(tried =>
                Seal.Open(key, Slots.ContextOf(epoch, "83wf3vhk", tried), slots[number]) is not null));
            Assert.Equal([holder.Number], opened);
            Assert.Equal(epoch.PageKey("83wf3vhk"), Seal.Open(key, Slots.ContextOf(epoch, "83wf3vhk", holder.Number), slots[holder.Number]));
        }
    }

    [Fact]
    public void Free_slots_and_taken_ones_are_equally_long_and_no_two_alike()
    {
        var slots = Slots.Of(Keys.Epoch(1), "", 96, Holders(20).Select(holder => holder with { Own = new byte[32] }));

        Assert.All(slots, slot => Assert.Equal(12 + 16 + 16 + 32, slot.Length));
        Assert.Equal(slots.Length, slots.Select(Convert.ToHexString).Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void A_copy_more_changes_one_slot_of_a_table()
    {
        var epoch = Keys.Epoch(1);
        var before = Slots.Of(epoch, "83wf3vhk", 64, Holders(40));

        var after = Slots.Of(epoch, "83wf3vhk", 64, Holders(41));

        Assert.Single(before.Zip(after), pair => !pair.First.AsSpan().SequenceEqual(pair.Second));
    }

    [Fact]
    public void The_order_of_the_copies_does_not_matter() => Gen.Shuffle(Holders(20)).Sample(holders =>
        Slots.Of(Keys.Epoch(1), "", 64, holders).SelectMany(slot => slot).SequenceEqual(Slots.Of(Keys.Epoch(1), "", 64, Holders(20)).SelectMany(slot => slot)));

    [Fact]
    public void In_another_epoch_no_slot_is_the_same_and_old_cards_open_their_new_slots()
    {
        var holders = Holders(10);
        var (one, two) = (Slots.Of(Keys.Epoch(1), "", 64, holders), Slots.Of(Keys.Epoch(2), "", 64, holders));

        Assert.All(one.Zip(two), pair => Assert.False(pair.First.AsSpan().SequenceEqual(pair.Second)));
        Assert.All(holders, holder => Assert.Equal(
            Keys.Epoch(2).BoxKey,
            Seal.Open(holder.CardKey, Slots.ContextOf(Keys.Epoch(2), "", holder.Number), two[holder.Number])));
    }

    [Fact]
    public void A_table_stands_in_files_of_128_slots()
    {
        var epoch = Keys.Epoch(1);

        var files = Slots.Files(epoch, "83wf3vhk", Slots.Of(epoch, "83wf3vhk", 192, Holders(150)));

        Assert.Equal(["k/83wf3vhk-0.js", "k/83wf3vhk-1.js"], files.Select(file => file.Path));
        var call = $"hintbook.take(\"k/83wf3vhk-1\",\"{Convert.ToHexStringLower(epoch.Tag)}\",44,\"";
        Assert.StartsWith(call, files[1].Content, StringComparison.Ordinal);
        Assert.Equal(call.Length + ((64 * 44 + 2) / 3 * 4) + "\")\n".Length, files[1].Content.Length);
    }

    private static SlotHolder[] Holders(int count) =>
        [.. Enumerable.Range(0, count).Select(i => new SlotHolder(i, Keys.CardKey(i.ToString("000", CultureInfo.InvariantCulture), 1), []))];
}
