using System.Collections.Immutable;
using HintBook.Audit;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Text;

namespace HintBook.Publishing;

/// <summary>Has the finished pages read cold, by code that knows nothing of how they were made.</summary>
public static class AuditWork
{
    /// <summary>The shortest code that is looked for: shorter ones stand in any text by chance.</summary>
    private const int ShortestCode = 3;

    /// <summary>Something in a finished file.</summary>
    public static readonly FindingCode FaultCode = new("HB7401", Severity.Error, "the finished site isn't right");

    /// <summary>Audits a site.</summary>
    /// <param name="site">The folder that would be uploaded.</param>
    /// <param name="book">The book it was made from.</param>
    /// <param name="survey">What is known of the box.</param>
    /// <param name="addresses">Where each stage's page lives.</param>
    public static (AuditReport Report, IEnumerable<Finding> Findings) Of(string site, Book book, Survey survey, Addresses addresses)
    {
        var report = SiteAudit.Of(site, TableOf(book, survey, addresses));
        return (report, report.Faults.Select(fault => FindingOf(fault, book, addresses)));
    }

    // No code may stand where a page is seen without being asked: in titles, addresses and the like nowhere, in open text only
    // on the pages of stages that come after it has been learned. Words as codes stay out: HONEY is also just honey.
    private static AuditTable TableOf(Book book, Survey survey, Addresses addresses)
    {
        var codes = book.Box.Codes.Where(code => code.Answer.Value.Length >= ShortestCode && code.Answer.Value.Any(char.IsAsciiDigit)).ToArray();
        var givers = codes.ToDictionary(code => code.Id.Value, code => Givers(book, code));
        return new AuditTable(
        [
            new AuditRule("*", [.. codes.Where(code => !Allowed(code, book.Allow)).Select(code => code.Answer.Value)], []),
            .. book.Stages.Select(stage => new AuditRule(
                addresses.PageOf(stage.Id.Value),
                [],
                [.. codes.Where(code => !Known(code, stage) && !Allowed(code, [.. book.Allow, .. stage.Allow])).Select(code => code.Answer.Value)])),
        ]);

        bool Known(Code code, Stage stage) =>
            survey.Stages[stage.Id.Value].Gained.Contains(code.Id.Value) || survey.Stages[stage.Id.Value].CertainBefore.Any(givers[code.Id.Value].Contains);

        bool Allowed(Code code, ImmutableArray<Allowance> allowances) =>
            allowances.Any(allowance => allowance.Mention.Value == code.Answer.Value);
    }

    private static HashSet<string> Givers(Book book, Code code) =>
        book.Stages.Where(stage => stage.Moves.Any(move => move.Changes.Any(change => change.Name.Value == code.Id.Value)))
            .Select(stage => stage.Id.Value)
            .ToHashSet();

    private static Finding FindingOf(AuditFault fault, Book book, Addresses addresses)
    {
        var stage = book.Stages.FirstOrDefault(stage => addresses.PageOf(stage.Id.Value) == fault.File);
        return new Finding
        {
            Code = FaultCode,
            At = stage?.Title.At ?? book.Title.At,
            Message = $"In the finished page {fault.File}, line {fault.Line}: {fault.Message}",
            Help = stage is null ? "Look at what the book writes there, and at the theme." : $"Look at {stage.File.Path}, from which the page was made.",
        };
    }
}
