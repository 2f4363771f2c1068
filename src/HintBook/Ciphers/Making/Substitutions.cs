using System.Collections.Immutable;
using System.Globalization;
using HintBook.Ciphers.WaysOfReading;

namespace HintBook.Ciphers.Making;

/// <summary>Letters written as others, as numbers, or as the names of signs.</summary>
internal static class Substitutions
{
    public static ClueWay Caesar { get; } = Inverse(Shifts.Caesar, ["3"], "Letters moved along the alphabet, by three or by “--with 5”.");

    public static ClueWay Vigenere { get; } = Inverse(Shifts.Vigenere, ["HONEY"], "Letters moved along by a key: HONEY, or “--with LEMON”.");

    public static ClueWay Square { get; } = new()
    {
        Name = "polybius",
        IsTold = true,
        Says = "Pairs of figures from a square of five by five, in which I and J share a cell, or “--with C/K”.",
        Carries = Carries.Letters,
        Make = wish =>
        {
            var told = wish.Told.IsEmpty ? ["I/J"] : wish.Told;
            var otherPair = wish.Answer.Contains('K', StringComparison.Ordinal) ? "Y/Z" : "C/K";
            return told[0] is [var kept, '/', var gone] && kept < gone && wish.Answer.Contains(gone, StringComparison.Ordinal)
                ? new Draft.None($"In this square {gone} is read as {kept}. State another pair, such as “--with {otherPair}”.")
                : Draft.By(Polybius.ToFigures, told, wish.Answer, new MadeStep("polybius", told));
        },
    };

    public static ClueWay RailFence { get; } = new()
    {
        Name = "rail-fence",
        IsTold = true,
        Says = "Letters along a zigzag, written rail by rail: on three rails, or “--with 4”.",
        Carries = Carries.Both,
        Make = wish =>
        {
            // Reading the places 0, 1, 2 … gives the permutation; each letter goes back to where it is read from.
            var told = wish.Told.IsEmpty ? ["3"] : wish.Told;
            var places = string.Concat(Enumerable.Range(0, wish.Answer.Length).Select(place => (char)('一' + place)));
            if (Transpositions.RailFence.Read(places, told) is not ReadingResult.Gave gave)
                return Draft.By(Transpositions.RailFence, told, places, new MadeStep("rail-fence", told));
            var clue = new char[wish.Answer.Length];
            foreach (var (from, to) in gave.Text.Index())
                clue[to - '一'] = wish.Answer[from];
            return Draft.Of(new string(clue), "rail-fence", told);
        },
    };

    public static ClueWay Numbers { get; } = new()
    {
        Name = "numbers-to-letters",
        Says = "The places of letters in the alphabet.",
        Carries = Carries.Letters,
        Make = wish => wish.Answer.Length == 1 && TextPieces.PlaceOf(wish.Answer) > 9
            ? new Draft.None("A single number of two figures would be read as two. Take a longer answer.")
            : Draft.Of(string.Join(' ', wish.Answer.Select(letter => (letter - 'A' + 1).ToString(CultureInfo.InvariantCulture))), "numbers-to-letters"),
    };

    public static ClueWay Letters { get; } = new()
    {
        Name = "letters-to-numbers",
        IsTold = true,
        Says = "Letters by their places in the alphabet: A is 1; from “a0” on, A is 0.",
        Carries = Carries.Figures,
        Make = wish =>
        {
            var first = wish.Told is ["a0"] ? '0' : '1';
            return wish.Told is [] or ["a1"] && wish.Answer.Contains('0', StringComparison.Ordinal)
                ? new Draft.None("No letter is at place 0. Write “--with a0”, so that A is 0.")
                : Draft.Of(string.Concat(wish.Answer.Select(figure => (char)('A' + (figure - first)))), "letters-to-numbers", wish.Told);
        },
    };

    public static ClueWay Presses { get; } = new()
    {
        Name = "keypad-presses",
        Says = "Telephone keys that are pressed several times: 22 is B.",
        Carries = Carries.Letters,
        Make = wish => Draft.Of(string.Join(' ', wish.Answer.Select(Keypad.PressesFor)), "keypad-presses"),
    };

    public static ClueWay Semaphore { get; } = new()
    {
        Name = "semaphore",
        Says = "The positions of a signaller's left and right arm; drawn as signallers who face the reader.",
        Carries = Carries.Both,
        Make = wish => new Draft.Text(string.Join('\n', SemaphoreArms.For(wish.Answer)), [new MadeStep("semaphore", [])], ClueLook.Arms),
    };

    public static ClueWay Flags { get; } = Named("signal-flags", "Signal flags, which have the names of the spelling alphabet.", ClueLook.Flags);

    public static ClueWay Alphabet { get; } = Named("spelling-alphabet", "The words by which letters are spelt over the radio.", ClueLook.Lines);

    private static ClueWay Named(string name, string says, ClueLook look) => new()
    {
        Name = name,
        Says = says,
        Carries = Carries.Letters,
        Make = wish => new Draft.Text(string.Join('\n', wish.Answer.Select(Spelling.WordFor)), [new MadeStep(name, [])], look),
    };

    // Reading the other way round is writing: each of these names that way first among the habits of solvers.
    private static ClueWay Inverse(Way way, ImmutableArray<string> usual, string says) => new()
    {
        Name = way.Name,
        IsTold = true,
        Says = says,
        Carries = Carries.Letters,
        Make = wish =>
        {
            var told = wish.Told.IsEmpty ? usual : wish.Told;
            return way.Conventions(told).FirstOrDefault() is { } other
                ? Draft.By(way, other.Told, wish.Answer, new MadeStep(way.Name, told))
                : Draft.By(way, told, wish.Answer, new MadeStep(way.Name, told));
        },
    };
}
