using System.Text;

namespace HintBook.Audit;

/// <summary>UTF-8 without a byte order mark, in which every byte must be valid.</summary>
internal static class StrictUtf8
{
    private static readonly UTF8Encoding Encoding = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Decodes bytes.</summary>
    /// <exception cref="DecoderFallbackException">The bytes are not valid UTF-8.</exception>
    public static string Decode(byte[] bytes) => Encoding.GetString(bytes);
}
