namespace HintBook.Audit.Mentions;

/// <summary>Finds names whose words stand apart. All of it is a doubt. Reuses its buffers for the next text; not thread-safe.</summary>
internal sealed class TurnedSearch
{
    private const int MostOfCompound = 6;
    private readonly TurnedNames names;
    private readonly TurnedLinks links;
    private readonly List<(int Part, int Word)> wholes = [];
    private readonly List<(PartHit Half, int Word)> halves = [];
    private readonly HashSet<int> parts = [];
    private readonly List<int> places = [];

    /// <summary>Makes a search ready.</summary>
    /// <param name="names">The names.</param>
    /// <param name="links">What holds their words together.</param>
    public TurnedSearch(TurnedNames names, TurnedLinks links) => (this.names, this.links) = (names, links);

    /// <summary>Adds every mention in a text to a list.</summary>
    public void In(FoldedText text, string source, List<FoundSecret> found)
    {
        if (names.IsEmpty)
            return;
        wholes.Clear();
        halves.Clear();
        for (var at = 0; at < text.Words.Length; at++)
        {
            foreach (var hit in names.HitsAt(text, at))
            {
                if (hit.Cut == 0 || names.MayStandForWhole(hit, text.Words[at].Length))
                    wholes.Add((hit.Part, at));
                if (hit.Cut > 0)
                    halves.Add((hit, at));
            }
        }

        if (wholes.Count + halves.Count < 2)
            return;
        parts.Clear();
        foreach (var (part, _) in wholes)
            parts.Add(part);
        foreach (var (half, _) in halves)
            parts.Add(half.Part);
        foreach (var part in parts)
        {
            foreach (var name in names.RarestIn(part))
                Look(text, source, names[name], part, found);
        }
    }

    private void Look(FoldedText text, string source, TurnedNames.Turned name, int rarest, List<FoundSecret> found)
    {
        foreach (var (first, second) in Occurrences(rarest))
        {
            places.Clear();
            var isOnlyHalved = second != first;
            foreach (var part in name.Parts)
            {
                if ((part == rarest ? (first, second) : Nearest(part, first)) is not var (one, other))
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
            var isOfStuff = links.IsOfStuff(text, source, places[0], places[^1])
                || (name.Parts.Length == 1 && isOnlyHalved && links.Belongs(text, places[0], places[^1]));
            places.Sort();
            // "Die Münze aus Zinn" is a Zinnmünze; "Honig, Topf" needn't be a Honigtopf.
            if (name.Parts.Length == 1 && places.Count == 2 && isOnlyHalved && names.HasCompounds
                && (!isOfStuff || places[^1] - places[0] > MostOfCompound))
                continue;
            if ((links.Hold(text, source, places, inOrder) || IsOneIdentifier(text)) && (name.IsNegative || !links.AreDenied(text, places)))
            {
                found.Add(new(name.Secret, places[0], places[^1], Sure: false, Words: Math.Max(2, places.Count), IsCode: false));
                return;
            }
        }
    }

    // "senklot_messing", "peelBeechwood": whoever names files and variables leaves the small words out.
    private bool IsOneIdentifier(FoldedText text)
    {
        for (var i = places[0] + 1; i <= places[^1]; i++)
        {
            if (text.Words[i].Parting != Parting.Hyphen)
                return false;
        }

        return true;
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
}
