using System.Text;
using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>Tells whether an everyday word stands as an object: "a key lies there", not "the key to this is patience" or "a key question".</summary>
internal sealed class Objects
{
    private const int Around = 7;
    private readonly WordNumbers numbers;
    private readonly string[] idioms;
    private readonly HashSet<string> likenesses;

    public Objects(WordNumbers numbers)
    {
        this.numbers = numbers;
        var folded = new FoldedText(numbers.Language);
        idioms =
        [
            .. from idiom in IdiomsIn.Of(numbers.Language.Code).Split(", ", StringSplitOptions.RemoveEmptyEntries)
               select Spaced(folded, idiom),
        ];
        likenesses = [.. FoldedText.BareWords(numbers.Language.Likenesses)];
    }

    /// <summary>Whether the words from one to another stand as an object.</summary>
    public bool Stand(FoldedText text, ReadOnlySpan<int> ids, string source, int first, int last, string name)
    {
        if (IsPartOfCompound(text, source, first, last) || HasOtherAccents(source, text.Words[first].Start, text.Words[last].End, name))
            return false;
        if (IsLikeness(text, ids, first))
            return false;
        return !IsIdiom(text, first, last) && !(numbers.Language.HasVerbsAlike && (IsVerb(text, ids, first, last) || IsFirstOfTwo(text, ids, first, last)));
    }

    private bool IsPartOfCompound(FoldedText text, string source, int first, int last)
    {
        if (numbers.Language.IsUnspaced)
            return text.Words[last].End < source.Length && IsChinese(source[text.Words[last].End]) && IsChinese(source[text.Words[last].End - 1]);
        return (first > 0 && text.Words[first].Parting == Parting.Hyphen && source[text.Words[first].Start - 1] == '-')
            || (last + 1 < text.Words.Length && text.Words[last + 1].Parting == Parting.Hyphen && source[text.Words[last].End] == '-');
    }

    private static bool IsChinese(char letter) => letter is >= '\u4E00' and <= '\u9FFF';

    // "loupé" is no "loupe". What is written without any accent may have lost them.
    private static bool HasOtherAccents(string source, int start, int end, string name)
    {
        foreach (var letter in source.AsSpan(start, end - start))
        {
            if (letter is > '\u007F' and < '\u0250' && !name.Contains(letter, StringComparison.OrdinalIgnoreCase))
                return true;
        }

        return false;
    }

    // "like a feather", "as clear as a bell".
    private bool IsLikeness(FoldedText text, ReadOnlySpan<int> ids, int first)
    {
        var at = first - 1;
        while (at >= 0 && text.Words[at + 1].Parting < Parting.Comma && (numbers.UseOf(ids[at]) & WordUse.Determiner) != WordUse.Plain)
            at--;
        return at >= 0 && at < first - 1 && text.Words[at + 1].Parting < Parting.Comma && likenesses.Contains(text.Of(text.Words[at]).ToString());
    }

    private bool IsIdiom(FoldedText text, int first, int last)
    {
        if (idioms.Length == 0)
            return false;
        var (from, to) = (Math.Max(0, first - Around), Math.Min(text.Words.Length - 1, last + Around));
        var around = new StringBuilder(" ");
        var (start, end) = (0, 0);
        for (var i = from; i <= to; i++)
        {
            if (i == first)
                start = around.Length;
            around.Append(text.Of(text.Words[i]));
            if (i == last)
                end = around.Length;
            around.Append(numbers.Language.IsUnspaced ? "" : " ");
        }

        var said = around.ToString();
        foreach (var idiom in idioms)
        {
            for (var at = said.IndexOf(idiom, StringComparison.Ordinal); at >= 0; at = said.IndexOf(idiom, at + 1, StringComparison.Ordinal))
            {
                if (at < end && at + idiom.Length > start)
                    return true;
            }
        }

        return false;
    }

    // "feather your oars": an article follows, and none stands before it.
    private bool IsVerb(FoldedText text, ReadOnlySpan<int> ids, int first, int last) =>
        last + 1 < ids.Length && text.Words[last + 1].Parting == Parting.Space
        && (numbers.UseOf(ids[last + 1]) & WordUse.Determiner) != WordUse.Plain
        && (first == 0 || text.Words[first].Parting >= Parting.Comma || (numbers.UseOf(ids[first - 1]) & WordUse.Determiner) == WordUse.Plain)
        && !IsAfterDeterminer(text, ids, first);

    private bool IsAfterDeterminer(FoldedText text, ReadOnlySpan<int> ids, int first)
    {
        for (var at = first - 1; at >= Math.Max(0, first - 3) && text.Words[at + 1].Parting < Parting.Comma; at--)
        {
            if ((numbers.UseOf(ids[at]) & (WordUse.Determiner | WordUse.Preposition)) != WordUse.Plain)
                return true;
        }

        return false;
    }

    // "a mirror image": a word follows that is neither one of grammar nor looks like a verb.
    private bool IsFirstOfTwo(FoldedText text, ReadOnlySpan<int> ids, int first, int last)
    {
        if (last + 1 >= ids.Length || text.Words[last + 1].Parting != Parting.Space || text.Words[last + 1].Start != text.Words[last].End + 1)
            return false;
        var word = text.Of(text.Words[last]);
        var next = text.Of(text.Words[last + 1]);
        return numbers.UseOf(ids[last + 1]) == WordUse.Plain && !IsPlural(word) && !char.IsAsciiDigit(next[0]) && !IsLikeVerb(next);
    }

    private static bool IsLikeVerb(ReadOnlySpan<char> word) =>
        (word.EndsWith("s") && !word.EndsWith("ss"))
        || word.EndsWith("ed") || word.EndsWith("en") || word.EndsWith("ing") || word.EndsWith("ly") || word.EndsWith("ward");

    private static bool IsPlural(ReadOnlySpan<char> word) => word.Length > 3 && word[^1] == 's' && word[^2] != 's';

    private static string Spaced(FoldedText folded, string phrase)
    {
        folded.Read(phrase, isProse: false);
        var words = folded.Words.ToArray().Select(word => folded.Of(word).ToString());
        return phrase[0] >= '\u3000' ? string.Concat(words) : $" {string.Join(' ', words)} ";
    }
}
