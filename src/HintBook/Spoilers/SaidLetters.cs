using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>
/// Codes told letter by letter or in parts: ميم، دال، ألف، دال, or 一文字目は「し」、二文字目は「ぐ」; in capitals "begins with T, goes on with RAS and ends in
/// TE", or in another order where words say which. In Japanese a code may also stand in the other kana. Likely mentions only, but for a whole code in quotes.
/// </summary>
internal sealed class SaidLetters(WordList words)
{
    private const int Shortest = 2;
    private const int ShortestInCapitals = 4;
    private const int MostApart = 20;
    private const int MostWords = 8;
    private const int MostSaid = 2;
    private const int ShortestPart = 2;
    private const int ShortestTurned = 5;
    private const int MostInMask = 64;
    private const int KanaApart = 'ァ' - 'ぁ';
    private const string Opening = "「『“\"・、，／→";
    private const string Closing = "」』”\"・、，／→。";
    private readonly List<(int Secret, string Letters)> codes = [];
    private readonly List<(int Secret, string Figures)> figures = [];
    private readonly Dictionary<char, List<(int Secret, string Letters)>> capitals = [];
    private readonly Dictionary<string, List<int>> bySymbols = [];
    private readonly SortedSet<int> lengths = [];
    private uint beginnings;
    private ulong turnedLengths;
    private readonly List<(string Letters, int Start, int End, int Word)> said = [];
    private readonly Surroundings around = new(words);
    private readonly bool hasNoSpaces = words.Language.HasNoSpaces;

    /// <summary>Adds a code, if its letters have no capitals.</summary>
    public void Add(int secret, string letters)
    {
        if (hasNoSpaces && letters.All(char.IsAsciiDigit))
            figures.Add((secret, letters));
        else if (letters.Length >= Shortest && IsCaseless(letters))
            codes.Add((secret, Hiragana(letters)));
        else if (letters.Length >= ShortestInCapitals && letters.All(char.IsAsciiLetter))
            AddInCapitals(secret, letters);
    }

    // By its first letter, and by all of them in the order of the alphabet.
    private void AddInCapitals(int secret, string letters)
    {
        if (!capitals.TryGetValue(letters[0], out var here))
            capitals[letters[0]] = here = [];
        here.Add((secret, letters));
        var sorted = string.Concat(letters.Order());
        if (!bySymbols.TryGetValue(sorted, out var same))
            bySymbols[sorted] = same = [];
        same.Add(secret);
        lengths.Add(letters.Length);
        if (letters.Length is < ShortestTurned or >= MostInMask)
            return;
        beginnings |= Bit(letters[0]);
        turnedLengths |= 1UL << letters.Length;
    }

    /// <summary>Whether a code is of letters that have no capitals.</summary>
    public static bool IsCaseless(string letters) =>
        letters.All(letter => char.IsLetter(letter) && letter > '\u02FF' && !char.IsUpper(char.ToUpperInvariant(letter)));

    /// <summary>Adds every mention to a list.</summary>
    public void In(WordReader text, string source, List<Mention> found)
    {
        if (capitals.Count > 0)
            InCapitals(text, source, found);
        CodesInKana.InSounds(source, figures, found);
        if (codes.Count == 0)
            return;
        Gather(text, source);
        foreach (var (secret, letters) in codes)
        {
            for (var first = 0; first < said.Count; first++)
            {
                Walk(secret, letters, first, found);
                if (!hasNoSpaces && letters.Length > Shortest)
                    InAnyOrder(text, secret, letters, first, found);
            }
        }

        if (!hasNoSpaces)
        {
            Ends(text, found);
            return;
        }

        OtherKana(text, source, found);
        CodesInKana.InInitials(source, codes, found);
        CodesInKana.InEnds(source, codes, found);
        LoneKana.Gather(source, said);
        foreach (var (secret, letters) in codes)
        {
            for (var first = 0; first + 1 < said.Count; first++)
                Walk(secret, letters, first, found);
        }
    }

    private void InCapitals(WordReader text, string source, List<Mention> found)
    {
        said.Clear();
        var isOrdered = hasNoSpaces && LettersInKana.Gather(source, said);
        var mayBeTurned = false;
        for (var i = 0; i < text.Words.Length; i++)
        {
            var word = text.Words[i];
            isOrdered |= word.Id >= 0 && words.Signs.IsOrder(word.Id);
            if (word.Length >= ShortestPart)
            {
                mayBeTurned |= word.Length < MostInMask && (turnedLengths & (1UL << word.Length)) != 0;
                if ((beginnings & Bit(text.Bare(word)[0])) != 0)
                    InParts(text, i, found);
            }

            if (!char.IsAsciiLetterUpper(source[word.Start]) || source.AsSpan(word.Start, word.End - word.Start).ContainsAnyExceptInRange('A', 'Z'))
                continue;
            // "A K to open with": an article.
            var isArticle = word.Length == 1 && source[word.Start] == 'A' && i + 1 < text.Words.Length && text.Words[i + 1].Length == 1
                && text.Words[i + 1].Gap == Gap.Space && char.IsAsciiLetterUpper(source[text.Words[i + 1].Start]);
            if (!isArticle)
                said.Add((text.Bare(word).ToString(), word.Start, word.End, i));
        }

        if (mayBeTurned && isOrdered)
            Shuffled(text, found);
        for (var first = 0; first + 1 < said.Count; first++)
        {
            if (capitals.TryGetValue(said[first].Letters[0], out var here))
            {
                foreach (var (secret, letters) in here)
                    Walk(secret, letters, first, found);
            }

            if (!isOrdered || IsNear(first - 1))
                continue;
            foreach (var length in lengths)
                InAnyOrder(length, first, found);
        }
    }

