using System.Globalization;
using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>Reads a number below ten thousand, in figures or in words.</summary>
internal sealed class NumberReader(WordList words)
{
    private const int MostFigures = 4;
    private static readonly NumberGrammar Plain = new();
    private readonly NumberGrammar counting = words.Language.Counting ?? Plain;

    /// <summary>Whether a word is a number, or the first of one.</summary>
    public bool IsNumber(WordReader text, int at) =>
        at < text.Words.Length
        && (words.FigureOf(text.Words[at].Id) is { Kind: not FigureKind.Again }
            || (text.Words[at].Length is > 0 and <= MostFigures && char.IsAsciiDigit(text.Bare(text.Words[at])[0])));

    /// <summary>The figures of a number that begins at a word: as they stand there, with their noughts, or those of its words.</summary>
    public static string Written(WordReader text, int at, int number) =>
        text.Bare(text.Words[at]) is var bare && char.IsAsciiDigit(bare[0]) ? bare.ToString() : number.ToString(CultureInfo.InvariantCulture);

    /// <summary>Reads the number that begins at a word.</summary>
    /// <param name="text">The words.</param>
    /// <param name="at">The word; the one behind the number afterwards.</param>
    /// <param name="number">The number.</param>
    public bool Read(WordReader text, ref int at, out int number)
    {
        number = 0;
        if (!IsNumber(text, at))
            return false;
        var bare = text.Bare(text.Words[at]);
        if (char.IsAsciiDigit(bare[0]))
        {
            number = int.Parse(bare, NumberStyles.None, CultureInfo.InvariantCulture);
            at++;
            return true;
        }

        number = words.FigureOf(text.Words[at++].Id)!.Value.Value;
        while (number > 0)
        {
            var next = at;
            if (next < text.Words.Length && (words.RoleOf(text.Words[next].Id) & WordRole.And) != WordRole.None && words.FigureOf(text.Words[next].Id) is null)
                next++;
            if (next >= text.Words.Length
                || (text.Words[next].Gap & ~(Gap.Hyphen | Gap.Space | Gap.Line)) != Gap.None
                || words.FigureOf(text.Words[next].Id) is not { } figure
                || (next > at && number < 20)
                || !counting.GoesOn(ref number, figure))
                break;
            at = next + 1;
        }

        return true;
    }
}
