using HintBook.Books;

namespace HintBook.Mechanism.Graph;

/// <summary>Explains in a sentence why something can't be gained: what waits for what, until nothing gives it or a circle closes.</summary>
internal static class Waiting
{
    /// <summary>How many links of a chain are told; more don't help anybody.</summary>
    private const int MostLinks = 8;

    /// <summary>The first gain that a want lacks.</summary>
    public static int? Lacking(Want want, Spread whole) => want switch
    {
        GainWanted one => whole.Has(one.Gain) ? null : one.Gain,
        AllWanted all => all.Wants.Select(part => Lacking(part, whole)).FirstOrDefault(gain => gain is not null),
        AnyWanted any when whole.Holds(any) => null,
        AnyWanted any => any.Wants.Select(part => Lacking(part, whole)).FirstOrDefault(gain => gain is not null),
        _ => null,
    };

    /// <summary>The chain from one gain on, as sentences that follow "It waits for …".</summary>
    public static string Explain(GainGraph graph, Spread whole, int gain)
    {
        var told = new List<int>();
        var sentence = $"It waits for {Described(graph, gain)}";
        for (var here = gain; ;)
        {
            told.Add(here);
            var giver = graph.Steps.FirstOrDefault(step => step.Gains.Contains(here) && Lacking(step.Wants, whole) is not null);
            if (giver is null)
                return $"{sentence}, which nothing in the book gives.";
            var next = Lacking(giver.Wants, whole)!.Value;
            var closes = told.Contains(next);
            sentence += $"; that comes from {giver.Described}, which {(closes ? "again " : "")}waits for {Described(graph, next)}";
            if (closes)
                return sentence + Circle(graph, told[told.IndexOf(next)..]);
            if (told.Count == MostLinks)
                return sentence + ", and so on.";
            here = next;
        }
    }

    /// <summary>A gain as people would say it.</summary>
    public static string Described(GainGraph graph, int number)
    {
        var gain = graph[number];
        if (gain.Position is null)
            return $"the stage `{gain.Name}`";
        return graph.Names.GetValueOrDefault(gain.Name) switch
        {
            Thing when gain.Position == Thing.InHand => $"`{gain.Name}` in hand",
            Fact or Code => $"`{gain.Name}` to be known",
            _ => $"`{gain.Name}` to be {gain.Position}",
        };
    }

    private static string Circle(GainGraph graph, List<int> circle) => circle.Count == 1
        ? $". So `{graph[circle[0]].Name}` is behind the lock that it opens."
        : $". So each is behind the lock that it opens: {string.Join(" ← ", circle.Append(circle[0]).Select(gain => $"`{graph[gain].Name}`"))}.";
}
