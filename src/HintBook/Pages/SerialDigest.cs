using System.Text;
using System.Text.RegularExpressions;

namespace HintBook.Pages;

/// <summary>
/// What stands on a page in the place of a serial: enough to recognise one that somebody types, and no text that a search finds. It is no secret.
/// </summary>
internal static partial class SerialDigest
{
    private const uint OffsetBasis = 0x811c9dc5;
    private const uint Prime = 0x01000193;

    // The full-width forms of ASCII (Unicode, block FF00–FFEF), as a Japanese keyboard types them.
    private const char FirstWide = '\uFF01';
    private const char LastWide = '\uFF5E';
    private const int WideByMore = 0xFEE0;

    /// <summary>
    /// FNV-1a of 32 bits (Fowler, Noll and Vo; IETF draft-eastlake-fnv) of the letters and figures in UTF-8, as eight hexadecimal digits. Case, width, zeros at
    /// the front and whatever is neither letter nor figure don't count. <c>reader.js</c> does the same.
    /// </summary>
    public static string Of(string serial)
    {
        var narrow = string.Concat(serial.Select(each => each is >= FirstWide and <= LastWide ? (char)(each - WideByMore) : each));
        var plain = ZerosAtTheFront().Replace(NoLetterOrFigure().Replace(narrow.ToLowerInvariant(), ""), "");
        return Encoding.UTF8.GetBytes(plain).Aggregate(OffsetBasis, (hash, each) => unchecked((hash ^ each) * Prime)).ToString("x8", null);
    }

    [GeneratedRegex(@"[^\p{L}\p{N}]")]
    private static partial Regex NoLetterOrFigure();

    [GeneratedRegex("^0+(?=.)")]
    private static partial Regex ZerosAtTheFront();
}
