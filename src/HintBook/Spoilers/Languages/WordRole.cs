namespace HintBook.Spoilers.Languages;

/// <summary>What kind of help a word is to a sentence.</summary>
[Flags]
internal enum WordRole
{
    /// <summary>It may be part of a name.</summary>
    None = 0,

    /// <summary>A word that may stand before any noun and adds nothing: <c>the</c>, <c>your</c>.</summary>
    Determiner = 1,

    /// <summary>A word that never describes a noun, so that no name goes on behind it: <c>and</c>, <c>is</c>, <c>under</c>.</summary>
    Function = 2,

    /// <summary>A function word that ties two nouns to one name: <c>of</c>, <c>under</c>.</summary>
    Preposition = 4,

    /// <summary>A word that people say between the figures of a number.</summary>
    Between = 8,

    /// <summary>A word that the texts of any puzzle box are full of: <c>box</c>, <c>lid</c>, <c>key</c>.</summary>
    Everyday = 16,

    /// <summary>The word that stands before the last of several numbers: <c>and</c>.</summary>
    And = 32,

    /// <summary>Where no spaces part the words, the letter that may stand between those of a name: <c>の</c>.</summary>
    Tie = 64,

    /// <summary>A word that may stand between the pieces of a code: <c>set</c>, <c>digit</c>, <c>is</c>.</summary>
    Setting = 1 << 7,

    /// <summary>A word that says that pieces of a code follow each other: <c>then</c>, <c>begin</c>, <c>last</c>.</summary>
    Sequence = 1 << 8,

    /// <summary>A part of a lock that may have a number of its own: <c>wheel</c>.</summary>
    Wheel = 1 << 9,

    /// <summary>A unit of measure, of money or of time, or what is counted in a manual.</summary>
    Unit = 1 << 10,

    /// <summary>A word before a number that has nothing to do with a lock: <c>page</c>, <c>figure</c>.</summary>
    Page = 1 << 11,

    /// <summary>A word that ties a noun to what describes it behind it: <c>for</c>, <c>which</c>, <c>made</c>.</summary>
    Link = 1 << 12,

    /// <summary><c>not</c>, <c>never</c>, <c>or</c>: what is said of one thing isn't said of another.</summary>
    Not = 1 << 13,

    /// <summary>What one does with a thing, or how it comes to hand: <c>take</c>, <c>lies</c>, <c>hidden</c>.</summary>
    Handling = 1 << 14,

    /// <summary>What minutes are that are taken off an hour: <c>to</c>, <c>before</c>.</summary>
    Before = 1 << 15,

    /// <summary>What minutes are that are added to an hour: <c>past</c>.</summary>
    After = 1 << 16,

    /// <summary>Thirty minutes.</summary>
    Half = 1 << 17,

    /// <summary>Fifteen minutes.</summary>
    Quarter = 1 << 18,

    /// <summary>Forty-five minutes.</summary>
    ThreeQuarters = 1 << 19,

    /// <summary>Twenty minutes.</summary>
    Third = 1 << 20,

    /// <summary>What stands beside an hour: <c>o’clock</c>.</summary>
    Hour = 1 << 21,

    /// <summary>What stands behind minutes.</summary>
    Minute = 1 << 22,

    /// <summary>Twelve by the clock.</summary>
    Twelve = 1 << 23,

    /// <summary>The hands of a clock.</summary>
    Hand = 1 << 24,

    /// <summary>What the hour hand is called: <c>short</c>.</summary>
    HourHand = 1 << 25,

    /// <summary>What the minute hand is called: <c>long</c>.</summary>
    MinuteHand = 1 << 26,

    /// <summary>A length of time: <c>hours</c>.</summary>
    Lasting = 1 << 27,

    /// <summary>A word near which a code in small letters is meant as one: <c>spell</c>, <c>word</c>, <c>set</c>.</summary>
    Spelling = 1 << 28,

    /// <summary>It names a place, and it is known which.</summary>
    Place = 1 << 29,

    /// <summary>It stands for a letter, and it is known for which.</summary>
    Letter = 1 << 30,
}
