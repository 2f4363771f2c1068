using System.Collections.Immutable;
using HintBook.Ciphers.WaysOfReading;

namespace HintBook.Ciphers;

/// <summary>All ways of reading, in the order in which they are listed for makers and tried by solvers.</summary>
internal static class Ways
{
    /// <summary>What <c>reads</c> may start with to read another code's answer: <c>{ from: other-code }</c>.</summary>
    public const string From = "from";

    /// <summary>What looks words up in one of the book's tables: <c>{ table: name }</c>.</summary>
    public const string Table = "table";

    /// <summary>Every way that needs nothing of the book.</summary>
    public static ImmutableArray<Way> All { get; } =
    [
        NumberWords.Read,
        Figures.InText,
        Figures.WordLengths,
        Places.Acrostic,
        Places.FirstLetters,
        Places.LastLetters,
        Places.LineEnds,
        Figures.Capitals,
        NumberWords.Count,
        Figures.WordsInLines,
        RomanNumerals.ToFigures,
        RomanNumerals.FromFigures,
        Alphabet.ToNumbers,
        Alphabet.ToLetters,
        Keypad.ToKeys,
        Keypad.FromPresses,
        Colours.Queens,
        Colours.Resistors,
        MorseSigns.FromSigns,
        MorseSigns.ToSigns,
        BrailleCells.Way,
        SemaphoreArms.Way,
        Spelling.Alphabet,
        Spelling.Flags,
        Times.To24,
        Times.To12,
        Times.Dates,
        Games.Dice,
        Games.CardRanks,
        Games.Notes,
        Places.NthLetters,
        Places.NthWords,
        Places.Coordinates,
        Transpositions.Stencil,
        Transpositions.TurningGrille,
        Transpositions.RailFence,
        Shifts.Caesar,
        Shifts.Vigenere,
        Polybius.ToLetters,
        Polybius.ToFigures,
        Rearrangements.Reverse,
        Rearrangements.ReverseWords,
        Rearrangements.ReverseLines,
        Rearrangements.Sort,
        Rearrangements.SortDown,
        Rearrangements.Arrange,
        Arithmetic.Sum,
        Arithmetic.LineSums,
        Arithmetic.Differences,
        Arithmetic.Modulo,
    ];

    /// <summary>The names that an author may write.</summary>
    public static ImmutableArray<string> Names { get; } = [.. All.Select(way => way.Name), From, Table];

    private static readonly Dictionary<string, Way> ByName = All.ToDictionary(way => way.Name);

    /// <summary>The way with a name, or null.</summary>
    public static Way? Named(string name) => ByName.GetValueOrDefault(name);
}
