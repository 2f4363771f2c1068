using System.Collections.Immutable;
using System.Globalization;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>Letters by their place in the English alphabet, counted from A = 1 or from A = 0.</summary>
internal static class Alphabet
{
    private const string Source = "Common practice.";

    private static readonly WayArgument Offset = new("“a1” (A is 1) or “a0” (A is 0)", "a1", Needed: false);

    public static Way ToNumbers { get; } = new()
    {
        Name = "letters-to-numbers",
        Says = "Each letter's place in the alphabet: A is 1 and Z is 26, or with “a0” A is 0 and Z is 25.",
        Source = Source,
        Told = Offset,
        Conventions = Other,
        Read = (text, told) => FirstOf(told) is not { } first
            ? BadArgument(told)
            : TextPieces.Letters(text).FirstOrDefault(letter => TextPieces.PlaceOf(letter) == 0) is { } strange
                ? new ReadingResult.Stuck($"{TextPieces.Quoted(strange)} isn't one of the letters A to Z")
                : ReadingResult.Of(
                    TextPieces.Letters(text).Select(letter => new Row(letter, (TextPieces.PlaceOf(letter) - 1 + first).ToString(CultureInfo.InvariantCulture))),
                    TextPieces.Figures(text),
                    $"no letter stands in {TextPieces.Quoted(text)}"),
    };

    public static Way ToLetters { get; } = new()
    {
        Name = "numbers-to-letters",
        Says = "The letter at each place of the alphabet: 1 is A and 26 is Z, or with “a0” 0 is A and 25 is Z.",
        Source = Source,
        Told = Offset,
        Conventions = Other,
        Read = (text, told) => FirstOf(told) is not { } first
            ? BadArgument(told)
            : TextPieces.Numbers(text).FirstOrDefault(number => LetterAt(number, first) is null) is { } strange
                ? new ReadingResult.Stuck($"{TextPieces.Quoted(strange)} isn't one of the numbers {first} to {25 + first}")
                : EveryWord.BesideFigures(
                    text,
                    TextPieces.Numbers(text).Select(number => new Row(number, LetterAt(number, first)!)),
                    $"no number stands in {TextPieces.Quoted(text)}"),
    };

    private static string? LetterAt(string number, int first) =>
        int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var place) && place >= first && place <= 25 + first
            ? ((char)('A' + place - first)).ToString()
            : null;

    private static int? FirstOf(ImmutableArray<string> told) => told switch
    {
        [] or ["a1"] => 1,
        ["a0"] => 0,
        _ => null,
    };

    private static ReadingResult.BadArgument BadArgument(ImmutableArray<string> told) =>
        new($"{TextPieces.Quoted(string.Join(", ", told))} is no way to count the alphabet");

    private static IEnumerable<Convention> Other(ImmutableArray<string> told) =>
        told is ["a0"] ? [new(["a1"], "counting A as 1")] : [new(["a0"], "counting A as 0", Usual: false)];
}
