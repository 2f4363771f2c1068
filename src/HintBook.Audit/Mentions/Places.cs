using System.Buffers;
using System.Collections.Frozen;
using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>Tells the number of a room, a house or a home from a code: "room 413", "642 Mill Lane", "we've lived at 642". Shared by all threads.</summary>
internal sealed class Places(string language)
{
    private const int MostBefore = 8, MostInStreet = 4;
    private static readonly SearchValues<char> ClauseEnds = SearchValues.Create(".,;:!?\n،؛؟。、");
    private static readonly char[] SentenceEnds = ['.', '!', '?', '\n', '؟', '。'];

    private readonly PlacesIn known = PlacesIn.Of(language);
    private readonly FrozenSet<string> rooms = Set(PlacesIn.Of(language).Rooms);
    private readonly FrozenSet<string> between = Set(PlacesIn.Of(language).Between);
    private readonly FrozenSet<string> at = Set(PlacesIn.Of(language).At);
    private readonly FrozenSet<string> living = Set(PlacesIn.Of(language).Living);
    private readonly FrozenSet<string> moving = Set(PlacesIn.Of(language).Moving);
    private readonly FrozenSet<string> movedTo = Set(PlacesIn.Of(language).MovedTo);
    private readonly FrozenSet<string> streetsBefore = Set(PlacesIn.Of(language).StreetsBefore);
    private readonly FrozenSet<string> inStreets = Set(PlacesIn.Of(language).InStreets);
    private readonly FrozenSet<string> streetsBehind = Set(PlacesIn.Of(language).StreetsBehind);
    private readonly FrozenSet<string> setting = Set(PlacesIn.Of(language).Setting);

    /// <summary>Whether what stands in a range of a text may be such a number.</summary>
    public bool Has(string source, int start, int end)
    {
        if (Array.Exists(known.RunsBefore, run => source.AsSpan(0, start).TrimEnd().EndsWith(run))
            || Array.Exists(known.RunsBehind, run => source.AsSpan(end).TrimStart().StartsWith(run)))
            return true;
        if (rooms.Count == 0)
            return false;
        var before = WordsBefore(source, start);
        var last = before.Count - 1;
        while (last >= 0 && between.Contains(Small(before[last])))
            last--;
        if (IsBehindStreet(before, last) || IsBeforeStreet(source, end))
            return true;
        // "Inside the house, 413 opens it."
        return source.AsSpan(0, start).TrimEnd() is not [.., ',' or '،']
            && (IsNamed(before, last) || (IsCalled(before, last) && !IsSet(source, start, end)));
    }

    // "Room 413", "Lindenweg 642", "we've lived at number 642".
    private bool IsNamed(List<string> before, int last)
    {
        if (last < 0)
            return false;
        if (rooms.Contains(Small(before[last]))
            || (char.IsUpper(before[last][0]) && Array.Exists(known.StreetEndings, ending => IsEnding(before[last], ending))))
            return true;
        var to = Small(before[last]) == known.Number ? last - 1 : last;
        if (to < 1 || !at.Contains(Small(before[to])))
            return false;
        // "The lock that we've lived with opens at 642."
        var lives = before.FindLastIndex(to - 1, word => living.Contains(Small(word)));
        return lives >= 0 && !before.GetRange(lives, to - lives).Exists(word => setting.Contains(Small(word)));
    }

    // "The postman knows us as number 642", "they moved to 642": so may a code be told.
    private bool IsCalled(List<string> before, int last)
    {
        if (last < 1)
            return false;
        var isNumber = Small(before[last]) == known.Number;
        return (isNumber && (at.Contains(Small(before[last - 1])) || rooms.Contains(Small(before[last - 1]))))
            || (movedTo.Contains(Small(before[last])) && before.Take(last).Any(word => moving.Contains(Small(word))));
    }

    private bool IsSet(string source, int start, int end)
    {
        var from = start == 0 ? 0 : source.LastIndexOfAny(SentenceEnds, start - 1) + 1;
        var to = source.IndexOfAny(SentenceEnds, end);
        return Words(source[from..(to < 0 ? source.Length : to)]).Exists(word => setting.Contains(Small(word)));
    }

    // "Calle de los Alisos 642", شارع الزيتون 642; "calle Mayor, 642".
    private bool IsBehindStreet(List<string> before, int last)
    {
        for (var i = last - 1; i >= Math.Max(0, last - MostInStreet); i--)
        {
            if (!streetsBefore.Contains(Small(before[i])))
                continue;
            var name = before.GetRange(i + 1, last - i);
            return inStreets.Count == 0 ? name.Count <= 2 : name.TrueForAll(word => char.IsUpper(word[0]) || inStreets.Contains(word));
        }

        return false;
    }

    // "642 Mill Lane", "642, rue des Aulnes".
    private bool IsBeforeStreet(string source, int end)
    {
        if (streetsBehind.Count == 0)
            return false;
        var rest = source[end..Math.Min(source.Length, end + 60)].TrimStart(',');
        var stop = rest.AsSpan().IndexOfAny(ClauseEnds);
        var words = Words(stop < 0 ? rest : rest[..stop]);
        if (!known.HasNamesBeforeStreets)
            return words.Count > 0 && streetsBehind.Contains(Small(words[0]));
        for (var i = 0; i < Math.Min(MostInStreet, words.Count) && char.IsUpper(words[i][0]); i++)
        {
            if (i > 0 && streetsBehind.Contains(Small(words[i])))
                return true;
        }

        return false;
    }

    // In the clause that goes up to a place; the comma in an address goes on.
    private List<string> WordsBefore(string source, int start)
    {
        var from = start;
        while (from > 0 && (!ClauseEnds.Contains(source[from - 1]) || IsWithin(source, from - 1, start)))
            from--;
        var words = Words(source[from..start]);
        return words.Count > MostBefore ? words.GetRange(words.Count - MostBefore, MostBefore) : words;
    }

    // The comma of "calle Mayor, 642" and the point of "No. 642".
    private bool IsWithin(string source, int mark, int start)
    {
        if (!source.AsSpan((mark + 1)..start).IsWhiteSpace())
            return false;
        if (source[mark] is ',' or '،')
            return streetsBefore.Count > 0;
        var word = Small(LastWord(source, mark));
        return source[mark] == '.' && (between.Contains(word) || rooms.Contains(word));
    }

    private static string LastWord(string source, int end)
    {
        var from = end;
        while (from > 0 && char.IsLetter(source[from - 1]))
            from--;
        return source[from..end];
    }

    private static bool IsEnding(string word, string ending) => word.Length > ending.Length && word.EndsWith(ending, StringComparison.Ordinal);

    private static List<string> Words(string text)
    {
        var words = new List<string>();
        for (var i = 0; i < text.Length; i++)
        {
            var from = i;
            while (i < text.Length && char.IsLetter(text[i]))
                i++;
            if (i > from)
                words.Add(text[from..i]);
        }

        return words;
    }

    private static string Small(string word) => word.ToLowerInvariant();

    private static FrozenSet<string> Set(string words) =>
        words.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Small).ToFrozenSet(StringComparer.Ordinal);
}
