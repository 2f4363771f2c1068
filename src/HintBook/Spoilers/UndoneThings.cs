using System.Collections.Immutable;
using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>Things that are named by the verb for taking them off or out: <c>unstopper the bottle</c>. Likely mentions only.</summary>
internal sealed class UndoneThings
{
    private readonly List<(string Stem, int Secret)> stems = [];
    private readonly HashSet<string> beginnings = new(StringComparer.Ordinal);
    private readonly string code;

    /// <summary>Takes the nouns of the names of things that nothing else is called by.</summary>
    public UndoneThings(SearchLanguage language, ImmutableArray<Secret> secrets)
    {
        code = language.Code;
        var verbs = UndoingVerbs.Of(code).ToLookup(verb => verb.Noun, verb => verb.Stem);
        if (verbs.Count == 0)
            return;
        var list = new WordList(SearchLanguage.Unknown);
        var reader = new WordReader(list);
        var owners = new Dictionary<string, HashSet<int>>(StringComparer.Ordinal);
        foreach (var secret in secrets.Where(secret => secret.Kind == SecretKind.Name))
        {
            foreach (var spelling in secret.Spellings)
            {
                if (NounOf(spelling) is not { } noun)
                    continue;
                if (!owners.TryGetValue(noun, out var here))
                    owners[noun] = here = [];
                here.Add(secret.Number);
            }
        }

        foreach (var (noun, secret) in owners.Where(pair => pair.Value.Count == 1).Select(pair => (pair.Key, pair.Value.First())))
        {
            if (secrets.First(one => one.Number == secret).Open)
                continue;
            foreach (var stem in verbs[noun])
            {
                stems.Add((stem, secret));
                beginnings.Add(stem[..3]);
            }
        }

        // The noun is the last word in English and German, where it may end a longer one, and the first before "of".
        string? NounOf(string name)
        {
            reader.Read(name);
            var last = -1;
            for (var i = 0; i < reader.Words.Length; i++)
            {
                if (reader.Bare(reader.Words[i]) is "of" or "for" or "with" or "von" or "aus" or "de" or "d" or "en" or "a" or "mit" && last >= 0)
                    break;
                var bare = reader.Bare(reader.Words[i]).ToString();
                if (verbs.Contains(bare) || (code == "de" && verbs.Any(verb => bare.EndsWith(verb.Key, StringComparison.Ordinal))))
                    last = i;
                else if (code is "en" or "de")
                    last = last >= 0 ? -1 : last;
            }

            if (last < 0)
                return null;
            var found = reader.Bare(reader.Words[last]).ToString();
            return verbs.Contains(found) ? found : verbs.First(verb => found.EndsWith(verb.Key, StringComparison.Ordinal)).Key;
        }
    }

    /// <summary>Adds every mention to a list.</summary>
    public void In(WordReader text, List<Mention> found)
    {
        if (stems.Count == 0)
            return;
        foreach (var word in text.Words)
        {
            var bare = text.Bare(word);
            if (bare.Length < 5 || !beginnings.GetAlternateLookup<ReadOnlySpan<char>>().Contains(bare[..3]))
                continue;
            foreach (var (stem, secret) in stems)
            {
                if (bare.StartsWith(stem) && UndoingVerbs.IsEnding(code, stem, bare[stem.Length..]))
                    found.Add(new(secret, word.Start, word.End, Sureness.Likely));
            }
        }
    }
}
