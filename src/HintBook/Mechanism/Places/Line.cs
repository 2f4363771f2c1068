using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism.Answers;

namespace HintBook.Mechanism.Places;

/// <summary>Something that a reader can look at and say whether it is so.</summary>
/// <param name="Variable">The name that it is about.</param>
/// <param name="Position">The position that it has.</param>
/// <param name="Is">Whether it has that position, or has it not any more.</param>
internal sealed record Line(int Variable, int Position, bool Is)
{
    /// <summary>Where it is true, among the places.</summary>
    public required Bits True { get; init; }

    /// <summary>Where it tells nothing that isn't known.</summary>
    public required Bits MayBeAsked { get; init; }

    /// <summary>Every line that may be asked somewhere, in the order of the names.</summary>
    /// <param name="standings">The box.</param>
    /// <param name="places">Where readers may stand.</param>
    /// <param name="knowsWords">Whether the words for a position tell nothing new in a place.</param>
    public static ImmutableArray<Line> All(Standings standings, ImmutableArray<Standing> places, Func<Standing, int, int, bool> knowsWords)
    {
        var lines = ImmutableArray.CreateBuilder<Line>();
        foreach (var (number, v) in standings.Asked.Index())
        {
            var variable = standings.Things.Machine.Variables[v];
            if (variable.Named is Part part)
            {
                Add(number, v, 0, Everywhere(v, 0));
                Add(number, v, 0, Bits.All(places.Length), not: true);
                for (var position = 1; position < variable.Positions.Length; position++)
                {
                    var details = part.Details.GetValueOrDefault(variable.Positions[position]);
                    if (details?.Says is not null)
                        Add(number, v, position, details.Seen ? Bits.All(places.Length) : Known(v, position));
                }
            }
            else if (variable.Positions.IndexOf(Thing.InHand) is >= 0 and var held)
            {
                // A thing that is in nobody's hand at first may be named once it has been in everybody's.
                var may = variable.Named is { Seen: true } ? Bits.All(places.Length) : Known(v, held);
                Add(number, v, held, may);
                Add(number, v, held, may, not: true);
            }
        }

        return [.. lines.Where(line => !line.True.IsEmpty && line.True.Count() < places.Length && !line.MayBeAsked.IsEmpty)];

        void Add(int number, int v, int position, Bits may, bool not = false)
        {
            var holds = new Bits(places.Length);
            for (var place = 0; place < places.Length; place++)
                holds[place] = MayBe(places[place].Shows[number], position, !not);
            lines.Add(new(v, position, !not) { True = holds, MayBeAsked = may });
        }

        Bits Known(int v, int position)
        {
            var known = new Bits(places.Length);
            for (var place = 0; place < places.Length; place++)
                known[place] = places[place].Known[standings.Things.Of(v, position)] && knowsWords(places[place], v, position);
            return known;
        }

        // The words for how a part came are shown as long as they name nothing that isn't known.
        Bits Everywhere(int v, int position)
        {
            var known = new Bits(places.Length);
            for (var place = 0; place < places.Length; place++)
                known[place] = knowsWords(places[place], v, position);
            return known;
        }
    }

    /// <summary>Where it may be false: where the position isn't known, it may be true and false.</summary>
    /// <param name="standings">The box.</param>
    /// <param name="places">Where readers may stand.</param>
    public Bits MayBeFalse(Standings standings, ImmutableArray<Standing> places)
    {
        var number = standings.Asked.IndexOf(Variable);
        var holds = new Bits(places.Length);
        for (var place = 0; place < places.Length; place++)
            holds[place] = MayBe(places[place].Shows[number], Position, !Is);
        return holds;
    }

    private static bool MayBe(int shown, int position, bool wanted) => shown switch
    {
        Standing.Unknown => true,
        Standing.Moved => wanted ? position != 0 : true,
        _ => shown == position == wanted,
    };
}
