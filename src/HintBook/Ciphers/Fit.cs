using HintBook.Books;
using HintBook.Text;

namespace HintBook.Ciphers;

/// <summary>Whether a text can be set on a lock, and whether two texts are the same setting.</summary>
internal static class Fit
{
    /// <summary>
    /// Whether both are the same setting. White space doesn't count; punctuation counts only where the lock shows it or, without a lock, where the answer
    /// has some: a clue that gives <c>HONEY!</c> sets <c>HONEY</c>. So do marks on letters: <c>NÉIGE</c> sets <c>NEIGE</c>, and <c>BÄR</c> both <c>BAR</c>
    /// and <c>BAER</c>. Case counts only where the lock shows both. On a dial only letters and figures count: a clue that gives <c>0735</c> sets
    /// <c>07:35</c>.
    /// </summary>
    /// <param name="text">What a clue gives.</param>
    /// <param name="answer">What it is compared with.</param>
    /// <param name="held">The lock, if there is one.</param>
    public static bool Same(string text, string answer, Books.Lock? held) => held is DialLock
        ? string.Equals(LettersAndFigures(text), LettersAndFigures(answer), StringComparison.OrdinalIgnoreCase)
        : IsSame(text, answer, held) || IsSame(Accents.SpeltOut(text), answer, held);

    private static bool IsSame(string text, string answer, Books.Lock? held) =>
        Set(text, answer, held).SequenceEqual(Set(answer, answer, held), StringComparer.FromComparison(Case(held)));

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
        // A lock without É is set to E.
        symbols = [.. symbols.SelectMany(symbol => Shown(symbol, held))];
        if (symbols.Length != held.Wheels)
            return CipherFindings.WrongLength(code, symbols.Length, held);
        return symbols.FirstOrDefault(symbol => !Shows(held, symbol)) is { } strange ? CipherFindings.NotOnWheel(code, strange, held) : null;
    }

    private static IEnumerable<string> Set(string text, string answer, Books.Lock? held)
    {
        var marks = held is null && TextPieces.Set(answer).Any(TextPieces.IsPunctuation);
        var isBare = held is null && System.Text.Ascii.IsValid(answer);
        return TextPieces.Set(TextPieces.Plain(text))
            .SelectMany(symbol => held is WheelLock wheels ? Shown(symbol, wheels) : isBare ? TextPieces.Symbols(Accents.Without(symbol)) : [symbol])
            .Where(symbol => !TextPieces.IsPunctuation(symbol) || (held is WheelLock lettered ? Shows(lettered, symbol) : marks));
    }

    // The symbol itself where a wheel shows it or nothing like it; or else without its marks.
    private static string[] Shown(string symbol, WheelLock held)
    {
        if (Shows(held, symbol) || System.Text.Ascii.IsValid(symbol))
            return [symbol];
        string[] bare = [.. TextPieces.Symbols(Accents.Without(symbol))];
        return bare.Length > 0 && Array.TrueForAll(bare, one => Shows(held, one)) ? bare : [symbol];
    }

    private static string LettersAndFigures(string text) => string.Concat(text.Where(char.IsLetterOrDigit));

    private static bool Shows(WheelLock held, string symbol) => held.Symbols.Contains(symbol, Case(held));

    private static bool Has(DialLock held, string text) => held.Dial.Positions.Any(position => Same(position, text, held));

    private static StringComparison Case(Books.Lock? held) =>
        held is WheelLock { Symbols: var symbols } && symbols.Any(char.IsUpper) && symbols.Any(char.IsLower)
            ? StringComparison.Ordinal
            : StringComparison.OrdinalIgnoreCase;
}
