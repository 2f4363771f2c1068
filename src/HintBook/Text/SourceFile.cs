namespace HintBook.Text;

/// <summary>A text file of the book, as it was read: the one thing that spans point into.</summary>
public sealed class SourceFile
{
    private readonly int[] lineStarts;

    /// <summary>Keeps a text under the name that findings print.</summary>
    /// <param name="path">The path inside the book, with forward slashes: <c>stages/04-the-smoker.md</c>.</param>
    /// <param name="text">The whole text, decoded, without a byte-order mark.</param>
    public SourceFile(string path, string text)
        : this(path, text, isUnread: false)
    {
    }

    private SourceFile(string path, string text, bool isUnread)
    {
        IsUnread = isUnread;
        Path = path;
        Text = text;
        lineStarts = StartsOfLines(text);
    }

    /// <summary>The path inside the book, with forward slashes.</summary>
    public string Path { get; }

    /// <summary>The whole text.</summary>
    public string Text { get; }

    /// <summary>The span of the whole file.</summary>
    public Span Whole => new(this, 0, Text.Length);

    /// <summary>An empty span at the file's first character, for what concerns the file as such.</summary>
    public Span Top => new(this, 0, 0);

    /// <summary>Whether the file was not taken into the book: it can't be read, or its name doesn't allow it.</summary>
    public bool IsUnread { get; }

    /// <summary>A file that is not taken into the book: findings still need a place to point to.</summary>
    /// <param name="path">The path inside the book.</param>
    /// <param name="text">What is known of its text, to show the place of the mistake.</param>
    public static SourceFile Unread(string path, string text = "") => new(path, text, isUnread: true);

    /// <summary>Turns an offset into a place as people count: line and column from 1, columns in UTF-16 units.</summary>
    public (int Line, int Column) PlaceOf(int offset)
    {
        offset = Math.Clamp(offset, 0, Text.Length);
        var found = Array.BinarySearch(lineStarts, offset);
        var line = found >= 0 ? found : ~found - 1;
        return (line + 1, offset - lineStarts[line] + 1);
    }

    /// <summary>The text of a line, counted from 1, without its line break; empty past the end.</summary>
    public string LineAt(int line)
    {
        if (line < 1 || line > lineStarts.Length)
            return "";
        var start = lineStarts[line - 1];
        var end = line < lineStarts.Length ? lineStarts[line] : Text.Length;
        return Text[start..end].TrimEnd('\r', '\n');
    }

    private static int[] StartsOfLines(string text)
    {
        var starts = new List<int> { 0 };
        for (var i = text.IndexOf('\n', StringComparison.Ordinal); i >= 0; i = text.IndexOf('\n', i + 1))
            starts.Add(i + 1);
        return [.. starts];
    }
}
