using System.Runtime.InteropServices;
using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>Finds names whose words stand apart. All of it is a doubt. Reuses its buffers for the next text; not thread-safe.</summary>
internal sealed class TurnedSearch
{
    private const int MostBetween = 14, MostInAll = 34, MostStops = 2;
    private readonly TurnedNames names;
    private readonly WordNumbers numbers;
    private readonly HashSet<string> coordinators, anaphora, negations;
    private readonly HashSet<string>.AlternateLookup<ReadOnlySpan<char>> anaphoraBySpan, negationsBySpan, coordinatorsBySpan;
    private readonly List<(int Part, int Word)> wholes = [];
    private readonly List<(PartHit Half, int Word)> halves = [];
    private readonly List<int> places = [];

    public TurnedSearch(TurnedNames names, WordNumbers numbers)
    {
        (this.names, this.numbers) = (names, numbers);
        coordinators = Set(numbers.Language.Coordinators);
        anaphora = Set(numbers.Language.Anaphora);
        negations = Set(numbers.Language.Negations);
        anaphoraBySpan = anaphora.GetAlternateLookup<ReadOnlySpan<char>>();
        negationsBySpan = negations.GetAlternateLookup<ReadOnlySpan<char>>();
        coordinatorsBySpan = coordinators.GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <summary>Adds every mention in a text to a list.</summary>
    public void In(FoldedText text, List<FoundSecret> found)
    {
        if (names.IsEmpty)
            return;
        wholes.Clear();
        halves.Clear();
        for (var at = 0; at < text.Words.Length; at++)
        {
            foreach (var hit in names.HitsAt(text, at))
            {
                if (hit.Cut == 0)
                    wholes.Add((hit.Part, at));
                else
                    halves.Add((hit, at));
            }
        }

        if (wholes.Count + halves.Count < 1)
            return;
        foreach (var part in wholes.Select(whole => whole.Part).Concat(halves.Select(half => half.Half.Part)).Distinct().ToArray())
        {
            foreach (var name in names.RarestIn(part))
                Look(text, names[name], part, found);
        }
    }

    private void Look(FoldedText text, TurnedNames.Turned name, int rarest, List<FoundSecret> found)
    {
        foreach (var (first, second) in Occurrences(rarest))
        {
            places.Clear();
            places.Add(first);
            if (second != first)
                places.Add(second);
            var isOnlyHalved = second != first;
            foreach (var part in name.Parts)
            {
                if (part == rarest)
                    continue;
                if (Nearest(part, first) is not var (one, other))
                {
                    places.Clear();
                    break;
                }

                places.Add(one);
                if (other != one)
                    places.Add(other);
            }

            // A name of one word is told apart only by its halves.
            if (places.Count < 2 || (name.Parts.Length == 1 && !isOnlyHalved))
                continue;
            var inOrder = IsInOrder();
            places.Sort();
            if (IsLinked(text, inOrder) && (name.IsNegative || !IsDenied(text)))
            {
                found.Add(new(name.Secret, places[0], places[^1], Sure: false, Words: Math.Max(2, places.Count), IsCode: false));
                return;
            }
        }
    }

    private bool IsInOrder()
    {
        for (var i = 1; i < places.Count; i++)
        {
            if (places[i] < places[i - 1])
                return false;
        }

        return true;
    }

    private IEnumerable<(int First, int Second)> Occurrences(int part)
    {
        foreach (var (whole, word) in wholes)
        {
            if (whole == part)
                yield return (word, word);
        }

        foreach (var (half, word) in halves)
        {
            if (half.Part != part || !half.IsFirst)
                continue;
            foreach (var (other, place) in halves)
            {
                if (other.Part == part && !other.IsFirst && other.Cut == half.Cut && place != word)
                    yield return (word, place);
            }
        }
    }

    private (int, int)? Nearest(int part, int to)
    {
        (int First, int Second)? best = null;
        foreach (var place in Occurrences(part))
        {
            if (best is not var (before, _) || Math.Abs(place.First - to) < Math.Abs(before - to))
                best = place;
        }

        return best;
    }

    // Whether what stands between the words can hold them together.
    private bool IsLinked(FoldedText text, bool inOrder)
    {
        if (places[^1] - places[0] > MostInAll)
            return false;
        for (var i = 1; i < places.Count; i++)
        {
            if (!IsLinked(text, places[i - 1], places[i], inOrder))
                return false;
        }

        return true;
    }

    private bool IsLinked(FoldedText text, int from, int to, bool inOrder)
    {
        if (from == to)
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
            return strongest < Parting.Comma || (strongest < Parting.Stop && !inOrder);
        if (stops > 0 && anaphora.Count > 0 && !GoesBack(text, from, lastStop, to))
            return false;
        if (IsNewTopic(text, strongest, to) || IsDirectlyCoordinated(text, from, to))
            return to + 1 < text.Words.Length && anaphoraBySpan.Contains(text.Of(text.Words[to + 1]));
        return ClauseBetween(text, from, to) is not { } clause || stops > 0 || GoesBack(text, from, clause, to);
    }

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
        for (var i = from; i < text.Words.Length && i <= to + 3; i++)
        {
            if (i > from && i >= lastStop && (i <= to || text.Words[i].Parting < Parting.Stop) && anaphoraBySpan.Contains(text.Of(text.Words[i])))
                return true;
            if (i > to && text.Words[i].Parting >= Parting.Stop)
                return false;
        }

        return false;
    }

    private bool IsDenied(FoldedText text)
    {
        foreach (var place in places)
        {
            for (var at = place - 1; at >= Math.Max(0, place - 3) && text.Words[at + 1].Parting < Parting.Comma; at--)
            {
                var word = text.Of(text.Words[at]);
                if (negationsBySpan.Contains(word))
                    return true;
                if ((numbers.UseOf(numbers.Of(word)) & (WordUse.Determiner | WordUse.Preposition)) == WordUse.Plain)
                    break;
            }
        }

        return false;
    }

    private static HashSet<string> Set(string words) => [.. FoldedText.BareWords(words)];
}
