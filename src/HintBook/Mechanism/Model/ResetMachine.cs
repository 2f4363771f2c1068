using HintBook.Books;

namespace HintBook.Mechanism.Model;

/// <summary>
/// The machine of putting back: the moves of <c>book.yaml</c>, free parts, ways back, what each <c>undo</c> says, and replacing what is used
/// up for good; its goal is the shipped box, whatever is known. Moves of stages are not part of it: resetting solves nothing again.
/// </summary>
internal static class ResetMachine
{
    /// <summary>The machine, for a box that is shipped in some positions.</summary>
    public static Machine Build(Book book, Machine machine, int[] shipped)
    {
        var numbers = machine.Variables.Select((v, i) => (v.Id, i)).DistinctBy(pair => pair.Id).ToDictionary(pair => pair.Id, pair => pair.i);
        var titles = book.Stages.DistinctBy(stage => stage.Id.Value).ToDictionary(stage => stage.Id.Value, stage => stage.Title.Value);
        var undos = book.Stages.SelectMany(stage => stage.Moves.Select((move, m) => (move, stage: (string?)stage.Id.Value, m)))
            .Concat(book.Box.Moves.Select((move, m) => (move, stage: (string?)null, m)))
            .Select(entry => PutBack(entry.move, entry.stage, entry.m))
            .OfType<Act>()
            .ToList();
        var mended = undos.SelectMany(act => act.Effects).Select(effect => effect.Variable).ToHashSet();
        var replaced = Enumerable.Range(0, machine.Variables.Length)
            .Where(v => machine.Variables[v].Gone >= 0 && !mended.Contains(v))
            .Select(Replace);
        return machine with
        {
            Acts = [.. machine.Acts.Where(act => act.Step.Kind != StepKind.StageMove).Concat(undos).Concat(replaced).Select(act => act with { Stage = -1 })],
            StageActs = [],
            Goal =
            [
                new Clause(
                [
                    .. Enumerable.Range(0, machine.Variables.Length)
                        .Where(v => !machine.Variables[v].IsKnowledge)
                        .Select(v => new Literal(v, 1UL << shipped[v])),
                ]),
            ],
        };

        Act? PutBack(Move move, string? stage, int number)
        {
            if (move.Undo is not { } undo)
                return null;
            var back = new SortedDictionary<int, int>();
            foreach (var effect in Compiler.Effects(undo.Changes, numbers, machine.Variables))
                back[effect.Variable] = effect.Position;
            foreach (var thing in undo.PutBack.Where(thing => numbers.ContainsKey(thing.Value)))
                back[numbers[thing.Value]] = 0;
            if (back.Count == 0)
                return null;
            var stands =
                from did in Compiler.Effects(move.Changes, numbers, machine.Variables)
                where back.ContainsKey(did.Variable)
                select new Literal(did.Variable, (1UL << did.Position) | (1UL << back[did.Variable]));
            var what = stage is null ? move.Name.Value : $"“{titles[stage]}”";
            var step = new Step
            {
                Kind = StepKind.PutBack,
                Says = undo.Note is { Length: > 0 } note ? $"undo {what}: {note}" : $"undo {what}",
                Stage = stage,
                Move = number,
                Leaves = [.. back.Select(b => new Placed(machine.Variables[b.Key].Id, machine.Variables[b.Key].Positions[b.Value]))],
            };
            return new Act(step, [new Clause([.. stands])], [.. back.Select(b => new Effect(b.Key, b.Value))], -1);
        }

        Act Replace(int v)
        {
            var variable = machine.Variables[v];
            var step = new Step { Kind = StepKind.Replace, Says = $"replace {variable.Named!.Name}", Leaves = [new Placed(variable.Id, variable.Positions[0])] };
            return new Act(step, [new Clause([new Literal(v, 1UL << variable.Gone)])], [new Effect(v, 0)], -1);
        }
    }
}
