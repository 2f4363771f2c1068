using System.Buffers;
using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using HintBook.Audit.Mentions.Languages;
using HintBook.Audit.Mentions.Signs;

namespace HintBook.Audit.Mentions;

/// <summary>
/// Finds codes whose pieces stand loosely in a text: with other words between them, in another order than the code's, as rows of places and figures, read
/// from the end, as first letters. Every stretch of pieces is compared with the codes by the symbols that both have; nothing is told unless all pieces of the
/// stretch are used. All of it is a doubt. Reuses its buffers for the next text; not thread-safe.
/// </summary>
internal sealed class LooseCodes
{
    private const int MostApart = 20, Alone = 6, MostDoubtful = 5, Around = 14, Short = 3, MostPieces = 14, ToAgain = 7, ToShared = 10, ToNext = 3;
    private readonly CodeTable codes;
    private readonly HashSet<string> rows;
    private readonly bool isUnspaced, hasLetterNames, hasCapitals;
    private readonly string letterWords;
    private readonly HashSet<string>.AlternateLookup<ReadOnlySpan<char>> rowsBySpan;
    private readonly HashSet<string> doubles, tallies, timesWords, both, each, others;
    private readonly string[] mirrored, initials;
    private readonly SearchValues<string> turning;
    private readonly LetterRiddles riddles;
    private readonly List<Part> parts = [];
    private readonly List<int> doubtful = [];
    private readonly StringBuilder said = new();

    private bool speaksOfWheels;

    // How many wheels have the figure that is said next, and where that is said.
    private (int Times, int Token, bool AreBoth) shared;

    public LooseCodes(CodeTable codes, AuditLanguage language)
    {
        this.codes = codes;
        var remarks = RemarksIn.Of(language.Code);
        rows = [.. FoldedText.BareWords(remarks.Rows)];
        // The article and "and" are written as one with the word.
        if (language.BeforeNumbers.Length > 0)
            rows.UnionWith([.. from word in rows from before in language.BeforeNumbers.Append("وب") select before + word]);
        (isUnspaced, hasLetterNames, hasCapitals) = (language.IsUnspaced, language.Kinship.HasRoots, language.HasCompounds);
        letterWords = language.LetterWords;
        rowsBySpan = rows.GetAlternateLookup<ReadOnlySpan<char>>();
        doubles = [.. FoldedText.BareWords(remarks.Doubles)];
        tallies = [.. FoldedText.BareWords(remarks.Tallies)];
        timesWords = [.. FoldedText.BareWords(remarks.Times)];
        mirrored = remarks.Mirrored.Split(", ", StringSplitOptions.RemoveEmptyEntries);
        initials = remarks.Initials.Split(", ", StringSplitOptions.RemoveEmptyEntries);
        riddles = new(codes, language);
        turning = SearchValues.Create(
            [.. mirrored.Concat(initials).Concat(riddles.Shuffled).SelectMany(phrase => (string[])[phrase, phrase.Replace('’', '\'')]).Distinct()],
            StringComparison.OrdinalIgnoreCase);
        var answers = AnswersIn.Of(language.Code);
        (both, each, others) = (FoldedText.SetOf(answers.Both), FoldedText.SetOf(answers.Each), FoldedText.SetOf(answers.Others));
    }

    /// <summary>Adds every mention in a text to a list.</summary>
    public void In(FoldedText text, ReadOnlySpan<Token> tokens, string source, List<FoundSecret> found)
    {
        if (codes.Longest < Short)
            return;
        foreach (var kind in (Sign[])[Sign.Number, Sign.Roman, Sign.Letter])
        {
            Gather(text, tokens, source, kind);
            Stretches(text, kind, found);
            Rows(kind, found);
            if (kind == Sign.Letter)
                riddles.In(text, tokens, LettersTold(text).Select(part => (part.Symbols, part.First, part.Last)).ToArray(), found);
        }

        InAlphabet(tokens, found);
    }

