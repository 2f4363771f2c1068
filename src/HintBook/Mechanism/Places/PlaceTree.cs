using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism.Answers;

namespace HintBook.Mechanism.Places;

/// <summary>
/// “Where am I?” as identification: pages that lead a reader from anywhere to a stage that is next there, and that name nothing on the way which isn't
/// certain to be known. It holds in every language of the book.
/// </summary>
internal sealed class PlaceTree
{
    private readonly Standings standings;
    private readonly Bits[] names;

    private readonly WantedStages wanted;

    private PlaceTree(Standings standings, Bits[] names, WantedStages wanted, ImmutableArray<Bits> untold)
    {
        (this.standings, this.names, this.wanted, Untold) = (standings, names, wanted, untold);
        (Places, Pages) = (wanted.Places, [.. wanted.Pages, .. wanted.PagesForWanted]);
        Rates = Rate();
    }

    /// <summary>Where readers may stand.</summary>
    public ImmutableArray<Standing> Places { get; }

    /// <summary>The pages, the first first.</summary>
    public ImmutableArray<PlacePage> Pages { get; }

    /// <summary>How many taps it takes to a stage that is next, and how much is found.</summary>
    public PlaceRates Rates { get; }

    /// <summary>How many taps it takes to the one that is wanted where several stages are next; null where there is no such place.</summary>
    public PlaceRates? RatesForWanted => wanted.Rate();

    /// <summary>The stages that are next in places where neither they nor any before them may be told.</summary>
    public ImmutableArray<Bits> Untold { get; }

    /// <summary>Places that nothing tells apart: a stage that is next in each of them.</summary>
    public IEnumerable<ImmutableArray<int>> Lost =>
        from page in wanted.Pages
        from end in page.Lines.Select(each => each.To).Append(page.None).OfType<PlaceEnd.Lost>()
        let found = end.Places.Members().Where(place => Places[place].IsFound).ToArray()
        where found.Length > 0
        select found.SelectMany(place => Places[place].Next.Members().Take(1)).Distinct().Order().ToImmutableArray();

    /// <summary>The box in numbers.</summary>
    public Model.Machine Machine => standings.Things.Machine;

    /// <summary>Whether the pages were made from the box's own states.</summary>
    public bool Exact => standings.Exact;

    /// <summary>Builds the pages; null where no stage ever leads on.</summary>
    /// <param name="standings">Where a reader may stand.</param>
    /// <param name="survey">What is known of the stages.</param>
    /// <param name="said">By stage: the names that its title and its sign mention, in any language.</param>
    /// <param name="saidOf">By part and position: the names that the words for the position mention.</param>
    public static PlaceTree? Build(
        Standings standings,
        ImmutableDictionary<string, StageSurvey> survey,
        Func<int, IEnumerable<string>> said,
        Func<string, string, IEnumerable<string>> saidOf)
    {
        var machine = standings.Things.Machine;
        var known = KnownBy(standings.Things);
        var variables = machine.Variables.Select((variable, v) => (variable.Id, v)).ToDictionary(each => each.Id, each => each.v, StringComparer.Ordinal);
        int[][] named = [.. Enumerable.Range(0, machine.StageActs.Length).Select(stage => Secret(said(stage)))];
        var standIns = new StandIns(standings, survey, stage => named[stage], known);
        var (places, untold) = Merged(standings, standIns);
        if (places.IsEmpty)
            return null;
        var all = Bits.All(places.Length);
        var lines = Line.All(standings, places, KnowsWords, (place, v) => place.Known.Overlaps(known[v]));
        // The search tries less than all; it may then end with a tree that isn't better than the first that comes to hand.
        var (first, searched) = (Search(greedy: true), Search(greedy: false));
        var pages = (first.Worth(all) <= searched.Worth(all) ? first : searched).Pages(all);
        return new(standings, known, WantedStages.After(pages, places, standings, SearchForWanted), untold);

        PlaceSearch Search(bool greedy) => new(standings, places, lines, standIns.MayBeTold, set => LastDone(places, set), greedy);

        PlaceSearch SearchForWanted(ImmutableArray<Standing> each, ImmutableArray<Bits> open) => new(
            standings,
            each,
            Line.All(standings, each, KnowsWords, (place, v) => place.Known.Overlaps(known[v])),
            standIns.MayBeTold,
            set => LastDone(each, set),
            greedy: false,
            open);

        int[] Secret(IEnumerable<string> ids) =>
            [.. ids.Where(variables.ContainsKey).Select(id => variables[id]).Where(v => machine.Variables[v].Named is { Seen: false })];

        bool KnowsWords(Standing place, int v, int position) =>
            Array.TrueForAll(Secret(saidOf(machine.Variables[v].Id, machine.Variables[v].Positions[position])), other => place.Known.Overlaps(known[other]));

        int LastDone(ImmutableArray<Standing> places, Bits set)
        {
            var certain = Bits.All(standings.Things.Count);
            foreach (var place in set.Members())
                certain.And(places[place].Known);
            return Enumerable.Range(0, machine.StageActs.Length)
                .Where(stage => standIns.IsDone(certain, stage))
                .Where(stage => set.Members().All(place => standIns.MayBeTold(places[place], stage)))
                .OrderByDescending(stage => survey[machine.Book.Stages[stage].Id.Value].Layer)
                .ThenByDescending(stage => stage)
                .Append(-1)
                .First();
        }
    }

