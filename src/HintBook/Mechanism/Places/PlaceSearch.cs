using System.Collections.Immutable;
using HintBook.Mechanism.Answers;

namespace HintBook.Mechanism.Places;

/// <summary>
/// Chooses the pages of “where am I?”: each splits the places where its readers may stand, until one stage is next in all that are left. Pages are
/// made greedily: what counts is the taps, a little for each line to be read, and what is left to find out, by the entropy of a greedy cover with
/// stages. The best of them are tried out, and so on for each of their answers. The number of sets looked at is bounded, never the time, so that
/// every machine finds the same pages. Where one stage of several is looked for, a place is one with the stage that its reader wants; then a page with signs
/// has two ways on: for whom none is true, and for whom one is true that isn't wanted.
/// </summary>
internal sealed class PlaceSearch
{
    /// <summary>Ways that take more taps cost extra.</summary>
    public const int WantedTaps = 4;

    private const int MostLines = 6;
    private const int MostSigns = 6;
    private const int Width = 12;
    private const int MostSets = 3_000;
    private const double LineCosts = 0.25;
    private const double BitCosts = 0.9;
    private const double TapTooMany = 1.0;
    private const double LostCosts = 50;
    private const double Least = 1e-12;

    private readonly double[] weights;
    private readonly ImmutableArray<Line> lines;
    private readonly Bits[] next;
    private readonly Bits[] recognised;
    private readonly Bits[] open;
    private readonly Bits[] sayable;
    private readonly Dictionary<(Bits, int), Choice> chosen = new(new ByPlaces());
    private readonly Dictionary<Bits, double> bits = new(Bits.ByContent);
    private readonly Dictionary<Bits, List<Draft>> drafted = new(Bits.ByContent);
    private readonly bool showsSigns;
    private readonly bool forWanted;
    private readonly int width;
    private readonly Func<Bits, int> lastDone;
    private int left;

    /// <summary>Prepares a search.</summary>
    /// <param name="standings">The box.</param>
    /// <param name="places">Where readers may stand; the stages that are next there can all be told.</param>
    /// <param name="lines">What they may be asked.</param>
    /// <param name="mayBeTold">Whether a stage's title and sign name nothing that isn't known in a place.</param>
    /// <param name="lastDone">The stage to go on from where places can't be told apart, or -1.</param>
    /// <param name="greedy">Whether only the best page of each set is tried.</param>
    /// <param name="open">By place the stages that are next there, where each place has but the one that is wanted; else null.</param>
    public PlaceSearch(
        Standings standings,
        ImmutableArray<Standing> places,
        ImmutableArray<Line> lines,
        Func<Standing, int, bool> mayBeTold,
        Func<Bits, int> lastDone,
        bool greedy,
        ImmutableArray<Bits>? open = null)
    {
        // A reader whom a sign doesn't fit is past it only if it is sure where its stage is next.
        showsSigns = standings.Exact;
        (this.lines, this.lastDone, width, left) = (lines, lastDone, greedy ? 1 : Width, greedy ? int.MaxValue : MostSets);
        weights = [.. places.Select(place => place.Weight)];
        var stages = standings.KnownWhereNext.Length;
        forWanted = open is not null;
        (next, recognised, sayable) = (new Bits[stages], new Bits[stages], new Bits[stages]);
        this.open = open is null ? recognised : new Bits[stages];
        for (var stage = 0; stage < stages; stage++)
        {
            (next[stage], recognised[stage], sayable[stage]) = (new Bits(places.Length), new Bits(places.Length), new Bits(places.Length));
            if (open is not null)
                this.open[stage] = new Bits(places.Length);
            for (var place = 0; place < places.Length; place++)
            {
                next[stage][place] = places[place].Next[stage];
                // Who can only be led elsewhere doesn't take the sign for theirs.
                recognised[stage][place] = places[place].IsFound && places[place].Next[stage];
                if (open is { } all)
                    this.open[stage][place] = places[place].IsFound && all[place][stage];
                sayable[stage][place] = standings.KnownWhereNext[stage].IsWithin(places[place].Known) && mayBeTold(places[place], stage);
            }
        }
    }

