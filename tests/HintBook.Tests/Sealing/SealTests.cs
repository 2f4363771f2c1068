using System.Text;
using CsCheck;
using HintBook.Sealing;

namespace HintBook.Tests.Sealing;

public class SealTests
{
    private static readonly Gen<byte[]> Key = Gen.Byte.Array[16, 32];
    private static readonly Gen<byte[]> Bytes = Gen.Byte.Array[0, 200];

    [Fact]
    public void What_is_sealed_opens_as_it_was() =>
        Gen.Select(Key, Bytes, Bytes).Sample((key, context, text) => Seal.Open(key, context, Seal.Close(key, context, text)).AsSpan().SequenceEqual(text));

    [Fact]
    public void The_same_text_in_the_same_place_gives_the_same_bytes() =>
        Gen.Select(Key, Bytes, Bytes).Sample((key, context, text) => Seal.Close(key, context, text).AsSpan().SequenceEqual(Seal.Close(key, context, text)));

    [Fact]
    public void A_bit_that_is_turned_opens_nothing() =>
        Gen.Select(Key, Bytes, Bytes, Gen.Int[0, 100_000]).Sample((key, context, text, bit) =>
        {
            var closed = Seal.Close(key, context, text);
            closed[bit / 8 % closed.Length] ^= (byte)(1 << (bit % 8));
            return Seal.Open(key, context, closed) is null;
        });

    [Fact]
    public void What_is_cut_opens_nothing() =>
        Gen.Select(Key, Bytes, Bytes, Gen.Int[0, 100_000]).Sample((key, context, text, at) =>
        {
            var closed = Seal.Close(key, context, text);
            return Seal.Open(key, context, closed.AsSpan(0, at % closed.Length)) is null;
        });

    [Fact]
    public void Another_key_or_another_place_opens_nothing() =>
        Gen.Select(Key, Key, Bytes, Bytes, Bytes).Where((key, other, here, there, _) => !key.SequenceEqual(other) && !here.SequenceEqual(there))
            .Sample(all =>
            {
                var (key, other, here, there, text) = all;
                var closed = Seal.Close(key, here, text);
                return Seal.Open(other, here, closed) is null && Seal.Open(key, there, closed) is null;
            });

    [Fact]
    public void Two_texts_in_one_place_never_share_a_nonce() =>
        Gen.Select(Key, Bytes, Bytes, Bytes).Where((_, _, one, two) => !one.SequenceEqual(two))
            .Sample((key, context, one, two) => !Seal.Close(key, context, one).AsSpan(0, 12).SequenceEqual(Seal.Close(key, context, two).AsSpan(0, 12)));

    // Random rows hardly ever agree when joined without lengths, so they are drawn as two ways of cutting one text.
    [Fact]
    public void Two_ways_of_cutting_a_text_into_fields_never_give_the_same_bytes() =>
        Gen.Select(Gen.String[Gen.Char['a', 'c'], 1, 8], Gen.Int[0, 255], Gen.Int[0, 255]).Sample((text, one, two) =>
            Cut(text, one).SequenceEqual(Cut(text, two))
            == Field.Join([.. Cut(text, one).Select(part => (Field)part)]).AsSpan().SequenceEqual(Field.Join([.. Cut(text, two).Select(part => (Field)part)])));

    [Fact]
    public void A_field_that_is_too_long_for_its_length_is_refused() =>
        Assert.Throws<OverflowException>(() => Field.Join(new byte[65_536]));

    // RFC 5869, appendix A.3 (no salt and no info); from memory.
    [Fact]
    public void Keys_are_derived_as_the_standard_says() => Assert.Equal(
        "8da4e775a563c18f715f802a063c5a31b8a11f5c5ee1879ec3454e5f3c738d2d9d201395faa4b61a96c8",
        Convert.ToHexStringLower(Derivation.Derive(Enumerable.Repeat((byte)0x0b, 22).ToArray(), 42, [])));

    // McGrew and Viega, The Galois/Counter Mode of Operation, test cases 13 and 14 (AES-256, 96-bit nonce); from memory.
    [Theory]
    [InlineData("", "530f8afbc74536b9a963b4f1c4cb738b")]
    [InlineData("00000000000000000000000000000000", "cea7403d4d606b6e074ec5d3baf39d18d0d1c8a799996bf0265b98b5d48ab919")]
    public void Texts_are_encrypted_as_the_standard_says(string text, string expected)
    {
        var plain = Convert.FromHexString(text);
        var closed = new byte[plain.Length + 16];

        Seal.Encrypt(new byte[32], new byte[12], plain, [], closed);

        Assert.Equal(expected, Convert.ToHexStringLower(closed));
        Assert.Equal(plain, Seal.Decrypt(new byte[32], new byte[12], closed, []));
    }

    private static string[] Cut(string text, int where)
    {
        var parts = new List<StringBuilder> { new() };
        foreach (var (i, letter) in text.Index())
        {
            parts[^1].Append(letter);
            if ((where >> i & 1) == 1)
                parts.Add(new());
        }

        return [.. parts.Select(part => part.ToString())];
    }
}
