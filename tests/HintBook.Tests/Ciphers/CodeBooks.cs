using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Ciphers;
using HintBook.Tests.Books;
using HintBook.Text;

namespace HintBook.Tests.Ciphers;

/// <summary>Books with codes in them, built in code.</summary>
internal static class CodeBooks
{
    public static Code Code(string answer, string? clue, int? wheels, string symbols, params ReadingStep[] reads) => new()
    {
        Id = A.Value("number"),
        Name = "number",
        Answer = A.Value(answer),
        Clue = clue is null ? null : A.Value(clue),
        Lock = wheels is { } count ? new WheelLock(count, symbols, 3, A.Somewhere) : null,
        Reads = [.. reads],
    };

    /// <summary>A code on a lock with figures.</summary>
    public static Code Number(string answer, string clue, params string[] reads) =>
        Code(answer, clue, answer.Length, "0123456789", [.. reads.Select(way => Step(way))]);

    public static ReadingStep Step(string way, params string[] told) => new(A.Value(way), [.. told.Select(A.Value)], A.Somewhere);

    public static Book Book(params Code[] codes) => A.Book() with { Box = new Box { Codes = [.. codes] } };

    public static Proofs Prove(params Code[] codes) => Proofs.Prove(Book(codes));

    /// <summary>The ids of what is found, notes left out.</summary>
    public static ImmutableArray<string> Said(this Proofs proofs) =>
        [.. proofs.Findings.Where(finding => finding.Code.Severity > Severity.Note).Select(finding => finding.Code.Id)];
}