    /// <summary>What the pages cost together, those who need many taps counted more.</summary>
    public double Worth(Bits all) => Choose(all, WantedTaps).Worth;

    /// <summary>The pages, the first first.</summary>
    public ImmutableArray<PlacePage> Pages(Bits all)
    {
        if (EndOf(all) is not PlaceEnd.ToPage)
        {
            int[] signs = [.. Enumerable.Range(0, next.Length).Where(stage => all.IsWithin(next[stage]) && all.IsWithin(sayable[stage]))];
            return [new(all, [.. signs], [], signs.Length > 0 ? null : EndOf(all))];
        }

        return PagesFrom([all], WantedTaps);
    }

    /// <summary>The pages to which readers come who may stand at any of some sets of places.</summary>
    /// <param name="sets">The sets.</param>
    /// <param name="taps">How many taps they should need from there.</param>
    public ImmutableArray<PlacePage> PagesFrom(IEnumerable<Bits> sets, int taps)
    {
        var pages = new Dictionary<Bits, PlacePage>(Bits.ByContent);
        var order = new List<Bits>();
        foreach (var set in sets.Where(set => EndOf(set) is PlaceEnd.ToPage))
            Write(set, taps);
        return [.. order.Select(set => pages[set])];

        void Write(Bits set, int wanted)
        {
            if (pages.ContainsKey(set))
                return;
            order.Add(set);
            var draft = Choose(set, wanted).Draft!;
            pages[set] = new(
                set,
                draft.Signs,
                [.. draft.Lines.Select((line, i) => (lines[line], EndOf(draft.Branches[i])))],
                draft.Rest.IsEmpty ? null : EndOf(draft.Rest))
            {
                Other = draft.Other.IsEmpty ? null : EndOf(draft.Other),
                ForWanted = forWanted,
            };
            foreach (var branch in draft.Ways.Where(branch => EndOf(branch) is PlaceEnd.ToPage))
                Write(branch, wanted - 1);
        }
    }

    /// <summary>Where readers are led who may stand at some places.</summary>
    public PlaceEnd EndOf(Bits set) =>
        NextInAll(set) is >= 0 and var stage ? new PlaceEnd.ToStage(stage)
        : Drafts(set).Count == 0 ? new PlaceEnd.Lost(lastDone(set), set)
        : new PlaceEnd.ToPage(set, forWanted);

    private int NextInAll(Bits set) => Array.FindIndex(next, set.IsWithin);

    private double WeightOf(Bits set) => set.Weigh(weights, Least);

    private Choice Choose(Bits set, int wanted)
    {
        wanted = Math.Max(wanted, 0);
        if (set.IsEmpty || NextInAll(set) >= 0)
            return Choice.Found;
        if (chosen.TryGetValue((set, wanted), out var known))
            return known;
        var weight = WeightOf(set);
        left--;
        Choice? best = null;
        foreach (var draft in Drafts(set).Take(left < 0 ? 1 : width))
        {
            var (taps, cost, most) = (1.0, LinesCost(draft.Signs.Length + draft.Lines.Length), 1);
            foreach (var branch in draft.Ways)
            {
                if (branch.IsEmpty)
                    continue;
                var under = Choose(branch, wanted - 1);
                var share = WeightOf(branch) / weight;
                taps += share * under.Taps;
                cost += share * under.Cost;
                most = Math.Max(most, 1 + under.Most);
            }

            var worth = cost + (TapTooMany * Math.Max(0, most - wanted));
            if (best is null || worth < best.Worth - Least)
                best = new(draft, taps, cost, most, worth);
        }

        return chosen[(set, wanted)] = best ?? Choice.Lost;
    }