    /// <summary>Adds codes that are read from their end, or made of first letters, to a list.</summary>
    public void Turned(FoldedText text, string source, List<FoundSecret> found)
    {
        if (codes.Longest < Short || !source.AsSpan().ContainsAny(turning))
            return;
        riddles.Reordered(text, found);
        var (isMirrored, isInitial) = (Says(source, mirrored), Says(source, initials));
        for (var at = 0; isMirrored && at < text.Words.Length; at++)
            Report(string.Concat(text.Of(text.Words[at]).ToString().Reverse()), at, at, found);
        for (var first = 0; isInitial && first < text.Words.Length; first++)
        {
            foreach (var withSmall in (bool[])[true, false])
            {
                said.Clear();
                for (var at = first; at < text.Words.Length && said.Length < codes.Longest; at++)
                {
                    if (!withSmall && char.IsLower(source[text.Words[at].Start]))
                        continue;
                    said.Append(text.Of(text.Words[at])[0]);
                    Report(said.ToString(), first, at, found);
                }
            }
        }
    }

    private static bool Says(string source, string[] phrases) =>
        Array.Exists(phrases, phrase => source.Replace('\'', '’').Contains(phrase, StringComparison.OrdinalIgnoreCase));

    private void Gather(FoldedText text, ReadOnlySpan<Token> tokens, string source, Sign kind)
    {
        parts.Clear();
        (shared, speaksOfWheels) = (default, false);
        for (var i = 0; i < tokens.Length; i++)
        {
            var token = tokens[i];
            speaksOfWheels |= token.Is(Sign.Code);
            if (!token.Is(Sign.Number) && both.Count > 0 && both.Contains(Said(text, token)))
                shared = (2, i, true);
            var (start, end) = (text.Words[token.First].Start, text.Words[token.Last].End);
            if (kind == Sign.Letter && LettersOf(text, tokens, source, i) is { Length: > 0 } letters)
            {
                letters = Repeated(text, tokens, i, letters);
                // "Wilhelm, also W": said before.
                var isAgain = parts.Count > 0 && parts[^1].Symbols.EndsWith(letters, StringComparison.Ordinal) && token.First - parts[^1].Last < ToAgain;
                parts.Add(new(letters, 0, token.First, token.Last, isAgain || token.Is(Sign.Unsure), IsValue: true));
            }
            else if (token.Is(Sign.Ordinal | Sign.Last) && !token.Is(Sign.Number))
                parts.Add(new("", PlaceOf(token), token.First, token.Last, MayGo: true, IsValue: false));
            else if (token.Is(Sign.Number | Sign.Figures) && token.Symbols.Length > 0)
                Number(text, tokens, source, i, kind, start, end);
            else if (kind == Sign.Roman && token.Is(Sign.Roman))
                parts.Add(new(token.Value.ToString(CultureInfo.InvariantCulture), token.Value, token.First, token.Last, MayGo: false, IsValue: true));
        }
    }

    private void Number(FoldedText text, ReadOnlySpan<Token> tokens, string source, int i, Sign kind, int start, int end)
    {
        var token = tokens[i];
        if (AreOthers(text, token))
        {
            shared = (token.Value, i, false);
            return;
        }

        if (Measures.RoleOf(source, start, end) == NumberRole.Ordinary || IsCounting(text, tokens, source, i))
            return;
        var behind = i > 0 && tokens[i - 1].Is(Sign.Ordinal | Sign.Last | Sign.Next | Sign.Article) && !token.Is(Sign.InFigures) && token.Value < 7
            && i + 1 < tokens.Length && text.Words[tokens[i + 1].First].Parting < Parting.Comma;
        // "Two zeros", "zweimal die Sieben".
        var isFewInWords = token.Value is > 1 and < 7 && !token.Is(Sign.InFigures | Sign.Figures);
        if (isFewInWords && i + 1 < tokens.Length && tokens[i + 1].Is(Sign.Figures))
            return;
        var times = i > 0 && tokens[i].Is(Sign.Figures) && tokens[i - 1].Is(Sign.Number) && tokens[i - 1].Value is > 1 and < 7 ? tokens[i - 1].Value : 1;
        if (times == 1 && IsDoubled(text, tokens, i))
            times = 2;
        var areBoth = IsBoth(text, tokens, i);
        var areLast = isFewInWords && token.Value < 5 && i + 1 < tokens.Length && tokens[i + 1].Is(Sign.Last)
            && text.Words[tokens[i + 1].First].Parting < Parting.Comma;
        if (isFewInWords && (areBoth || areLast
            || (behind && token.Value < 5 && tokens[i - 1].Is(Sign.Last | Sign.Ordinal) && !tokens[i - 1].Is(Sign.Article))))
            shared = (token.Value, i, areBoth);
        else if (times == 1 && token.Symbols.Length == 1 && !token.Is(Sign.Unsure))
            times = Shared(text, tokens, source, i);
        // 前の二つは48: how many, not which.
        var isHowMany = isUnspaced && i + 1 < tokens.Length && text.Of(text.Words[tokens[i + 1].First]) is "つ" or "桁" or "字" or "文";
        var isDoubtful = behind || isHowMany || areBoth || areLast || IsNamedAgain(text, tokens, i) || token.Is(Sign.Unsure) || IsPhrase(token);
        parts.Add(new(
            string.Concat(Enumerable.Repeat(token.Symbols, times)),
            token.Value,
            token.First,
            token.Last,
            isDoubtful || kind == Sign.Letter,
            IsValue: kind != Sign.Letter));
    }

