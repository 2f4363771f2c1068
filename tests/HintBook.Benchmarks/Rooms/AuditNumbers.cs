using HintBook.Benchmarks.Books;
using HintBook.Checking;
using HintBook.Pages;
using HintBook.Publishing;

namespace HintBook.Benchmarks.Rooms;

/// <summary>
/// The audit of 2,000 stage pages beside publishing their text, which is the floor: reading and checking the book, making the pages and writing
/// them. Processor time of one process, so that a busy machine counts less.
/// </summary>
internal static class AuditNumbers
{
    private const int Rounds = 5;

    public static int Print()
    {
        var root = Directory.CreateTempSubdirectory("hintbook-bench-").FullName;
        try
        {
            var source = Path.Combine(root, "book");
            MadeBook.Write(source, stages: 2000, photos: 0, cards: false);
            Sound? sound = null;
            var check = Best(() => sound = Check.Run(source) as Sound);
            if (sound?.Examined is not { } book)
                throw new InvalidOperationException("The book that was made has errors.");
            var make = Best(() => Write(book, root));
            var table = Best(() => _ = AuditTables.Build(book.Book, book.MayBeSaid, book.Addresses, book.Theme, book.Media.Photos, book.Site.Where));
            var faults = 0;
            var audit = Best(() => faults = FinishedAudit.Run(PublishedSite.OfBook(root), book, sound.Findings).Findings.Count());
            Console.WriteLine($"reading and checking   {check:0.00} s");
            Console.WriteLine($"making and writing     {make:0.00} s");
            Console.WriteLine($"audit                  {audit:0.00} s ({table:0.00} s of it the table), {faults} findings");
            return 0;
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }

    private static void Write(Examined book, string root)
    {
        foreach (var file in Site.Build(book.Site.Plan, book.Theme).Site.Files)
        {
            var path = Path.Combine(root, "site", file.Path);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            using var stream = File.Create(path);
            stream.Write(file.Content().Span);
        }
    }

    private static double Best(Action action) => ProcessorTime.Best(Rounds, action);
}