    // "'Lat' first, then 'her'", "M, E, R, I, and a girl called Dian": two words that are the code when they are written as one.
    private void InParts(WordReader text, int at, List<Mention> found)
    {
        var part = text.Bare(text.Words[at]);
        if (!capitals.TryGetValue(part[0], out var here))
            return;
        foreach (var (secret, letters) in here)
        {
            if (letters.Length - part.Length < ShortestPart || !letters.AsSpan().StartsWith(part))
                continue;
            for (var i = at + 1; i < text.Words.Length && i <= at + MostWords; i++)
            {
                if (letters.AsSpan(part.Length).SequenceEqual(text.Bare(text.Words[i])) && (text.Words[i].Gap != Gap.None || i > at + 1))
                    found.Add(new(secret, text.Words[at].Start, text.Words[i].End, Sureness.Likely));
            }
        }
    }

    // "Shuffle 'halter'": another word of the same letters, where words say in what order they stand.
    private void Shuffled(WordReader text, List<Mention> found)
    {
        foreach (var word in text.Words)
        {
            if (word.Length >= MostInMask || (turnedLengths & (1UL << word.Length)) == 0)
                continue;
            var bare = text.Bare(word);
            var sorted = string.Concat(bare.ToString().Order());
            if (!bySymbols.TryGetValue(sorted, out var same))
                continue;
            foreach (var secret in same)
            {
                if (!capitals.GetValueOrDefault(bare[0], []).Contains((secret, bare.ToString())))
                    found.Add(new(secret, word.Start, word.End, Sureness.Likely));
            }
        }
    }

    private static uint Bit(char letter) => letter is >= 'a' and <= 'z' ? 1u << (letter - 'a') : 0;

    // "An S to begin with and an L to end with; I, G, N and A between them": all of them, and no others beside them.
    private void InAnyOrder(int length, int first, List<Mention> found)
    {
        var last = first + length - 1;
        if (last >= said.Count || IsNear(last))
            return;
        for (var i = first; i <= last; i++)
        {
            if (said[i].Letters.Length > 1 || (i < last && !IsNear(i)))
                return;
        }

        if (!bySymbols.TryGetValue(string.Concat(said[first..(last + 1)].Select(one => one.Letters).Order(StringComparer.Ordinal)), out var same))
            return;
        foreach (var secret in same)
            found.Add(new(secret, said[first].Start, said[last].End, Sureness.Likely));
    }

    // يبدأ بالزاي وينتهي بالميم وبينهما خاء وقاف.
    private void InAnyOrder(WordReader text, int secret, string letters, int first, List<Mention> found)
    {
        var last = first + letters.Length - 1;
        if (last >= said.Count || IsNear(first - 1) || IsNear(last))
            return;
        for (var i = first; i < last; i++)
        {
            if (!IsNear(i))
                return;
        }

        if (!string.Concat(said[first..(last + 1)].Select(one => one.Letters)).Order().SequenceEqual(letters.Order()))
            return;
        for (var i = Math.Max(0, said[first].Word - MostWords); i <= said[last].Word; i++)
        {
            if (text.Words[i].Id >= 0 && words.Signs.IsOrder(text.Words[i].Id))
            {
                found.Add(new(secret, said[first].Start, said[last].End, Sureness.Likely));
                return;
            }
        }
    }

    // من خمسة أحرف، يبدأ بالياء وينتهي بالتاء.
    private void Ends(WordReader text, List<Mention> found)
    {
        if (said.Count != 2)
            return;
        foreach (var (secret, letters) in codes)
        {
            var last = said[1].Letters is "ت" && letters[^1] is 'ه' ? "ه" : said[1].Letters;
            if (letters.StartsWith(said[0].Letters, StringComparison.Ordinal) && letters.EndsWith(last, StringComparison.Ordinal)
                && words.SaysLength(text, letters.Length))
                found.Add(new(secret, said[0].Start, said[1].End, Sureness.Likely));
        }
    }

    private bool IsNear(int at) => at >= 0 && at + 1 < said.Count && said[at + 1].Word - said[at].Word <= 2 * MostWords;

