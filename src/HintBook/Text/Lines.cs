namespace HintBook.Text;

/// <summary>Steps through a text line by line without copying it.</summary>
internal static class Lines
{
    /// <summary>Where the line after an offset starts; the text's length where there is none.</summary>
    public static int Next(string text, int from)
    {
        var end = text.IndexOf('\n', from);
        return end < 0 ? text.Length : end + 1;
    }
}
