using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Mechanism.Tours;

/// <summary>Carries a walk out by the second program, and tells what moves at each handling as that one saw it.</summary>
internal static class WalkReplay
{
    /// <summary>The walk's steps.</summary>
    /// <param name="book">The book.</param>
    /// <param name="machine">The box as it was planned for.</param>
    /// <param name="walk">The handlings.</param>
    /// <param name="home">Whether the box must be as shipped at the end.</param>
    /// <exception cref="InvalidOperationException">The second program finds otherwise: a mistake in one of the two.</exception>
    public static ImmutableArray<WalkStep> Of(Book book, TourMachine machine, List<Handling> walk, bool home)
    {
        var box = new Replayer(book);
        var told = book.Box.Parts.Select(part => part.Id.Value).Concat(book.Box.Things.Select(thing => thing.Id.Value)).ToHashSet();
        var (done, steps, state) = (new bool[machine.Duties.Length], ImmutableArray.CreateBuilder<WalkStep>(), machine.Start);
        foreach (var handling in walk)
        {
            var deed = machine.Do(handling, state) ?? throw new InvalidOperationException("a walk isn't possible");
            var (step, before) = (machine.Back.Acts[handling.Act].Step, box.Positions);
            var tests = (deed.Own >= 0 && !done[deed.Own]) || deed.Seen.Any(seen => !done[seen]);
            TourMachine.Mark(deed, done);
            state = deed.Next;
            var why = box.Make(step);
            if ((why is not null) != handling.MustHold || (handling.MustHold && !box.Positions.SequenceEqual(before)))
                throw new InvalidOperationException($"a test walk does not replay: {step.Says}: {why ?? "it gave way"}");
            steps.Add(handling.MustHold ? Held(machine, handling, step) : new()
            {
                Step = step,
                MustHold = false,
                Tests = tests,
                ByHand = Told(box.ByHand),
                ByItself = Told(box.Positions.Where(each => box.Moved.Contains(each.Key) && box.ByHand.GetValueOrDefault(each.Key) != each.Value)),
                UsesUp = [.. Told(box.ByHand).Where(placed => placed.Position == Thing.UsedUp).Select(placed => placed.Name)],
            });
        }

        if (home && !box.Shipped)
            throw new InvalidOperationException("a test walk does not replay: the box isn't as shipped");
        return steps.ToImmutable();

        ImmutableArray<Placed> Told(IEnumerable<KeyValuePair<string, string>> places) =>
        [
            .. places.Where(each => told.Contains(each.Key)).OrderBy(each => each.Key, StringComparer.Ordinal)
                .Select(each => new Placed(each.Key, each.Value)),
        ];
    }

    private static WalkStep Held(TourMachine machine, Handling handling, Step step) => new()
    {
        Step = step,
        MustHold = true,
        Lacks = machine.Duties[handling.Refused] is Duty.Refuse { Lacks: { } lacks } ? [lacks] : [],
        Tests = true,
    };
}
