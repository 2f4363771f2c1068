using HintBook.Books;
using HintBook.Text;

namespace HintBook.Ciphers;

/// <summary>Whether a text can be set on a lock, and whether two texts are the same setting.</summary>
internal static class Fit
{
    /// <summary>Whether both are the same once white space is left out; case counts only where the lock shows both.</summary>
    public static bool Same(string left, string right, Books.Lock? held) => string.Equals(Bare(left), Bare(right), Case(held));

    /// <summary>A text without white space.</summary>
    public static string Bare(string text) => string.Concat(TextPieces.Set(text));

    /// <summary>Whether a text has a symbol for each wheel and each wheel shows its symbol.</summary>
    public static bool On(Books.Lock held, string text)
    {
        // Most texts are far too long to be set: they are never taken apart.
        var symbols = TextPieces.Set(text).Take(held.Wheels + 1).ToArray();
        return symbols.Length == held.Wheels && symbols.All(symbol => Shows(held, symbol));
    }

    /// <summary>Why an answer can't be set on its lock, or null.</summary>
    public static Finding? Wrong(Code code)
    {
        var symbols = TextPieces.Set(code.Answer.Value).ToArray();
        if (symbols.Length == 0)
            return CipherFindings.NothingToSet(code);
        if (code.Lock is not { } held)
            return null;
        if (symbols.Length != held.Wheels)
            return CipherFindings.WrongLength(code, symbols.Length, held);
        return symbols.FirstOrDefault(symbol => !Shows(held, symbol)) is { } strange ? CipherFindings.NotOnWheel(code, strange, held) : null;
    }

    private static bool Shows(Books.Lock held, string symbol) => held.Symbols.Contains(symbol, Case(held));

    private static StringComparison Case(Books.Lock? held) =>
        held is not null && held.Symbols.Any(char.IsUpper) && held.Symbols.Any(char.IsLower) ? StringComparison.Ordinal : StringComparison.OrdinalIgnoreCase;
}
