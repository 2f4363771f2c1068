using System.Buffers.Binary;
using System.Security.Cryptography;

namespace HintBook.Sealing;

/// <summary>
/// The one function that seals: AES-256-GCM (NIST SP 800-38D) with a key and a nonce that follow from the parent key, the context and the text. The same
/// text in the same place gives the same bytes, and a key meets no two texts under one nonce, whatever is reverted, restored or published twice: the nonce
/// is a pseudo-random function of context and text. The context is part of the key and of the associated data at once, so nothing opens in another place.
/// </summary>
internal static class Seal
{
    /// <summary>How many bytes a sealed text is longer than the text: a nonce of 12 and a tag of 16.</summary>
    public const int Overhead = NonceLength + TagLength;

    private const int KeyLength = 32;
    private const int NonceLength = 12;
    private const int TagLength = 16;

    private static readonly byte[] KeyInfo = Derivation.InfoOf("key");
    private static readonly byte[] NonceInfo = Derivation.InfoOf("nonce");

    /// <summary>Seals a text.</summary>
    /// <param name="parent">The key that its readers have, of 16 or 32 bytes.</param>
    /// <param name="context">Where the sealed text belongs.</param>
    /// <param name="text">What nobody else shall read.</param>
    /// <returns>Nonce, ciphertext and tag.</returns>
    public static byte[] Close(ReadOnlySpan<byte> parent, ReadOnlySpan<byte> context, ReadOnlySpan<byte> text)
    {
        var sealedText = new byte[Overhead + text.Length];
        var nonce = sealedText.AsSpan(0, NonceLength);
        Span<byte> prk = stackalloc byte[KeyLength];
        HKDF.Extract(HashAlgorithmName.SHA256, parent, salt: [], prk);
        NonceOf(prk, context, text)[..NonceLength].CopyTo(nonce);
        Encrypt(KeyOf(prk, context), nonce, text, context, sealedText.AsSpan(NonceLength));
        return sealedText;
    }

    /// <summary>Opens what <see cref="Close"/> sealed.</summary>
    /// <returns>The text; null if the key, the context or a single bit is another.</returns>
    public static byte[]? Open(ReadOnlySpan<byte> parent, ReadOnlySpan<byte> context, ReadOnlySpan<byte> sealedText)
    {
        if (sealedText.Length < Overhead)
            return null;
        Span<byte> prk = stackalloc byte[KeyLength];
        HKDF.Extract(HashAlgorithmName.SHA256, parent, salt: [], prk);
        return Decrypt(KeyOf(prk, context), sealedText[..NonceLength], sealedText[NonceLength..], context);
    }

    /// <summary>AES-256-GCM: ciphertext and tag, in that order.</summary>
    /// <param name="key">32 bytes.</param>
    /// <param name="nonce">12 bytes.</param>
    /// <param name="text">The text.</param>
    /// <param name="context">The associated data.</param>
    /// <param name="into">As long as the text and 16 bytes more.</param>
    internal static void Encrypt(ReadOnlySpan<byte> key, ReadOnlySpan<byte> nonce, ReadOnlySpan<byte> text, ReadOnlySpan<byte> context, Span<byte> into)
    {
        using var aes = new AesGcm(key, TagLength);
        aes.Encrypt(nonce, text, into[..text.Length], into[text.Length..], context);
    }

    /// <summary>Undoes <see cref="Encrypt"/>; null if the tag doesn't fit.</summary>
    internal static byte[]? Decrypt(ReadOnlySpan<byte> key, ReadOnlySpan<byte> nonce, ReadOnlySpan<byte> sealedText, ReadOnlySpan<byte> context)
    {
        var text = new byte[sealedText.Length - TagLength];
        using var aes = new AesGcm(key, TagLength);
        try
        {
            aes.Decrypt(nonce, sealedText[..text.Length], sealedText[text.Length..], text, context);
            return text;
        }
        catch (AuthenticationTagMismatchException)
        {
            return null;
        }
    }

    /// <summary>The key that seals in a place, of 32 bytes.</summary>
    internal static byte[] KeyOf(ReadOnlySpan<byte> prk, ReadOnlySpan<byte> context) => Expand(prk, KeyInfo, context);

    /// <summary>The key of the function that gives nonces in a place, of 32 bytes.</summary>
    internal static byte[] NonceKeyOf(ReadOnlySpan<byte> prk, ReadOnlySpan<byte> context) => Expand(prk, NonceInfo, context);

    private static byte[] Expand(ReadOnlySpan<byte> prk, ReadOnlySpan<byte> info, ReadOnlySpan<byte> context)
    {
        var key = new byte[KeyLength];
        HKDF.Expand(HashAlgorithmName.SHA256, prk, key, [.. info, .. context]);
        return key;
    }

    private static ReadOnlySpan<byte> NonceOf(ReadOnlySpan<byte> prk, ReadOnlySpan<byte> context, ReadOnlySpan<byte> text)
    {
        Span<byte> length = stackalloc byte[8];
        BinaryPrimitives.WriteInt64BigEndian(length, context.Length);
        using var mac = IncrementalHash.CreateHMAC(HashAlgorithmName.SHA256, NonceKeyOf(prk, context));
        mac.AppendData(length);
        mac.AppendData(context);
        mac.AppendData(text);
        return mac.GetHashAndReset();
    }
}
