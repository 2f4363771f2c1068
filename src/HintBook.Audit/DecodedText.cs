using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using System.Text.Unicode;

namespace HintBook.Audit;

/// <summary>
/// What a string says in another form than it is written: percent-encoded (RFC 3986, section 2.1), in Base64 (RFC 4648, section 4), or with the tags and
/// character references of HTML.
/// </summary>
internal static partial class DecodedText
{
    private const int ShortestBase64 = 8, LongestBase64 = 400, Deepest = 2;

    /// <summary>Every other form that can be read as text; none for most strings.</summary>
    public static IEnumerable<string> Of(string text) => Of(text, 1);

    /// <summary>Text that anyone could write; null where Base64 holds anything else, such as a picture or a digest.</summary>
    public static string? FromBase64(ReadOnlySpan<char> base64)
    {
        if (base64.Length is < ShortestBase64 or > LongestBase64 || base64.Length % 4 != 0)
            return null;
        Span<byte> bytes = stackalloc byte[base64.Length];
        if (!Convert.TryFromBase64Chars(base64, bytes, out var length))
            return null;
        // Most words of eight letters are Base64 too, of bytes that are no text.
        if (bytes[..length].ContainsAnyInRange((byte)0, (byte)0x1F) || !Utf8.IsValid(bytes[..length]))
            return null;
        var text = Encoding.UTF8.GetString(bytes[..length]);
        return text.All(letter => char.IsLetterOrDigit(letter) || letter is ' ' or '-' or ':' or '.' or ',' or '\'' or '%') ? text : null;
    }

    private static IEnumerable<string> Of(string text, int depth)
    {
        List<string> forms = [];
        if (text.Contains('%', StringComparison.Ordinal) && Uri.UnescapeDataString(text) is var plain && plain != text)
            forms.Add(plain);
        if (text.AsSpan().IndexOfAny('<', '&') >= 0 && WithoutTags(text) is var read && read != text)
            forms.Add(read);
        if (text.Length >= ShortestBase64)
        {
            foreach (var match in Base64().EnumerateMatches(text))
            {
                if (FromBase64(text.AsSpan(match.Index, match.Length)) is { } said)
                    forms.Add(said);
            }
        }

        return depth == Deepest ? forms : forms.SelectMany(form => Of(form, depth + 1).Prepend(form));
    }

    // Elements that stand within a line leave no gap, and blocks end one.
    private static string WithoutTags(string text) =>
        WebUtility.HtmlDecode(Tag().Replace(text, static tag => PageWords.IsInLine(tag.Groups["name"].Value) && tag.Groups["name"].Value != "br" ? "" : "\n"));

    [GeneratedRegex("</?(?<name>[A-Za-z][A-Za-z0-9]*)[^<>]*>", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Tag();

    [GeneratedRegex(@"(?<![A-Za-z0-9+/=])[A-Za-z0-9+/]{6,398}={0,2}(?![A-Za-z0-9+/=])", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Base64();
}
