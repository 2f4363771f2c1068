using HintBook.Books;

namespace HintBook.Mechanism.Graph;

/// <summary>What a want still lacks, and how people would say it.</summary>
internal static class Lack
{
    /// <summary>The first gain that a want lacks.</summary>
    public static int? In(Want want, GainReachability whole) => want switch
    {
        GainWanted one => whole.Has(one.Gain) ? null : one.Gain,
        AllWanted all => all.Wants.Select(part => In(part, whole)).FirstOrDefault(gain => gain is not null),
        AnyWanted any when whole.Holds(any) => null,
        AnyWanted any => any.Wants.Select(part => In(part, whole)).FirstOrDefault(gain => gain is not null),
        _ => null,
    };

    /// <summary>A gain as people would say it.</summary>
    public static string Described(GainGraph graph, int number)
    {
        var gain = graph[number];
        if (gain.Position is null)
            return $"the stage “{gain.Name}”";
        return graph.Names.GetValueOrDefault(gain.Name) switch
        {
            Thing when gain.Position == Thing.InHand => $"“{gain.Name}” in hand",
            Fact or Code => $"“{gain.Name}” to be known",
            _ => $"“{gain.Name}” to be {gain.Position}",
        };
    }
}
