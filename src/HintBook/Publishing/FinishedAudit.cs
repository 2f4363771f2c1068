using System.Collections.Immutable;
using HintBook.Audit;
using HintBook.Audit.Sealed;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Print;
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
    /// <param name="published">Where they lie.</param>
    /// <param name="book">The book they were made from.</param>
    /// <param name="told">What the author has been told of the book.</param>
    public static (AuditReport Report, IEnumerable<Finding> Findings) Run(PublishedSite published, Examined book, Findings told)
    {
        var papers = PapersIn(published, book);
        var (site, _, findings) = Begin(published, book, papers).End(told, KeptAudits.None);
        return (site, findings);
    }

    /// <summary>
    /// Begins the same before the site is finished, once its pictures and papers are made: its files can be read while later ones are written.
    /// </summary>
    /// <param name="published">Where they will lie.</param>
    /// <param name="book">The book they are made from.</param>
    /// <param name="papers">The papers that are printed beside the cards.</param>
    internal static BegunAudit Begin(PublishedSite published, Examined book, PrintedPapers papers)
    {
        var table = TableOf(book, papers) with
        {
            Digests = PhotoWork.DigestsIn(published.Cache, book.Media.Photos).ToImmutableDictionary(picture => picture.Path, picture => picture.Digest),
        };
        return new(published, book, table, SealedCardTable.Of(book));
    }

    /// <summary>An audit that has begun.</summary>
    internal sealed class BegunAudit(PublishedSite published, Examined book, AuditTable table, SealedCards? cards)
    {
        private const string Within = "site/";

        // A sealed site is read as a stranger would without a card, then as each reader would with one.
        private readonly SiteReading reading = new(published.Site, cards is null ? table : table.Closed);

        /// <summary>Reads a file that is finished, if it is one of the site; on any thread.</summary>
        /// <param name="path">In the output folder, with forward slashes.</param>
        public void Read(string path)
        {
            if (path.StartsWith(Within, StringComparison.Ordinal))
                reading.Read(path[Within.Length..]);
        }

        /// <summary>Reads all that is left, and what was printed.</summary>
        /// <param name="told">What the author has been told of the book.</param>
        /// <param name="kept">What earlier audits read of printed files.</param>
        public (AuditReport Site, PrintReport Print, IEnumerable<Finding> Findings) End(Findings told, KeptAudits kept)
        {
            // One looks at pages, the other at paper.
            var printed = Task.Run(() => PrintAudit.Run(published.Print, published.Site, table, kept));
            var report = cards is null ? reading.End() : WithOpened(reading.End(), SealedAudit.Run(published.Site, table, cards));
            var print = printed.GetAwaiter().GetResult();
            return (report, print, FindingsOf([.. report.Faults, .. print.Faults], book, told));
        }

        private static AuditReport WithOpened(AuditReport closed, AuditReport opened) =>
            closed with
            {
                Faults = [.. closed.Faults, .. opened.Faults],
                Opened = opened.Opened,
                Cards = opened.Cards,
                OnOthers = opened.OnOthers,
                Gates = opened.Gates,
            };
    }

    /// <summary>Audits printed cards that were made by themselves.</summary>
    /// <param name="print">The folder with the cards.</param>
    /// <param name="site">The site to which they lead, or null if none has been published yet.</param>
    /// <param name="book">The book they were made from.</param>
    /// <param name="told">What the author has been told of the book.</param>
    /// <param name="papers">The papers that were printed beside the cards.</param>
    /// <param name="kept">What earlier audits read of printed files.</param>
    internal static (PrintReport Print, IEnumerable<Finding> Findings) RunOnPapers(
        string print, string? site, Examined book, Findings told, PrintedPapers papers, KeptAudits kept)
    {
        var report = PrintAudit.Run(print, site, TableOf(book, papers), kept);
        return (report, FindingsOf(report.Faults, book, told));
    }

    // Papers follow from the book alone, and from the pictures that lie on the site.
    private static PrintedPapers PapersIn(PublishedSite published, Examined book)
    {
        HashSet<PaperKind> kinds = [PaperKind.Clues];
        if (File.Exists(Path.Combine(published.Print, "booklet.pdf")))
            kinds.Add(PaperKind.Booklet);
        var papers = PaperPrint.Make(kinds, book.Site, book.Theme, default, path =>
            File.Exists(Path.Combine(published.Site, path)) ? File.ReadAllBytes(Path.Combine(published.Site, path)) : null).Papers;
        return papers with { Booklets = papers.Booklets.RemoveAll(booklet => !File.Exists(Path.Combine(published.Print, booklet.File))) };
    }

    private static AuditTable TableOf(Examined book, PrintedPapers papers) =>
        AuditTables.Build(book.Book, book.MayBeSaid, book.Addresses, book.Theme, book.Media.Photos, book.Site.Where, CodedCopies.Of(book)) with
        {
            Booklets = AuditTables.OfBooklets(book.Book, book.MayBeSaid, book.Survey, book.Site.Where, papers.Booklets),
            Clues = AuditTables.OfClues(papers.Clues),
            Captions = AuditCaptionTables.Build(book.Book, book.MayBeSaid, book.Media.Films),
        };

    private static IEnumerable<Finding> FindingsOf(ImmutableArray<AuditFault> faults, Examined book, Findings told)
    {
        // What the source says in doubt has been told there.
        var doubts = told.All.Where(finding => finding.Code.Id.StartsWith("HB31", StringComparison.Ordinal))
            .Select(finding => finding.Message)
            .ToArray();
        return faults
            .Where(fault => fault.IsSure || !doubts.Any(doubt => doubt.Contains($"“{fault.Secret}”", StringComparison.Ordinal)))
            .GroupBy(fault => (fault.IsSure, What: fault.Secret ?? fault.Message))
            .Select(same => FindingOf(same.First(), [.. same.Select(fault => fault.File).Distinct()], book));
    }

    // A fault that stands in many files most likely comes from one place, such as a title or the theme: it is told once.
    private static Finding FindingOf(AuditFault fault, string[] files, Examined book)
    {
        var others = files[1..];
        string[] named = others.Length <= MostNamed
            ? others
            : [.. others.Take(MostNamed - 1), $"{others.Length - MostNamed + 1} more files"];
        var more = others.Length == 0 ? "" : $" It also stands in {Words.List(named)}.";
        var (at, help) = SourceOf(fault, files, book);
        return (fault.IsSure ? FaultCode : DoubtCode).At(
            at,
            $"In the finished file {fault.File}{(fault.Line > 0 ? $", line {fault.Line}" : "")}: {fault.Message}{more}",
            help);
    }

    // What stands on the pages of one stage alone is most likely the stage's own. What stands elsewhere too, or in a style or a script, comes from
    // book.yaml or from the theme; nobody but the book's maker has changed one that lies in the book.
    private static (Span At, string Help) SourceOf(AuditFault fault, string[] files, Examined examined)
    {
        var book = examined.Book;
        var theme = $"the theme in themes/{book.Theme.Value}";
        if (book.Stages.FirstOrDefault(stage => files.All(file => IsPageOf(stage, file))) is { } only && (book.Stages.Length > 1 || Says(only)))
            return (only.Title.At, $"Look at {only.File.Path}, from which the page was made{(examined.Theme.IsOwn ? $", and at {theme}" : "")}.");
        return examined.Theme.IsOwn
            ? (book.Theme.At, $"Look at {theme}, and at what book.yaml writes there.")
            : (book.Title.At, "Look at what book.yaml writes there. If it writes nothing like that, the fault isn't yours: "
                + "keep the book as it is and report it.");

        bool IsPageOf(Stage stage, string file) => examined.Addresses.Names[stage.Id.Value].Any(name => name + ".html" == file);

        bool Says(Stage stage) => Quoted(fault) is { Length: > 0 } words && stage.File.Text.Contains(words, StringComparison.OrdinalIgnoreCase);
    }

    // What the fault is about: the secret, or what its message quotes first.
    private static string? Quoted(AuditFault fault) =>
        fault.Secret ?? (fault.Message.Split('“', '”') is [_, var quoted, ..] ? quoted : null);
}
