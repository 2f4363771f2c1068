using System.Collections.Immutable;
using System.Globalization;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>
/// Letters by their place in an alphabet: the English one, counted from A = 1 or from A = 0, or another one. Letters with accents count as those without, where
/// the alphabet hasn't them; Ä, Ñ and the like, which people count in several ways, are refused there. Other alphabets are from memory: common practice.
/// </summary>
internal static class Alphabet
{
    private const string Source = "Common practice.";

    private const string English = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    private static readonly WayArgument Offset = new(
        "“a1” (A is 1), “a0” (A is 0), “es” (with Ñ), “abjad”, “arabic”, “iroha” or “gojuon”", "a1", Needed: false);

    private static readonly string[] OtherScripts = ["abjad", "arabic", "iroha", "gojuon"];

    // The letters of each alphabet with what each stands for.
    private static readonly Dictionary<string, Dictionary<string, int>> Known = new()
    {
        ["a1"] = Counted(English, place => place + 1),
        ["a0"] = Counted(English, place => place),
        ["es"] = Counted("ABCDEFGHIJKLMNÑOPQRSTUVWXYZ", place => place + 1),
        // One to ten, then by tens and by hundreds.
        ["abjad"] = Counted(
            "ابجدهوزحطيكلمنسعفصقرشتثخذضظغ", place => place < 10 ? place + 1 : place < 19 ? (place - 8) * 10 : (place - 17) * 100),
        ["arabic"] = Counted("ابتثجحخدذرزسشصضطظعغفقكلمنهوي", place => place + 1),
        ["iroha"] = Counted("いろはにほへとちりぬるをわかよたれそつねならむうゐのおくやまけふこえてあさきゆめみしゑひもせす", place => place + 1),
        ["gojuon"] = Counted("あいうえおかきくけこさしすせそたちつてとなにぬねのはひふへほまみむめもやゆよらりるれろわをん", place => place + 1),
    };

    public static Way ToNumbers { get; } = new()
    {
        Name = "letters-to-numbers",
        Says = "Each letter's place in the alphabet: A is 1 and Z is 26, or with “a0” A is 0 and Z is 25. “es” has Ñ, “abjad” the values of Arabic letters; "
            + "“arabic”, “iroha” and “gojuon” are the orders of Arabic and Japanese.",
        Source = Source,
        Told = Offset,
        Conventions = Other,
        Read = (text, told) => ToldOf(told) is not { } values
            ? BadArgument(told)
            : TextPieces.Letters(text).FirstOrDefault(letter => ValueOf(letter, values) is null) is { } strange
                ? new ReadingResult.Stuck($"{TextPieces.Quoted(strange)} isn't {AnyOf(told)}")
                : ReadingResult.Of(
                    TextPieces.Letters(text).Select(letter => new Row(letter, ValueOf(letter, values)!.Value.ToString(CultureInfo.InvariantCulture))),
                    TextPieces.Figures(text),
                    $"no letter stands in {TextPieces.Quoted(text)}"),
    };

    public static Way ToLetters { get; } = new()
    {
        Name = "numbers-to-letters",
        Says = "The letter at each place of the alphabet: 1 is A and 26 is Z, or with “a0” 0 is A and 25 is Z; other alphabets as for “letters-to-numbers”.",
        Source = Source,
        Told = Offset,
        Conventions = Other,
        Read = (text, told) => ToldOf(told) is not { } values
            ? BadArgument(told)
            : TextPieces.Numbers(text).FirstOrDefault(number => LetterAt(number, values) is null) is { } strange
                ? new ReadingResult.Stuck($"{TextPieces.Quoted(strange)} isn't one of the numbers {values.Values.Min()} to {values.Values.Max()}")
                : EveryWord.BesideFigures(
                    text,
                    TextPieces.Numbers(text).Select(number => new Row(number, LetterAt(number, values)!)),
                    $"no number stands in {TextPieces.Quoted(text)}"),
    };

    private static Dictionary<string, int> Counted(string letters, Func<int, int> value) =>
        letters.Index().ToDictionary(letter => letter.Item.ToString(), letter => value(letter.Index), StringComparer.OrdinalIgnoreCase);

    // The letter itself, or else without its marks; katakana as hiragana, which stand 96 places before (Unicode 15.0).
    private static int? ValueOf(string letter, Dictionary<string, int> values)
    {
        if (letter is [>= 'ァ' and <= 'ヶ' and var kana])
            letter = ((char)(kana - 96)).ToString();
        return values.TryGetValue(letter, out var value) || values.TryGetValue(Accents.Counted(letter), out value) ? value : null;
    }

    private static string? LetterAt(string number, Dictionary<string, int> values) =>
        int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var place)
            ? values.FirstOrDefault(letter => letter.Value == place).Key
            : null;

    private static Dictionary<string, int>? ToldOf(ImmutableArray<string> told) =>
        told.IsEmpty ? Known["a1"] : told is [var name] ? Known.GetValueOrDefault(name) : null;

    private static string AnyOf(ImmutableArray<string> told) =>
        told is [] or ["a1" or "a0"] ? "one of the letters A to Z" : $"one of the letters of “{told[0]}”";

    private static ReadingResult.BadArgument BadArgument(ImmutableArray<string> told) =>
        new($"{TextPieces.Quoted(string.Join(", ", told))} is no way to count the alphabet");

    private static IEnumerable<Convention> Other(ImmutableArray<string> told) =>
        told switch
        {
            ["a0"] => [new(["a1"], "counting A as 1") { When = clue => !Invitations.ToBeginWithA(clue) }],
            [] or ["a1"] =>
            [
                new(["a0"], "counting A as 0", Usual: false),
                new(["es"], "in the Spanish alphabet", Usual: false),
                .. OtherScripts.Select(name => new Convention([name], $"in the order “{name}”", Usual: false)),
            ],
            // Many tables of ciphers have no Ñ.
            ["es"] => [new(["a1"], "counting without Ñ") { When = clue => !clue.Contains('ñ', StringComparison.OrdinalIgnoreCase) }],
            ["arabic"] => [new(["abjad"], "taking the values of the abjad") { When = clue => !Invitations.ToArabicOrder(clue) }],
            ["abjad"] => [new(["arabic"], "counting in the order of the schools") { When = clue => !Invitations.ToArabicOrder(clue) }],
            [var one] => OtherScripts.Where(name => name != one)
                .Select(name => new Convention([name], $"in the order “{name}”", Usual: false)),
            _ => [],
        };
}