    // "Las dos", "toutes deux".
    private bool IsBoth(FoldedText text, ReadOnlySpan<Token> tokens, int i) =>
        i > 0 && tokens[i].Value is > 1 and < 5 && !tokens[i].Is(Sign.InFigures)
        && (text.Of(text.Words[tokens[i - 1].Last]) is "las" or "los" || both.Contains(Said(text, tokens[i - 1])));

    // "The other two want an 8 each", "both get a three"; of "the other two want a 6 and a 1" each has its own.
    private int Shared(FoldedText text, ReadOnlySpan<Token> tokens, string source, int i)
    {
        var start = text.Words[tokens[i].First].Start;
        if (isUnspaced)
        {
            var ahead = source.AsSpan(0, start);
            return !ahead.EndsWith("どちらも") && !ahead.EndsWith("それぞれ") && !ahead.EndsWith("とも") ? 1 : ahead.EndsWith("三つとも") ? 3 : 2;
        }

        var (times, from, areBoth) = shared;
        if (times < 2 || i - from > ToShared)
            return 1;
        for (var at = from + 1; at <= i; at++)
        {
            if (text.Words[tokens[at].First].Parting >= Parting.Stop)
                return 1;
        }

        shared = default;
        var end = areBoth ? Parting.Comma : Parting.Colon;
        for (var at = i + 1; at < tokens.Length && at <= i + ToNext && text.Words[tokens[at].First].Parting < end; at++)
        {
            if (each.Contains(Said(text, tokens[at])))
                return times;
            if (tokens[at].Is(Sign.Number) && !tokens[at].Is(Sign.Unsure))
                return 1;
        }

        return times;
    }

    // Not "you", which is also the name of a letter, nor "a".
    private List<Part> LettersTold(FoldedText text)
    {
        var told = new List<Part>();
        foreach (var part in parts)
        {
            if (part.IsValue && (!part.MayGo || (text.Words[part.First].Length == 1 && !letterWords.Contains(part.Symbols, StringComparison.Ordinal))))
                told.Add(part);
        }

        return told;
    }

    // "The other two want a 6 and a 1": how many wheels, and no figure.
    private bool AreOthers(FoldedText text, in Token token) =>
        token.Value is > 1 and < 7 && !token.Is(Sign.InFigures) && (IsOther(text, token.First - 1) || IsOther(text, token.Last + 1));

    private bool IsOther(FoldedText text, int at) => at >= 0 && at < text.Words.Length && text.Has(others, at);

    // "Behind the zero comes a two": said before.
    private bool IsNamedAgain(FoldedText text, ReadOnlySpan<Token> tokens, int i)
    {
        var at = i - 1;
        while (at >= 0 && at > i - 3 && tokens[at].Is(Sign.Article) && !tokens[at].Is(Sign.Number))
            at--;
        var symbols = tokens[i].Symbols;
        return at >= 0 && parts.Exists(part => part.IsValue && part.Symbols == symbols)
            && text.Of(text.Words[tokens[at].Last]) is "after" or "behind" or "beside" or "nach" or "hinter" or "neben"
                or "apres" or "derriere" or "tras" or "despues"
                or "del" or "du" or "dem" or "der" or "بعد" or "وبعد" or "قبل" or "وقبل";
    }

