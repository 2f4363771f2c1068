using System.Text.Json;
using System.Text.RegularExpressions;

namespace HintBook.Audit;

/// <summary>
/// Codes that programs and data hold symbol by symbol under several names: <c>w[0] === 4 &amp;&amp; w[1] === 0</c>, <c>{ "w1": 4, "w2": 0 }</c>.
/// </summary>
internal static partial class SymbolRows
{
    /// <summary>The fewest and the most symbols that may be a code.</summary>
    public const int Fewest = 3, Most = 40;

    /// <summary>Symbols that are given to, or compared with, numbered variables of one name, parted by spaces.</summary>
    public static IEnumerable<string> InScript(string script) =>
        from match in Numbered().Matches(script)
        group match.Groups["one"].Value by match.Groups["name"].Value into row
        where row.Count() is >= Fewest and < Most
        select string.Join(' ', row);

    /// <summary>The symbols that the properties of an object hold, or one property of all objects in a list.</summary>
    public static IEnumerable<string[]> InData(JsonElement value)
    {
        if (value.ValueKind == JsonValueKind.Object)
            return Kept(value.EnumerateObject().Select(pair => pair.Value));
        return value.ValueKind == JsonValueKind.Array && value.EnumerateArray().All(item => item.ValueKind == JsonValueKind.Object)
            ? value.EnumerateArray().SelectMany(item => item.EnumerateObject()).GroupBy(pair => pair.Name)
                .SelectMany(row => Kept(row.Select(pair => pair.Value)))
            : [];
    }

    private static IEnumerable<string[]> Kept(IEnumerable<JsonElement> values)
    {
        string[] symbols =
        [
            .. from value in values
               where value.ValueKind is JsonValueKind.String or JsonValueKind.Number
               let written = value.ToString()
               where written.Length == 1
               select written,
        ];
        return symbols.Length is >= Fewest and < Most ? [symbols] : [];
    }

    [GeneratedRegex(
        """(?<name>[A-Za-z_$][A-Za-z_$]*)(\[[0-9]{1,2}\]|[0-9]{1,2})["']?\s*(={1,3}|:)\s*["'`]?(?<one>[0-9A-Za-z])["'`]?(?![\w.$])""",
        RegexOptions.ExplicitCapture,
        10_000)]
    private static partial Regex Numbered();
}
