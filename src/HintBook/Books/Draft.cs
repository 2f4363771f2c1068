using HintBook.Text;

namespace HintBook.Books;

/// <summary>What stands in a draft where its maker has something to write.</summary>
public static class Draft
{
    /// <summary>The words, the same in all languages; no reader ever sees them.</summary>
    public const string Open = "still to write";

    /// <summary>Whether a text says so and nothing else, or a line of it does.</summary>
    public static bool IsOpen(string text) => LineOf(text) is not null;

    /// <summary>Where a text says so; the whole of it where its lines can't be told from the file's; null if it is written.</summary>
    public static Span? OpenLine(Prose prose) => LineOf(prose.Markdown) is not var (start, length) ? null
        : prose.Markdown.Length == prose.At.Text.Length ? prose.At with { Start = prose.At.Start + start, End = prose.At.Start + start + length }
        : prose.At;

    private static (int Start, int Length)? LineOf(string text)
    {
        for (var at = 0; (at = text.IndexOf(Open, at, StringComparison.OrdinalIgnoreCase)) >= 0; at += Open.Length)
        {
            var start = text.LastIndexOf('\n', at) + 1;
            var end = text.IndexOf('\n', at) is >= 0 and var found ? found : text.Length;
            if (text[start..end].Trim().TrimEnd('.').Equals(Open, StringComparison.OrdinalIgnoreCase))
                return (at, Open.Length);
        }

        return null;
    }
}