    // "Twice the seven", "zweimal die Sieben".
    private bool IsDoubled(FoldedText text, ReadOnlySpan<Token> tokens, int i)
    {
        var at = i - 1;
        while (at >= 0 && at > i - 3 && tokens[at].Is(Sign.Article) && !tokens[at].Is(Sign.Number))
            at--;
        return at >= 0 && tokens[i].Symbols.Length == 1 && doubles.Contains(text.Of(text.Words[tokens[at].Last]).ToString());
    }

    // "L twice", "deux fois L", "zwei L", "pair of Ls".
    private string Repeated(FoldedText text, ReadOnlySpan<Token> tokens, int i, string letters)
    {
        if (letters.Length != 1)
            return letters;
        var (before, behind) = (i - 1, i + 1);
        while (before > 0 && before > i - 3 && text.Words[tokens[before].First].Parting < Parting.Comma && (timesWords.Contains(Said(text, tokens[before]))
            || (tokens[before].Is(Sign.Article | Sign.Grammar) && !tokens[before].Is(Sign.Number | Sign.Letter))))
            before--;
        // "Ring two A", "entre las dos Q".
        var isNamed = before > 0 && before == i - 1 && (tokens[before - 1].Is(Sign.Code)
            || (tokens[before - 1].Is(Sign.Article) && Said(text, tokens[before - 1]) is not ("a" or "ein" or "une" or "un")));
        if (before >= 0 && !isNamed && tokens[before].Is(Sign.Number) && !tokens[before].Is(Sign.InFigures) && tokens[before].Value is > 1 and < 5
            && text.Words[tokens[i].First].Parting < Parting.Comma)
            return new(letters[0], tokens[before].Value);
        if (before >= 0 && text.Words[tokens[i].First].Parting < Parting.Comma && doubles.Contains(Said(text, tokens[before])))
            return letters + letters;
        if (behind >= tokens.Length || text.Words[tokens[behind].First].Parting >= Parting.Comma)
            return letters;
        var isTwice = doubles.Contains(Said(text, tokens[behind])) && !(behind + 1 < tokens.Length && tokens[behind + 1].Is(Sign.Letter)
            && text.Words[tokens[behind + 1].First].Parting < Parting.Comma);
        var isTimes = tokens[behind].Is(Sign.Number) && tokens[behind].Value == 2 && behind + 1 < tokens.Length
            && timesWords.Contains(Said(text, tokens[behind + 1]));
        return isTwice || isTimes ? letters + letters : letters;
    }

    private static string Said(FoldedText text, in Token token) => text.Of(text.Words[token.Last]).ToString();

    private static bool IsPhrase(in Token token) => token.Last > token.First && token.Value is 0 or 6 or 7 or 12 or 13;

    // "Four crows": that hides a code, it doesn't tell it.
    private bool IsCounting(FoldedText text, ReadOnlySpan<Token> tokens, string source, int at) =>
        at + 1 < tokens.Length && (!hasCapitals || char.IsUpper(source[text.Words[tokens[at + 1].First].Start]))
        && !tallies.Contains(text.Of(text.Words[tokens[at + 1].First]).ToString())
        && !(at > 0 && text.Of(text.Words[tokens[at - 1].Last]) is "el" or "le") && tokens[at + 1].Sign == Sign.None
        && !(at > 0 && tokens[at - 1].First == tokens[at - 1].Last && text.Of(text.Words[tokens[at - 1].First]) is "a" or "an" or "eine" or "un" or "une")
        && text.Words[tokens[at + 1].First].Parting is Parting.Space
        && text.Of(text.Words[tokens[at + 1].First]) is { Length: > 2 } word && !word.EndsWith("ed") && !word.EndsWith("ing") && !word.EndsWith("ly")
        && word is not ("follows" or "comes" or "stands" or "goes" or "closes" or "opens" or "ends" or "leads" or "sits" or "finishes" or "starts" or "begins")
        && !word.StartsWith("click") && !word.StartsWith("klick");

