using System.Security.Cryptography;
using HintBook.Sealing;

namespace HintBook.Tests.Sealing;

/// <summary>
/// One book, copy and page with every value in full. Source: the worked example of the format <c>hb1</c>, which was computed with Node's WebCrypto and, from
/// the standards alone, with a program in Python, before this code was written.
/// </summary>
public class WorkedExampleTests
{
    private const string Page = "83wf3vhk";
    private const string Serial = "007";
    private const int Number = 37;
    private const string Nudge = "<p>Look at the verse again.</p>\n";

    private static readonly byte[] Secret = [.. Enumerable.Range(0, BookSecret.Length).Select(i => (byte)i)];
    private static readonly BookKeys Keys = new(new(Secret), "beekeepers-cabinet");
    private static readonly EpochKeys Epoch = Keys.Epoch(1);
    private static readonly byte[] CardKey = Keys.CardKey(Serial, 1);
    private static readonly byte[] PageKey = Epoch.PageKey(Page);

    // A function, so that no key is worked out when the tests are looked for.
    public static TheoryData<string, string, Func<byte[]>> Values => new()
    {
        { "root", "b8a0d142af39f9b608cca3d5e9fc9788b1c47963077e189e8536368f97a0d02b", () => Keys.Root.ToArray() },
        { "tag", "c3e665ed98bdad78", () => Keys.Tag },
        { "epoch tag", "3ce8a8ba7709663c", () => Epoch.Tag },
        { "box key", "9eff51520317c3c6936c5298488b7fa0", () => Epoch.BoxKey },
        { "page key", "63b06b9ac5a803dafc1f2e20a8f44876", () => PageKey },
        { "card key", "78b9cbaa425b1281b2324afed2d60081", () => CardKey },
        { "page card key", "7a8b3c871d3ca7e7456b2812e21d4249", () => BookKeys.PageCardKey(CardKey, Page) },
        { "slot context", "0004736c6f740008c3e665ed98bdad7800083ce8a8ba7709663c0008383377663376686b000400000025", () => Slots.ContextOf(Epoch, Page, Number) },
        { "page slot", "7feb569693d4a8f939fe92a9acf9445a7a85cc5bc549b4231bb02c108aefb06715c70742b73b28b222111335", () => SlotsOf(Page)[Number] },
        { "box slot", "1816c391bd1ce9e9a036be3ef957a29935056e97107799a9bf2044bbb68cd721d3fe8f7c3398bded985ff939", () => SlotsOf("")[Number] },
        { "nobody's slot", "ae9681631ee56ada25e24ef21be0209692c9d10382cd0151aea082ba1e084481943e29922c8df8d09951f689", () => SlotsOf(Page)[Number + 1] },
        { "padded", "000000203c703e4c6f6f6b2061742074686520766572736520616761696e2e3c2f703e0a" + new string('0', 56), () => Padding.Pad(Nudge, 64) },
        { "version", "7498fa2c2d6f3b90", () => Sealed().Version },
        {
            "piece",
            "1449d19e1897828718ebcaf2e62892985cf8de4d010e4f23c4dd12d51469827135e2133b895afcc78ff283d2"
            + "47b8d7ffcbf5503f5a49bb0b77ce659a2f80c51d00e52c03c2171b6e4910ecb77ad742f9aa5b20b0dfdb688a07e707de",
            () => Sealed().Pieces.Single().Sealed
        },
        { "gate salt", "95bf848abf224eb6f3b7ba06bfd3cc1a", () => Gate.SaltOf(PageKey) },
        { "gate key", "b825479d50a34b2a515b18b589271c13", () => Epoch.GateKey(Page) },
        { "gated page key", "8dabececae729edf30336cf95dcee995", () => EpochKeys.GatedPageKey(PageKey, Epoch.GateKey(Page)) },
        { "stretched word", "044a4064aadd272b318298e46b1f78732404992e3bb2ba4248ffb36e35fe79b9", () => Gate.Stretch("5173", Gate.SaltOf(PageKey)) },
        { "gate record", "ba168f1e6cd5e0e8652c75dd3624f074997a607f0a9a8ddaee26c50250cf73db341fdca939af7b5e45d5cad5", () => Gate.Record(Epoch, Page, "5173") },
    };

    [Theory]
    [MemberData(nameof(Values), DisableDiscoveryEnumeration = true)]
    public void Each_value_is_the_one_that_other_programs_computed(string what, string expected, Func<byte[]> value) =>
        Assert.Equal((what, expected), (what, Convert.ToHexStringLower(value())));

    [Fact]
    public void The_card_of_the_whole_box_carries_the_printed_letters() =>
        Assert.Equal("2015F2WWQAJ2BC983CHJ9BZD5NG0G6VY", new CardCode(CardKind.WholeBox, Number, CardKey).ToString());

    [Fact]
    public void The_card_of_a_stage_carries_the_printed_letters() => Assert.Equal(
        "3015FA5KS1RX7JKYEHBB509E47A297WC",
        new CardCode(CardKind.OneStage, Number, BookKeys.PageCardKey(CardKey, Page)).ToString());

    [Fact]
    public void The_key_that_seals_a_piece_and_the_key_of_its_nonce_are_the_computed_ones()
    {
        var context = SealedPage.ContextOf(Epoch, "en", Page, Sealed().Version, "nudge");
        var prk = HKDF.Extract(HashAlgorithmName.SHA256, PageKey, salt: []);

        Assert.Equal(
            "000570696563650008c3e665ed98bdad7800083ce8a8ba7709663c0002656e0008383377663376686b00087498fa2c2d6f3b9000056e75646765",
            Convert.ToHexStringLower(context));
        Assert.Equal("5150917eccdce1fbc4c18a7136a6ab8cac95dbc50978bf5d13acd2154e4b327e", Convert.ToHexStringLower(Seal.KeyOf(prk, context)));
        Assert.Equal("d4438cc68914858bb9c5d339e440e1b7db82c7903cee8941ca1f4310b2e0e975", Convert.ToHexStringLower(Seal.NonceKeyOf(prk, context)));
    }

    [Fact]
    public void Whoever_has_the_card_reads_the_nudge_from_the_slot_on()
    {
        Assert.True(CardCode.Read("3015 FA5K S1RX 7JKY EHBB 509E 47A2 97WC") is ReadCode { Code: { Kind: CardKind.OneStage, Number: Number } });
        var code = ((ReadCode)CardCode.Read("3015fa5ks1rx7jkyehbb509e47a297wc")).Code;
        var key = Seal.Open(code.Key, Slots.ContextOf(Epoch, Page, code.Number), SlotsOf(Page)[code.Number]);
        Assert.NotNull(key);
        var page = Sealed();

        var text = Seal.Open(key, SealedPage.ContextOf(Epoch, "en", Page, page.Version, "nudge"), page.Pieces.Single().Sealed);

        Assert.NotNull(text);
        Assert.Equal(Nudge, Padding.Unpad(text));
    }

    private static byte[][] SlotsOf(string page) => Slots.Of(Epoch, page, Slots.RoomFor(1), [new(Number, CardKey, [])]);

    private static SealedPage Sealed() => SealedPage.Of(Epoch, "en", Page, [new("nudge", Padding.Pad(Nudge, 64), PageKey)]);
}
