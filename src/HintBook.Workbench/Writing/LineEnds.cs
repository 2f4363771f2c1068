using System.Text;

namespace HintBook.Workbench.Writing;

/// <summary>Keeps the ends of a file's lines. A browser's text area knows line feeds alone.</summary>
internal static class LineEnds
{
    /// <summary>The text as a text area holds it.</summary>
    public static string Plain(string text) => text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');

    /// <summary>
    /// Gives each line of an edited text the end that it had. Lines that stand unchanged at the beginning and at the end keep theirs, and those
    /// between get the end of the file's first line.
    /// </summary>
    /// <param name="before">The file as it was, with any line ends.</param>
    /// <param name="edited">The edited text, with line feeds.</param>
    public static string Kept(string before, string edited)
    {
        var old = Lines(before);
        var fresh = edited.Split('\n');
        var usual = old[0].End is { Length: > 0 } first ? first : "\n";
        var same = 0;
        while (same < old.Count - 1 && same < fresh.Length - 1 && old[same].Text == fresh[same])
            same++;
        var last = 0;
        while (last < old.Count - same && last < fresh.Length - same && old[^(last + 1)].Text == fresh[^(last + 1)])
            last++;

        var kept = new StringBuilder(edited.Length);
        for (var line = 0; line < fresh.Length; line++)
        {
            kept.Append(fresh[line]);
            if (line == fresh.Length - 1)
                break;
            var fromEnd = fresh.Length - line;
            var end = line < same ? old[line].End : fromEnd <= last ? old[^fromEnd].End : usual;
            kept.Append(end.Length > 0 ? end : usual);
        }

        return kept.ToString();
    }

    // The last line has no end; it is empty where the file ends with one.
    private static List<(string Text, string End)> Lines(string text)
    {
        var lines = new List<(string, string)>();
        var start = 0;
        for (var at = 0; at < text.Length; at++)
        {
            if (text[at] is not ('\r' or '\n'))
                continue;
            var length = text[at] == '\r' && at + 1 < text.Length && text[at + 1] == '\n' ? 2 : 1;
            lines.Add((text[start..at], text.Substring(at, length)));
            at += length - 1;
            start = at + 1;
        }

        lines.Add((text[start..], ""));
        return lines;
    }
}
