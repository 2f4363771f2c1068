using System.Text.RegularExpressions;
using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>
/// Codes of Japanese letters, which are words in any text: only what stands in quotes or is spoken of as a word or as letters tells one, as a whole in
/// either kana, or letter by letter: 一文字目は「し」、二文字目は「ぐ」.
/// </summary>
internal sealed partial class CaselessCodes
{
    private const int Around = 24, MostApart = 24, KanaApart = 'ァ' - 'ぁ';

    private static readonly string[] Speaking =
        ["言葉", "ことば", "文字", "もじ", "綴", "つづ", "読め", "読み", "回", "合わせ", "あわせ", "入力",
        "と入れ", "並べ", "ならべ", "揃え", "そろえ", "答え", "押し", "打ち", "仮名", "かなで", "かなに", "かなを", "かたかな", "ひらがな"];

    private readonly List<(int Secret, string Letters)> codes = [];
    private readonly List<(int Secret, string Word)> written = [];

    /// <summary>Adds a code, if it is one of such letters.</summary>
    public bool Add(int secret, string text)
    {
        var letters = Hiragana(text.Trim());
        if (!Japanese().IsMatch(letters))
            return false;
        codes.Add((secret, letters));
        // 燕 for つばめ.
        written.AddRange(KanaOf.WordsFor(letters).Select(word => (secret, word)));
        return true;
    }

    /// <summary>Adds a code of Latin letters that spell a Japanese word: HINOKI is told by ひのき and 檜 as well.</summary>
    public void AddRomanized(int secret, string text)
    {
        if (RomanizedKana.Of(text) is not { Length: > 1 } letters)
            return;
        codes.Add((secret, letters));
        written.AddRange(KanaOf.WordsFor(letters).Select(word => (secret, word)));
    }

    /// <summary>Adds every mention in a text to a list.</summary>
    public void In(FoldedText text, string source, List<FoundSecret> found)
    {
        if (codes.Count == 0)
            return;
        var folded = Hiragana(source);
        var quoted = Quoted().Matches(folded).Select(match => match.Groups["said"]).ToArray();
        var lone = LoneKana.In(source);
        var examples = Example().Matches(folded).Select(match => match.Groups["said"]).ToArray();
        foreach (var (secret, letters) in codes)
        {
            for (var at = folded.IndexOf(letters, StringComparison.Ordinal); at >= 0; at = folded.IndexOf(letters, at + 1, StringComparison.Ordinal))
            {
                var isQuoted = Array.Exists(quoted, said => said.Index == at && said.Length == letters.Length);
                if (isQuoted || (!IsWithinWord(folded, at, at + letters.Length) && IsSpokenOf(folded, at, at + letters.Length)))
                    Report(text, secret, at, at + letters.Length, isQuoted, found);
            }

            for (var first = 0; first < quoted.Length; first++)
                OneByOne(text, secret, letters, quoted, first, found);
            for (var first = 0; first < examples.Length; first++)
                OneByOne(text, secret, letters, examples, first, found);
            for (var first = 0; first < lone.Count; first++)
                Alone(text, secret, letters, lone, first, found);
            if (FirstAndLast().Match(folded) is { Success: true } ends && letters.StartsWith(ends.Groups["first"].Value, StringComparison.Ordinal)
                && letters.EndsWith(ends.Groups["last"].Value, StringComparison.Ordinal) && CountsLetters(source, letters.Length))
                Report(text, secret, ends.Index, ends.Index + ends.Length, isSure: false, found);
        }

        foreach (var (secret, word) in written)
        {
            for (var at = source.IndexOf(word, StringComparison.Ordinal); at >= 0; at = source.IndexOf(word, at + 1, StringComparison.Ordinal))
            {
                if (!IsWithinWord(source, at, at + word.Length) && IsSpokenOf(folded, at, at + word.Length))
                    Report(text, secret, at, at + word.Length, isSure: false, found);
            }
        }
    }

    private static bool CountsLetters(string source, int length) =>
        length < 10 && (source.Contains($"{"〇一二三四五六七八九"[length]}文字", StringComparison.Ordinal) || source.Contains($"{length}文字", StringComparison.Ordinal)
            || source.Contains($"{"〇一二三四五六七八九"[length]}つの文字", StringComparison.Ordinal));

    private static void OneByOne(FoldedText text, int secret, string letters, Group[] quoted, int first, List<FoundSecret> found)
    {
        var said = "";
        for (var i = first; i < quoted.Length && letters.StartsWith(said + quoted[i].Value, StringComparison.Ordinal); i++)
        {
            if (i > first && quoted[i].Index - quoted[i - 1].Index > MostApart)
                return;
            said += quoted[i].Value;
            if (said.Length == letters.Length && i > first)
                Report(text, secret, quoted[first].Index, quoted[i].Index + quoted[i].Length, isSure: false, found);
        }
    }

