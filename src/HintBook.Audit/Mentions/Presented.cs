using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>
/// Tells whether the noun of a name is put before the reader by few words: "a ladle rolls out", "scissors (silver)", "goose onto the pan", "it's gall".
/// </summary>
internal sealed class Presented
{
    private readonly WordNumbers numbers;
    private readonly HashSet<string> shows, ways, some, bids, acts, copulas, likenesses, known, ownerships;
    private const int Near = 10, Far = 5;

    public Presented(WordNumbers numbers)
    {
        this.numbers = numbers;
        var (done, remarks) = (ActsIn.Of(numbers.Language.Code), RemarksIn.Of(numbers.Language.Code));
        (shows, ways, some) = (FoldedText.SetOf(done.Shows), FoldedText.SetOf(done.Ways), FoldedText.SetOf(done.Some));
        (bids, acts) = (FoldedText.SetOf(done.Bids), FoldedText.SetOf(done.Acts));
        (copulas, likenesses) = (FoldedText.SetOf(remarks.Copulas), FoldedText.SetOf(numbers.Language.Likenesses));
        (known, ownerships) = (FoldedText.SetOf(remarks.Certain), FoldedText.SetOf(remarks.Belongs));
    }

    /// <summary>Whether it is; of a common noun less counts.</summary>
    public bool Is(FoldedText text, ReadOnlySpan<int> ids, string source, int at, bool isCommon)
    {
        var hasNext = at + 1 < ids.Length && text.Words[at + 1].Parting < Parting.Comma;
        var left = IsFirst(text, at) ? -1 : at - 1;
        if (numbers.Language.Code == "ar")
            return (left >= 0 && text.Has(shows, left))
                || (!isCommon && source.AsSpan(text.Words[at].Start..text.Words[at].End).Contains("ال", StringComparison.Ordinal));
        if (left < 0)
            return IsPlaced(text, ids, source, at);
        // "It's gall", "rutscht Blei heraus".
        if (text.Has(shows, left))
            return !isCommon || !text.Has(copulas, left);
        // One word may say how it is.
        if (!IsArticle(text, ids, left) && numbers.UseOf(ids[left]) == WordUse.Plain && !IsFirst(text, left))
            left--;
        if (!IsArticle(text, ids, left))
            return false;
        // "Im Tabaksfach liegt die Pfeife": a place, a verb, the thing.
        if (!IsFirst(text, left) && text.Has(shows, left - 1) && !text.Has(copulas, left - 1) && BeginsWithPlace(text, ids, left - 1))
            return true;
        if (text.Has(known, left) && !text.Has(some, left))
            return (IsFirst(text, left) && hasNext && text.Has(bids, at + 1)) || (isCommon && IsActedOn(text, left));
        // "No mould yet?", "du suif, voilà", "a ladle rolls out"; "a vat is a tub" only explains.
        if (IsFirst(text, left))
            return (at + 1 < ids.Length && text.Has(shows, at + 1) && !text.Has(copulas, at + 1)) || (!isCommon && text.Has(some, left));
        if (text.Has(shows, left - 1) || (!isCommon && text.Has(some, left) && IsFirst(text, left - 1)))
            return true;
        return !isCommon && (numbers.UseOf(ids[left - 1]) & WordUse.Preposition) == WordUse.Plain && !text.Has(likenesses, left - 1)
            && IsShownNear(text, at);
    }

    /// <summary>Whether a noun without an article begins a clause and goes on as in a list: "goose onto the pan", "scissors (silver)".</summary>
    public bool IsPlaced(FoldedText text, ReadOnlySpan<int> ids, string source, int at) =>
        IsFirst(text, at) && (source.AsSpan(text.Words[at].End) is ['(', ..] or [' ', '(', ..]
            || (at + 1 < ids.Length && text.Words[at + 1].Parting < Parting.Comma && !text.Has(ownerships, at + 1)
                && (text.Has(ways, at + 1) || (at + 2 < ids.Length && text.Words[at + 2].Parting < Parting.Comma
                    && (numbers.UseOf(ids[at + 1]) & WordUse.Preposition) != WordUse.Plain))));

    private bool BeginsWithPlace(FoldedText text, ReadOnlySpan<int> ids, int verb)
    {
        var first = verb;
        while (!IsFirst(text, first) && verb - first < Far)
            first--;
        return first < verb && IsFirst(text, first) && (numbers.UseOf(ids[first]) & WordUse.Preposition) != WordUse.Plain;
    }

    // "Once you've got the tin down": what is done stands before it in its clause.
    private bool IsActedOn(FoldedText text, int article)
    {
        for (var i = article - 1; i >= 0 && i > article - Far && text.Words[i + 1].Parting < Parting.Comma; i--)
        {
            if (text.Has(acts, i))
                return true;
        }

        return false;
    }

    private bool IsShownNear(FoldedText text, int at)
    {
        for (var i = at - 1; i >= 0 && i > at - Near && text.Words[i + 1].Parting < Parting.Stop; i--)
        {
            if (text.Has(shows, i) || text.Has(acts, i))
                return true;
        }

        for (var i = at + 1; i < text.Words.Length && i < at + Near && text.Words[i].Parting < Parting.Stop; i++)
        {
            if (text.Has(shows, i) || text.Has(acts, i))
                return true;
        }

        return false;
    }

    private bool IsArticle(FoldedText text, ReadOnlySpan<int> ids, int at) =>
        (numbers.UseOf(ids[at]) & WordUse.Determiner) != WordUse.Plain || text.Has(some, at);

    private static bool IsFirst(FoldedText text, int at) => at == 0 || text.Words[at].Parting >= Parting.Comma;
}
