using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace HintBook.Audit.Sealed;

/// <summary>
/// Opens what is sealed in the format <c>hb1</c>: HKDF (RFC 5869) and HMAC with SHA-256, AES-256-GCM. Written from the description of the format alone.
/// </summary>
internal static class Unsealing
{
    /// <summary>Bytes in front of the sealed text.</summary>
    public const int NonceLength = 12;

    /// <summary>Bytes behind the sealed text.</summary>
    public const int TagLength = 16;

    /// <summary>Bytes of a key in a slot or on a card.</summary>
    public const int KeyLength = 16;

    private const int LongKey = 32;

    /// <summary>Texts in UTF-8, numbers in four bytes and bytes as they are, each with its length in two bytes before it.</summary>
    public static byte[] Fields(params object[] fields)
    {
        using var joined = new MemoryStream();
        foreach (var field in fields)
        {
            var bytes = field switch
            {
                string text => Encoding.UTF8.GetBytes(text),
                int number => BitConverter.GetBytes(BinaryPrimitives.ReverseEndianness(number)),
                byte[] given => given,
                _ => throw new ArgumentException($"A field can't be a {field.GetType().Name}.", nameof(fields)),
            };
            joined.Write([(byte)(bytes.Length >> 8), (byte)(bytes.Length & 0xFF)]);
            joined.Write(bytes);
        }

        return joined.ToArray();
    }

    /// <summary>A key that follows from another.</summary>
    public static byte[] Derive(byte[] parent, int length, params object[] label) => Expand(parent, length, Fields(["hb1", .. label]));

    /// <summary>What was sealed; null if key or context is another, or a bit differs.</summary>
    public static byte[]? Open(byte[] parent, byte[] context, ReadOnlySpan<byte> closed)
    {
        if (closed.Length < NonceLength + TagLength)
            return null;
        var text = new byte[closed.Length - NonceLength - TagLength];
        using var cipher = new AesGcm(Expand(parent, LongKey, [.. Fields("hb1", "key"), .. context]), TagLength);
        try
        {
            cipher.Decrypt(closed[..NonceLength], closed[NonceLength..^TagLength], closed[^TagLength..], text, context);
            return text;
        }
        catch (AuthenticationTagMismatchException)
        {
            return null;
        }
    }

    /// <summary>The nonce that belongs to a text at its place.</summary>
    public static byte[] NonceOf(byte[] parent, byte[] context, byte[] text)
    {
        var length = new byte[8];
        BinaryPrimitives.WriteInt64BigEndian(length, context.Length);
        byte[] said = [.. length, .. context, .. text];
        return HMACSHA256.HashData(Expand(parent, LongKey, [.. Fields("hb1", "nonce"), .. context]), said)[..NonceLength];
    }

    /// <summary>The text in front of the zeros that make all of its kind equally long; null if it isn't made so.</summary>
    public static string? Unpadded(byte[] padded)
    {
        const int head = 4;
        if (padded.Length < head)
            return null;
        var length = BinaryPrimitives.ReadUInt32BigEndian(padded);
        if (length > padded.Length - head || padded.AsSpan(head + (int)length).ContainsAnyExcept((byte)0))
            return null;
        try
        {
            return StrictUtf8.Decode(padded[head..(head + (int)length)]);
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }

    private static byte[] Expand(byte[] parent, int length, byte[] info) => HKDF.DeriveKey(HashAlgorithmName.SHA256, parent, length, salt: [], info);
}
