using System.Diagnostics;
using HintBook.Benchmarks.Books;
using HintBook.Checking;
using HintBook.Text;

namespace HintBook.Benchmarks.Rooms;

/// <summary>
/// A book of 200 stages checked again in a process that stays up, after a change to the text of one stage: how long until the finished
/// page of that stage is there. Beside it a check that keeps nothing.
/// </summary>
internal static class AgainNumbers
{
    private const int Stages = 200;
    private const int Rounds = 15;

    public static int Print()
    {
        var book = Directory.CreateTempSubdirectory("hintbook-bench-").FullName;
        try
        {
            MadeBook.Write(book, Stages, photos: 0, cards: false);
            var results = new RunResults();
            Rendered(book, results);
            Console.WriteLine($"checked from nothing         {Best(() => Rendered(book, null)) * 1000:0} ms");
            Console.WriteLine($"checked again, one text new  {Best(() => Rendered(Changed(book), results)) * 1000:0} ms");
            return 0;
        }
        finally
        {
            Directory.Delete(book, recursive: true);
        }
    }

    private static string Changed(string book)
    {
        var stage = Directory.EnumerateFiles(Path.Combine(book, "stages")).Order(StringComparer.Ordinal).First();
        File.AppendAllText(stage, "\nOne more sentence.\n");
        return book;
    }

    private static void Rendered(string book, RunResults? results)
    {
        if (Check.Run(book, new() { Results = results }) is not Sound { Examined: var examined })
            throw new InvalidOperationException("The book that was made has errors.");
        var page = examined.Addresses.PageOf(examined.Book.Stages[0].Id.Value);
        _ = examined.Site.Files.First(file => file.Path == page).Content();
    }

    private static double Best(Action action) => Enumerable.Range(0, Rounds).Min(_ =>
    {
        var watch = Stopwatch.StartNew();
        action();
        return watch.Elapsed.TotalSeconds;
    });
}