    /// <summary>The ids of the names that every reader of a page has met.</summary>
    public IEnumerable<string> NamesKnownTo(PlacePage page) =>
        Enumerable.Range(0, Machine.Variables.Length)
            .Where(v => Machine.Variables[v].Named is not null && page.Places.Members().All(place => wanted.StandingOf(page, place).Known.Overlaps(names[v])))
            .Select(v => Machine.Variables[v].Id);

    // By variable: what makes its name known once it is attained: of a part any position but the first, of a thing the hand.
    private static Bits[] KnownBy(Attainable things)
    {
        var machine = things.Machine;
        var by = machine.Variables.Select(_ => new Bits(things.Count)).ToArray();
        for (var v = 0; v < by.Length; v++)
        {
            if (machine.Variables[v].Named is not { } named)
                continue;
            for (var position = 0; position < machine.Variables[v].Positions.Length; position++)
                by[v][things.Of(v, position)] = named is Part ? position > 0 : machine.Variables[v].Positions[position] == named.Attained;
        }

        return by;
    }

    // Where no stage may be told a reader still reads the pages; those who stand there are led to any stage that may be told, if there is one.
    private static (ImmutableArray<Standing> Places, ImmutableArray<Bits> Untold) Merged(Standings standings, StandIns standIns)
    {
        var stages = standings.KnownWhereNext.Length;
        var untold = new HashSet<Bits>(Bits.ByContent);
        var merged = new Dictionary<string, Standing>(StringComparer.Ordinal);
        var order = new List<string>();
        foreach (var standing in standings.All)
        {
            var led = standIns.In(standing);
            var isFound = !led.IsEmpty;
            if (!isFound)
            {
                untold.Add(standing.Next);
                led = new Bits(stages);
                foreach (var stage in Enumerable.Range(0, stages).Where(stage => standIns.MayBeTold(standing, stage)))
                    led[stage] = true;
            }

            var sayable = standings.KnownWhereNext.Select((known, stage) => known.IsWithin(standing.Known) ? stage : -1).Where(stage => stage >= 0);
            var askable = standings.Asked.SelectMany(v => Enumerable.Range(0, standings.Things.Machine.Variables[v].Positions.Length)
                .Select(position => standings.Things.Of(v, position)).Where(number => standing.Known[number]));
            var key = $"{isFound}|{string.Join(' ', standing.Shows)}|{string.Join(' ', led.Members())}"
                + $"|{string.Join(' ', sayable)}|{string.Join(' ', askable)}";
            if (merged.TryGetValue(key, out var same))
            {
                merged[key] = same with { Weight = same.Weight + standing.Weight, Known = same.Known.Both(standing.Known) };
            }
            else
            {
                order.Add(key);
                merged.Add(key, standing with { Next = led, IsFound = isFound });
            }
        }

        return ([.. order.Select(key => merged[key])], [.. untold]);
    }

    // Walks every place through the pages, along every answer that is true there.
    private PlaceRates Rate()
    {
        var pages = wanted.Pages.ToDictionary(page => page.Places, Bits.ByContent);
        var (sum, weight, most, lost) = (0.0, 0.0, 0, 0.0);
        foreach (var (place, standing) in Places.Index())
        {
            var (taps, worst, found) = From(Pages[0], place);
            weight += standing.Weight;
            if (!found || !standing.IsFound)
                lost += standing.Weight;
            sum += standing.Weight * taps;
            most = Math.Max(most, worst);
        }

        return new(sum / weight, most, 1 - (lost / weight));

        (double Taps, int Most, bool Found) From(PlacePage page, int place)
        {
            if (Places[place].IsFound && page.Signs.Any(sign => Places[place].Next[sign]))
                return (1, 1, true);
            var (taps, ways, most, found) = (0.0, 0, 0, true);
            foreach (var (line, to) in page.Lines)
            {
                if (!line.True[place])
                    continue;
                Follow(to);
                if (!line.False[place])
                    return (taps / ways, most, found);
            }

            if (page.None is { } none)
                Follow(none);
            return (taps / Math.Max(1, ways), most, found && ways > 0);

            void Follow(PlaceEnd to)
            {
                var (under, worst, isFound) = to is PlaceEnd.ToPage next
                    ? From(pages[next.Places], place)
                    : (0, 0, to is PlaceEnd.ToStage stage && Places[place].Next[stage.Number]);
                (taps, ways, most, found) = (taps + 1 + under, ways + 1, Math.Max(most, 1 + worst), found && isFound);
            }
        }
    }
}

/// <summary>How good the pages of “where am I?” are.</summary>
/// <param name="Taps">The taps from the first page to a next stage, on average, weighted by the time that a solver stands there.</param>
/// <param name="Most">The most taps.</param>
/// <param name="Found">The share of a solver's time at which a next stage is found, from 0 to 1.</param>
internal sealed record PlaceRates(double Taps, int Most, double Found);
