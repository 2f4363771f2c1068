namespace HintBook.Audit.Mentions;

/// <summary>What may stand between the words of a name that stand apart. Shared by all threads.</summary>
internal sealed class TurnedLinks
{
    private const int MostBetween = 14, MostInAll = 34, MostStops = 2, MostBrief = 4, NearBracket = 4, MostOfOwner = 3;
    private readonly WordNumbers numbers;
    private readonly HashSet<string> coordinators, anaphora, negations, copulas, ties, owners;
    private readonly HashSet<string>.AlternateLookup<ReadOnlySpan<char>> anaphoraBySpan, negationsBySpan, coordinatorsBySpan;

    public TurnedLinks(WordNumbers numbers)
    {
        this.numbers = numbers;
        coordinators = Set(numbers.Language.Coordinators);
        anaphora = Set(numbers.Language.Anaphora);
        negations = Set(numbers.Language.Negations);
        copulas = Set(Languages.RemarksIn.Of(numbers.Language.Code).Copulas);
        (ties, owners) = (Set(numbers.Language.Ties), Set(numbers.Language.OwnersAhead));
        anaphoraBySpan = anaphora.GetAlternateLookup<ReadOnlySpan<char>>();
        negationsBySpan = negations.GetAlternateLookup<ReadOnlySpan<char>>();
        coordinatorsBySpan = coordinators.GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <summary>Whether what stands between words can hold them together.</summary>
    /// <param name="text">The text.</param>
    /// <param name="source">The text as it is written.</param>
    /// <param name="places">The words, in their order in the text.</param>
    /// <param name="inOrder">Whether that is also their order in the name.</param>
    public bool Hold(FoldedText text, string source, List<int> places, bool inOrder)
    {
        if (places[^1] - places[0] > MostInAll)
            return false;
        for (var i = 1; i < places.Count; i++)
        {
            if (!Hold(text, source, places[i - 1], places[i], inOrder, places.Count))
                return false;
        }

        return true;
    }

    private bool Hold(FoldedText text, string source, int from, int to, bool inOrder, int count)
    {
        if (from == to || AreBrief(text, from, to) || (to - from < NearBracket && IsBracketed(source, text.Words[from].End, text.Words[to].Start)))
            return true;
        var (stops, strongest, lastStop) = (0, Parting.Nothing, from);
        for (var i = from + 1; i <= to; i++)
        {
            var parting = text.Words[i].Parting;
            if (parting > strongest)
                strongest = parting;
            if (parting >= Parting.Stop)
                (stops, lastStop) = (stops + 1, i);
        }

        if (strongest >= Parting.Item || stops > MostStops || to - from - 1 > MostBetween)
            return false;
        if (to == from + 1)
            return inOrder || count > 2 || numbers.Language.HasCompounds || numbers.Language.IsUnspaced || numbers.Language.Kinship.HasRoots
                ? strongest < Parting.Comma
                : strongest is >= Parting.Comma and < Parting.Stop;
        if (stops > 0 && anaphora.Count > 0 && !GoesBack(text, from, lastStop, to))
            return false;
        if (IsNewTopic(text, strongest, to) || IsDirectlyCoordinated(text, from, to))
            return IsOfIt(text, from, to);
        return ClauseBetween(text, from, to) is not { } clause || stops > 0 || IsInFront(text, from)
            || IsSaidOfTheSame(text, clause) || GoesBack(text, from, clause, to);
    }

    // "Needle. Bone. Left-hand pocket."
    private bool AreBrief(FoldedText text, int from, int to)
    {
        if (numbers.Language.IsUnspaced || to - from > MostBrief || to + 1 >= text.Words.Length || HasItems(text, from, to)
            || (from > 0 && text.Words[from].Parting < Parting.Stop && IsTelling(text, from - 1)))
            return false;
        for (var i = from + 1; i < to; i++)
        {
            if (IsTelling(text, i))
                return false;
        }

        return to > from + (text.Words[to].Parting >= Parting.Stop ? 0 : 1) && text.Words[from + 1].Parting >= Parting.Stop
            && text.Words[to + 1].Parting >= Parting.Comma;
    }

    private static bool HasItems(FoldedText text, int from, int to)
    {
        for (var i = from + 1; i <= to; i++)
        {
            if (text.Words[i].Parting >= Parting.Item)
                return true;
        }

        return false;
    }

    /// <summary>Whether one word is said to be what another is made of, or stands in brackets behind it.</summary>
    public bool IsOfStuff(FoldedText text, string source, int stuff, int thing)
    {
        var at = stuff - 1;
        while (at > 0 && (numbers.UseOf(numbers.Of(text.Of(text.Words[at]))) & WordUse.Determiner) != WordUse.Plain)
            at--;
        return (at >= 0 && text.Of(text.Words[at]) is "aus" or "von")
            || (thing < stuff && stuff - thing < NearBracket && IsBracketed(source, text.Words[thing].End, text.Words[stuff].Start));
    }

    /// <summary>Whether the first half of a compound is what the second belongs to: "die Schaufel fürs Mehl", "des Schneiders Schere".</summary>
    public bool Belongs(FoldedText text, int part, int thing)
    {
        if (ties.Count == 0 || part == 0)
            return false;
        if (thing == part + 1)
            return text.Words[part].Parting < Parting.Comma && text.Words[thing].Parting < Parting.Comma && text.Has(owners, part - 1) && IsOwner(text, part);
        if (part - thing - 1 is < 1 or > MostOfOwner)
            return false;
        for (var at = thing + 1; at <= part; at++)
        {
            if (text.Words[at].Parting >= Parting.Comma)
                return false;
        }

        return text.Has(ties, thing + 1) || (text.Has(owners, thing + 1) && IsOwner(text, part))
            || (part == thing + 2 && text.Of(text.Words[thing + 1]) is "der");
    }

    // "Schneiders", "Hahns", "Löwen".
    private static bool IsOwner(FoldedText text, int at) => text.Of(text.Words[at]) is [.., 's' or 'n'];

    private bool IsTelling(FoldedText text, int at) =>
        (numbers.UseOf(numbers.Of(text.Of(text.Words[at]))) & (WordUse.Determiner | WordUse.Preposition)) == WordUse.Plain;

    // "mallet (beech!)"
    private static bool IsBracketed(string source, int from, int to) =>
        to > from && source.AsSpan(from, to - from) is var between && between.ContainsAny('(', '（') && !between.ContainsAny('.', '。');

    // "Es una redoma, y es de cobre": no other subject.
    private bool IsSaidOfTheSame(FoldedText text, int clause) =>
        clause + 2 < text.Words.Length && copulas.Contains(text.Of(text.Words[clause + 1]).ToString())
        && (numbers.UseOf(numbers.Of(text.Of(text.Words[clause + 2]))) & WordUse.Preposition) != WordUse.Plain;

    // "Of bone, and thin as a hair: your needle."
    private bool IsInFront(FoldedText text, int from)
    {
        var at = from - 1;
        while (at > 0 && text.Words[at + 1].Parting < Parting.Comma
            && (numbers.UseOf(numbers.Of(text.Of(text.Words[at]))) & WordUse.Determiner) != WordUse.Plain)
            at--;
        return at >= 0 && (at == 0 || text.Words[at].Parting >= Parting.Stop)
            && (numbers.UseOf(numbers.Of(text.Of(text.Words[at]))) & WordUse.Preposition) != WordUse.Plain;
    }

    // "Ivory it is, and a comb it is too": what is said of one thing.
    private bool IsOfIt(FoldedText text, int from, int to)
    {
        for (var i = to + 1; i < Math.Min(text.Words.Length, to + 3); i++)
        {
            if (anaphoraBySpan.Contains(text.Of(text.Words[i])))
                return true;
        }

        return to + 1 < text.Words.Length && from + 1 < to && text.Of(text.Words[to + 1]).SequenceEqual(text.Of(text.Words[from + 1]))
            && text.Words[to + 1].Parting == Parting.Space;
    }

    // "Der aus Elfenbein", "celui en ivoire", "el de marfil": an article of its own.
    private bool IsTheOne(FoldedText text, int at) =>
        at + 1 < text.Words.Length && text.Words[at + 1].Parting == Parting.Space
        && (numbers.UseOf(numbers.Of(text.Of(text.Words[at]))) & WordUse.Determiner) != WordUse.Plain
        && (numbers.UseOf(numbers.Of(text.Of(text.Words[at + 1]))) & WordUse.Preposition) != WordUse.Plain;

    // "hive and a tool": nothing but articles stands between the "and" and the second word. In Arabic it is written as one with it.
    private bool IsDirectlyCoordinated(FoldedText text, int from, int to)
    {
        if (numbers.Language.BeforeNumbers.Length > 0)
            return text.Of(text.Words[to])[0] == 'و';
        var at = to - 1;
        while (at > from && (numbers.UseOf(numbers.Of(text.Of(text.Words[at]))) & WordUse.Determiner) != WordUse.Plain)
            at--;
        return at > from && coordinatorsBySpan.Contains(text.Of(text.Words[at]));
    }

    // A comma and an "and" begin a clause.
    private int? ClauseBetween(FoldedText text, int from, int to)
    {
        for (var i = from + 1; i < to; i++)
        {
            if (text.Words[i].Parting == Parting.Comma && coordinatorsBySpan.Contains(text.Of(text.Words[i])))
                return i;
        }

        return null;
    }

    // In Japanese は and が stand behind what a clause is about.
    private bool IsNewTopic(FoldedText text, Parting strongest, int to)
    {
        if (!numbers.Language.IsUnspaced || strongest < Parting.Comma)
            return false;
        for (var i = to + 1; i < Math.Min(text.Words.Length, to + 3); i++)
        {
            if (text.Of(text.Words[i]) is "は" or "が" or "も")
                return true;
        }

        return false;
    }

    // "The oil stood on no shelf. It lived in a drawer."
    private bool GoesBack(FoldedText text, int from, int lastStop, int to)
    {
        // "Nur die silberne geht auf."
        if (to - 2 > from && text.Of(text.Words[to - 2]) is "nur" or "bloss" or "only" or "seule" or "seul" or "solo" or "allein" or "just")
            return true;
        // "Hay un tambor. Es de hojalata."
        if (numbers.Language.Code == "es" && lastStop > from && copulas.Contains(text.Of(text.Words[lastStop]).ToString()))
            return true;
        for (var i = from; i < text.Words.Length && i <= to + 3; i++)
        {
            if (i > from && i >= lastStop && (i <= to || text.Words[i].Parting < Parting.Stop)
                && (anaphoraBySpan.Contains(text.Of(text.Words[i])) || (i <= to && IsTheOne(text, i))))
                return true;
            if (i > to && text.Words[i].Parting >= Parting.Stop)
                return false;
        }

        return false;
    }

    /// <summary>Whether one of some words is denied: "no oil".</summary>
    public bool AreDenied(FoldedText text, List<int> places)
    {
        foreach (var place in places)
        {
            for (var at = place - 1; at >= Math.Max(0, place - 3) && text.Words[at + 1].Parting < Parting.Comma; at--)
            {
                var word = text.Of(text.Words[at]);
                // "Sans sa semelle" speaks of a sole that is there.
                var isOfOnesOwn = word is "sans" or "ohne" or "sin" or "without" && at + 1 < place;
                if (negationsBySpan.Contains(word) && !isOfOnesOwn)
                    return true;
                if ((numbers.UseOf(numbers.Of(word)) & (WordUse.Determiner | WordUse.Preposition)) == WordUse.Plain)
                    break;
            }
        }

        return false;
    }

    private static HashSet<string> Set(string words) => [.. FoldedText.BareWords(words)];
}
