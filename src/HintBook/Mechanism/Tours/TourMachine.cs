using System.Collections.Immutable;
using System.Runtime.InteropServices;
using HintBook.Books;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Tours;

/// <summary>One handling of a walk.</summary>
/// <param name="Act">The act that is made.</param>
/// <param name="Refused">The duty for whose sake it is tried and must not be possible; -1 where it is made.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Handling(int Act, int Refused = -1)
{
    /// <summary>Whether the box must hold.</summary>
    public bool MustHold => Refused >= 0;
}

/// <summary>What a handling makes of a state.</summary>
/// <param name="Handling">The handling.</param>
/// <param name="Next">The state after it.</param>
/// <param name="Own">The duty that it does itself, or -1.</param>
/// <param name="Seen">The duties that its reactions do.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Deed(Handling Handling, int[] Next, int Own, ImmutableArray<int> Seen);

/// <summary>A box with all that can be done to it, putting back included, and what a test walk has to do.</summary>
internal sealed class TourMachine
{
    private readonly Stepper stepper;
    private readonly int[] makes;
    private readonly int[] sees;
    private readonly Dictionary<(int Variable, int Position), int> stands = [];
    private readonly (int Number, Duty.Refuse Duty)[] refusals;

    /// <summary>Prepares a box.</summary>
    /// <param name="book">The book.</param>
    /// <param name="machine">Its machine, which isn't refused.</param>
    /// <param name="shipped">The box as shipped, at rest.</param>
    public TourMachine(Book book, Machine machine, int[] shipped)
    {
        Back = ResetMachine.Build(book, machine, shipped);
        Start = ResetMachine.StateOf(Back, shipped);
        stepper = new Stepper(Back);
        Forward = machine.Acts.Length;
        var duties = ImmutableArray.CreateBuilder<Duty>();
        makes = new int[Back.Acts.Length];
        Array.Fill(makes, -1);
        for (var a = 0; a < Forward; a++)
        {
            if (Back.Acts[a].Step.Kind is StepKind.StageMove or StepKind.BookMove)
                makes[a] = Add(new Duty.Make(a));
            else if (Back.Acts[a] is { Step.Kind: StepKind.FreeMove, Effects: [var effect] } && !stands.ContainsKey((effect.Variable, effect.Position)))
                stands[(effect.Variable, effect.Position)] = Add(new Duty.Stand(effect.Variable, effect.Position));
        }

        sees = [.. Back.Rules.Select((_, r) => Add(new Duty.See(r)))];
        refusals = [.. Latches.Of(book, machine).Select(Moving).Select(latch => (Add(latch), latch))];
        Duties = duties.ToImmutable();

        int Add(Duty duty)
        {
            duties.Add(duty);
            return duties.Count - 1;
        }

        Duty.Refuse Moving(Duty.Refuse latch) => latch.Variable >= 0 ? latch : latch with { Moves = MovedBy(latch.Act) };
    }

    /// <summary>The machine of putting back: all moves, free parts, ways back, undos, and replacing what is used up.</summary>
    public Machine Back { get; }

    /// <summary>The box as shipped.</summary>
    public int[] Start { get; }

    /// <summary>How many of the acts a solver can make; the others put back.</summary>
    public int Forward { get; }

    /// <summary>What a walk has to do, as far as it can be done.</summary>
    public ImmutableArray<Duty> Duties { get; }

    /// <summary>Whether the box is as shipped.</summary>
    public bool IsHome(int[] state) => Stepper.Holds(Back.Goal, state);

    /// <summary>Whether an act uses something up.</summary>
    public bool UsesUp(int act) => Back.Acts[act].Effects.Any(effect => effect.Position == Back.Variables[effect.Variable].Gone);

    /// <summary>What an act moves, apart from what somebody learns.</summary>
    public ImmutableArray<Effect> MovedBy(int act) => [.. Back.Acts[act].Effects.Where(effect => !Back.Variables[effect.Variable].IsKnowledge)];

    /// <summary>The duty that an act itself does wherever it moves something, or -1.</summary>
    public int DutyOf(int act) => makes[act] >= 0 ? makes[act]
        : Back.Acts[act] is { Step.Kind: StepKind.FreeMove, Effects: [var only] } ? stands[(only.Variable, only.Position)]
        : -1;

