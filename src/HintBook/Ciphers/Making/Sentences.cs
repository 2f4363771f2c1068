using System.Collections.Immutable;

namespace HintBook.Ciphers.Making;

/// <summary>Sentences that already give the answer. The maker writes a story around them.</summary>
internal static class Sentences
{
    // A line of a verse has this many words.
    private const int Line = 5;

    public static ClueWay NumberWords { get; } = new()
    {
        Name = "number-words",
        Says = "A sentence that counts things: the frame of a letter, say.",
        Carries = Carries.Figures,
        IsWorded = true,
        Make = wish => Draft.Of(
            wish.Language.Count([.. wish.Figures], wish.Choices), "number-words", wish.Language.Tag == "en" ? [] : [wish.Language.Tag]),
    };

    public static ClueWay WordLengths { get; } = new()
    {
        Name = "word-lengths",
        Says = "Sentences whose words have as many letters as the figures say.",
        Carries = Carries.Figures,
        IsWorded = true,
        Make = wish => wish.Answer.Contains('0', StringComparison.Ordinal)
            ? new Draft.None("No word has 0 letters. “number-words” and “resistor-colours” can say 0.")
            : Worded(wish, [.. wish.Figures.Select(figure => (Func<string, bool>)(word => word.Length == figure))]) is { } text
                ? Draft.Of(text, "word-lengths")
                : new Draft.None($"No sentence in this language has words of these lengths: “number-words” can say {TextPieces.Quoted(wish.Answer)}."),
    };

    public static ClueWay Acrostic { get; } = new()
    {
        Name = "acrostic",
        Says = "Lines whose first letters give the answer: the frame of a verse.",
        Carries = Carries.Letters,
        IsWorded = true,
        Make = wish =>
        {
            var lines = wish.Answer.Select(letter => Worded(wish, [BeginsWith(letter), .. Enumerable.Repeat(Any, Line - 1)])).ToArray();
            return Array.IndexOf(lines, null) is >= 0 and var lacking ? NoWord(wish.Answer[lacking]) : Draft.Of(string.Join('\n', lines), "acrostic");
        },
    };

    public static ClueWay FirstLetters { get; } = new()
    {
        Name = "first-letters",
        Says = "Sentences whose words begin with the letters of the answer.",
        Carries = Carries.Letters,
        IsWorded = true,
        Make = wish => Worded(wish, [.. wish.Answer.Select(BeginsWith)]) is { } text
            ? Draft.Of(text, "first-letters")
            : new Draft.None($"No sentence in this language has words that begin so: “acrostic” can say {TextPieces.Quoted(wish.Answer)}."),
    };

    public static ClueWay Keypad { get; } = new()
    {
        Name = "keypad",
        Says = "Sentences whose words begin with letters on the telephone keys of the figures 2 to 9.",
        Carries = Carries.Figures,
        IsWorded = true,
        Make = wish =>
        {
            if (wish.Answer.FirstOrDefault(figure => figure is '0' or '1') is not '\0' and var bare)
                return new Draft.None($"No letter stands on the key {bare} of a telephone. “number-words” and “resistor-colours” can say every figure.");
            return Worded(wish, [.. wish.Figures.Select(figure => BeginsWithOneOf(WaysOfReading.Keypad.LettersOn(figure)))]) is { } text
                ? new Draft.Text(text, [new MadeStep("first-letters", []), new MadeStep("keypad", [])])
                : new Draft.None($"No sentence in this language has words that begin so: “number-words” can say {TextPieces.Quoted(wish.Answer)}.");
        },
    };

    private static string? Worded(Wish wish, ImmutableArray<Func<string, bool>> conditions) => wish.Language.Sentences.Write(conditions, wish.Choices);

    private static Draft.None NoWord(char letter) => new($"No sentence in this language begins with {letter}. Take another language, or another way.");

    private static Func<string, bool> BeginsWith(char letter) => word => char.ToUpperInvariant(word[0]) == letter;

    private static Func<string, bool> BeginsWithOneOf(string letters) => word => letters.Contains(char.ToUpperInvariant(word[0]), StringComparison.Ordinal);

    private static bool Any(string word) => word.Length > 1;
}
