using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>Says of names how much they tell in their language.</summary>
internal sealed class NameJudge
{
    private readonly WordList words;
    private readonly Phrases phrases;
    private readonly WordReader reader;
    private readonly HashSet<int> openWords;

    /// <summary>Judges with the words that a search has.</summary>
    /// <param name="words">The words of the language.</param>
    /// <param name="phrases">Reads names into them.</param>
    /// <param name="openTexts">What anyone may read.</param>
    public NameJudge(WordList words, Phrases phrases, IEnumerable<string> openTexts)
    {
        (this.words, this.phrases, reader) = (words, phrases, new WordReader(words));
        openWords = [.. openTexts.SelectMany(phrases.TellingWords)];
    }

    /// <summary>Judges names of another language than that of the texts.</summary>
    public static NameJudge Build(SearchLanguage language, IEnumerable<string> openTexts)
    {
        var list = new WordList(language);
        return new(list, new Phrases(list), openTexts);
    }

    /// <summary>How many words of a name tell something, how many of those are everyday ones, and whether anyone knows all of them.</summary>
    public (int Telling, int Everyday, bool AllPlain, bool AllOpen) Judge(string name)
    {
        var telling = phrases.TellingWords(name).ToArray();
        var everyday = words.Language.HasNoSpaces && IsEveryday(Joined(name)) ? telling.Length : telling.Count(IsEveryday);
        var isAllPlain = everyday == telling.Length || telling.All(word => openWords.Contains(word) || IsEveryday(word));
        return (telling.Length, everyday, isAllPlain, telling.All(openWords.Contains));
    }

    /// <summary>Whether a word stands in what anyone may read.</summary>
    public bool IsOpen(int word) => openWords.Contains(word);

    /// <summary>A name without its articles, which another language doesn't know.</summary>
    public string WithoutDeterminers(string name)
    {
        reader.Read(name);
        var kept = new List<string>();
        foreach (var word in reader.Words)
        {
            if ((words.RoleOf(word.Id) & WordRole.Determiner) == WordRole.None)
                kept.Add(name[word.Start..word.End]);
        }

        return string.Join(words.Language.HasNoSpaces ? "" : " ", kept);
    }

    private bool IsEveryday(int word) => (words.RoleOf(word) & WordRole.Everyday) != WordRole.None;

    private int Joined(string name)
    {
        reader.Read(name);
        var letters = "";
        foreach (var word in reader.Words)
            letters += reader.Bare(word).ToString();
        return words.NumberOf(letters);
    }
}
