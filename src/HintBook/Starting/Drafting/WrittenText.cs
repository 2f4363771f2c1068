using System.Text;

namespace HintBook.Starting.Drafting;

/// <summary>A text file from wherever it comes: other programs write captions in other encodings.</summary>
public static class WrittenText
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text, and how it was read where that is a guess: null for UTF-8, and for what says itself how it is written.</summary>
    /// <param name="bytes">The file.</param>
    public static (string Text, string? Guess) Of(ReadOnlySpan<byte> bytes) => bytes switch
    {
        [0xEF, 0xBB, 0xBF, .. var rest] => (Encoding.UTF8.GetString(rest), null),
        [0xFF, 0xFE, .. var rest] => (Encoding.Unicode.GetString(rest), null),
        [0xFE, 0xFF, .. var rest] => (Encoding.BigEndianUnicode.GetString(rest), null),
        _ => Plain(bytes),
    };

    private static (string Text, string? Guess) Plain(ReadOnlySpan<byte> bytes)
    {
        try
        {
            return (Strict.GetString(bytes), null);
        }
        catch (DecoderFallbackException)
        {
            return (Western(bytes), "Windows-1252");
        }
    }

    // WHATWG Encoding Standard, index windows-1252: Latin-1, but for the 32 places that Latin-1 leaves to control characters.
    private static string Western(ReadOnlySpan<byte> bytes)
    {
        const string from80 = "€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008DŽ\u008F\u0090‘’“”•–—˜™š›œ\u009DžŸ";
        var text = new StringBuilder(bytes.Length);
        foreach (var each in bytes)
            text.Append(each is >= 0x80 and <= 0x9F ? from80[each - 0x80] : (char)each);
        return text.ToString();
    }
}
