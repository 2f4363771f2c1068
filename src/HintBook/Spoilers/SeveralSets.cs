using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>
/// The words of <see cref="SeveralWords"/> as texts are read: in sets of bare letters, or where no spaces part the words as they are written.
/// </summary>
internal sealed record SeveralSets
{
    /// <summary>Phrases before a noun in the plural, or behind it in Japanese, that mean one of them.</summary>
    public required string[] OneOf { get; init; }

    /// <summary>Words that set the one apart from the others.</summary>
    public required HashSet<string> Apart { get; init; }

    /// <summary>Words behind two nouns that share out something between them.</summary>
    public required HashSet<string> Each { get; init; }

    /// <summary>Words that say that a price is that of one piece.</summary>
    public required HashSet<string> Apiece { get; init; }

    /// <summary>What sets the one apart, where no spaces part the words.</summary>
    public required string[] ApartInRuns { get; init; }

    /// <summary>What says that a price is that of one piece, where no spaces part the words.</summary>
    public required string[] ApieceInRuns { get; init; }

    /// <summary>Those of the language of a list of words.</summary>
    public static SeveralSets Of(WordList words)
    {
        var known = SeveralWords.Of(words.Language.Code);
        var reader = new WordReader(words);
        return new()
        {
            OneOf = known.OneOf.Split("; ", StringSplitOptions.RemoveEmptyEntries),
            Apart = Bare(known.Apart),
            Each = Bare(known.Each),
            Apiece = Bare(known.Apiece),
            ApartInRuns = known.Apart.Split(' '),
            ApieceInRuns = known.Apiece.Split(' '),
        };

        HashSet<string> Bare(string list)
        {
            var all = new HashSet<string>(StringComparer.Ordinal);
            foreach (var word in words.Language.HasNoSpaces ? [] : list.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                reader.Read(word);
                all.Add(reader.Bare(reader.Words[^1]).ToString());
            }

            return all;
        }
    }

    /// <summary>Whether a word of a text is in a set.</summary>
    public static bool Has(HashSet<string> all, WordReader text, int at) => all.GetAlternateLookup<ReadOnlySpan<char>>().Contains(text.Bare(text.Words[at]));
}
