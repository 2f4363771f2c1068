
namespace HintBook.Spoilers;

/// <summary>
/// Times told by what their numbers are: "hours: 7, minutes: 35", "the hour ring to four and the minute ring to twenty-five", a table with a column for
/// each. A number before its word is a length of time, and none of these.
/// </summary>
internal sealed class ClockLabels(WordList words)
{
    private const int MostBetween = 5;
    private const int MostSaid = 2;
    private const int MostApart = 9;
    private const int MostPerWord = 2;
    private readonly NumberReader numbers = new(words);
    private readonly List<Token> tokens = [];
    private readonly bool hasPrefixes = words.Language.Prefixes.Length > 0;
    private readonly int reach = words.Language.HasNoSpaces ? MostPerWord : 1;

    /// <summary>The times that a text tells, with their first and last words.</summary>
    public IEnumerable<(int First, int Last, int Minutes)> In(WordReader text, string source)
    {
        Gather(text, source);
        List<(int, int, int)> told = [];
        for (var i = 0; i + 3 < tokens.Count; i++)
        {
            var (a, b, c, d) = (tokens[i], tokens[i + 1], tokens[i + 2], tokens[i + 3]);
            // "Eight for the hour. Minutes, forty": of each pair either may come first.
            var isListed = a.IsLabel != b.IsLabel && c.IsLabel != d.IsLabel && (a.IsLabel || !c.IsLabel || IsNear(a, b, MostSaid))
                && IsNear(a, b, MostBetween) && IsNear(c, d, MostBetween) && IsNear(b, c, MostApart);
            var isTable = a.IsLabel && b.IsLabel && !c.IsLabel && !d.IsLabel && IsNear(a, b, 1) && IsNear(b, c, 1) && IsNear(c, d, 1)
                && (text.Words[c.First].Gap & (Gap.Line | Gap.Paragraph)) != Gap.None;
            if (!isListed && !isTable)
                continue;
            var (label, value) = !isListed ? (a, c) : a.IsLabel ? (a, b) : (b, a);
            var (other, second) = !isListed ? (b, d) : c.IsLabel ? (c, d) : (d, c);
            if (label.Is == other.Is)
                continue;
            var (hour, minute) = label.Is == PieceHint.Hours ? (value.Value, second.Value) : (second.Value, value.Value);
            if (hour <= 24 && minute < 60)
                told.Add((a.First, d.Next - 1, (hour * 60) + minute));
        }

        return told;
    }

    private void Gather(WordReader text, string source)
    {
        tokens.Clear();
        for (var i = 0; i < text.Words.Length;)
        {
            var next = i;
            var label = words.Signs.HintOf(text.Words[i].Id) & (PieceHint.Hours | PieceHint.Minutes);
            if (label is PieceHint.Hours or PieceHint.Minutes && !IsCounted(text, source, i) && !IsLonger(text, i))
                tokens.Add(new(label, 0, i, ++next));
            else if (words.Signs.HourOf(text.Words[i].Id) is > 0 and var hour)
                tokens.Add(new(PieceHint.None, hour, i, ++next));
            else if (RomanAt(text, source, i) is > 0 and <= 12 and var numeral)
                tokens.Add(new(PieceHint.None, numeral, i, ++next));
            else if (numbers.IsNumber(text, i) && numbers.Read(text, ref next, out var number))
                tokens.Add(new(PieceHint.None, number, i, next));
            else
                next = i + 1;
            i = next;
        }
    }

    // "Hour: XII"; a lone I is a word.
    private static int RomanAt(WordReader text, string source, int at)
    {
        var said = source.AsSpan(text.Words[at].Start..text.Words[at].End);
        return said is "I" || said.ContainsAnyExcept('I', 'V', 'X') ? 0 : Roman.ValueOf(text.Bare(text.Words[at]));
    }

    // "Seven hours", 7時.
    private bool IsCounted(WordReader text, string source, int at) =>
        tokens.Count > 0 && !tokens[^1].IsLabel && tokens[^1].Next == at && !(hasPrefixes && text.Bare(text.Words[at])[0] == 'و')
        && (text.Words[at].Gap & ~(Gap.Space | Gap.Hyphen)) == Gap.None
        && !source.AsSpan(text.Words[at - 1].End, text.Words[at].Start - text.Words[at - 1].End).ContainsAny('،', '、', '؛');

    // 時計, 時間, 分かる.
    private bool IsLonger(WordReader text, int at) =>
        words.Language.HasNoSpaces && at + 1 < text.Words.Length && text.Words[at + 1].Gap == Gap.None
        && text.Bare(text.Words[at + 1]) is "計" or "間" or "刻" or "代" or "期" or "か" or "け" or "割" or "解";

    private bool IsNear(in Token one, in Token other, int most) => other.First - one.Next <= most * reach;

    // The word for hours or minutes, or a number.
    [System.Runtime.InteropServices.StructLayout(System.Runtime.InteropServices.LayoutKind.Auto)]
    private readonly record struct Token(PieceHint Is, int Value, int First, int Next)
    {
        public bool IsLabel => Is != PieceHint.None;
    }
}
