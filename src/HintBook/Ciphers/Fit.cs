using HintBook.Books;
using HintBook.Text;

namespace HintBook.Ciphers;

/// <summary>Whether a text can be set on a lock, and whether two texts are the same setting.</summary>
internal static class Fit
{
    /// <summary>
    /// Whether both are the same setting. White space doesn't count; punctuation counts only where the lock shows it or, without a lock, where the answer
    /// has some: a clue that gives <c>HONEY!</c> sets <c>HONEY</c>. Case counts only where the lock shows both. On a dial only letters and figures
    /// count: a clue that gives <c>0735</c> sets <c>07:35</c>.
    /// </summary>
    /// <param name="text">What a clue gives.</param>
    /// <param name="answer">What it is compared with.</param>
    /// <param name="held">The lock, if there is one.</param>
    public static bool Same(string text, string answer, Books.Lock? held) => held is DialLock
        ? string.Equals(LettersAndFigures(text), LettersAndFigures(answer), StringComparison.OrdinalIgnoreCase)
        : Set(text, answer, held).SequenceEqual(Set(answer, answer, held), StringComparer.FromComparison(Case(held)));

    /// <summary>A text as it is set: without white space, and without punctuation that the lock doesn't show.</summary>
    public static string Setting(string text, Books.Lock held) => held is WheelLock ? string.Concat(Set(text, "", held)) : Bare(text);

    /// <summary>A text without white space.</summary>
    public static string Bare(string text) => string.Concat(TextPieces.Set(text));

    /// <summary>Whether a text has a symbol for each wheel and each wheel shows its symbol, or is a position of the dial.</summary>
    public static bool On(Books.Lock held, string text)
    {
        if (held is DialLock dial)
            return Has(dial, text);
        if (held is not WheelLock lettered)
            return false;
        // Most texts are far too long to be set: they are never taken apart.
        var symbols = Set(text, "", held).Take(lettered.Wheels + 1).ToArray();
        return symbols.Length == lettered.Wheels && symbols.All(symbol => Shows(lettered, symbol));
    }

    /// <summary>Why an answer can't be set on its lock, or null.</summary>
    public static Finding? Wrong(Code code)
    {
        var symbols = TextPieces.Set(code.Answer.Value).ToArray();
        if (symbols.Length == 0)
            return CipherFindings.NothingToSet(code);
        if (code.Lock is DialLock dial)
            return Has(dial, code.Answer.Value) ? null : CipherFindings.NotOnDial(code, dial);
        if (code.Lock is not WheelLock held)
            return null;
        if (symbols.Length != held.Wheels)
            return CipherFindings.WrongLength(code, symbols.Length, held);
        return symbols.FirstOrDefault(symbol => !Shows(held, symbol)) is { } strange ? CipherFindings.NotOnWheel(code, strange, held) : null;
    }

    private static IEnumerable<string> Set(string text, string answer, Books.Lock? held)
    {
        var marks = held is null && TextPieces.Set(answer).Any(TextPieces.IsPunctuation);
        return TextPieces.Set(TextPieces.Plain(text))
            .Where(symbol => !TextPieces.IsPunctuation(symbol) || (held is WheelLock lettered ? Shows(lettered, symbol) : marks));
    }

    private static string LettersAndFigures(string text) => string.Concat(text.Where(char.IsLetterOrDigit));

    private static bool Shows(WheelLock held, string symbol) => held.Symbols.Contains(symbol, Case(held));

    private static bool Has(DialLock held, string text) => held.Dial.Positions.Any(position => Same(position, text, held));

    private static StringComparison Case(Books.Lock? held) =>
        held is WheelLock { Symbols: var symbols } && symbols.Any(char.IsUpper) && symbols.Any(char.IsLower)
            ? StringComparison.Ordinal
            : StringComparison.OrdinalIgnoreCase;
}
