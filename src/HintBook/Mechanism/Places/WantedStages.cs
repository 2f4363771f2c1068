using System.Collections.Immutable;
using HintBook.Mechanism.Answers;

namespace HintBook.Mechanism.Places;

/// <summary>
/// Readers before whom several stages are open, and who want one of them: pages behind “one is true, but I'm after another”. Here a place is where a
/// reader stands together with the stage that they want.
/// </summary>
internal sealed class WantedStages
{
    // Each takes room in every line of a page; boxes with more lead to a stage that is next, whichever it is.
    private const int MostPairs = 20_000;

    private readonly ImmutableArray<(int Place, int Stage)> pairs;
    private readonly ImmutableArray<Standing> standings;
    private readonly Dictionary<(int Place, int Stage), int> numbers;

    private WantedStages(ImmutableArray<PlacePage> pages, ImmutableArray<Standing> places, ImmutableArray<(int Place, int Stage)> pairs)
    {
        (Pages, Places, this.pairs) = (pages, places, pairs);
        standings = [.. pairs.Select(pair => places[pair.Place] with
        {
            Next = Bits.With(places[pair.Place].Next.Size, pair.Stage),
            Weight = places[pair.Place].Weight / places[pair.Place].Next.Count(),
        })];
        numbers = pairs.Index().ToDictionary(each => each.Item, each => each.Index);
    }

    /// <summary>The pages that lead to a stage that is next, the first first, each with where those go on who want another.</summary>
    public ImmutableArray<PlacePage> Pages { get; private set; }

    /// <summary>The pages that lead to a wanted stage.</summary>
    public ImmutableArray<PlacePage> PagesForWanted { get; private set; } = [];

    /// <summary>Where readers may stand.</summary>
    public ImmutableArray<Standing> Places { get; }

    /// <summary>Adds the pages for wanted stages to those that lead to any stage that is next.</summary>
    /// <param name="pages">The pages, the first first.</param>
    /// <param name="places">Where readers may stand.</param>
    /// <param name="box">The box.</param>
    /// <param name="search">Makes a search among places, each with one stage, and by place all stages that are next there.</param>
    public static WantedStages After(
        ImmutableArray<PlacePage> pages,
        ImmutableArray<Standing> places,
        Standings box,
        Func<ImmutableArray<Standing>, ImmutableArray<Bits>, PlaceSearch> search)
    {
        ImmutableArray<(int, int)> all =
        [
            .. from each in places.Index()
               where each.Item.IsFound && each.Item.Next.Count() > 1
               from stage in each.Item.Next.Members()
               select (each.Index, stage),
        ];
        // Only where every state was looked at is it sure who doesn't take a sign for theirs.
        var wanted = new WantedStages(pages, places, box.Exact && all.Length <= MostPairs ? all : []);
        if (!wanted.pairs.IsEmpty)
            wanted.Lead(search(wanted.standings, [.. wanted.pairs.Select(pair => places[pair.Place].Next)]));
        return wanted;
    }

    /// <summary>Who stands at a place of a page.</summary>
    public Standing StandingOf(PlacePage page, int place) => page.ForWanted ? standings[place] : Places[place];

    /// <summary>The taps to the wanted stage where several are next; null where there is no such place.</summary>
    public PlaceRates? Rate()
    {
        if (pairs.IsEmpty)
            return null;
        var any = Pages.ToDictionary(page => page.Places, Bits.ByContent);
        var exact = PagesForWanted.ToDictionary(page => page.Places, Bits.ByContent);
        var (sum, weight, most, lost) = (0.0, 0.0, 0, 0.0);
        foreach (var (number, standing) in standings.Index())
        {
            var (taps, found) = From(Pages[0], number);
            weight += standing.Weight;
            if (!found)
            {
                lost += standing.Weight;
                continue;
            }

            sum += standing.Weight * taps;
            most = Math.Max(most, taps);
        }

        return new(sum / Math.Max(weight - lost, double.Epsilon), most, 1 - (lost / weight));

        (int Taps, bool Found) From(PlacePage page, int pair)
        {
            var (place, stage) = pairs[pair];
            if (page.Signs.Contains(stage))
                return (1, true);
            if (page.Signs.Any(sign => Places[place].Next[sign]))
                return Behind(page.Other, pair);
            var at = page.ForWanted ? pair : place;
            var to = page.Lines.Where(each => each.Line.True[at]).Select(each => each.To).FirstOrDefault() ?? page.None;
            if (to is not PlaceEnd.ToStage(var other) || other == stage)
                return Behind(to, pair);
            var (taps, found) = page.ForWanted ? default : Behind(page.Other, pair);
            return (taps + 1, found);
        }

        (int Taps, bool Found) Behind(PlaceEnd? to, int pair)
        {
            if (to is not PlaceEnd.ToPage(var places, var forWanted))
                return (1, to is PlaceEnd.ToStage(var stage) && stage == pairs[pair].Stage);
            var (taps, found) = From((forWanted ? exact : any)[places], pair);
            return (taps + 1, found);
        }
    }

    private void Lead(PlaceSearch search)
    {
        Bits[] others = [.. Pages.Select(LedElsewhere)];
        PagesForWanted = search.PagesFrom(others, PlaceSearch.WantedTaps - 1);
        Pages = [.. Pages.Zip(others, (page, other) => page with { Other = other.IsEmpty ? null : search.EndOf(other) })];
    }

    // Readers whom an answer of a page leads straight to a stage that isn't the one they want.
    private Bits LedElsewhere(PlacePage page)
    {
        var others = new Bits(pairs.Length);
        foreach (var place in page.Places.Members())
        {
            if (!Places[place].IsFound || Places[place].Next.Count() < 2)
                continue;
            int[] ends = page.Signs.Any(sign => Places[place].Next[sign])
                ? [.. page.Signs.Where(sign => Places[place].Next[sign])]
                : (page.Lines.Where(each => each.Line.True[place]).Select(each => each.To).FirstOrDefault() ?? page.None) is PlaceEnd.ToStage(var end)
                    ? [end]
                    : [];
            foreach (var stage in ends.Length == 0 ? [] : Places[place].Next.Members().Except(ends))
                others[numbers[(place, stage)]] = true;
        }

        return others;
    }
}
