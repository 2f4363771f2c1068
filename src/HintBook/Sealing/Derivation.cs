using System.Security.Cryptography;

namespace HintBook.Sealing;

/// <summary>How every key comes from the one above it: HKDF with SHA-256 (RFC 5869), empty salt, and the use of the key as its info.</summary>
internal static class Derivation
{
    private const string Format = "hb1";

    /// <summary>A key for one use.</summary>
    /// <param name="parent">The key above.</param>
    /// <param name="length">Bytes, 1 to 8,160.</param>
    /// <param name="label">What the key is for. No label serves for two things; <c>key</c> and <c>nonce</c> belong to <see cref="Seal"/> alone.</param>
    /// <param name="place">What else tells the key from its siblings.</param>
    public static byte[] Derive(ReadOnlySpan<byte> parent, int length, string label, params ReadOnlySpan<Field> place) =>
        Derive(parent, length, InfoOf(label, place));

    /// <summary>HKDF with SHA-256 and an empty salt.</summary>
    internal static byte[] Derive(ReadOnlySpan<byte> parent, int length, byte[] info)
    {
        var key = new byte[length];
        HKDF.DeriveKey(HashAlgorithmName.SHA256, parent, key, salt: [], info);
        return key;
    }

    /// <summary>The info of a key: the format, the label and the place.</summary>
    public static byte[] InfoOf(string label, params ReadOnlySpan<Field> place) => Field.Join([Format, label, .. place]);
}
