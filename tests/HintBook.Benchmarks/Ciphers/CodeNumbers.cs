using System.Globalization;
using System.Text;
using HintBook.Books;
using HintBook.Ciphers;
using HintBook.Reading;

namespace HintBook.Benchmarks.Ciphers;

/// <summary>How long the proofs of a book of 100 codes take, with all other readings.</summary>
internal static class CodeNumbers
{
    private const int Codes = 100;

    private static readonly string[] Kinds =
    [
        "answer: \"5173\"\n    lock: { wheels: 4, symbols: 0-9 }\n    clue: Five hives, one queen, seven drones, three swarms\n    reads: [ number-words ]",
        "answer: \"255\"\n    lock: { wheels: 3, symbols: 0-9 }\n    clue: Bring every egg\n    reads: [ first-letters, letters-to-numbers ]",
        "answer: \"32514\"\n    lock: { wheels: 5, symbols: \"12345\" }\n    clue: red, yellow, blue, white, green\n    reads: [ queen-colours ]",
        "answer: CLO\n    lock: { wheels: 3, symbols: A-Z }\n    clue: |\n"
            + "      Cold mornings keep the bees within,\n      Light winds at noon will call them out,\n      Over the wall and down the lane\n"
            + "    reads: [ acrostic ]",
        "answer: \"1530\"\n    lock: { wheels: 4, symbols: 0-9 }\n    clue: The train leaves at 3:30 pm\n    reads: [ 24-hour ]",
    ];

    /// <summary>The first run of a process, as <c>check</c> meets it, and the best of twenty, in the processor's time.</summary>
    public static int Print()
    {
        var folder = Directory.CreateTempSubdirectory("hintbook-codes-").FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "book.yaml"), Yaml());
            var book = Reader.Read(folder).Book!;
            var first = Milliseconds(book, out var proofs);
            var best = Enumerable.Range(0, 20).Min(_ => Milliseconds(book, out var _));
            var proved = proofs.Codes.Count(proof => proof.Says is Verdict.Proved);
            var others = proofs.Codes.Sum(proof => proof.Others.Length);
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{proved} of {Codes} codes proved, {others} other readings: {first:0} ms at first, {best:0} ms at best (processor)"));
            return 0;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    // The processor's time, compiling included: others may be at work on the machine.
    private static double Milliseconds(Book book, out Proofs proofs)
    {
        var before = Environment.CpuUsage.TotalTime;
        proofs = Proofs.Prove(book);
        return (Environment.CpuUsage.TotalTime - before).TotalMilliseconds;
    }

    private static string Yaml()
    {
        var yaml = new StringBuilder("title: A book of codes\ngoal: [ code-0 ]\ncodes:\n");
        foreach (var number in Enumerable.Range(0, Codes))
            yaml.Append(CultureInfo.InvariantCulture, $"  code-{number}:\n    {Kinds[number % Kinds.Length]}\n");
        return yaml.ToString();
    }
}