    // Pages that split a set, the most promising first: signs and lines, signs alone, one part with all its positions.
    private List<Draft> Drafts(Bits set)
    {
        if (drafted.TryGetValue(set, out var known))
            return known;
        var weight = WeightOf(set);
        int[] askable = [.. Enumerable.Range(0, lines.Length).Where(line => set.IsWithin(lines[line].MayBeAsked) && set.Overlaps(lines[line].True))];
        // The rarest first.
        askable = [.. askable.OrderBy(line => WeightOf(set.Both(lines[line].True))).ThenBy(line => line)];
        var drafts = new List<Draft>();
        var signs = Signs(set);
        for (var count = 0; count <= signs.Length; count++)
        {
            var shown = signs[..count];
            var rest = shown.Aggregate(set, (some, stage) => some.Without(open[stage]));
            var other = forWanted ? shown.Aggregate(set.Without(rest), (some, stage) => some.Without(recognised[stage])) : new Bits(set.Size);
            if (count > 0)
                drafts.Add(Rated(new(shown, [], [], rest, other), weight));
            for (var best = new Draft(shown, [], [], rest, other); best.Lines.Length + count < MostLines;)
            {
                if (Longer(best, askable, rest, weight) is not { } longer)
                    break;
                drafts.Add(best = longer);
            }
        }

        drafts.RemoveAll(draft => draft.Ways.Any(branch => Bits.ByContent.Equals(branch, set)));
        if (drafts.Count == 0 && forWanted)
            drafts.AddRange(Unwanted(set).Select(draft => Rated(draft, weight)));
        drafts = [.. drafts.OrderBy(draft => draft.Promises)];
        return drafted[set] = drafts;
    }

    // Pages with a sign that none of these readers wants, but that is true for some: it tells them from the others.
    private IEnumerable<Draft> Unwanted(Bits set) =>
        from stage in Enumerable.Range(0, next.Length)
        where set.IsWithin(sayable[stage])
        let rest = set.Without(open[stage])
        let other = set.Both(open[stage])
        where !rest.IsEmpty && !other.IsEmpty && !set.Overlaps(recognised[stage])
        select new Draft([stage], [], [], rest, other);

    // The most promising page with one more line that leaves something for every line and for none. The rarest line stands first: the
    // first true one counts, and a common one would leave nothing for those below it. What stands above the new line stays as it is.
    private Draft? Longer(Draft draft, int[] rarestFirst, Bits all, double weight)
    {
        var (listed, count) = (draft.Lines, draft.Lines.Length);
        var before = new Bits[count + 1];
        var costs = new double[count];
        before[0] = all;
        for (var i = 0; i < count; i++)
            (before[i + 1], costs[i]) = (before[i].Both(lines[listed[i]].False), Costs(draft.Branches[i], weight));
        Draft? best = null;
        var (branches, at) = (new Bits[count + 1], 0);
        foreach (var line in rarestFirst)
        {
            if (at < count && listed[at] == line)
            {
                at++;
                continue;
            }

            var rest = before[at];
            var promises = LinesCost(draft.Signs.Length + count + 1);
            for (var i = 0; i < at; i++)
                promises += costs[i];
            var filled = true;
            for (var i = at; i <= count && filled; i++)
            {
                var asked = lines[i == at ? line : listed[i - 1]];
                (branches[i], rest) = (rest.Both(asked.True), rest.Both(asked.False));
                filled = !branches[i].IsEmpty;
                if (filled)
                    promises += Costs(branches[i], weight);
            }

            if (!filled || rest.IsEmpty)
                continue;
            promises += Costs(rest, weight);
            if (!draft.Other.IsEmpty)
                promises += Costs(draft.Other, weight);
            if (best is null || promises < best.Promises || (promises == best.Promises && line < best.Added))
            {
                best = draft with
                {
                    Lines = listed.Insert(at, line),
                    Branches = [.. draft.Branches.AsSpan()[..at], .. branches.AsSpan(at)],
                    Rest = rest,
                    Promises = promises,
                    Added = line,
                };
            }
        }

        return best;
    }

