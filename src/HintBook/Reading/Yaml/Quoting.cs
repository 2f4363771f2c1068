namespace HintBook.Reading.Yaml;

/// <summary>How a text is written so that YAML takes it as it stands.</summary>
internal static class Quoting
{
    private const int Long = 60;

    /// <summary>The text in quotes: double ones, or single ones where it has double ones inside.</summary>
    public static string InQuotes(string text) => text.Contains('"') || text.Contains('\\')
        ? $"'{text.Replace("'", "''", StringComparison.Ordinal)}'"
        : $"\"{text}\"";

    /// <summary>The text in double quotes on one line, where <c>\n</c> is a line break (YAML 1.2.2, 5.7).</summary>
    public static string Escaped(string text)
    {
        var escaped = text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal);
        return $"\"{escaped.Replace("\n", "\\n", StringComparison.Ordinal)}\"";
    }

    /// <summary>The beginning of a long text, on one line.</summary>
    public static string Shortened(string text)
    {
        var line = text.ReplaceLineEndings(" ");
        return line.Length <= Long ? line : line[..Long].TrimEnd() + "…";
    }
}
