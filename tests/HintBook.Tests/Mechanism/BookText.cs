using HintBook.Books;

namespace HintBook.Tests.Mechanism;

/// <summary>A book's mechanism in a few lines, for the message of a failing test.</summary>
internal static class BookText
{
    public static string Of(Book book) => string.Join('\n',
    [
        .. book.Box.Names.Select(n => $"{n.Id}: {string.Join('/', n.Positions)}{(n is Part { Free: true } part ? $" free when {Of(part.Needs)}" : "")}{(n.Behind is { } behind ? $" behind {Of(behind)}" : "")}"),
        .. book.Stages.SelectMany(s => s.Moves.Select(m => $"stage {s.Id}{(s.After.IsEmpty ? "" : $" after {string.Join(' ', s.After)}")}: {Of(m)}")),
        .. book.Box.Moves.Select(m => $"move {Of(m)}"),
        .. book.Box.Reactions.Select(r => $"reaction {Of(r.When)} -> {Of(r.Changes)}"),
        $"goal {Of(book.Goal)}",
    ]);

    private static string Of(Move move) => $"{move.Name}: {Of(move.Needs)} -> {Of(move.Changes)}{(move.Reversible ? " (reversible)" : "")}{(move.FromOutside ? " (from outside)" : "")}{Of(move.Undo)}";

    private static string Of(Undo? undo) => undo is null ? ""
        : $" undo {string.Join("; then ", undo.Steps.Select(step => $"{Of(step.Needs)} -> {Of(step.Changes)} back {string.Join(' ', step.PutBack)}"))}{(undo.Never is null ? "" : $" never {undo.Never}")}";

    private static string Of(IEnumerable<Change> changes) => string.Join(", ", changes.Select(c => c.Given ? $"{c.Name}" : $"{c.Name}={c.Position}"));

    private static string Of(IEnumerable<Condition> conditions) => string.Join(" & ", conditions.Select(c => c switch
    {
        InPosition need => $"{need.Name}={string.Join('/', need.Positions)}",
        AnyOf any => $"({string.Join(" | ", any.Alternatives.Select(a => Of(a)))})",
        _ => "?",
    }));
}
