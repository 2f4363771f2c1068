using System.Text.RegularExpressions;
using HintBook.Audit.Mentions;

namespace HintBook.Audit;

/// <summary>
/// Which addresses lead to pictures, films and sounds. What such a file is called says what it shows: nobody writes figures of speech into names of files.
/// </summary>
internal static partial class PictureAddresses
{
    private const int MostSpaces = 3;
    private static readonly char[] Apart = [' ', '\t', '\r', '\n', '"', '“', '”', '«', '»', '(', ')', ',', ';', '|', '<', '>'];

    /// <summary>Whether a text has the address of a picture, a film or a sound in it.</summary>
    public static bool AreIn(string text) =>
        text.Contains('.', StringComparison.Ordinal) && !text.StartsWith("data:", StringComparison.OrdinalIgnoreCase) && Ending().IsMatch(text);

    /// <summary>Whether a string is such an address and no sentence that ends in one.</summary>
    public static bool Is(string text) => text.AsSpan().Count(' ') <= MostSpaces && !text.Contains('\n', StringComparison.Ordinal) && AreIn(text);

    /// <summary>The names of picture files that a text has, without spaces in them.</summary>
    public static IEnumerable<string> In(string text) =>
        AreIn(text) ? text.Split(Apart, StringSplitOptions.RemoveEmptyEntries).Where(AreIn) : [];

    /// <summary>How the words of an address are to be taken.</summary>
    public static Manner MannerOf(string address) => AreIn(address) ? Manner.Picture : Manner.Address;

    /// <summary>The same of an address that an element of a page or a drawing loads or leads to.</summary>
    /// <param name="element">The element's name.</param>
    /// <param name="address">The address.</param>
    public static Manner MannerOf(string element, string address) =>
        element is "img" or "image" or "use" or "video" or "source" && !address.StartsWith("data:", StringComparison.OrdinalIgnoreCase)
            ? Manner.Picture
            : MannerOf(address);

    /// <summary>Whether an attribute names a picture: an address of one by any name, a style with one in it, or the id of a symbol.</summary>
    /// <param name="element">The element's name.</param>
    /// <param name="attribute">The attribute's name.</param>
    /// <param name="value">What it says.</param>
    public static bool IsNamed(string element, string attribute, string value) => (element == "symbol" && attribute == "id") || AreIn(value);

    [GeneratedRegex(
        @"\.(avif|webp|jpe?g|jpe|jxl|png|apng|gif|svg|bmp|tiff?|heic|ico|mp4|m4v|mov|webm|ogv|mp3|m4a|ogg|opus|wav|avi)(?=$|[?#\s,;""'()\]\\])",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant,
        10_000)]
    private static partial Regex Ending();
}
