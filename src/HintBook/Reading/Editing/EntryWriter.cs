using System.Buffers;
using System.Globalization;
using System.Text;
using HintBook.Reading.Yaml;

namespace HintBook.Reading.Editing;

/// <summary>How a text is quoted.</summary>
internal enum QuoteStyle
{
    /// <summary>Not at all, where YAML then reads it as it stands; otherwise in double quotes.</summary>
    Plain,

    /// <summary>In single quotes, where it has no line breaks.</summary>
    Single,

    /// <summary>In double quotes.</summary>
    Double,

    /// <summary>As a block below a <c>|</c>, where it has several lines.</summary>
    Block,
}

/// <summary>Writes values as YAML.</summary>
/// <param name="lineEnd">The end of a line in the file.</param>
/// <param name="style">How texts are quoted.</param>
internal sealed class EntryWriter(string lineEnd, QuoteStyle style)
{
    // Of one line in our books, its key included.
    private static readonly SearchValues<char> Brackets = SearchValues.Create("[]{},:");

    private const int LongestLine = 120;

    /// <summary>The end of a line in the file.</summary>
    public string LineEnd => lineEnd;

    /// <summary>A value in one line, or a text of several lines as a block.</summary>
    /// <param name="value">The value.</param>
    /// <param name="indent">The column of the key that it belongs to; null inside brackets, where there are no blocks.</param>
    public string Write(EntryValue value, int? indent)
    {
        if (value is EntryValue.Text(var text) && text.Contains('\n')
            && indent is { } column && style != QuoteStyle.Double && AsBlock(text, column) is { } block)
            return block;
        if (indent is not { } at || value is not (EntryValue.Many { Items.Length: > 0 } or EntryValue.Keyed { Entries.Length: > 0 }))
            return InLine(value, inBrackets: indent is null);
        var line = InLine(value, inBrackets: true);
        return line.Length + at <= LongestLine ? line : lineEnd + Lines(value, at + 2);
    }

    /// <summary>An entry of a list or a group with one entry a line.</summary>
    /// <param name="key">The key, or null for an item of a list.</param>
    /// <param name="value">What stands there.</param>
    /// <param name="column">The column of the key or the dash.</param>
    public string Entry(string? key, EntryValue value, int column)
    {
        if (key is not null)
            return $"{Key(key)}:{Spaced(Write(value, column))}";
        var line = InLine(value, inBrackets: true);
        return line.Length + column <= LongestLine || value is not EntryValue.Keyed ? $"- {line}" : $"- {Lines(value, column + 2).TrimStart(' ')}";
    }

    /// <summary>A key.</summary>
    public static string Key(string key) => IsPlain(key, inBrackets: true) ? key : Quoted(key);

    /// <summary>A text in the style of the one that it replaces.</summary>
    /// <param name="text">The text.</param>
    /// <param name="inBrackets">Whether it stands inside brackets.</param>
    public string Scalar(string text, bool inBrackets) => style switch
    {
        QuoteStyle.Plain when IsPlain(text, inBrackets) => text,
        QuoteStyle.Single when !text.Any(char.IsControl) => $"'{text.Replace("'", "''", StringComparison.Ordinal)}'",
        _ => Quoted(text),
    };

    private static string Spaced(string written) => written.StartsWith('\n') || written.StartsWith('\r') ? written : " " + written;

    private string Lines(EntryValue value, int column)
    {
        var lines = value is EntryValue.Keyed(var entries)
            ? entries.Select(entry => Entry(entry.Key, entry.Value, column))
            : ((EntryValue.Many)value).Items.Select(item => Entry(null, item, column));
        return string.Join(lineEnd, lines.Select(line => new string(' ', column) + line));
    }

    private string InLine(EntryValue value, bool inBrackets) => value switch
    {
        EntryValue.Text(var text) => Scalar(text, inBrackets),
        EntryValue.Bare(var word) => word,
        EntryValue.Many({ IsEmpty: true }) => "[]",
        EntryValue.Many(var items) => $"[ {string.Join(", ", items.Select(item => InLine(item, inBrackets: true)))} ]",
        EntryValue.Keyed({ IsEmpty: true }) => "{}",
        EntryValue.Keyed(var entries) => $"{{ {string.Join(", ", entries.Select(entry => $"{Key(entry.Key)}: {InLine(entry.Value, inBrackets: true)}"))} }}",
        _ => "",
    };

    // YAML 1.2.2, 8.1: the text ends with one line break (“|”) or with none (“|-”).
    private string? AsBlock(string text, int column)
    {
        var body = text.EndsWith('\n') ? text[..^1] : text;
        if (body.Length == 0 || body[0] is ' ' or '\n' || body.EndsWith('\n') || body.Any(sign => char.IsControl(sign) && sign != '\n'))
            return null;
        var margin = new string(' ', column + 2);
        var lines = body.Split('\n').Select(line => line.Length == 0 ? "" : margin + line);
        return (text.EndsWith('\n') ? "|" : "|-") + lineEnd + string.Join(lineEnd, lines);
    }

    // Stricter than YAML 1.2.2, 7.3.3: what looks like a number or an answer is quoted too, and whatever else only looks harmless.
    private static bool IsPlain(string text, bool inBrackets)
    {
        if (text.Length == 0 || !char.IsLetterOrDigit(text[0]) || text[^1] is ' ' or ':')
            return false;
        if (text.Any(IsOdd))
            return false;
        if (text.Contains(": ", StringComparison.Ordinal) || text.Contains(" #", StringComparison.Ordinal))
            return false;
        if (inBrackets && text.AsSpan().ContainsAny(Brackets))
            return false;
        if (text.ToLowerInvariant() is "null" or "true" or "false" or "yes" or "no" or "nan" or "inf" || text.All(sign => !char.IsLetter(sign)))
            return false;
        return !double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _);
    }

    private static bool IsOdd(char sign) =>
        sign != ' ' && (char.IsWhiteSpace(sign) || char.IsControl(sign) || char.IsSurrogate(sign) || sign is >= '\uFFFE' or '\uFEFF');

    // YAML 1.2.2, 5.7.
    private static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var sign in text)
        {
            quoted.Append(sign switch
            {
                '"' => "\\\"",
                '\\' => "\\\\",
                '\n' => "\\n",
                '\t' => "\\t",
                _ when char.IsControl(sign) || sign is '\u2028' or '\u2029' or '\uFEFF' or >= '\uFFFE' || Typography.IsOddSpace(sign) => $"\\u{(int)sign:X4}",
                _ => sign.ToString(),
            });
        }

        return quoted.Append('"').ToString();
    }
}