    // A letter; "Es" is several; "ARBOR" part of a code.
    private string LettersOf(FoldedText text, ReadOnlySpan<Token> tokens, string source, int i)
    {
        var token = tokens[i];
        var word = text.Of(text.Words[token.First]);
        // "EM first" is two letters of a code, though letters have such names.
        var isCapital = word.Length > 1 && token.First == token.Last && source.AsSpan(text.Words[token.First].Start) is var own && own.Length >= word.Length
            && !own[..word.Length].ContainsAnyExceptInRange('A', 'Z') && codes.HasWithin(word.ToString());
        if (token.Is(Sign.Letter) && token.Symbols.Length is 1 or 2 && !isCapital)
            return token.Symbols;
        if (token.Last > token.First)
            return "";
        if (token.Is(Sign.Number))
            return word is "oh" ? "o" : word is "الف" ? "ا" : "";
        var written = source.AsSpan(text.Words[token.First].Start, Math.Min(word.Length, source.Length - text.Words[token.First].Start));
        if (word is [>= 'a' and <= 'z', 's'] && written is [>= 'A' and <= 'Z', 's'])
        {
            var times = i > 0 && tokens[i - 1].Is(Sign.Number) && tokens[i - 1].Value is > 1 and < 5 ? tokens[i - 1].Value : 1;
            return new(word[0], times);
        }

        var isPart = word.Length > 1 && word.Length < codes.Longest && !written.ContainsAnyExceptInRange('A', 'Z') && codes.HasWithin(word.ToString());
        return isPart ? word.ToString() : "";
    }

    // All pieces of a stretch, without some of those that may be none.
    private void Stretches(FoldedText text, Sign kind, List<FoundSecret> found)
    {
        if (kind == Sign.Roman)
            return;
        for (var start = 0; start < parts.Count; start++)
        {
            if (!parts[start].IsValue)
                continue;
            doubtful.Clear();
            var length = 0;
            for (var (end, last) = (start, start); end < parts.Count && end < start + MostPieces; end++)
            {
                if (!parts[end].IsValue)
                    continue;
                if (parts[end].First - parts[last].Last > MostApart)
                    break;
                last = end;
                if (parts[end].MayGo && end > start && doubtful.Count < MostDoubtful)
                    doubtful.Add(end);
                else
                    length += parts[end].Symbols.Length;
                if (length > codes.Longest)
                    break;
                if (end > start)
                    Stretch(text, start, end, kind, found);
            }
        }
    }

    private void Stretch(FoldedText text, int start, int end, Sign kind, List<FoundSecret> found)
    {
        if (!IsApart(start, -1) || !IsApart(end, 1))
            return;
        for (var without = 0; without < 1 << doubtful.Count; without++)
        {
            said.Clear();
            var used = 0;
            for (var i = start; i <= end && said.Length <= codes.Longest; i++)
            {
                if (!parts[i].IsValue || (doubtful.IndexOf(i) is >= 0 and var bit && (without & (1 << bit)) != 0))
                    continue;
                said.Append(parts[i].Symbols);
                used++;
            }

            if (used < 2 || said.Length < Short || said.Length > codes.Longest)
                continue;
            var whole = said.ToString();
            var isOrdered = IsOrdered(text, start, end);
            if ((used > 2 || isOrdered || kind == Sign.Letter)
                && (said.Length > Short || SpeaksOf(text, start, end) || (kind == Sign.Letter && IsNamed(text, start, end))))
                Report(whole, parts[start].First, parts[end].Last, found);
            if (!isOrdered || (whole.Length == Short && !speaksOfWheels && !SpeaksOf(text, start, end)))
                continue;
            foreach (var code in codes.WithSymbolsOf(whole))
                Report(code, parts[start].First, parts[end].Last, found);
        }
    }

    private bool IsApart(int at, int step)
    {
        for (var i = at + step; i >= 0 && i < parts.Count; i += step)
        {
            if ((step > 0 ? parts[i].First - parts[at].Last : parts[at].First - parts[i].Last) > Alone)
                return true;
            if (parts[i].IsValue && !parts[i].MayGo)
                return false;
        }

        return true;
    }

    // Letters by their names, close behind each other: ميم ثم دالان.
    private bool IsNamed(FoldedText text, int start, int end)
    {
        for (var i = start; i <= end; i++)
        {
            if (parts[i].IsValue && text.Words[parts[i].First].Length < 3)
                return false;
        }

        return hasLetterNames && parts[end].Last - parts[start].First < Alone;
    }

