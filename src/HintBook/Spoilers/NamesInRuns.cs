using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>
/// Names of languages without spaces whose noun and what describes it stand apart in a sentence: 硫黄を入れていた引き出し for 硫黄の引き出し. All of these
/// are likely mentions only.
/// </summary>
internal sealed class NamesInRuns
{
    private const int MostLetters = 16;
    private const int MostOfOne = 9;
    private const int MostApart = 30;
    private const int ShortestNoun = 1;
    private const string Inflected = "いなただるてくうん";
    private const string MadeOfIt = "製造作細編塗張貼";
    private const int MostToHolder = 10;
    private readonly Dictionary<char, List<(int Secret, string Noun, string Describing)>> nouns = [];
    private readonly List<(int Secret, string Held, string[] Verbs, string[] Holders)> holders = [];

    /// <summary>Adds a name, if it falls into two parts.</summary>
    /// <param name="secret">Whose it is.</param>
    /// <param name="name">As the author wrote it.</param>
    /// <param name="tie">The letter that ties its parts.</param>
    public void Add(int secret, string name, string tie)
    {
        // Either kana may be written for the other.
        name = SaidLetters.Hiragana(name);
        AddHolder(secret, name);
        var (cut, length) = tie.Length > 0 && name.LastIndexOf(tie, StringComparison.Ordinal) is > 0 and var tied ? (tied, tie.Length) : (InflectedAt(name), 0);
        if (cut <= 0 || cut + length >= name.Length - ShortestNoun + 1)
            return;
        var (describing, noun) = (name[..cut], name[(cut + length)..]);
        if (describing.Length > 1 && Inflected.Contains(describing[^1], StringComparison.Ordinal))
            describing = describing[..^1];
        Put(secret, noun, describing);
        // 三角べら holds a へら.
        if (length == 0 && "がぎぐげござじずぜぞだぢづでどばびぶべぼ".Contains(noun[0], StringComparison.Ordinal))
            Put(secret, $"{(char)(noun[0] - 1)}{noun[1..]}", describing);
    }

    /// <summary>What a name says the thing is, without what describes it; none if it doesn't fall into two parts.</summary>
    public static string NounOf(string name) =>
        name.LastIndexOf('の') is > 0 and var tied ? name[(tied + 1)..] : InflectedAt(name) is > 0 and var cut ? name[cut..] : "";

    // 朱肉入れ is what one puts 朱肉 in: 朱肉を入れた丸い器.
    private void AddHolder(int secret, string name)
    {
        foreach (var (ending, verbs, things) in Holders.OfRuns)
        {
            if (name.Length > ending.Length && name.EndsWith(ending, StringComparison.Ordinal))
                holders.Add((secret, name[..^ending.Length].TrimEnd('の'), verbs, things));
        }
    }

    // What is held, a small letter, what is done with it, and what holds it: 刀を掛けておく台.
    private void InHolders(string source, List<Mention> found)
    {
        foreach (var (secret, held, verbs, things) in holders)
        {
            for (var at = source.IndexOf(held, StringComparison.Ordinal); at >= 0; at = source.IndexOf(held, at + 1, StringComparison.Ordinal))
            {
                var verb = at + held.Length + 1;
                if (verb >= source.Length || source[verb - 1] is not ('を' or 'の' or 'が' or 'は')
                    || Array.Find(verbs, one => source.AsSpan(verb).StartsWith(one, StringComparison.Ordinal)) is not { } done)
                    continue;
                var from = verb + done.Length;
                var behind = source.AsSpan(from, Math.Min(MostToHolder, source.Length - from));
                var end = behind.IndexOfAny("、。\n！？");
                behind = end < 0 ? behind : behind[..end];
                foreach (var thing in things)
                {
                    if (behind.IndexOf(thing) is >= 0 and var place)
                    {
                        found.Add(new(secret, at, from + place + thing.Length, Sureness.Likely));
                        break;
                    }
                }
            }
        }
    }