    private static void Alone(FoldedText text, int secret, string letters, List<(string Said, int Start, int End)> lone, int first, List<FoundSecret> found)
    {
        var said = "";
        for (var i = first; i < lone.Count && letters.StartsWith(said + Hiragana(lone[i].Said), StringComparison.Ordinal); i++)
        {
            if (i > first && lone[i].Start - lone[i - 1].End > MostApart)
                return;
            said += Hiragana(lone[i].Said);
            if (said.Length != letters.Length)
                continue;
            Report(text, secret, lone[first].Start, lone[i].End, isSure: false, found);
            return;
        }
    }

    // 蝉しぐれ: a Chinese letter before it makes another word of it.
    private static bool IsWithinWord(string source, int start, int end) =>
        (start > 0 && WordBoundary.IsChinese(source[start - 1]))
        || (WordBoundary.IsChinese(source[end - 1]) && end < source.Length && WordBoundary.IsChinese(source[end]));

    private static bool IsSpokenOf(string source, int start, int end)
    {
        // A word that is a sentence by itself.
        if ((start == 0 || source[start - 1] is '。' or '？' or '?' or '！' or '\n') && end < source.Length && source[end] == '。')
            return true;
        // 軒下に巣をかけるのは？ 燕です。それを盤に。
        if (start > 0 && source.AsSpan(0, start).TrimEnd() is [.., '？' or '?' or 'は'] && source.AsSpan(end).StartsWith("です")
            && Array.Exists(Speaking, word => source.AsSpan(end).Contains(word, StringComparison.Ordinal)))
            return true;
        var from = Math.Max(source.LastIndexOf('。', start) + 1, start - Around);
        var stop = source.IndexOf('。', end);
        var to = Math.Min(stop < 0 ? source.Length : stop, end + Around);
        return Array.Exists(Speaking, word => source.AsSpan(from, to - from).Contains(word, StringComparison.Ordinal));
    }

    private static void Report(FoldedText text, int secret, int start, int end, bool isSure, List<FoundSecret> found)
    {
        var (first, last) = (-1, -1);
        for (var i = 0; i < text.Words.Length; i++)
        {
            if (text.Words[i].Start >= start && text.Words[i].End <= end)
                (first, last) = (first < 0 ? i : first, i);
        }

        if (first >= 0)
            found.Add(new(secret, first, last, isSure, Words: 1, IsCode: true));
    }

    private static string Hiragana(string text) =>
        string.Create(text.Length, text, static (room, from) =>
        {
            for (var i = 0; i < room.Length; i++)
                room[i] = from[i] is >= 'ァ' and <= 'ヶ' ? (char)(from[i] - KanaApart) : from[i];
        });

    [GeneratedRegex(@"^[\u3041-\u309F\u30FC\u4E00-\u9FFF]{2,12}$", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Japanese();

    // 「あ」で始まり「し」で終わる.
    [GeneratedRegex(
        "[「『“]?(?<first>[\\u3041-\\u309F])[」』”]?(で|から)(始|はじ)[^。]{0,12}?[「『“]?(?<last>[\\u3041-\\u309F])[」』”]?[でに](終|お)わ",
        RegexOptions.ExplicitCapture,
        10_000)]
    private static partial Regex FirstAndLast();

    // 月のつ、箸のば: the letter of a word.
    [GeneratedRegex(@"(?<=[\u3041-\u9FFF]の)(?<said>[\u3041-\u309F])(?=[、。，]|です|$)", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Example();

    // 「し」, し・ぐ・れ, and what is said of a place: 一文字目はし.
    [GeneratedRegex(
        @"(?<=[目め字次後初頭番端左右間中][はが])(?<said>[\u3041-\u309F\u30FC]{1,2})(?=[、。・]|です|$)|(?<=^|[。\n])(?<said>[\u3041-\u309F\u30FC]{1,2})(?=[・、，])"
        + @"|(?<=・)(?<said>[\u3041-\u309F\u30FC])(?=[とをのにで])"
        + @"|[「『“""・、，](?![^「」『』、。]{0,6}[目め字次後初頭番端左右間中][はが])(?<said>[\u3041-\u309F\u30FC\u4E00-\u9FFF]{1,12})(?=[」』”""・、，。]|$)",
        RegexOptions.ExplicitCapture,
        10_000)]
    private static partial Regex Quoted();
}