    private bool IsOrdered(FoldedText text, int start, int end)
    {
        for (var i = Math.Max(0, start - 2); i < Math.Min(parts.Count, end + 3); i++)
        {
            if (!parts[i].IsValue && parts[i].Place != 0)
                return true;
        }

        return SpeaksOf(text, start, end);
    }

    private bool SpeaksOf(FoldedText text, int start, int end)
    {
        for (var at = Math.Max(0, parts[start].First - Around); at < Math.Min(text.Words.Length, parts[end].Last + Around); at++)
        {
            if (rowsBySpan.Contains(text.Of(text.Words[at])))
                return true;
        }

        return false;
    }

    // "1 G, 2 W, 3 T, 4 E": a place and what stands there, by turns; the place may stand behind it.
    private void Rows(Sign kind, List<FoundSecret> found)
    {
        foreach (var isBehind in (bool[])[false, true])
        {
            for (var start = 0; start + 1 < parts.Count; start++)
                Row(start, isBehind, kind, found);
        }
    }

    private void Row(int start, bool isBehind, Sign kind, List<FoundSecret> found)
    {
        var placed = new SortedDictionary<int, string>();
        for (var at = start; at + 1 < parts.Count && placed.Count < codes.Longest;)
        {
            if (at > start && parts[at].First - parts[at - 1].Last > MostApart)
                return;
            var next = at + 1;
            // "Third and fourth L".
            while (!isBehind && next + 1 < parts.Count && parts[next] is { IsValue: false, Place: > 0 } && parts[next - 1] is { IsValue: false, Place: > 0 })
                next++;
            var value = parts[isBehind ? at : next];
            for (var label = isBehind ? next : at; label < (isBehind ? next + 1 : next); label++)
            {
                if (PlaceOf(parts[label]) is not (> 0 and var place) || place > codes.Longest)
                    return;
                var symbol = value.Symbols.Length == 1 && value.IsValue ? value.Symbols
                    : !value.IsValue || kind == Sign.Letter ? placed.GetValueOrDefault(PlaceOf(value), "") : "";
                if (symbol.Length == 0 || !placed.TryAdd(place, symbol))
                    return;
            }

            if (placed.Count >= Short && placed.Keys.Last() == placed.Count)
                Report(string.Concat(placed.Values), parts[start].First, parts[next].Last, found);
            at = next + 1;
        }
    }

    // A quarter is a fourth in Spanish.
    private static int PlaceOf(in Token token) => token.Is(Sign.Last) ? -1 : token.Is(Sign.Fraction) ? 60 / token.Value : token.Value;

    private static int PlaceOf(in Part part) =>
        part.Place > 0 ? part.Place : part.Symbols is [>= 'a' and <= 'j'] ? part.Symbols[0] - 'a' + 1 : 0;

    // "20-1-12-12-15-23": letters by their places, four of them and more.
    private void InAlphabet(ReadOnlySpan<Token> tokens, List<FoundSecret> found)
    {
        for (var start = 0; start < tokens.Length; start++)
        {
            said.Clear();
            for (var at = start; at < tokens.Length && said.Length < codes.Longest; at++)
            {
                if (!tokens[at].Is(Sign.Number | Sign.Ordinal))
                {
                    if (said.Length > 0 && at - start > (2 * said.Length) + 2)
                        break;
                    continue;
                }

                if (tokens[at].Value is < 1 or > 26 || (at == start && said.Length > 0))
                    break;
                said.Append((char)('a' + tokens[at].Value - 1));
                if (said.Length > Short)
                    Report(said.ToString(), tokens[start].First, tokens[at].Last, found);
            }
        }
    }

    private void Report(string whole, int first, int last, List<FoundSecret> found)
    {
        foreach (var (secret, _) in codes.Of(whole))
            found.Add(new(secret, first, last, Sure: false, Words: 1, IsCode: true));
    }

    /// <summary>A piece of a code, or a place.</summary>
    /// <param name="Symbols">Figures or letters; empty for a place.</param>
    /// <param name="Place">The place, or the number that may be one.</param>
    /// <param name="First">Its first word.</param>
    /// <param name="Last">Its last word.</param>
    /// <param name="MayGo">Whether it may be no piece.</param>
    /// <param name="IsValue">Whether it may be one.</param>
    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Part(string Symbols, int Place, int First, int Last, bool MayGo, bool IsValue);
}
