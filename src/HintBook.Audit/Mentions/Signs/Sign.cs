using System.Runtime.InteropServices;

namespace HintBook.Audit.Mentions.Signs;

/// <summary>What a word or a phrase can mean where a time or a code is told. A word may mean several things: "second", "past".</summary>
[Flags]
internal enum Sign : uint
{
    /// <summary>Any other word.</summary>
    None = 0,

    /// <summary>A number, in figures or words.</summary>
    Number = 1,

    /// <summary>A number word that is also an article or a pronoun: "one", "un".</summary>
    Unsure = 1 << 1,

    /// <summary>A part of an hour, in minutes: "quarter".</summary>
    Fraction = 1 << 2,

    /// <summary>Minutes before the hour: "to", "vor", "moins".</summary>
    To = 1 << 3,

    /// <summary>Minutes after the hour.</summary>
    Past = 1 << 4,

    /// <summary>Stands behind the hour: "o'clock", "Uhr", "heures".</summary>
    Hour = 1 << 5,

    /// <summary>Stands behind the minutes.</summary>
    Minute = 1 << 6,

    /// <summary>Directly before the hour that has not come yet: "halb elf", "dreiviertel elf"; its value is the minutes that have passed.</summary>
    PartOf = 1 << 7,

    /// <summary>Minutes go by until an hour: "in fifteen minutes".</summary>
    Remaining = 1 << 8,

    /// <summary>The hand of a clock.</summary>
    Hand = 1 << 9,

    /// <summary>The hand of the minutes.</summary>
    Long = 1 << 10,

    /// <summary>The hand of the hours.</summary>
    Short = 1 << 11,

    /// <summary>A little before a place on the dial.</summary>
    Before = 1 << 12,

    /// <summary>Between two places.</summary>
    Between = 1 << 13,

    /// <summary>Speaks of clocks.</summary>
    Clock = 1 << 14,

    /// <summary>A length of time, not a time.</summary>
    Length = 1 << 15,

    /// <summary>A place in a row, by its number.</summary>
    Ordinal = 1 << 16,

    /// <summary>The last place.</summary>
    Last = 1 << 17,

    /// <summary>The place behind.</summary>
    Next = 1 << 18,

    /// <summary>The place before.</summary>
    Previous = 1 << 19,

    /// <summary>The place to the left of the one named first.</summary>
    Left = 1 << 20,

    /// <summary>The place to the right of it.</summary>
    Right = 1 << 21,

    /// <summary>The row is read from its end.</summary>
    Backwards = 1 << 22,

    /// <summary>Speaks of codes: "wheel", "figure", "set".</summary>
    Code = 1 << 23,

    /// <summary>A figure in the plural: "two zeros".</summary>
    Figures = 1 << 24,

    /// <summary>Makes the number before it no figure of its own: "one more R".</summary>
    More = 1 << 25,

    /// <summary>A lone letter, or the word or name that stands for one when something is spelt.</summary>
    Letter = 1 << 26,

    /// <summary>A Roman numeral.</summary>
    Roman = 1 << 27,

    /// <summary>An article or another word that adds nothing.</summary>
    Article = 1 << 28,

    /// <summary>A word of grammar: it is nothing that a number counts.</summary>
    Grammar = 1 << 29,

    /// <summary>A number that is written in figures.</summary>
    InFigures = 1 << 30,
}

/// <summary>A word or a phrase of a text.</summary>
/// <param name="First">Its first word.</param>
/// <param name="Last">Its last word.</param>
/// <param name="Sign">What it can mean.</param>
/// <param name="Value">The number, the minutes or the place; -1 for none.</param>
/// <param name="Symbols">The figures of a number, or the letter; empty for all else.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Token(int First, int Last, Sign Sign, int Value, string Symbols)
{
    /// <summary>Whether it can mean one of some things.</summary>
    public bool Is(Sign any) => (Sign & any) != Sign.None;
}

/// <summary>Words and phrases, parted by commas, that mean the same.</summary>
/// <param name="Sign">What they can mean.</param>
/// <param name="Phrases">The phrases.</param>
/// <param name="Value">The minutes or the place; -1 for none.</param>
/// <param name="Symbols">The letter that they stand for; empty for none.</param>
internal sealed record Meaning(Sign Sign, string Phrases, int Value = -1, string Symbols = "");
