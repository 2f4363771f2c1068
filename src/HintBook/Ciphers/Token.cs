namespace HintBook.Ciphers;

/// <summary>A run of letters or of figures of a text, for ways that read times and dates out of prose.</summary>
/// <param name="Text">In small letters without marks.</param>
/// <param name="Start">Where it begins in the text.</param>
/// <param name="End">Where it ends.</param>
/// <param name="Between">What stands between the token before it and this one, without white space around.</param>
internal readonly record struct Token(string Text, int Start, int End, string Between)
{
    private const int LongestBetween = 3;
    private const string Whole = "o'clock";

    /// <summary>Whether it is a run of figures.</summary>
    public bool IsNumber => char.IsAsciiDigit(Text[0]);

    /// <summary>Whether nothing but a space or a hyphen parts it from the token before.</summary>
    public bool IsJoined => Between is "" or "-" or "‐" or "‑" or "–";

    /// <summary>
    /// All tokens of a text. Figures and letters are parted, and so is a word at its apostrophe, but for <c>o'clock</c>: <c>10h45</c> has three tokens.
    /// </summary>
    public static Token[] In(string text)
    {
        var tokens = new List<Token>();
        var end = 0;
        foreach (var word in TextPieces.Words(text))
        {
            var isWhole = word.Value.Replace('’', '\'').Equals(Whole, StringComparison.OrdinalIgnoreCase);
            for (var at = word.Start; at < word.End;)
            {
                if (!isWhole && text[at] is '\'' or '’')
                {
                    at++;
                    continue;
                }

                var start = at;
                var isNumber = char.IsAsciiDigit(text[at]);
                while (at < word.End && (isWhole || text[at] is not ('\'' or '’')) && char.IsAsciiDigit(text[at]) == isNumber)
                    at++;
                var folded = isNumber ? text[start..at] : isWhole ? Whole : Accents.Folded(text[start..at]);
                if (folded.Length == 0)
                    continue;
                var between = text.AsSpan(end..start).Trim();
                tokens.Add(new(folded, start, at, between[..Math.Min(between.Length, LongestBetween)].ToString()));
                end = at;
            }
        }

        return [.. tokens];
    }
}
