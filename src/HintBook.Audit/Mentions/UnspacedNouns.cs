using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>
/// Names of Japanese told by the noun in them: 千鳥 for a 銀の千鳥, ちどり where it is spelt so, if no other name has it and it is spoken of as what something is
/// done to or what does something. Doubts only.
/// </summary>
internal sealed class UnspacedNouns
{
    private const int Shortest = 2, ShortestKana = 3;
    private readonly List<(int Secret, string Noun)> all = [];
    private readonly List<(int Secret, string Written)> alone = [];

    /// <summary>Adds a name, if it says of a thing how it is.</summary>
    public void Add(int secret, string name)
    {
        var cut = name.LastIndexOf('の');
        for (var i = name.Length - 1; cut <= 0 && i > 0; i--)
        {
            if (NounsInRuns.Describing.Contains(name[i - 1], StringComparison.Ordinal) && name[i] >= '\u4E00')
                cut = i - 1;
        }

        var noun = name[(cut + 1)..].Trim();
        if (cut > 0 && noun.Length >= (NounsInRuns.Fixtures.Contains(noun, StringComparison.Ordinal) ? Shortest : 1)
            && !noun.StartsWith(NounsInRuns.Verbal, StringComparison.Ordinal))
            all.Add((secret, noun));
    }

    /// <summary>Called once, behind the last name.</summary>
    public void Freeze()
    {
        foreach (var owners in all.GroupBy(one => one.Noun, StringComparer.Ordinal).Where(group => group.DistinctBy(one => one.Secret).Count() == 1))
        {
            alone.Add(owners.First());
            alone.AddRange(KanaOf.Name(owners.Key).Where(other => other.Length >= ShortestKana).Select(other => (owners.First().Secret, other)));
        }
    }

    /// <summary>Adds every mention in a text to a list; in the address of a picture whatever stands around it.</summary>
    public void In(FoldedText text, string source, bool isPicture, List<FoundSecret> found)
    {
        foreach (var (secret, noun) in alone)
        {
            for (var at = source.IndexOf(noun, StringComparison.Ordinal); at >= 0; at = source.IndexOf(noun, at + 1, StringComparison.Ordinal))
            {
                var end = at + noun.Length;
                if ((isPicture ? IsWhole(source, at, end) : IsTold(source, at, end)) && WordsAt(text, at, end) is var (first, last))
                    found.Add(new(secret, first, last, Sure: false, Words: 1, IsCode: false));
            }
        }
    }

    // 枠と滑車.webp
    private static bool IsWhole(string source, int start, int end) =>
        !(source[start] >= '\u4E00'
            && ((start > 0 && WordBoundary.IsChinese(source[start - 1])) || (end < source.Length && WordBoundary.IsChinese(source[end]))))
        && WordBoundary.IsApart(source, start, end);

    // ろくろを, 千鳥が, 分銅の裏: no letter of its own kind stands beside it.
    private static bool IsTold(string source, int start, int end)
    {
        var before = start > 0 ? source[start - 1] : '。';
        if ((source[start] >= '\u4E00' && before is >= '\u4E00' and <= '\u9FFF') || !WordBoundary.IsApart(source, start, end))
            return false;
        var ahead = source.AsSpan(0, start);
        var behind = source.AsSpan(end);
        // いま取り出した籠、; その笛の三つ目の穴; 中は笛です.
        if (EndsInAny(ahead, NounsInRuns.Pointing) && (BeginsWithOne(behind, NounsInRuns.BehindPointed) || BeginsWithAny(behind, NounsInRuns.Being)))
            return true;
        // 火縄は途中で切らず, つまり扇でした.
        if (end - start > 1 && before is '。' or '、' or '\n' && BeginsWithOne(behind, NounsInRuns.BehindFirst) && behind.Length > 1
            && !NounsInRuns.NotBehindThose.Contains(behind[1], StringComparison.Ordinal))
            return true;
        if (source[start] >= '\u4E00' && NounsInRuns.BeforeSaid.Contains(before, StringComparison.Ordinal) && BeginsWithAny(behind, NounsInRuns.Said))
            return true;
        // 笛を吹く, 針の裏: one letter may be many things.
        if (end - start == 1)
            return source[start] >= '\u4E00' && BeginsWithAny(behind, NounsInRuns.BehindOne);
        // 中身は巾着ひとつ, 次の品は貝殻。
        if (before is 'は' or '：' or '？' or '。' or '、' && start > 0 && (behind.IsEmpty || BeginsWithAny(behind, NounsInRuns.BehindAll)))
            return true;
        return BeginsWithAny(behind, NounsInRuns.Behind);
    }

    private static bool BeginsWithOne(ReadOnlySpan<char> behind, string letters) => !behind.IsEmpty && letters.Contains(behind[0], StringComparison.Ordinal);

    private static bool BeginsWithAny(ReadOnlySpan<char> behind, string[] all)
    {
        foreach (var one in all)
        {
            if (behind.StartsWith(one))
                return true;
        }

        return false;
    }

    private static bool EndsInAny(ReadOnlySpan<char> ahead, string[] all)
    {
        foreach (var one in all)
        {
            if (ahead.EndsWith(one))
                return true;
        }

        return false;
    }

    private static (int First, int Last)? WordsAt(FoldedText text, int start, int end)
    {
        var (first, last) = (-1, -1);
        for (var i = 0; i < text.Words.Length; i++)
        {
            if (text.Words[i].Start >= start && text.Words[i].End <= end)
                (first, last) = (first < 0 ? i : first, i);
        }

        return first < 0 ? null : (first, last);
    }
}
