using System.Collections.Immutable;
using HintBook.Audit.Mentions.Signs;

namespace HintBook.Audit.Mentions.Languages;

/// <summary>
/// What the audit knows of a language: words that add nothing, the forms of a noun, and how numbers are said. Chosen by hand and from memory;
/// nothing is shared with the check of the source.
/// </summary>
internal sealed record AuditLanguage
{
    /// <summary>A language of which nothing is known.</summary>
    public static AuditLanguage Unknown { get; } = new() { Code = "" };

    /// <summary>The first part of its tag.</summary>
    public required string Code { get; init; }

    /// <summary>Words that are no part of a name.</summary>
    public string Determiners { get; init; } = "";

    /// <summary>Words behind which determiners may stand within a name.</summary>
    public string Prepositions { get; init; } = "";

    /// <summary>Words said between the figures of a code.</summary>
    public string Between { get; init; } = "";

    /// <summary>Words that count as the same word, such as <c>de du</c>, parted by spaces.</summary>
    public string[] Same { get; init; } = [];

    /// <summary>All forms of a word of small bare letters; of a lone noun only those that can be no other word.</summary>
    public Func<string, bool, IEnumerable<string>> Forms { get; init; } = static (word, _) => [word];

    /// <summary>Every number below <see cref="ThousandIs"/> as it is said, its words parted by spaces and without "and".</summary>
    public Func<IEnumerable<(string Said, int Number)>>? Numbers { get; init; }

    /// <summary>The word, one of several in <see cref="Same"/>, behind which larger numbers go on.</summary>
    public string Thousand { get; init; } = "";

    /// <summary>What it counts: a thousand, in Japanese ten thousand.</summary>
    public int ThousandIs { get; init; } = 1000;

    /// <summary>The same within a word, where large numbers are written as one.</summary>
    public string GluedThousand { get; init; } = "";

    /// <summary>Words that say the next figure several times, <c>double</c> first, then <c>triple</c>.</summary>
    public string[] Repeats { get; init; } = [];

    /// <summary>How times are said.</summary>
    public ImmutableArray<Meaning> Times { get; init; } = [];

    /// <summary>Whether the hour is said before the minutes that are wanting: "onze heures moins le quart".</summary>
    public bool IsHourFirst { get; init; }

    /// <summary>How codes are told piece by piece.</summary>
    public ImmutableArray<Meaning> Codes { get; init; } = [];

    /// <summary>How words of one family are known.</summary>
    public Kinship Kinship { get; init; } = Kinship.None;

    /// <summary>Endings that make a thing small.</summary>
    public string[] Diminutives { get; init; } = [];

    /// <summary>Words of coordination: "hive and tool" is no hive tool.</summary>
    public string Coordinators { get; init; } = "";

    /// <summary>Words that go back to something said before: "it lived in a drawer". Empty where they are parts of other words.</summary>
    public string Anaphora { get; init; } = "";

    /// <summary>Words that tie the first half of a compound to the second behind it: <c>fürs</c>.</summary>
    public string Ties { get; init; } = "";

    /// <summary>Articles of the genitive, which do the same with an inflected noun: <c>des</c>.</summary>
    public string OwnersAhead { get; init; } = "";

    /// <summary>Words that deny the one behind them.</summary>
    public string Negations { get; init; } = "";

    /// <summary>Words behind which something is only likened: "like a feather".</summary>
    public string Likenesses { get; init; } = "";

    /// <summary>Whether nouns are also verbs, and stand before other nouns: "feather your oars", "a mirror image".</summary>
    public bool HasVerbsAlike { get; init; }

    /// <summary>Words that speak of setting, writing and spelling.</summary>
    public string Setting { get; init; } = "";

    /// <summary>Lone letters that are words: <c>a</c>, <c>I</c>.</summary>
    public string LetterWords { get; init; } = "";

    /// <summary>Words of grammar besides those above: nothing that a number counts, nothing that makes a compound.</summary>
    public string Grammar { get; init; } = "";

    /// <summary>What is written as one with a number word: "and", the article.</summary>
    public string[] BeforeNumbers { get; init; } = [];

    /// <summary>Words that lose their vowel before an apostrophe.</summary>
    public string[] Elided { get; init; } = [];

    /// <summary>Whether nouns begin with a capital and are written as one with others.</summary>
    public bool HasCompounds { get; init; }

    /// <summary>Whether no spaces part the words.</summary>
    public bool IsUnspaced { get; init; }
}
