using System.Collections.Immutable;
using HintBook.Audit;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Text;

namespace HintBook.Publishing;

/// <summary>Has the finished files read cold, by code that knows nothing of how they were made.</summary>
public static class FinishedAudit
{
    private const int MostNamed = 4;

    /// <summary>Something in a finished file.</summary>
    public static readonly FindingCode FaultCode = new("HB7401", Severity.Error, "the finished site isn't right");

    /// <summary>Something in a finished file that may be wrong.</summary>
    public static readonly FindingCode DoubtCode = new("HB7402", Severity.Warning, "the finished site may tell a secret");

    /// <summary>Audits a site and what was printed beside it.</summary>
    /// <param name="output">The folder that holds <c>site</c> and perhaps <c>print</c>.</param>
    /// <param name="book">The book they were made from.</param>
    /// <param name="told">What the author has been told of the book.</param>
    public static (AuditReport Report, IEnumerable<Finding> Findings) Run(string output, Examined book, Findings told)
    {
        var table = TableOf(book);
        var (site, print) = (Path.Combine(output, "site"), Path.Combine(output, "print"));
        var report = SiteAudit.Run(site, table);
        return (report, FindingsOf([.. report.Faults, .. PrintAudit.Run(print, site, table).Faults], book, told));
    }

    /// <summary>Audits printed cards that were made by themselves.</summary>
    /// <param name="print">The folder with the cards.</param>
    /// <param name="site">The site to which they lead, or null if none has been published yet.</param>
    /// <param name="book">The book they were made from.</param>
    /// <param name="told">What the author has been told of the book.</param>
    public static IEnumerable<Finding> RunOnCards(string print, string? site, Examined book, Findings told) =>
        FindingsOf(PrintAudit.Run(print, site, TableOf(book)).Faults, book, told);

    private static AuditTable TableOf(Examined book) =>
        AuditTables.Build(book.Book, book.MayBeSaid, book.Addresses, book.Theme, book.Media.Photos);

    private static IEnumerable<Finding> FindingsOf(ImmutableArray<AuditFault> faults, Examined book, Findings told)
    {
        // What the source says in doubt has been told there.
        var doubts = told.All.Where(finding => finding.Code.Id.StartsWith("HB31", StringComparison.Ordinal))
            .Select(finding => finding.Message)
            .ToArray();
        return faults
            .Where(fault => fault.IsSure || !doubts.Any(doubt => doubt.Contains($"“{fault.Secret}”", StringComparison.Ordinal)))
            .GroupBy(fault => (fault.Secret, fault.IsSure, Alone: fault.Secret is null ? fault : null))
            .Select(same => FindingOf(same.First(), [.. same.Select(fault => fault.File).Distinct().Skip(1)], book.Book, book.Addresses));
    }

    // A secret that stands in many files most likely comes from one place of the book, such as a title: it is told once.
    private static Finding FindingOf(AuditFault fault, string[] others, Book book, Addresses addresses)
    {
        string[] named = others.Length <= MostNamed
            ? others
            : [.. others.Take(MostNamed - 1), $"{others.Length - MostNamed + 1} more files"];
        var more = others.Length == 0 ? "" : $" It also stands in {Words.List(named)}.";
        var stage = book.Stages.FirstOrDefault(stage => addresses.Names[stage.Id.Value].Any(name => name + ".html" == fault.File));
        return (fault.IsSure ? FaultCode : DoubtCode).At(
            stage?.Title.At ?? book.Title.At,
            $"In the finished file {fault.File}{(fault.Line > 0 ? $", line {fault.Line}" : "")}: {fault.Message}{more}",
            stage is null ? "Look at what the book writes there, and at the theme." : $"Look at {stage.File.Path}, from which the page was made.");
    }
}