    private void Put(int secret, string noun, string describing)
    {
        if (!nouns.TryGetValue(noun[0], out var here))
            nouns[noun[0]] = here = [];
        here.Add((secret, noun, describing));
    }

    /// <summary>Adds every mention to a list.</summary>
    public void In(string source, List<Mention> found)
    {
        if (nouns.Count == 0 && holders.Count == 0)
            return;
        source = SaidLetters.Hiragana(source);
        InHolders(source, found);
        for (var i = 0; i < source.Length; i++)
        {
            if (!nouns.TryGetValue(source[i], out var here))
                continue;
            foreach (var (secret, noun, describing) in here)
            {
                if (!source.AsSpan(i).StartsWith(noun, StringComparison.Ordinal))
                    continue;
                var most = describing.Length > 1 ? MostLetters : MostOfOne;
                var (from, to) = (Math.Max(0, i - most), Math.Min(source.Length, i + noun.Length + most));
                var before = source.AsSpan(from, i - from);
                var behind = source.AsSpan(i + noun.Length, to - i - noun.Length);
                var at = before.LastIndexOf(describing) is >= 0 and var left && IsOneSentence(before[left..])
                    && !IsTopic(before[(left + describing.Length)..], describing.Length) ? from + left : -1;
                if (at < 0 && behind.IndexOf(describing) is >= 0 and var right && IsOneSentence(behind[..right]))
                    at = i + noun.Length + right;
                if (at < 0)
                    at = MadeOf(source, i + noun.Length, describing);
                if (at >= 0)
                    found.Add(new(secret, Math.Min(i, at), Math.Max(i + noun.Length, at + describing.Length), Sureness.Likely));
            }
        }
    }

    // 筆を探してください。銀でできています: what it is made of or looks like, in the next sentence.
    private static int MadeOf(string source, int from, string describing)
    {
        var behind = source.AsSpan(from, Math.Min(MostApart, source.Length - from));
        var at = behind.IndexOf(describing);
        if (at < 0 || behind[..at].Count('。') > 1)
            return -1;
        var isInOne = !behind[..at].Contains('。');
        var made = behind[(at + describing.Length)..];
        foreach (var said in (string[])["ででき", "で作", "で造", "なので", "です", "製", "のもの", "のほう", "の方", "いもの", "いほう", "い方", "いのが", "く光", "く塗", "くて"])
        {
            if (made.StartsWith(said, StringComparison.Ordinal) && (!isInOne || said is "のもの" or "のほう" or "の方" or "いほう" or "いもの"))
                return from + at;
        }

        return -1;
    }

    // Behind the last inflected ending that a noun of Chinese letters follows: 焦げた|筒.
    private static int InflectedAt(string name)
    {
        for (var i = name.Length - 1; i > 0; i--)
        {
            if (Inflected.Contains(name[i - 1], StringComparison.Ordinal) && IsChinese(name[i]))
                return i;
        }

        // 三角|べら, 銅|板.
        for (var i = name.Length - 1; i > 0; i--)
        {
            if (IsChinese(name[i - 1]) && !IsChinese(name[i]))
                return i;
        }

        return name.All(IsChinese) ? name.Length - 1 : -1;
    }

    private static bool IsChinese(char letter) => letter >= '\u3400';

    // 銅は赤く、蜂は黄色い: what is spoken of by itself describes nothing else; of one letter, nor does 銅の鐘 and 金色.
    private static bool IsTopic(ReadOnlySpan<char> behind, int length) =>
        behind is ['は' or 'が' or 'も' or 'と' or '、', ..]
        || (length == 1 && behind is ['の', >= '\u3400', ..])
        || (length == 1 && (behind is [>= '\u3400' and var next, ..] && !MadeOfIt.Contains(next, StringComparison.Ordinal)));

    private static bool IsOneSentence(ReadOnlySpan<char> between) => between.IndexOfAny("。\n！？") < 0;
}
