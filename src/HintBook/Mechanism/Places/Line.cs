using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism.Answers;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Places;

/// <summary>What a line says of a name.</summary>
internal enum LineSays
{
    /// <summary>It has the position.</summary>
    Is,

    /// <summary>It hasn't the position any more.</summary>
    IsNot,

    /// <summary>It can't be seen now.</summary>
    OutOfSight,
}

/// <summary>Something that a reader can look at and say whether it is so.</summary>
/// <param name="Variable">The name that it is about.</param>
/// <param name="Position">The position that is meant.</param>
/// <param name="Says">What it says of the position.</param>
internal sealed record Line(int Variable, int Position, LineSays Says)
{
    /// <summary>Where it is true, or may be, among the places.</summary>
    public required Bits True { get; init; }

    /// <summary>Where it is false, or may be: both where the position isn't known.</summary>
    public required Bits False { get; init; }

    /// <summary>Where it tells nothing that isn't known.</summary>
    public required Bits MayBeAsked { get; init; }

    /// <summary>Every line that may be asked somewhere, in the order of the names.</summary>
    /// <param name="standings">The box.</param>
    /// <param name="places">Where readers may stand.</param>
    /// <param name="knowsWords">Whether the words for a position tell nothing new in a place.</param>
    /// <param name="knowsName">Whether the name of a variable is known in a place.</param>
    public static ImmutableArray<Line> All(
        Standings standings, ImmutableArray<Standing> places, Func<Standing, int, int, bool> knowsWords, Func<Standing, int, bool> knowsName)
    {
        var machine = standings.Things.Machine;
        var apart = new ToldApart(machine.Book);
        var lines = ImmutableArray.CreateBuilder<Line>();
        foreach (var (number, v) in standings.Asked.Index())
        {
            if (machine.Variables[v].Named is Part part)
                OfPart(number, v, part);
            else if (machine.Variables[v].Positions.IndexOf(Thing.InHand) is >= 0 and var held)
                OfThing(number, v, held);
        }

        return [.. lines.Where(line => !line.True.IsEmpty && !line.False.IsEmpty && !line.MayBeAsked.IsEmpty)];

        void OfPart(int number, int v, Part part)
        {
            var named = Where(place => part.Seen || knowsName(place, v));
            Add(number, v, 0, LineSays.Is, named.Both(Where(place => knowsWords(place, v, 0))));
            Add(number, v, 0, LineSays.IsNot, named);
            if (!part.Seen)
                Add(number, v, 0, LineSays.OutOfSight, named);
            for (var position = 1; position < machine.Variables[v].Positions.Length; position++)
            {
                var written = machine.Variables[v].Positions[position];
                if (part.Details.GetValueOrDefault(written) is not { Says: not null } details || !apart.IsOne(part, written))
                    continue;
                var at = position;
                Add(number, v, at, LineSays.Is, named.Both(Where(place => details.Seen || Knows(place, v, at))));
            }
        }

        // A thing that is in nobody's hand at first may be named once it has been in everybody's.
        void OfThing(int number, int v, int held)
        {
            var named = Where(place => machine.Variables[v].Named is { Seen: true } || Knows(place, v, held));
            Add(number, v, held, LineSays.Is, named);
            Add(number, v, held, LineSays.IsNot, named);
        }

        bool Knows(Standing place, int v, int position) => place.Known[standings.Things.Of(v, position)] && knowsWords(place, v, position);

        void Add(int number, int v, int position, LineSays says, Bits may) => lines.Add(new(v, position, says)
        {
            True = Where(place => MayBe(place.Shows[number], position, says)),
            False = Where(place => MayBeNot(place.Shows[number], position, says)),
            MayBeAsked = may,
        });

        Bits Where(Func<Standing, bool> holds)
        {
            var set = new Bits(places.Length);
            for (var place = 0; place < places.Length; place++)
                set[place] = holds(places[place]);
            return set;
        }
    }

    private static bool MayBe(int shown, int position, LineSays says) => (shown, says) switch
    {
        (Standing.Unknown, _) => says != LineSays.OutOfSight,
        (Standing.OutOfSight, _) => says == LineSays.OutOfSight,
        (_, LineSays.OutOfSight) => false,
        (Standing.Moved, LineSays.Is) => position != 0,
        (Standing.Moved, _) => true,
        (_, LineSays.Is) => shown == position,
        _ => shown != position,
    };

    private static bool MayBeNot(int shown, int position, LineSays says) => (shown, says) switch
    {
        (Standing.Unknown, _) => true,
        (Standing.OutOfSight, _) => says != LineSays.OutOfSight,
        (_, LineSays.OutOfSight) => true,
        (Standing.Moved, LineSays.Is) => true,
        (Standing.Moved, _) => position != 0,
        (_, LineSays.Is) => shown != position,
        _ => shown == position,
    };
}