    // Signs that may be shown to all of these readers, and that some of them want: each covers as many as it can of those still left.
    private ImmutableArray<int> Signs(Bits set)
    {
        var signs = ImmutableArray.CreateBuilder<int>();
        for (var rest = set; showsSigns && signs.Count < MostSigns;)
        {
            var (best, most) = (-1, 0.0);
            for (var stage = 0; stage < next.Length; stage++)
            {
                if (!rest.Overlaps(recognised[stage]) || !set.IsWithin(sayable[stage]))
                    continue;
                var covers = WeightOf(rest.Both(recognised[stage]));
                if (covers > most)
                    (best, most) = (stage, covers);
            }

            if (best < 0)
                break;
            signs.Add(best);
            rest = rest.Without(recognised[best]);
        }

        return signs.ToImmutable();
    }

    private Draft Rated(Draft draft, double weight)
    {
        var cost = LinesCost(draft.Signs.Length + draft.Lines.Length);
        foreach (var branch in draft.Ways.Where(branch => !branch.IsEmpty))
            cost += Costs(branch, weight);
        return draft with { Promises = cost };
    }

    private static double LinesCost(int lines) => 1 + (LineCosts * Math.Max(0, lines - 1));

    private double Costs(Bits branch, double weight) => WeightOf(branch) / weight * BitCosts * LeftToFind(branch);

    // Bits: how much there is still to find out, if stages are told apart one after the other, the likeliest first.
    private double LeftToFind(Bits set)
    {
        if (!bits.TryGetValue(set, out var known))
            bits.Add(set, known = Entropy(set));
        return known;
    }

    private double Entropy(Bits set)
    {
        if (NextInAll(set) >= 0)
            return 0;
        var (all, bits, rest) = (WeightOf(set), 0.0, set);
        // A stage covers less and less of what is left: only one that comes first by what it covered before has to be looked at again.
        var covers = new PriorityQueue<(int Stage, double Weight), (double, int)>(
            from stage in Enumerable.Range(0, next.Length)
            where set.Overlaps(next[stage])
            let weight = WeightOf(set.Both(next[stage]))
            select ((stage, weight), (-weight, stage)));
        while (!rest.IsEmpty)
        {
            if (!covers.TryDequeue(out var best, out _))
                return bits + (WeightOf(rest) / all * LostCosts);
            var now = rest.Both(next[best.Stage]);
            if (now.IsEmpty)
                continue;
            var weight = WeightOf(now);
            if (weight < best.Weight)
            {
                covers.Enqueue((best.Stage, weight), (-weight, best.Stage));
                continue;
            }

            bits -= weight / all * Math.Log2(Math.Min(1, weight / all));
            rest = rest.Without(next[best.Stage]);
        }

        // Some tap is still needed, however likely one of them is.
        return Math.Max(bits, 0.5);
    }

    private sealed record Draft(ImmutableArray<int> Signs, ImmutableArray<int> Lines, ImmutableArray<Bits> Branches, Bits Rest, Bits Other)
    {
        public IEnumerable<Bits> Ways => [.. Branches, Rest, Other];

        public double Promises { get; init; }

        /// <summary>The line that was listed last.</summary>
        public int Added { get; init; }
    }

    private sealed record Choice(Draft? Draft, double Taps, double Cost, int Most, double Worth)
    {
        public static Choice Found { get; } = new(null, 0, 0, 0, 0);

        public static Choice Lost { get; } = new(null, 0, LostCosts, 0, LostCosts);
    }

    private sealed class ByPlaces : IEqualityComparer<(Bits Set, int Wanted)>
    {
        public bool Equals((Bits Set, int Wanted) x, (Bits Set, int Wanted) y) => x.Wanted == y.Wanted && Bits.ByContent.Equals(x.Set, y.Set);

        public int GetHashCode((Bits Set, int Wanted) obj) => HashCode.Combine(Bits.ByContent.GetHashCode(obj.Set), obj.Wanted);
    }
}
