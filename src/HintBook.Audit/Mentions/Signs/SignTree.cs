using System.Runtime.InteropServices;
using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions.Signs;

/// <summary>The words and phrases of a language that say times and codes, as one tree. It has word numbers of its own.</summary>
internal sealed class SignTree
{
    private readonly Dictionary<string, int> words = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int>.AlternateLookup<ReadOnlySpan<char>> lookup;
    private readonly Dictionary<(int Node, int Word), int> children = [];
    private readonly List<(Sign Sign, int Value, string Symbols)> meanings = [(Sign.None, -1, "")];
    private readonly AuditLanguage language;

    /// <summary>Builds the tree of a language.</summary>
    public SignTree(AuditLanguage language)
    {
        this.language = language;
        lookup = words.GetAlternateLookup<ReadOnlySpan<char>>();
        var folded = new FoldedText(language);
        foreach (var meaning in language.Times.Concat(language.Codes))
        {
            foreach (var phrase in meaning.Phrases.Split(", "))
                Add(folded, phrase, meaning.Sign, meaning.Value, meaning.Symbols);
        }

        foreach (var word in CodesIn.AlphabetOf(language.Code).Split(' ', StringSplitOptions.RemoveEmptyEntries))
            Add(folded, word, Sign.Letter, -1, FoldedText.BareWords(word).First()[..1]);
        foreach (var pair in CodesIn.LetterNamesOf(language.Code).Split(' ', StringSplitOptions.RemoveEmptyEntries).Chunk(2))
            Add(folded, pair[1], Sign.Letter, -1, FoldedText.BareWords(pair[0]).First());
    }

    /// <summary>The number of a word, or -1 for one that says nothing.</summary>
    public int Of(ReadOnlySpan<char> word) => lookup.TryGetValue(word, out var number) ? number : -1;

    /// <summary>How much a word speaks for a time or a code by itself: a number or a part of an hour enough, a letter or an ordinal some.</summary>
    public int WeightOf(ReadOnlySpan<char> word, int some, int enough) =>
        Of(word) is not (>= 0 and var number) || !children.TryGetValue((0, number), out var node) ? 0
        : (meanings[node].Sign & (Sign.Number | Sign.Fraction | Sign.Figures)) != Sign.None ? enough
        : (meanings[node].Sign & (Sign.Letter | Sign.Ordinal)) != Sign.None ? some
        : 0;

    /// <summary>The longest phrase that begins at a word, and how many words it has; none if none does.</summary>
    public (Sign Sign, int Value, string Symbols, int Words) At(ReadOnlySpan<int> row, FoldedText text, int from)
    {
        var (node, best) = (0, (Sign.None, -1, "", 0));
        for (var i = from; i < row.Length && row[i] >= 0 && (i == from || text.Words[i].Parting < Parting.Comma); i++)
        {
            if (!children.TryGetValue((node, row[i]), out node))
                break;
            if (meanings[node] is { Sign: not Sign.None } found)
                best = (found.Sign, found.Value, found.Symbols, i + 1 - from);
        }

        return best;
    }

    private void Add(FoldedText folded, string phrase, Sign sign, int value, string symbols)
    {
        folded.Read(phrase, isProse: false);
        string[] parts = [.. folded.Words.ToArray().Select(word => folded.Of(word).ToString())];
        // In Arabic the article and prepositions are written as one with the first word.
        foreach (var first in language.BeforeNumbers.Length == 0 ? [parts[0]] : language.Forms(parts[0], true).Distinct())
            Insert([first, .. parts[1..]], sign, value, symbols);
    }

    private void Insert(string[] parts, Sign sign, int value, string symbols)
    {
        var node = 0;
        foreach (var part in parts)
        {
            ref var word = ref CollectionsMarshal.GetValueRefOrAddDefault(words, part, out var isKnown);
            if (!isKnown)
                word = words.Count - 1;
            ref var next = ref CollectionsMarshal.GetValueRefOrAddDefault(children, (node, word), out var exists);
            if (!exists)
            {
                next = meanings.Count;
                meanings.Add((Sign.None, -1, ""));
            }

            node = next;
        }

        var before = meanings[node];
        meanings[node] = (before.Sign | sign, value >= 0 ? value : before.Value, symbols.Length > 0 ? symbols : before.Symbols);
    }
}
