using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Spoilers;

namespace HintBook.Pages;

/// <summary>
/// The plan as lines. A step that does several things at once becomes several lines, in an order in which hands get at each of them; what the
/// author's sentence names needs no line of its own.
/// </summary>
internal sealed class ResetLines
{
    private readonly Book book;
    private readonly Dictionary<string, Stage> stages;
    private readonly Untranslated untranslated;
    private readonly HashSet<string> things;
    private readonly Dictionary<string, string> shipped;
    private readonly NamesSaid said;
    private readonly NamesSaid saidInSource;

    /// <summary>Prepares it.</summary>
    public ResetLines(Book book)
    {
        (this.book, untranslated) = (book, Untranslated.In(book));
        stages = book.Stages.DistinctBy(stage => stage.Id.Value).ToDictionary(stage => stage.Id.Value);
        things = [.. book.Box.Things.Select(thing => thing.Id.Value)];
        shipped = book.Box.Names.DistinctBy(named => named.Id.Value).ToDictionary(named => named.Id.Value, named => named.Positions[0]);
        Named[] names = [.. book.Box.Parts, .. book.Box.Things];
        said = new(names, book.Language.Value);
        saidInSource = book.Source is { } source ? new(names, source.Language.Value) : said;
    }

    /// <summary>The lines of a plan, in its order.</summary>
    public ImmutableArray<ResetLine> Of(ResetPlan plan)
    {
        var box = new Replayer(book);
        Follow(box, plan.From);
        var lines = ImmutableArray.CreateBuilder<ResetLine>();
        foreach (var step in plan.Plan)
        {
            var before = step.Leaves.Length > 1 ? box.AsItStands() : null;
            Follow(box, [step]);
            foreach (var line in InStep(step, before, box))
            {
                if (lines is [.., var last] && GoesOn(last, line))
                    lines.RemoveAt(lines.Count - 1);
                lines.Add(line);
            }
        }

        return lines.ToImmutable();
    }

    // A part that is turned twice, with nothing else moving, is turned once to where it ends.
    private static bool GoesOn(ResetLine first, ResetLine then) =>
        first is { Step.Kind: StepKind.FreeMove, Labels: [var from], Moved.Length: 1 }
        && then is { Step.Kind: StepKind.FreeMove, Labels: [var to] } && from.Name == to.Name;

    /// <summary>The lines of a stage by themselves, as its undos are written from the last to the first: where there is no plan.</summary>
    public IEnumerable<ResetLine> Of(Stage stage) =>
        from undo in ResetNotes.UndosOf(stage).Reverse()
        from step in undo.Steps
        from line in Parts(step, [.. Written(step)], stage)
        select line;

    private static void Follow(Replayer box, IEnumerable<Step> steps)
    {
        if (box.Follow(steps) is { } why)
            throw new InvalidOperationException($"a reset plan does not replay: {why}");
    }

    private ImmutableArray<ResetLine> InStep(Step step, Replayer? before, Replayer after)
    {
        var stage = step.Stage is null ? null : stages[step.Stage];
        if (step.Kind is StepKind.StageMove or StepKind.BookMove)
            return [new() { Step = step, Stage = stage, Moved = [.. after.Moved.Order(StringComparer.Ordinal)] }];
        var undo = step.Kind == StepKind.PutBack ? ResetNotes.UndoOf(book.Box, stages, step) : null;
        ImmutableArray<Placed> moved =
        [
            .. (undo is null ? step.Leaves : Written(undo)).Where(placed => after.ByHand.TryGetValue(placed.Name, out var to) && to == placed.Position),
        ];
        ImmutableArray<ResetLine> parts = [.. Parts(undo, moved, stage).Select(line => line with { Step = step })];
        var hands = parts.Where(line => !line.IsOnlyHow).ToImmutableArray();
        var how = parts.Where(line => line.IsOnlyHow);
        if (hands.Length < 2 || before is null)
            return [.. hands.Select(line => line with { Moved = [.. after.Moved.Order(StringComparer.Ordinal)] }), .. how];
        return HandOrder.Find(before, after, [.. hands.Select(line => line.Labels.AddRange(line.Named))]) is { } order
            ? [.. order.Select(act => hands[act.Number] with { Moved = act.Moved }), .. how]
            : [AtOnce(parts) with { Moved = [.. after.Moved.Order(StringComparer.Ordinal)] }];
    }

    // Where nothing can be done first.
    private static ResetLine AtOnce(ImmutableArray<ResetLine> parts) => parts[0] with
    {
        Labels = [.. parts.SelectMany(line => line.Labels)],
        Says = parts.Select(line => line.Says).FirstOrDefault(says => says is not null),
        SaidBy = parts.Select(line => line.SaidBy).FirstOrDefault(step => step is not null),
        Named = [.. parts.SelectMany(line => line.Named)],
    };

    // Things go back before parts are shut, and the author's sentence with all that it names stands between; if it names nothing of it, behind.
    private IEnumerable<ResetLine> Parts(UndoStep? undo, ImmutableArray<Placed> moved, Stage? stage)
    {
        var names = undo?.Says is { } sentence ? (stage is null || untranslated.Has(undo) ? saidInSource : said).In(sentence) : [];
        var labels = moved.Where(placed => !names.Contains(placed.Name)).Select(placed => new ResetLine { Stage = stage, Labels = [placed] });
        if (undo?.Says is not { } says)
            return labels;
        var told = new ResetLine { Stage = stage, Says = says, SaidBy = undo, Named = [.. moved.Where(placed => names.Contains(placed.Name))] };
        return told.IsOnlyHow ? labels.Append(told) : labels.Append(told).OrderBy(Rank);

        int Rank(ResetLine line) => line.Labels is not [var label] ? 1 : things.Contains(label.Name) ? 0 : 2;
    }

    // What is put back comes before what is shut. Of two changes of one name the last counts, and putting back counts most.
    private IEnumerable<Placed> Written(UndoStep step)
    {
        var back = step.PutBack.Select(thing => thing.Value).Distinct().ToArray();
        return
        [
            .. from thing in back
               where shipped.ContainsKey(thing)
               select new Placed(thing, shipped[thing]),
            .. from change in step.Changes.Reverse().DistinctBy(change => change.Name.Value).Reverse()
               where !back.Contains(change.Name.Value)
               select new Placed(change.Name.Value, change.Position.Value),
        ];
    }
}
