namespace HintBook.Spoilers.Languages;

/// <summary>What kind of help a word is to a sentence.</summary>
[Flags]
internal enum WordRole : byte
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
}
