using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Tours;

/// <summary>
/// The locks and latches of a box: whatever keeps a move from moving something, or a free part from moving, and can be tried by hand. That is a need for
/// the position of a part or a thing that the move itself doesn't move, or for a code that is set on a lock. What must be in the hand, such as a key, is one
/// where the move needs nothing else of that kind. What one only has to know can't be tried.
/// </summary>
/// <remarks>
/// When such a need alone is in the way is asked of the compiler: it is given the same moves once more without that need, behind those of the book.
/// </remarks>
internal sealed class Latches
{
    private readonly Book book;
    private readonly Dictionary<string, Named> named;
    private readonly List<(Step Of, int Variable, Condition? Lacks, Move Others, Move Needs)> found = [];

    private Latches(Book book)
    {
        this.book = book;
        named = book.Box.Names.DistinctBy(each => each.Id.Value).ToDictionary(each => each.Id.Value);
    }

    /// <summary>The duties: for each need one in which it alone is in the way, and for each move one in which any of them is.</summary>
    /// <param name="book">The book.</param>
    /// <param name="machine">Its machine.</param>
    public static ImmutableArray<Duty.Refuse> Of(Book book, Machine machine) => new Latches(book).Find(machine);

    private ImmutableArray<Duty.Refuse> Find(Machine machine)
    {
        var stages = ImmutableArray.CreateBuilder<Stage>();
        var first = new List<(int Stage, int Move)>();
        foreach (var stage in book.Stages.DistinctBy(stage => stage.Id.Value))
        {
            var from = found.Count;
            foreach (var (m, move) in stage.Moves.Index())
                Add(new Step { Kind = StepKind.StageMove, Says = move.Name.Value, Stage = stage.Id.Value, Move = m }, move);
            if (found.Count > from)
                stages.Add(Trying(stage, from));
        }

        var ofBook = found.Count;
        foreach (var (m, move) in book.Box.Moves.Index())
            Add(new Step { Kind = StepKind.BookMove, Says = move.Name.Value, Move = m }, move);
        foreach (var (v, variable) in machine.Variables.Index())
        {
            if (variable.Named is Part { Needs.IsEmpty: false } part && (part.Free || part.Turns))
                Add(v, part);
        }

        var box = book.Box with { Moves = [.. book.Box.Moves, .. found.Skip(ofBook).SelectMany(each => new[] { each.Others, each.Needs })] };
        var tried = Compiler.Compile(book with { Box = box, Stages = [.. book.Stages, .. stages] });
        if (tried.Refused is not null)
            return [];

        // Moves of stages come before those of the book, and ways back between them have steps of another kind.
        var extra = tried.Acts.Where(act => act.Step.Kind == StepKind.StageMove).Skip(book.Stages.Sum(stage => stage.Moves.Length))
            .Concat(tried.Acts.Where(act => act.Step.Kind == StepKind.BookMove).Skip(book.Box.Moves.Length)).ToArray();
        return
        [
            .. from latch in found.Index()
               let act = ActOf(machine, latch.Item.Of, latch.Item.Variable)
               where act >= 0
               let others = extra[2 * latch.Index].When
               where !others.IsEmpty
               select new Duty.Refuse(act, latch.Item.Variable, others, extra[(2 * latch.Index) + 1].When, latch.Item.Lacks),
        ];
    }

    private static int ActOf(Machine machine, Step of, int variable)
    {
        for (var a = 0; a < machine.Acts.Length; a++)
        {
            var (step, effects) = (machine.Acts[a].Step, machine.Acts[a].Effects);
            if (variable < 0 ? step.Kind == of.Kind && step.Stage == of.Stage && step.Move == of.Move
                : step.Kind == StepKind.FreeMove && effects[0].Variable == variable)
                return a;
        }

        return -1;
    }

    private Stage Trying(Stage stage, int from) => stage with
    {
        Id = stage.Id with { Value = $"{stage.Id.Value}/tried" },
        Moves = [.. found.Skip(from).SelectMany(each => new[] { each.Others, each.Needs })],
    };

    private void Add(Step of, Move move)
    {
        if (move.Changes.Any(change => named.GetValueOrDefault(change.Name.Value) is Part or Thing))
            Add(of, -1, move with { Reversible = false, Undo = null }, move.Changes.Select(change => change.Name.Value).ToHashSet());
    }

    // What the part lies behind must hold, as if it were a need: no hand gets at it otherwise.
    private void Add(int variable, Part part)
    {
        var move = new Move { Name = part.Id, Needs = [.. part.Needs, .. part.Behind ?? []], FromOutside = true };
        Add(new Step { Kind = StepKind.FreeMove, Says = part.Name }, variable, move, [part.Id.Value], part.Needs.Length);
    }

    private void Add(Step of, int variable, Move move, HashSet<string> moved, int most = int.MaxValue)
    {
        var all = move.Needs.Index().Where(need => need.Index < most && CanBeTried(need.Item, moved)).ToArray();
        var fixedOnBox = Array.FindAll(all, need => !IsInHand(need.Item));
        var needs = fixedOnBox.Length > 0 ? fixedOnBox : all;
        foreach (var (index, need) in needs)
            found.Add((of, variable, need, move with { Needs = move.Needs.RemoveAt(index) }, Asking(move, [need])));
        if (needs.Length < 2)
            return;
        ImmutableArray<Condition> rest = [.. move.Needs.Index().Where(each => !needs.Contains(each)).Select(each => each.Item)];
        found.Add((of, variable, null, move with { Needs = rest }, Asking(move, [.. needs.Select(need => need.Item)])));
    }

    private static Move Asking(Move move, ImmutableArray<Condition> needs) => move with { Needs = needs, Changes = [], FromOutside = true };

    private bool CanBeTried(Condition need, HashSet<string> moved) => need switch
    {
        InPosition one => !moved.Contains(one.Name.Value) && named.GetValueOrDefault(one.Name.Value) is Part or Thing or Code { Lock: not null },
        AnyOf any => any.Alternatives.All(each => each.Any(one => CanBeTried(one, moved))) && !Moves(any, moved),
        _ => false,
    };

    private bool IsInHand(Condition need) => need is InPosition { Name: var name, Positions: var positions } && named[name.Value] is Thing
        && (positions.IsEmpty || positions.All(position => position.Value == Thing.InHand));

    private static bool Moves(Condition need, HashSet<string> moved) => need switch
    {
        InPosition one => moved.Contains(one.Name.Value),
        AnyOf any => any.Alternatives.SelectMany(each => each).Any(one => Moves(one, moved)),
        _ => false,
    };
}
