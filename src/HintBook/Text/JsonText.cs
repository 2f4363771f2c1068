using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace HintBook.Text;

/// <summary>JSON as this program writes it: indented by two spaces, lines ended by <c>\n</c>, letters of every language as they are.</summary>
internal static partial class JsonText
{
    public static string Write(Action<Utf8JsonWriter> write)
    {
        using var bytes = new MemoryStream();
        var options = new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        using (var json = new Utf8JsonWriter(bytes, options))
            write(json);
        // Marks that turn the direction of text stand only within strings; escaped they say the same and turn nothing on a terminal.
        return TurnsText().Replace(Encoding.UTF8.GetString(bytes.ToArray()), mark => $"\\u{(int)mark.Value[0]:X4}") + "\n";
    }

    /// <summary>The text with U+FFFD for halves of surrogate pairs, which JSON in UTF-8 cannot carry.</summary>
    public static string Whole(string text) => string.Concat(text.EnumerateRunes());

    [GeneratedRegex("[\u202A-\u202E\u2066-\u2069]")]
    private static partial Regex TurnsText();
}