    private void Gather(WordReader text, string source)
    {
        said.Clear();
        for (var i = 0; i < text.Words.Length; i++)
        {
            var word = text.Words[i];
            if (hasNoSpaces)
            {
                if (QuotedAt(source, word.Start) is > 0 and var length && IsListed(source, word.Start, length))
                    said.Add((Hiragana(source.Substring(word.Start, length)), word.Start, word.Start + length, i));
            }
            else if (words.Signs.TwoOf(word.Id) is not '\0' and var two)
            {
                said.Add(($"{two}", word.Start, word.End, i));
                said.Add(($"{two}", word.Start, word.End, i));
            }
            else if (words.Signs.LetterOf(word.Id) is not '\0' and var letter && letter > '\u02FF')
            {
                said.Add(($"{letter}", word.Start, word.End, i));
                // الدال مرتين.
                if (i + 1 < text.Words.Length && words.Signs.IsTwice(text.Words[i + 1].Id))
                    said.Add(($"{letter}", word.Start, text.Words[i + 1].End, i + 1));
            }
            else if (word.Length == 1 && text.Bare(word)[0] > '\u02FF')
            {
                said.Add((text.Bare(word).ToString(), word.Start, word.End, i));
            }
        }
    }

    // 「し」; し・ぐ・れ; 一文字目はし、次はぐ: between quotes or signs of a list, or as what is said of a place.
    private static bool IsListed(string source, int start, int length)
    {
        if (start > 0 && Opening.Contains(source[start - 1], StringComparison.Ordinal))
            return length <= MostSaid || source.AsSpan(start, length).IndexOfAny('は', 'が') is not (> 0 and var topic)
                || !IsPlaceWord(source[start + topic - 1]);
        var closing = start + length < source.Length ? source[start + length] : '。';
        return length <= MostSaid && (start == 0 || source[start - 1] is '。' or '\n' ? closing is '・' or '、' or '，' or '→'
            : start > 1 && source[start - 1] is 'は' or 'が' && IsPlaceWord(source[start - 2]));
    }

    // 目, 字, つ and め, 次, 後, 初, 頭, 番.
    private static bool IsPlaceWord(char letter) => letter is '目' or 'め' or '字' or '次' or '後' or '初' or '頭' or '番' or '端' or '左' or '右' or '間' or '中';

    // How many letters stand between quotes or signs of a list; 0 where something else follows.
    private static int QuotedAt(string source, int start)
    {
        for (var i = start; i < source.Length && i <= start + MostWords; i++)
        {
            if (Closing.Contains(source[i], StringComparison.Ordinal) || (i > start && i - start <= MostSaid && (source.AsSpan(i).StartsWith("です")
                || (start > 0 && source[start - 1] == '・' && source[i] is 'と' or 'の' or 'を' or 'に' or 'で'))))
                return i - start;
            if (!char.IsLetter(source[i]) && source[i] != 'ー')
                return 0;
        }

        return source.Length - start <= MostWords ? source.Length - start : 0;
    }

    private void Walk(int secret, string letters, int first, List<Mention> found)
    {
        var length = 0;
        for (var i = first; i < said.Count; i++)
        {
            var isNear = i == first || (hasNoSpaces ? said[i].Start - said[i - 1].End <= MostApart : said[i].Word - said[i - 1].Word <= MostWords);
            if (!isNear || !letters.AsSpan(length).StartsWith(said[i].Letters))
                return;
            length += said[i].Letters.Length;
            if (length < letters.Length)
                continue;
            if (i > first || hasNoSpaces)
                found.Add(new(secret, said[first].Start, said[i].End, i == first ? Sureness.Sure : Sureness.Likely));
            return;
        }
    }

    // ツバメ for つばめ.
    private void OtherKana(WordReader text, string source, List<Mention> found)
    {
        foreach (var (secret, letters) in codes)
        {
            for (var i = 0; i < text.Words.Length; i++)
            {
                var start = text.Words[i].Start;
                if (!IsAt(source, start, letters))
                    continue;
                var last = i + 1;
                while (last < text.Words.Length && text.Words[last].Start < start + letters.Length)
                    last++;
                if (Runs.StandingOf(source, start, start + letters.Length) != Standing.Part && around.IsSpelled(text, source, i, last - 1))
                    found.Add(new(secret, start, start + letters.Length, Sureness.Likely));
            }
        }
    }

    private static bool IsAt(string source, int start, string letters)
    {
        if (start + letters.Length > source.Length)
            return false;
        for (var i = 0; i < letters.Length; i++)
        {
            if (Hiragana(source[start + i]) != letters[i])
                return false;
        }

        return true;
    }

    /// <summary>Katakana as hiragana.</summary>
    public static string Hiragana(string text) => string.Create(text.Length, text, static (room, from) =>
    {
        for (var i = 0; i < room.Length; i++)
            room[i] = Hiragana(from[i]);
    });

    private static char Hiragana(char letter) => letter is >= 'ァ' and <= 'ヶ' ? (char)(letter - KanaApart) : letter;
}
