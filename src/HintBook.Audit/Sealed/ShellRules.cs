namespace HintBook.Audit.Sealed;

/// <summary>What sealed pages must have in common, so that nothing is told by how one differs from another.</summary>
internal static class ShellRules
{
    private const string FirstQuestion = "where";
    private static readonly string[] PiecesOfStage = ["head", "nudge", "clue", "answer", "next"];

    /// <summary>Every page that differs, or that lies open.</summary>
    /// <param name="shells">The sealed pages.</param>
    /// <param name="table">Which pages are those of stages.</param>
    public static IEnumerable<AuditFault> Broken(IReadOnlyCollection<SealedShell> shells, AuditTable? table)
    {
        var stages = (table?.Pages ?? []).Where(page => page.Folds.ContainsKey("nudge")).Select(page => page.File).ToArray();
        var byPath = shells.ToDictionary(shell => shell.Path, StringComparer.Ordinal);
        return
        [
            .. from stage in stages
               where !byPath.TryGetValue(stage, out var shell) || !shell.Pieces.Select(piece => piece.Name).SequenceEqual(PiecesOfStage)
               select Fault(stage, "The page of a stage has to be sealed in its five pieces, and one of them isn't: it may lie open."),
            .. from shell in shells
               where shell.Tag.Length == 0 || shell.Epoch.Length == 0 || (shell.Version.Length == 0 && !shell.Pieces.IsEmpty)
               select Fault(shell.Path, "The page doesn't say by which book, epoch and version it is sealed."),
            .. from shell in shells
               from piece in shell.Pieces
               where !SealedForm.IsLengthOfPiece(piece.Closed.Length)
               select Fault(shell.Path, $"The piece “{piece.Name}” isn't sealed: something else stands in its place, or its length speaks."),
            .. shells.GroupBy(shell => Convert.ToHexString([.. shell.Tag, .. shell.Epoch])).Skip(1)
                .SelectMany(others => others.Select(shell => Fault(shell.Path, "The page is sealed for another book or epoch than the pages before it."))),
            .. from alike in shells.Where(shell => shell.Name != FirstQuestion && !shell.Pieces.IsEmpty).GroupBy(shell => shell.Kind, StringComparer.Ordinal)
               let common = alike.GroupBy(Likeness, StringComparer.Ordinal).MaxBy(same => same.Count())
               from odd in alike
               where Likeness(odd) != common.Key
               select Fault(odd.Path, "The page differs from others of its kind by more than its name, its version and what is sealed: it tells which it is."),
            .. shells.SelectMany(shell => shell.Pieces.Select(piece => (shell.Path, Bytes: piece.Closed)))
                .Where(piece => SealedForm.IsLengthOfPiece(piece.Bytes.Length))
                .GroupBy(piece => Convert.ToHexString(piece.Bytes, 0, Unsealing.NonceLength), StringComparer.Ordinal)
                .SelectMany(same => same.Skip(1))
                .Select(again => Fault(again.Path, "A nonce stands on the site twice: two sealed pieces could be read against each other.")),
        ];
    }

    // Lists of stages have one piece per stage, and all pieces of a list are equally long.
    private static string Likeness(SealedShell shell) => $"{shell.Skeleton}{string.Join(' ', shell.Pieces.Select(piece => piece.Closed.Length))}";

    private static AuditFault Fault(string path, string message) => new(path, 0, 0, message);
}
