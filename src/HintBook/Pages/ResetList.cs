using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;

namespace HintBook.Pages;

/// <summary>
/// The way back as one list: every step of the plan, every sentence of the author's and every note stands where hands do it, under the title of its
/// stage. Handling stands with what it makes ready, the stage that comes next.
/// </summary>
internal static class ResetList
{
    /// <summary>The list of a book: as planned, or stage by stage backwards where there is no plan.</summary>
    public static ImmutableArray<ResetEntry> Build(Book book, ResetPlan plan) =>
        plan.Plan.IsEmpty ? Backwards(book) : AsPlanned(book, plan);

    private static ImmutableArray<ResetEntry> Backwards(Book book)
    {
        var lines = new ResetLines(book);
        return
        [
            .. from stage in book.Stages.Reverse()
               let planned = ResetNotes.UndosOf(stage).SelectMany(undo => undo.Steps).ToHashSet<UndoStep>(ReferenceEqualityComparer.Instance)
               let items = lines.Of(stage).Concat<ResetItem>(ResetNotes.Of(stage, planned)).ToImmutableArray()
               where !items.IsEmpty
               select new ResetEntry(stage, Cautions([stage]), items),
        ];
    }

    private static ImmutableArray<ResetEntry> AsPlanned(Book book, ResetPlan plan)
    {
        var lines = new ResetLines(book).Of(plan);
        var stages = book.Stages.DistinctBy(stage => stage.Id.Value).ToDictionary(stage => stage.Id.Value);
        var planned = plan.Plan.Where(step => step.Kind == StepKind.PutBack)
            .Select(step => ResetNotes.UndoOf(book.Box, stages, step)).OfType<UndoStep>().ToHashSet<UndoStep>(ReferenceEqualityComparer.Instance);
        var (before, behind, last) = (Lists(lines.Length), Lists(lines.Length), new List<ResetNote>());
        var endangered = Lists<Stage>(lines.Length);
        var things = book.Box.Things.Select(thing => thing.Id.Value).ToHashSet();
        var movable = book.Box.Parts.Select(part => part.Id.Value).Concat(things).ToHashSet();
        var lastMoved = lines.Index().SelectMany(line => line.Item.Moved.Where(movable.Contains).Select(name => (Name: name, line.Index)))
            .GroupBy(each => each.Name).ToDictionary(group => group.Key, group => group.Max(each => each.Index));
        var told = lines.Select(line => line.Stage?.Id.Value).OfType<string>().ToHashSet();
        foreach (var stage in book.Stages.Reverse().DistinctBy(stage => stage.Id.Value))
        {
            var notes = ResetNotes.Of(stage, planned).ToArray();
            var place = ResetNotes.PlaceOf(stage, lastMoved, things);
            (place is not { } at ? last : at.Before ? before[at.Line] : behind[EndOf(lines, at.Line)]).AddRange(notes);
            if (!told.Contains(stage.Id.Value) && !stage.Cautions.IsEmpty && (FirstMoved(stage, lines) ?? place?.Line) is { } line)
                endangered[line].Add(stage);
        }

        return
        [
            .. Entries(lines, before, behind, endangered),
            .. last.GroupBy(note => note.Stage.Id.Value).Select(notes => new ResetEntry(notes.First().Stage, Cautions([notes.First().Stage]), [.. notes])),
        ];
    }

    // Where others first move what a stage moved.
    private static int? FirstMoved(Stage stage, ImmutableArray<ResetLine> lines)
    {
        var moved = ResetNotes.MovedBy(stage).ToHashSet();
        return lines.Index().Where(line => line.Item.Moved.Any(moved.Contains)).Select(line => (int?)line.Index).FirstOrDefault();
    }

    private static List<ResetNote>[] Lists(int count) => Lists<ResetNote>(count);

    private static List<T>[] Lists<T>(int count) => [.. Enumerable.Range(0, count).Select(_ => new List<T>())];

    // A note stands behind the words that only say how its line is done.
    private static int EndOf(ImmutableArray<ResetLine> lines, int line)
    {
        while (line + 1 < lines.Length && lines[line + 1].IsOnlyHow && ReferenceEquals(lines[line + 1].Step, lines[line].Step))
            line++;
        return line;
    }

    private static IEnumerable<ResetEntry> Entries(
        ImmutableArray<ResetLine> lines, List<ResetNote>[] before, List<ResetNote>[] behind, List<Stage>[] endangered)
    {
        var owners = new Stage?[lines.Length];
        for (var i = lines.Length - 1; i >= 0; i--)
            owners[i] = lines[i].Stage ?? behind[i].Concat(before[i]).FirstOrDefault()?.Stage ?? owners.ElementAtOrDefault(i + 1);
        var items = ImmutableArray.CreateBuilder<ResetItem>();
        var stages = new List<Stage>();
        for (var i = 0; i < lines.Length; i++)
        {
            // Handling at the end stands with what came before it.
            owners[i] ??= i > 0 ? owners[i - 1] : null;
            items.AddRange(before[i].Append<ResetItem>(lines[i]).Concat(behind[i]));
            stages.AddRange(new[] { owners[i], lines[i].Stage }.OfType<Stage>());
            stages.AddRange([.. before[i].Concat(behind[i]).Select(note => note.Stage), .. endangered[i]]);
            if (i + 1 < lines.Length && ReferenceEquals(owners[i + 1] ?? owners[i], owners[i]))
                continue;
            yield return new(owners[i], Cautions(stages), items.ToImmutable());
            items.Clear();
            stages.Clear();
        }
    }

    private static ImmutableArray<Caution> Cautions(IEnumerable<Stage> stages) =>
    [
        .. stages.DistinctBy(stage => stage.Id.Value).SelectMany(stage => stage.Cautions).DistinctBy(caution => (caution.Kind, caution.Note)),
    ];
}
