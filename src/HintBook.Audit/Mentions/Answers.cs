using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>
/// Tells whether a word that is also a code of letters is given as an answer: "not crow but raven", "raven instead", "it's a raven, of course; set it",
/// "Who steals spoons? The raven does; dial it."
/// </summary>
internal sealed class Answers
{
    private const int Near = 3;
    private readonly WordNumbers numbers;
    private readonly HashSet<string> not, but, instead, rather, ofOne, withArticle, copulas, surely, setting;
    private readonly string settingStem;

    public Answers(WordNumbers numbers)
    {
        this.numbers = numbers;
        var words = AnswersIn.Of(numbers.Language.Code);
        (not, but, instead, copulas) = (FoldedText.SetOf(words.Not), FoldedText.SetOf(words.But), FoldedText.SetOf(words.Instead), FoldedText.SetOf(words.Is));
        (rather, ofOne, withArticle) = (FoldedText.SetOf(words.Rather), FoldedText.SetOf(words.OfOne), FoldedText.SetOf(words.WithArticle));
        settingStem = words.SettingStem;
        (surely, setting) = (FoldedText.SetOf(words.Surely), FoldedText.SetOf($"{numbers.Language.Setting} {words.Setting}"));
    }

    /// <summary>Whether the word at a place is one.</summary>
    public bool Is(FoldedText text, string source, int at)
    {
        if (not.Count == 0)
            return false;
        var first = at;
        while (first > 0 && text.Words[first].Parting < Parting.Comma && IsDeterminer(text, first - 1))
            first--;
        var start = StartOf(text, first);
        if (first > start && text.Has(but, first - 1) && text.HasAny(not, start, first - 1))
            return true;
        if (IsInstead(text, start, first, at))
            return true;
        var behind = at + 1;
        while (behind < text.Words.Length && text.Words[behind].Parting < Parting.Comma && text.Has(surely, behind))
            behind++;
        var ends = behind >= text.Words.Length || text.Words[behind].Parting >= Parting.Comma;
        var verb = first - 1;
        while (verb > start && text.Words[verb + 1].Parting < Parting.Comma && text.Has(surely, verb))
            verb--;
        var isPut = first == start || text.Words[first].Parting >= Parting.Comma || (verb >= start && text.Has(copulas, verb));
        if (ends && isPut && IsDeniedBefore(text, start, first))
            return true;
        var isBehindQuestion = first == start && start > 0 && source.AsSpan(0, text.Words[start].Start).TrimEnd() is [.., '?' or '؟'];
        return ((ends && isPut) || isBehindQuestion) && IsNearSetting(text, start, at);
    }

    // "It isn't a stork, it's a heron", "not crow, not rook: raven": a comma stands between.
    private bool IsDeniedBefore(FoldedText text, int start, int first)
    {
        var isParted = false;
        for (var i = first - 1; i >= start; i--)
        {
            isParted |= text.Words[i + 1].Parting >= Parting.Comma;
            if (isParted && text.Has(not, i))
                return true;
        }

        return false;
    }

    // "Larch rather than pine" tells the larch, and not the pine.
    private bool IsInstead(FoldedText text, int start, int first, int at)
    {
        for (var i = at + 1; i <= at + Near && i < text.Words.Length && text.Words[i].Parting < Parting.Stop; i++)
        {
            if (text.Has(instead, i))
                return true;
        }

        for (var i = first - 1; i >= Math.Max(start, first - Near); i--)
        {
            if (text.Has(instead, i))
                return i < first - 1 ? !text.Has(ofOne, i + 1) : text.Has(rather, i);
        }

        return false;
    }

    private bool IsNearSetting(FoldedText text, int start, int at)
    {
        var stops = 0;
        for (var i = start - 1; i >= 0 && stops == 0; i--)
        {
            if (IsSetting(text, i))
                return true;
            stops += text.Words[i].Parting >= Parting.Stop ? 1 : 0;
        }

        stops = 0;
        for (var i = at + 1; i < text.Words.Length; i++)
        {
            stops += text.Words[i].Parting >= Parting.Stop ? 1 : 0;
            if (stops > 1)
                return false;
            if (IsSetting(text, i))
                return true;
        }

        return text.HasAny(setting, start, at);
    }

    // فاكتبوه: "and write it".
    private bool IsSetting(FoldedText text, int at) =>
        text.Has(setting, at) || (settingStem.Length > 0 && text.Of(text.Words[at]).Contains(settingStem, StringComparison.Ordinal));

    private bool IsDeterminer(FoldedText text, int at) => (numbers.UseOf(numbers.Of(text.Of(text.Words[at]))) & WordUse.Determiner) != WordUse.Plain
        || text.Has(withArticle, at);

    private static int StartOf(FoldedText text, int at)
    {
        while (at > 0 && text.Words[at].Parting < Parting.Stop)
            at--;
        return at;
    }
}
