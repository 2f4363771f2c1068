namespace HintBook.Audit;

/// <summary>Turns offsets in a text into places as people count them.</summary>
internal sealed class LineMap(string text)
{
    private readonly int[] starts = [0, .. text.Select((letter, at) => (letter, at)).Where(pair => pair.letter == '\n').Select(pair => pair.at + 1)];

    /// <summary>Line and column, from 1.</summary>
    public (int Line, int Column) PlaceOf(int offset)
    {
        var found = Array.BinarySearch(starts, offset);
        var line = found >= 0 ? found : ~found - 1;
        return (line + 1, offset - starts[line] + 1);
    }
}
