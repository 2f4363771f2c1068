using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using HintBook.Audit.Sealed;
using HintBook.Benchmarks.Books;
using HintBook.Checking;
using HintBook.Publishing;
using HintBook.Sealing;
using HintBook.Starting.Edition;

namespace HintBook.Benchmarks.Rooms;

/// <summary>
/// A sealed book of 500 copies and 40 stages, with cards for the whole box and for each stage: the tables of slots, the whole site, and its audit with all
/// cards. Processor time of one process, the best of three, so that a busy machine counts less.
/// </summary>
internal static class SealingNumbers
{
    private const string Id = "made-book";
    private const int Rounds = 3;

    public static int Print(int copies, int stages)
    {
        var root = Directory.CreateTempSubdirectory("hintbook-bench-").FullName;
        try
        {
            var source = Path.Combine(root, "book");
            Write(source, copies, stages);
            if (Check.Run(source) is not Sound { Examined: { Sealing: { } plan } book })
                throw new InvalidOperationException("The book that was made has errors.");
            var pages = Best(() =>
            {
                foreach (var page in book.Site.InPieces)
                    page.Print();
            });
            var tables = Best(() =>
            {
                foreach (var file in SealedSite.Tables(book, plan, SealedSite.GatesOf(book, plan)))
                    file.Content();
            });
            var written = 0;
            var site = Best(() =>
            {
                var folder = Path.Combine(root, $"out-{written++}");
                SealedSite.Write(book, plan, new OutputWriter(folder, new Disk(), _ => { }, CancellationToken.None));
            });
            var folder = Path.Combine(root, $"out-{written - 1}", "site");
            var cards = SealedCardTable.Of(book) ?? throw new InvalidOperationException("The book is sealed.");
            var table = AuditTables.Build(book.Book, book.MayBeSaid, book.Addresses, book.Theme, book.Media.Photos, book.Site.Where);
            var (audit, report) = (0.0, Audit.AuditReport.Nothing);
            audit = Best(() => report = SealedAudit.Run(folder, table, cards));
            Console.WriteLine($"{copies} copies, {stages} stages, processor time of");
            Console.WriteLine($"printing the pages                 {pages:0.00} s");
            Console.WriteLine($"sealing the slots of the copies    {tables:0.00} s");
            Console.WriteLine($"printing, sealing, writing a site  {site:0.00} s");
            Console.WriteLine($"its audit with {report.Cards} cards         {audit:0.00} s");
            Tries(folder);
            return 0;
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }

    // Keys that open nothing take as long as those of other stages.
    private static void Tries(string folder)
    {
        ImmutableArray<SealedShell> shells =
        [
            .. Directory.EnumerateFiles(folder, "*.html")
                .Select(file => SealedShell.Read(Path.GetFileName(file), File.ReadAllText(file))).OfType<SealedShell>(),
        ];
        var keys = shells.Where(shell => shell.Pieces.Length > 1)
            .ToDictionary(shell => shell.Name, shell => SHA256.HashData(Encoding.UTF8.GetBytes(shell.Name))[..16]);
        var tries = default(Audit.KeyTries);
        var all = Best(() => tries = ForeignPages.Of(keys, shells).Tries);
        Console.WriteLine($"of it {tries.Tried} of {tries.All} keys tried on other pages  {all:0.00} s");
        var few = Best(() => tries = ForeignPages.Of(keys, shells, most: 0).Tries);
        Console.WriteLine($"with {tries.Tried} of them alone           {few:0.00} s");
    }

    private static void Write(string source, int copies, int stages)
    {
        MadeBook.Write(source, stages, photos: 0, cards: true);
        File.AppendAllText(Path.Combine(source, "book.yaml"), $"id: {Id}\nsealed: true\ncards: both\n");
        string[] serials = [.. Enumerable.Range(1, copies).Select(copy => copy.ToString("0000", CultureInfo.InvariantCulture))];
        File.WriteAllLines(Path.Combine(source, "copies.yaml"), ["copies:", .. serials.Select(serial => $"  \"{serial}\": {{ sold: true }}")]);
        var random = new Random(1);
        var (_, why) = new SealedEdition(source, Id).Complete(serials, () => new BookSecret(SHA256.HashData("a made book"u8)), random.Next);
        if (why is not null)
            throw new InvalidOperationException(why);
    }

    private static double Best(Action action) => ProcessorTime.Best(Rounds, action);
}
