using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>
/// Names of two words of which one has a typing error: "the lether pouch", "un sobre lacardo". One letter is left out, doubled, exchanged or beside its
/// place, and the other word of the name stands next to it, with small words between. Likely mentions only.
/// </summary>
internal sealed class MisspeltNames(WordList words)
{
    private const int Shortest = 4;
    private const int ShortestOther = 3;
    private const int MostBetween = 2;
    private const int ShortestAlone = 5;
    private const int ShortestLeftOut = 6;
    private const int LettersOfEnding = 2;
    private static readonly string[] Alike = ["bv", "szc", "gj", "ckq", "iy", "dt", "mn"];
    // By the number of a word; asked of every word of every text.
    private readonly List<List<(int Secret, string Other, bool IsBehind)>?> names = [];
    private readonly Dictionary<string, int> alone = new(StringComparer.Ordinal);
    private readonly HashSet<string> lookAlikes = [.. LookAlikes.Of(words.Language.Code).Split(' ')];
    private readonly uint[] lengths = new uint['z' - 'a' + 1];

    /// <summary>Adds a name.</summary>
    /// <param name="secret">Whose it is.</param>
    /// <param name="written">Its words.</param>
    /// <param name="bare">Their letters.</param>
    public void Add(int secret, int[] written, string[] bare)
    {
        const WordRole small = WordRole.Function | WordRole.Determiner | WordRole.Preposition | WordRole.Link;
        int[] telling = [.. Enumerable.Range(0, written.Length).Where(i => !Is(written[i], small))];
        if (telling.Length != 2)
            return;
        var (first, last) = (telling[0], telling[1]);
        Put(written[first], secret, bare[last], isBehind: true);
        Put(written[last], secret, bare[first], isBehind: false);
    }

    /// <summary>
    /// Adds a word that counts by itself: "the wistle", "le siflet". Only errors that make no other word as a rule: two letters that changed places, a double
    /// letter written once or a single one twice, in longer words a letter left out or one that sounds alike, none of them in the ending;
    /// not what is a word of its own (<see cref="LookAlikes"/>).
    /// </summary>
    public void AddAlone(int word, string bare)
    {
        if (bare.Length < ShortestAlone || bare.AsSpan().ContainsAnyExceptInRange('a', 'z'))
            return;
        for (var i = 1; i < bare.Length; i++)
        {
            var isEnding = i >= bare.Length - LettersOfEnding;
            if (i + 1 < bare.Length && bare[i] != bare[i + 1])
                PutAlone($"{bare[..i]}{bare[i + 1]}{bare[i]}{bare[(i + 2)..]}", word);
            if (bare[i] == bare[i - 1] || (bare.Length >= ShortestLeftOut && !isEnding))
                PutAlone(bare.Remove(i, 1), word);
            if (bare[i] is not ('s' or 'e' or 'n') || !isEnding)
                PutAlone(bare.Insert(i, $"{bare[i]}"), word);
            foreach (var other in bare.Length >= ShortestLeftOut && !isEnding ? Alike.FirstOrDefault(all => all.Contains(bare[i])) ?? "" : "")
                PutAlone($"{bare[..i]}{other}{bare[(i + 1)..]}", word);
        }
    }

    private void PutAlone(string misspelt, int word)
    {
        if (words.NumberOf(misspelt) >= 0 || lookAlikes.Contains(misspelt) || !alone.TryAdd(misspelt, word))
            return;
        lengths[misspelt[0] - 'a'] |= 1u << (misspelt.Length & 31);
    }

    /// <summary>The word of which a word that isn't known is a misspelling; -1 if there is none.</summary>
    public int Meant(ReadOnlySpan<char> bare) =>
        bare is [>= 'a' and <= 'z', ..] && (lengths[bare[0] - 'a'] & (1u << (bare.Length & 31))) != 0
            && alone.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(bare, out var word) ? word : -1;

    private void Put(int known, int secret, string other, bool isBehind)
    {
        if (other.Length < Shortest)
            return;
        while (names.Count <= known)
            names.Add(null);
        (names[known] ??= []).Add((secret, other, isBehind));
    }

    /// <summary>Adds the mentions of names of two words of which one stands at a place, if it matters.</summary>
    public void Beside(WordReader text, int at, List<Mention> found)
    {
        if (text.Words[at].Id >= names.Count || names[text.Words[at].Id] is not { } here || (!MayBe(text, at + 1) && !MayBe(text, at - 1)))
            return;
        foreach (var (secret, other, isBehind) in here)
        {
            if (Find(text, at, isBehind ? 1 : -1, other) is >= 0 and var place)
                found.Add(new(secret, text.Words[Math.Min(at, place)].Start, text.Words[Math.Max(at, place)].End, Sureness.Likely));
        }
    }

    // A word that isn't known, or a small one behind which such a word may stand. Asked before the list of names is walked.
    private bool MayBe(WordReader text, int at) =>
        at >= 0 && at < text.Words.Length
        && (text.Words[at].Id < 0 || Is(text.Words[at].Id, WordRole.Function | WordRole.Determiner | WordRole.Preposition));

    private int Find(WordReader text, int at, int step, string other)
    {
        for (var (i, between) = (at + step, 0); i >= 0 && i < text.Words.Length; i += step)
        {
            if ((text.Words[step > 0 ? i : i + 1].Gap & (Gap.Comma | Gap.Stop | Gap.Paragraph)) != Gap.None)
                return -1;
            if (text.Words[i].Id < 0 && text.Words[i].Length >= ShortestOther && IsNearly(text.Bare(text.Words[i]), other)
                && !lookAlikes.GetAlternateLookup<ReadOnlySpan<char>>().Contains(text.Bare(text.Words[i])))
                return i;
            if (!Is(text.Words[i].Id, WordRole.Function | WordRole.Determiner | WordRole.Preposition) || ++between > MostBetween)
                return -1;
        }

        return -1;
    }

    // One letter more, less or other, or two that changed places.
    private static bool IsNearly(ReadOnlySpan<char> word, ReadOnlySpan<char> name)
    {
        if (Math.Abs(word.Length - name.Length) > 1 || MustDiffer(word, name))
            return false;
        var same = word.CommonPrefixLength(name);
        var left = word[same..];
        var right = name[same..];
        if (left.Length > right.Length)
            return left[1..].SequenceEqual(right);
        if (left.Length < right.Length)
            return right[1..].SequenceEqual(left);
        if (left.Length == 0)
            return false;
        return left[1..].SequenceEqual(right[1..]) ? word.Length > Shortest && same > 0
            : left.Length > 1 && left[0] == right[1] && left[1] == right[0] && left[2..].SequenceEqual(right[2..]);
    }

    // Two letters tell most words apart.
    private static bool MustDiffer(ReadOnlySpan<char> word, ReadOnlySpan<char> name) =>
        word[0] != name[0] && word[1] != name[0] && word[0] != name[1];

    private bool Is(int word, WordRole role) => (words.RoleOf(word) & role) != WordRole.None;
}
