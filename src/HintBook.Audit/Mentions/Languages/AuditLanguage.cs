namespace HintBook.Audit.Mentions.Languages;

/// <summary>
/// What the audit knows of a language: words that add nothing, the forms of a noun, and how numbers are said. Chosen by hand and from memory; shared
/// with nothing that checks the source.
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

    /// <summary>Words that count as another one: <c>du</c> as <c>de</c>. First the one that stays.</summary>
    public string[] Same { get; init; } = [];

    /// <summary>All forms of a word of small bare letters; of a lone noun only those that can be no other word.</summary>
    public Func<string, bool, IEnumerable<string>> Forms { get; init; } = static (word, _) => [word];

    /// <summary>Number words that make numbers by the rules of English.</summary>
    public IEnumerable<(string Word, NumberWord Value)> NumberWords { get; init; } = [];

    /// <summary>Every number below ten thousand as it is said, its words parted by spaces and without "and".</summary>
    public Func<IEnumerable<(string Said, int Number)>>? Numbers { get; init; }

    /// <summary>The "and" that is written as one with the number word behind it.</summary>
    public string AndBefore { get; init; } = "";

    /// <summary>Words that lose their vowel before an apostrophe.</summary>
    public string[] Elided { get; init; } = [];

    /// <summary>Whether nouns begin with a capital and are written as one with others.</summary>
    public bool HasCompounds { get; init; }

    /// <summary>Whether no spaces part the words.</summary>
    public bool IsUnspaced { get; init; }
}