    /// <summary>All that can be tried now, those that must hold first; what changes nothing and does no duty is left out.</summary>
    /// <param name="state">How the box stands.</param>
    public IEnumerable<Deed> Deeds(int[] state)
    {
        foreach (var deed in Tries(state))
            yield return deed;
        var happened = new List<int>();
        for (var act = 0; act < Back.Acts.Length; act++)
        {
            if (Made(act, state, happened) is { } deed && (deed.Own >= 0 || !deed.Next.AsSpan().SequenceEqual(state)))
                yield return deed;
        }
    }

    /// <summary>All that can be tried now and must hold.</summary>
    public IEnumerable<Deed> Tries(int[] state)
    {
        foreach (var (number, duty) in refusals)
        {
            if (Tried(number, duty, state) is { } deed)
                yield return deed;
        }
    }

    /// <summary>What a handling makes of a state; null if it isn't possible, or possible where it must not be.</summary>
    public Deed? Do(Handling handling, int[] state) => handling.MustHold
        ? Duties[handling.Refused] is Duty.Refuse duty && Tried(handling.Refused, duty, state) is { } deed && deed.Handling == handling ? deed : null
        : Made(handling.Act, state, []);

    /// <summary>The end of a walk and the duties that it does; null if one of its handlings isn't possible.</summary>
    public (int[] End, bool[] Done)? Follow(IEnumerable<Handling> walk)
    {
        var (state, done) = (Start, new bool[Duties.Length]);
        foreach (var handling in walk)
        {
            if (Do(handling, state) is not { } deed)
                return null;
            Mark(deed, done);
            state = deed.Next;
        }

        return (state, done);
    }

    /// <summary>Notes what a deed does.</summary>
    public static void Mark(Deed deed, bool[] done)
    {
        if (deed.Own >= 0)
            done[deed.Own] = true;
        foreach (var seen in deed.Seen)
            done[seen] = true;
    }

    private Deed? Tried(int number, Duty.Refuse duty, int[] state)
    {
        if (!IsAtRest(state) || !duty.Holds(state))
            return null;
        if (duty.Variable < 0)
            return new(new(duty.Act, number), state, number, []);

        // A part is tried to be moved from where it stands to the first position that it could go to.
        for (var act = duty.Act; act < Forward; act++)
        {
            var (step, effects) = (Back.Acts[act].Step, Back.Acts[act].Effects);
            if (step.Kind == StepKind.FreeMove && effects[0].Variable == duty.Variable && effects[0].Position != state[duty.Variable]
                && (Back.Acts[act].When.IsEmpty || Back.Acts[act].When.Any(clause =>
                    clause.Literals.All(each => each.Variable != duty.Variable || each.Takes(state[duty.Variable])))))
                return new(new(act, number), state, number, []);
        }

        return null;
    }

    private Deed? Made(int act, int[] state, List<int> happened)
    {
        if (!Stepper.Holds(Back.Acts[act].When, state))
            return null;
        happened.Clear();
        if (stepper.After(act, state, happened) is not { } next)
            return null;
        return new(new(act), next, OwnOf(act, state), happened.Count == 0 ? [] : [.. happened.Select(rule => sees[rule]).Distinct()]);
    }

    // A move that moves nothing any more hasn't been tested by it. Some moves only tell something.
    private int OwnOf(int act, int[] state)
    {
        var (moves, changes) = (false, false);
        foreach (var effect in Back.Acts[act].Effects)
        {
            if (Back.Variables[effect.Variable].IsKnowledge)
                continue;
            moves = true;
            changes |= state[effect.Variable] != effect.Position && effect.Applies(state[effect.Variable]);
        }

        return moves && !changes ? -1 : DutyOf(act);
    }

    // Between the steps of an undo nothing else is done.
    private bool IsAtRest(int[] state)
    {
        for (var v = Back.Variables.Length - 1; v >= 0 && Back.Variables[v] is { Named: null, Id: "undo/which" or "undo/step" }; v--)
        {
            if (state[v] != 0)
                return false;
        }

        return true;
    }
}
