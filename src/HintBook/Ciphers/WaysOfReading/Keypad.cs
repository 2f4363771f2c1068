using System.Globalization;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>Letters on the keys of a telephone, by ITU-T E.161: 2 ABC to 9 WXYZ. Older telephones had no Q and no Z.</summary>
internal static class Keypad
{
    private const string Source = "ITU-T E.161.";

    private static readonly string[] Keys = ["", "", "ABC", "DEF", "GHI", "JKL", "MNO", "PQRS", "TUV", "WXYZ"];

    private static readonly string[] KeyOfPlace =
    [
        .. from letter in Enumerable.Range('A', 26)
           let key = Array.FindIndex(Keys, letters => letters.Contains((char)letter, StringComparison.Ordinal))
           select key.ToString(CultureInfo.InvariantCulture),
    ];

    public static Way ToKeys { get; } = Way.Bare(
        "keypad",
        "The telephone key of each letter: A, B and C are on 2; Ü is on the key of U.",
        $"{Source} Letters with marks: common practice.",
        text => TextPieces.Letters(text).FirstOrDefault(letter => KeyOf(letter) is null) is { } strange
            ? new ReadingResult.Stuck($"{TextPieces.Quoted(strange)} is on no key of a telephone")
            : ReadingResult.Of(
                TextPieces.Letters(text).Select(letter => new Row(letter, KeyOf(letter)!)),
                TextPieces.Figures(text),
                $"no letter stands in {TextPieces.Quoted(text)}"));

    public static Way FromPresses { get; } = Way.Bare(
        "keypad-presses",
        "Keys pressed several times: 22 is B, 7777 is S; spaces part the letters.",
        Source,
        text => TextPieces.Figures(text).FirstOrDefault(run => LetterOf(run) is null) is { } strange
            ? new ReadingResult.Stuck($"no letter comes from pressing {TextPieces.Quoted(strange)}")
            : EveryWord.BesideFigures(
                text, TextPieces.Figures(text).Select(run => new Row(run, LetterOf(run)!)), $"no figure stands in {TextPieces.Quoted(text)}"));

    /// <summary>The letters on a key, 2 to 9.</summary>
    public static string LettersOn(int key) => Keys[key];

    /// <summary>The key of a letter A to Z, as often as it is pressed: <c>22</c> for B.</summary>
    public static string PressesFor(char letter)
    {
        var key = Array.FindIndex(Keys, letters => letters.Contains(letter, StringComparison.Ordinal));
        return new string((char)('0' + key), Keys[key].IndexOf(letter, StringComparison.Ordinal) + 1);
    }

    private static string? KeyOf(string letter) => TextPieces.PlaceOf(Accents.Without(letter)) is > 0 and var place ? KeyOfPlace[place - 1] : null;

    private static string? LetterOf(string presses)
    {
        var letters = Keys[presses[0] - '0'];
        return presses.Length <= letters.Length && presses.All(press => press == presses[0]) ? letters[presses.Length - 1].ToString() : null;
    }
}
