namespace HintBook.Audit.Mentions.Signs;

/// <summary>Figures that are said in kana: a stretch between signs that consists of them alone. Not thread-safe.</summary>
internal sealed class KanaFigures
{
    private static readonly (string Said, int Value)[] Figures =
    [
        ("ぜろ", 0), ("れい", 0), ("まる", 0), ("ゼロ", 0), ("いち", 1), ("いっ", 1), ("に", 2), ("にい", 2), ("さん", 3), ("よん", 4), ("し", 4), ("よ", 4),
        ("ご", 5), ("ろく", 6), ("なな", 7), ("しち", 7), ("はち", 8), ("きゅう", 9), ("く", 9), ("きゅー", 9),
    ];

    private readonly Dictionary<int, (int Last, int Value)> found = [];

    /// <summary>The figure that begins at a word; null for none.</summary>
    public (int Last, int Value)? At(int word) => found.TryGetValue(word, out var figure) ? figure : null;

    /// <summary>Reads a text.</summary>
    public void Read(FoldedText text)
    {
        found.Clear();
        for (var at = 0; at < text.Words.Length;)
        {
            var end = at + 1;
            while (end < text.Words.Length && text.Words[end].Parting == Parting.Nothing)
                end++;
            if (!Stretch(text, at, end))
            {
                for (var i = at; i < end; i++)
                    found.Remove(i);
            }

            at = end;
        }
    }

    private bool Stretch(FoldedText text, int at, int end)
    {
        while (at < end)
        {
            var (length, value) = (0, 0);
            foreach (var figure in Figures)
            {
                if (figure.Said.Length > length && Says(text, at, end, figure.Said) && IsDivisible(text, at + figure.Said.Length, end))
                    (length, value) = (figure.Said.Length, figure.Value);
            }

            if (length == 0)
                return false;
            found[at] = (at + length - 1, value);
            at += length;
        }

        return true;
    }

    // "にいち" is 2 and 1: what is left must be figures too.
    private static bool IsDivisible(FoldedText text, int at, int end) =>
        at == end || Array.Exists(Figures, figure => Says(text, at, end, figure.Said) && IsDivisible(text, at + figure.Said.Length, end));

    private static bool Says(FoldedText text, int at, int end, string said)
    {
        if (at + said.Length > end)
            return false;
        for (var i = 0; i < said.Length; i++)
        {
            if (text.Words[at + i].Length != 1 || text.Of(text.Words[at + i])[0] != said[i])
                return false;
        }

        return true;
    }
}
