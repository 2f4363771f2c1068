using System.Globalization;
using System.Numerics;
using System.Security.Cryptography;

namespace HintBook.Audit.Sealed;

/// <summary>What the 32 letters on a card say: five bits each, of which version, kind, number of the slot, key and check follow each other.</summary>
/// <param name="IsOfOneStage">Whether the card opens one page; otherwise every page.</param>
/// <param name="Number">The slot.</param>
/// <param name="Key">16 bytes.</param>
internal sealed record SealedCode(bool IsOfOneStage, int Number, byte[] Key)
{
    private const string Alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private const int Letters = 32, LetterBits = 5, CheckBits = 12, KeyBits = 128, NumberBits = 15;

    /// <summary>Reads a code in capitals without spaces; null if it isn't one.</summary>
    public static SealedCode? Read(string code)
    {
        if (code.Length != Letters || code.Any(letter => !Alphabet.Contains(letter, StringComparison.Ordinal)))
            return null;
        var all = code.Aggregate(BigInteger.Zero, (sum, letter) => (sum << LetterBits) | Alphabet.IndexOf(letter, StringComparison.Ordinal));
        var said = all >> CheckBits;
        // The check is of 19 bytes: what was said before it, and four bits of zero.
        var hash = SHA256.HashData([.. "hb1 code"u8, .. Bytes(said << 4, 19)]);
        if ((int)Last(all, CheckBits) != ((hash[0] << 4) | (hash[1] >> 4)))
            return null;
        var head = (int)(said >> KeyBits);
        return head >> (NumberBits + 1) != 1
            ? null
            : new(((head >> NumberBits) & 1) == 1, head & ((1 << NumberBits) - 1), Bytes(Last(said, KeyBits), Unsealing.KeyLength));
    }

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"the code of slot {Number}");

    private static BigInteger Last(BigInteger number, int bits) => number & ((BigInteger.One << bits) - 1);

    private static byte[] Bytes(BigInteger number, int length)
    {
        var bytes = number.ToByteArray(isUnsigned: true, isBigEndian: true);
        return [.. new byte[length - bytes.Length], .. bytes];
    }
}
