using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Pages;

namespace HintBook.Tests.Pages;

/// <summary>What must hold of the reset page of any book that has a plan; each law says what breaks it, or null.</summary>
internal static class ResetLaws
{
    /// <summary>The first law that a book's page breaks.</summary>
    public static string? Broken(Book book, ResetPlan plan)
    {
        var list = ResetList.Build(book, plan);
        Func<Book, ResetPlan, ImmutableArray<ResetEntry>, string?>[] laws = [CarriedOut, EachOnce, NotesInPlace, CautionsFirst, NoGaps];
        return laws.Select(law => law(book, plan, list)).FirstOrDefault(why => why is not null);
    }

    /// <summary>Hands can carry the lines out, one after the other, and come to where the plan comes.</summary>
    public static string? CarriedOut(Book book, ResetPlan plan, ImmutableArray<ResetEntry> list) => Hands.CarryOut(book, plan, Items(list).OfType<ResetLine>());

    /// <summary>Every undo stands as often as it is done, else once; every note stands once; nothing else does.</summary>
    public static string? EachOnce(Book book, ResetPlan plan, ImmutableArray<ResetEntry> list)
    {
        var printed = Items(list)
            .SelectMany(item => item is ResetNote note ? [note.Says, note.Text?.Markdown] : new[] { ((ResetLine)item).Says })
            .OfType<string>().CountBy(text => text).ToDictionary();
        var made = plan.Plan.Where(step => step.Kind == StepKind.PutBack)
            .Select(step => UndoOf(book, step).Says).OfType<string>().CountBy(says => says).ToDictionary();
        var undos = book.Stages.SelectMany(stage => stage.Moves.Select(move => move.Undo).OfType<Undo>().Distinct()).ToArray();
        string[] once =
        [
            .. undos.SelectMany(undo => undo.Steps).Select(step => step.Says).Concat(undos.Select(undo => undo.Never?.Value)).OfType<string>(),
            .. book.Stages.Select(stage => stage.Reset?.Markdown).OfType<string>(),
        ];
        return once.Concat(made.Keys).Distinct()
            .Where(text => printed.GetValueOrDefault(text) != Math.Max(1, made.GetValueOrDefault(text)))
            .Select(text => $"“{text}” stands {printed.GetValueOrDefault(text)} times")
            .Concat(printed.Keys.Except(once).Except(made.Keys).Select(text => $"“{text}” is nobody's"))
            .FirstOrDefault();
    }

    /// <summary>A note stands behind the last line with which something moves that its stage moved, and before the next line that moves anything.</summary>
    public static string? NotesInPlace(Book book, ResetPlan plan, ImmutableArray<ResetEntry> list)
    {
        var items = Items(list).ToList();
        var lines = items.OfType<ResetLine>().ToList();
        var moved = Hands.MovedBy(book, plan, lines);
        var movable = book.Box.Parts.Select(part => part.Id.Value).Concat(book.Box.Things.Select(thing => thing.Id.Value)).ToHashSet();
        foreach (var note in items.OfType<ResetNote>())
        {
            var own = note.Stage.Moves.SelectMany(move => move.Changes).Select(change => change.Name.Value).Where(movable.Contains).ToList();
            var last = moved.FindLastIndex(names => names.Overlaps(own));
            var before = items.Take(items.IndexOf(note)).OfType<ResetLine>().Count();
            if (last >= 0 && (before <= last || lines[(last + 1)..before].Exists(line => !line.IsOnlyHow)))
                return $"“{note.Text?.Markdown ?? note.Says}” stands behind line {before}, not {last + 1}";
        }

        return null;
    }

    /// <summary>What is dangerous in a stage is told under each heading under which the stage is touched or spoken of, so before its lines.</summary>
    public static string? CautionsFirst(Book book, ResetPlan plan, ImmutableArray<ResetEntry> list)
    {
        var missing =
            from entry in list
            from item in entry.Items
            let stage = item is ResetNote note ? note.Stage : ((ResetLine)item).Stage
            where stage is not null && stage.Cautions.Except(entry.Cautions).Any()
            select $"“{stage.Id}” without its caution";
        return missing.FirstOrDefault();
    }

    /// <summary>Only a list that begins with handling of no stage's has an entry without a heading.</summary>
    public static string? NoGaps(Book book, ResetPlan plan, ImmutableArray<ResetEntry> list) =>
        list.Skip(1).Any(entry => entry.Stage is null) ? "an entry has no heading" : null;

    private static IEnumerable<ResetItem> Items(ImmutableArray<ResetEntry> list) => list.SelectMany(entry => entry.Items);

    private static UndoStep UndoOf(Book book, Step step) =>
        (step.Stage is { } id ? book.Stages.First(stage => stage.Id.Value == id).Moves : book.Box.Moves)[step.Move].Undo!.Steps[step.Part];
}
