using HintBook.Books;

namespace HintBook.Tests.Mechanism;

/// <summary>A book's mechanism in a few lines, for the message of a failing test.</summary>
internal static class BookText
{
    public static string Of(Book book) => string.Join('\n',
    [
        .. book.Box.Names.Select(n => Of(n)),
        .. book.Stages.SelectMany(s => s.Moves.Select(m => $"stage {s.Id}{(s.After.IsEmpty ? "" : $" after {string.Join(' ', s.After)}")}: {Of(m)}")),
        .. book.Box.Moves.Select(m => $"move {Of(m)}"),
        .. book.Box.Reactions.Select(r => $"reaction {Of(r.When)} -> {Of(r.Changes)}"),
        $"goal {Of(book.Goal)}",
    ]);

    private static string Of(Named name)
    {
        var free = name is Part { Free: true } part ? $" free when {Of(part.Needs)}" : "";
        var turns = name is Part { Turns: true } dial ? $" turns{(dial.Round ? " round" : "")} when {Of(dial.Needs)}" : "";
        var hidden = name.Behind is { } behind ? $" behind {Of(behind)}" : "";
        return $"{name.Id}: {string.Join('/', name.Positions)}{free}{turns}{hidden}";
    }

    private static string Of(Move move)
    {
        var reversible = move.Reversible ? " (reversible)" : "";
        var outside = move.FromOutside ? " (from outside)" : "";
        return $"{move.Name}: {Of(move.Needs)} -> {Of(move.Changes)}{reversible}{outside}{Of(move.Undo)}";
    }

    private static string Of(Undo? undo)
    {
        if (undo is null)
            return "";
        var steps = undo.Steps.Select(step => $"{Of(step.Needs)} -> {Of(step.Changes)} back {string.Join(' ', step.PutBack)}");
        var never = undo.Never is null ? "" : $" never {undo.Never}";
        return $" undo {string.Join("; then ", steps)}{never}";
    }

    private static string Of(IEnumerable<Change> changes) => string.Join(", ", changes.Select(c => c.Given ? $"{c.Name}" : $"{c.Name}={c.Position}"));

    private static string Of(IEnumerable<Condition> conditions) => string.Join(" & ", conditions.Select(c => c switch
    {
        InPosition need => $"{need.Name}={string.Join('/', need.Positions)}",
        AnyOf any => $"({string.Join(" | ", any.Alternatives.Select(a => Of(a)))})",
        _ => "?",
    }));
}
