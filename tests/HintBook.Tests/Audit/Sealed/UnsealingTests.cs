using HintBook.Audit.Sealed;

namespace HintBook.Tests.Audit.Sealed;

/// <summary>
/// The audit's own opening of what is sealed. Source: the worked example of the format <c>hb1</c>, computed with Node's WebCrypto and, from the standards
/// alone, with a program in Python.
/// </summary>
public class UnsealingTests
{
    private const string Page = "83wf3vhk";

    private static byte[] Root => Unsealing.Derive([.. Enumerable.Range(0, 32).Select(i => (byte)i)], 32, "book", "beekeepers-cabinet");

    private static byte[] Tag => Unsealing.Derive(Root, 8, "tag");

    private static byte[] Epoch => Unsealing.Derive(Root, 8, "epoch", 1);

    private static byte[] BoxKey => Unsealing.Derive(Root, 16, "box", 1);

    private static byte[] PageKey => Unsealing.Derive(BoxKey, 16, "page", Page);

    private static byte[] CardKey => Unsealing.Derive(Root, 16, "card", "007", 1);

    [Fact]
    public void Keys_follow_from_the_secret_as_in_the_example()
    {
        Assert.Equal("b8a0d142af39f9b608cca3d5e9fc9788b1c47963077e189e8536368f97a0d02b", Convert.ToHexStringLower(Root));
        Assert.Equal("c3e665ed98bdad78", Convert.ToHexStringLower(Tag));
        Assert.Equal("3ce8a8ba7709663c", Convert.ToHexStringLower(Epoch));
        Assert.Equal("9eff51520317c3c6936c5298488b7fa0", Convert.ToHexStringLower(BoxKey));
        Assert.Equal("63b06b9ac5a803dafc1f2e20a8f44876", Convert.ToHexStringLower(PageKey));
    }

    [Theory]
    [InlineData("2015F2WWQAJ2BC983CHJ9BZD5NG0G6VY", false, "78b9cbaa425b1281b2324afed2d60081")]
    [InlineData("3015FA5KS1RX7JKYEHBB509E47A297WC", true, "7a8b3c871d3ca7e7456b2812e21d4249")]
    public void A_code_says_what_its_card_opens(string code, bool isOfOneStage, string key)
    {
        var read = SealedCode.Read(code);

        Assert.Equal((isOfOneStage, 37, key), (read?.IsOfOneStage, read?.Number, Convert.ToHexStringLower(read?.Key ?? [])));
    }

    [Theory]
    [InlineData("2015F2WWQAJ2BC983CHJ9BZD5NG0G6VZ")]
    [InlineData("2015F2WWQAJ2BC983CHJ9BZD5NG0G6V")]
    [InlineData("U015F2WWQAJ2BC983CHJ9BZD5NG0G6VY")]
    public void A_code_with_a_wrong_letter_is_none(string code) => Assert.Null(SealedCode.Read(code));

    [Theory]
    [InlineData("", "1816c391bd1ce9e9a036be3ef957a29935056e97107799a9bf2044bbb68cd721d3fe8f7c3398bded985ff939", "9eff51520317c3c6936c5298488b7fa0")]
    [InlineData(Page, "7feb569693d4a8f939fe92a9acf9445a7a85cc5bc549b4231bb02c108aefb06715c70742b73b28b222111335", "63b06b9ac5a803dafc1f2e20a8f44876")]
    public void A_slot_opens_to_the_key_of_its_page(string page, string slot, string key)
    {
        var card = page.Length == 0 ? CardKey : Unsealing.Derive(CardKey, 16, "page card", page);

        Assert.Equal(key, Convert.ToHexStringLower(Unsealing.Open(card, Unsealing.Fields("slot", Tag, Epoch, page, 37), Convert.FromHexString(slot)) ?? []));
        Assert.Null(Unsealing.Open(card, Unsealing.Fields("slot", Tag, Epoch, page, 38), Convert.FromHexString(slot)));
    }

    [Fact]
    public void A_piece_opens_to_its_text_and_has_the_nonce_that_follows_from_it()
    {
        var piece = Convert.FromHexString(
            "1449d19e1897828718ebcaf2e62892985cf8de4d010e4f23c4dd12d51469827135e2133b895afcc78ff283d2"
            + "47b8d7ffcbf5503f5a49bb0b77ce659a2f80c51d00e52c03c2171b6e4910ecb77ad742f9aa5b20b0dfdb688a07e707de");
        var context = Unsealing.Fields("piece", Tag, Epoch, "en", Page, Convert.FromHexString("7498fa2c2d6f3b90"), "nudge");

        var padded = Unsealing.Open(PageKey, context, piece) ?? [];

        Assert.Equal("<p>Look at the verse again.</p>\n", Unsealing.Unpadded(padded));
        Assert.Equal(piece[..12], Unsealing.NonceOf(PageKey, context, padded));
    }

    [Theory]
    [InlineData("00000003616263", "abc")]
    [InlineData("000000036162630000", "abc")]
    [InlineData("00000003616263000001", null)]
    [InlineData("000000046162", null)]
    [InlineData("00000001ff", null)]
    public void Only_zeros_may_stand_behind_a_text(string padded, string? text) => Assert.Equal(text, Unsealing.Unpadded(Convert.FromHexString(padded)));
}
