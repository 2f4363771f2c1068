using System.Globalization;

namespace HintBook.Spoilers;

/// <summary>Numbers that are said in other words than number words: "half a dozen", "nothing at all", "as many as a week has days".</summary>
internal sealed class SaidNumbers
{
    private readonly Dictionary<int, List<(int[] Words, int Value)>> phrases = [];

    /// <summary>Reads the phrases of a language.</summary>
    public SaidNumbers(WordList words)
    {
        var reader = new WordReader(words);
        foreach (var phrase in words.Language.Pieces.OtherNumbers.Split("; ", StringSplitOptions.RemoveEmptyEntries))
        {
            var colon = phrase.LastIndexOf(':');
            reader.Read(phrase[..colon]);
            List<int> said = [];
            foreach (var word in reader.Words)
                said.Add(words.Add(reader.Bare(word)));
            if (!phrases.TryGetValue(said[0], out var same))
                phrases[said[0]] = same = [];
            same.Add(([.. said], int.Parse(phrase[(colon + 1)..], CultureInfo.InvariantCulture)));
        }

        foreach (var same in phrases.Values)
            same.Sort((left, right) => right.Words.Length.CompareTo(left.Words.Length));
    }

    /// <summary>The number that the phrase at a word says; -1 if none does.</summary>
    /// <param name="text">The words.</param>
    /// <param name="at">The first word.</param>
    /// <param name="next">The word behind the phrase.</param>
    public int At(WordReader text, int at, out int next)
    {
        next = at + 1;
        if (text.Words[at].Id < 0 || !phrases.TryGetValue(text.Words[at].Id, out var here))
            return -1;
        foreach (var (said, value) in here)
        {
            if (at + said.Length > text.Words.Length)
                continue;
            var isSaid = true;
            for (var i = 1; i < said.Length && isSaid; i++)
                isSaid = text.Words[at + i].Id == said[i] && (text.Words[at + i].Gap & (Gap.Stop | Gap.Paragraph)) == Gap.None;
            if (!isSaid)
                continue;
            next = at + said.Length;
            return value;
        }

        return -1;
    }
}
