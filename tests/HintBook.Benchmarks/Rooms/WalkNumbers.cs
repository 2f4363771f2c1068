using System.Globalization;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Mechanism.Tours;
using HintBook.Reading;
using HintBook.Tests.Mechanism;

namespace HintBook.Benchmarks.Rooms;

/// <summary>How long test walks are beside their bounds, and what planning one takes: the first in this process, and the best of some later ones.</summary>
internal static class WalkNumbers
{
    private const int Rounds = 3;

    /// <summary>Prints a row for the book in a folder and for a few boxes of the tests; run one of them alone to know what the first takes.</summary>
    /// <param name="only">The folder of a book, or the name of a box; null for all boxes.</param>
    public static int Print(string? only = null)
    {
        var boxes = new Dictionary<string, Func<Book>>
        {
            ["true-to-life-20"] = () => LargeBoxes.TrueToLife(20, 4),
            ["true-to-life-60"] = () => LargeBoxes.TrueToLife(60, 8),
            ["tree-60"] = () => LargeBoxes.Tree(60),
            ["rooms-6"] = () => LargeBoxes.Rooms(6),
            ["drawers-30"] = () => LargeBoxes.Drawers(30),
            ["shutting-60"] = () => LargeBoxes.Shutting(60),
        };
        Console.WriteLine("| box | handlings | bound | ratio | first | later |");
        Console.WriteLine("|---|---|---|---|---|---|");
        if (only is not null && !boxes.ContainsKey(only))
            return Row(only, () => Reader.Read(only).Book ?? throw new InvalidOperationException($"{only} can't be read"));
        foreach (var (name, made) in boxes.Where(box => only is null || box.Key == only))
            Row(name, made);
        return 0;
    }

    private static int Row(string name, Func<Book> made)
    {
        var book = made();
        TestWalk? walk = null;
        var first = ProcessorTime.Of(() => walk = TestWalk.Plan(book, SolveLimits.Default));
        var later = ProcessorTime.Best(Rounds, () => TestWalk.Plan(book, SolveLimits.Default));
        var least = walk!.Length is WalkLength.AtMostLonger open ? open.Least : walk.Steps.Length;
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {walk.Steps.Length} | {least} | {(double)walk.Steps.Length / least:0.000} | {first:0.00} s | {later:0.00} s |"));
        return 0;
    }
}
