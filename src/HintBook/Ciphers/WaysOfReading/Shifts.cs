using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>Ciphers that move each letter along the alphabet; figures and marks stay, as does the case. Other letters than A to Z are refused.</summary>
internal static class Shifts
{
    public static Way Caesar { get; } = new()
    {
        Name = "caesar",
        Says = "Takes each letter back by the stated number: with “{ caesar: 3 }” D is read as A.",
        Source = "Common practice, after Suetonius, who says that Caesar took 3.",
        Told = new("a whole number from -25 to 25", "3"),
        Conventions = told => ShiftIn(told) is { } shift 
            ? [new([(-shift).ToString(CultureInfo.InvariantCulture)], "shifting the other way") { Kind = ReadingKind.OtherWayRound }]
            : [],
        Read = (text, told) => ShiftIn(told) is { } shift
            ? Shifted(text, [shift])
            : new ReadingResult.BadArgument($"{TextPieces.Quoted(string.Join(", ", told))} isn't a whole number from -25 to 25"),
    };

    public static Way Vigenere { get; } = new()
    {
        Name = "vigenere",
        Says = "Takes each letter back by the next letter of the key (A by none, B by one), the key again and again.",
        Source = "Common practice: Vigenère's square.",
        Told = new("a key of the letters A to Z", "LEMON"),
        Conventions = told => told is [var key] && IsKey(key) ? [new([Inverse(key)], "writing with the key instead of reading with it")] : [],
        Read = (text, told) => told is [var key] && IsKey(key)
            ? Shifted(text, [.. key.Select(letter => char.ToUpperInvariant(letter) - 'A')])
            : new ReadingResult.BadArgument($"{TextPieces.Quoted(string.Join(", ", told))} isn't a key of the letters A to Z"),
    };

    private static ReadingResult Shifted(string text, int[] back)
    {
        if (TextPieces.Letters(text).FirstOrDefault(letter => TextPieces.PlaceOf(letter) == 0) is { } strange)
            return new ReadingResult.Stuck($"{TextPieces.Quoted(strange)} isn't one of the letters A to Z");
        var read = new StringBuilder(text.Length);
        var letters = 0;
        foreach (var symbol in text)
            read.Append(char.IsAsciiLetter(symbol) ? Shifted(symbol, back[letters++ % back.Length]) : symbol);
        return letters == 0 ? new ReadingResult.Stuck($"none of the letters A to Z stands in {TextPieces.Quoted(text)}") : ReadingResult.Of(read.ToString());
    }

    private static char Shifted(char letter, int back)
    {
        var first = char.IsAsciiLetterUpper(letter) ? 'A' : 'a';
        return (char)(first + ((letter - first - back + 52) % 26));
    }

    private static int? ShiftIn(ImmutableArray<string> told) =>
        told is [var one] && int.TryParse(one, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var shift) && Math.Abs((long)shift) <= 25
            ? shift
            : null;

    private static bool IsKey(string key) => key.Length > 0 && key.All(char.IsAsciiLetter);

    private static string Inverse(string key) => string.Concat(key.Select(letter => (char)('A' + ((26 - (char.ToUpperInvariant(letter) - 'A')) % 26))));
}
