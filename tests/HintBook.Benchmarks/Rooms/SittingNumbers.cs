using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using HintBook.Benchmarks.Books;
using HintBook.Mechanism;
using HintBook.Reading;
using HintBook.Reading.Sittings;
using HintBook.Sittings;
using HintBook.Sittings.Page;
using HintBook.Text;

namespace HintBook.Benchmarks.Rooms;

/// <summary>
/// 10,000 sittings of a box of 12 stages, from the text of their table to the text, the numbers for programs and the page; and a box of 60 stages, in six
/// branches, opened 100,000 times by chance. Processor time of one process, so that a busy machine counts less.
/// </summary>
internal static class SittingNumbers
{
    private const int Sittings = 10_000;
    private const int FewStages = 12;
    private const int ManyStages = 60;
    private const int Branches = 6;
    private const int Runs = 100_000;
    private const int Rounds = 3;

    public static int Print()
    {
        var folder = Directory.CreateTempSubdirectory("hintbook-bench-").FullName;
        try
        {
            OfSittings(folder);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }

        OfChance();
        return 0;
    }

    private static void OfSittings(string folder)
    {
        MadeBook.Write(folder, FewStages, photos: 0, cards: false);
        var book = Reader.Read(folder).Book ?? throw new InvalidOperationException("The book that was made has errors.");
        var survey = Surveyor.Survey(book, whole: true).Survey ?? throw new InvalidOperationException("The book that was made can't be surveyed.");
        var dice = new Dice(1);
        var table = new StringBuilder("who,stage,minutes,help,remarks\n");
        for (var who = 1; who <= Sittings; who++)
        {
            foreach (var stage in book.Stages)
                table.Append(CultureInfo.InvariantCulture, $"P{who},{stage.Id},{1 + (40 * dice.Share()):0.#},{dice.Below(4)},\"slow, but fine\"\n");
        }

        var file = new SourceFile("sittings/all.csv", table.ToString());
        var (read, told, page) = (new double[Rounds], new double[Rounds], new double[Rounds]);
        for (var round = 0; round < Rounds; round++)
        {
            var findings = new List<Finding>();
            var with = book;
            read[round] = ProcessorTime.Of(() => with = book with { Sittings = SittingFiles.In(file, book, AddressList.Nothing, findings) });
            if (with.Sittings.Length != Sittings * FewStages || findings.Count > 0)
                throw new InvalidOperationException("Not all rows were read.");
            BoxSittings? box = null;
            told[round] = ProcessorTime.Of(() =>
            {
                box = BoxSittings.Of(with, survey);
                SittingsText.Write(with, box);
                SittingsJson.Write(box, new BoxLetters(0, [], 0));
            });
            page[round] = ProcessorTime.Of(() => SittingsPage.Write(with, box!));
        }

        Console.WriteLine($"{Sittings} sittings, {Sittings * FewStages} rows: read {Said(read)}");
        Console.WriteLine($"told, with {BoxSittings.UsualRuns} runs: {Said(told)}");
        Console.WriteLine($"their page: {Said(page)}");
    }

    private static void OfChance()
    {
        var dice = new Dice(2);
        ImmutableArray<Timed> tasks =
        [
            .. Enumerable.Range(0, ManyStages).Select(stage => new Timed(
                $"{stage}",
                stage < Branches ? []
                    : stage == ManyStages - 1 ? [.. Enumerable.Range(stage - Branches, Branches).Select(before => ImmutableArray.Create(before))]
                    : [[stage - Branches]])),
        ];
        ImmutableArray<StageTime> times =
            [.. tasks.Select(_ => new StageTime([.. Enumerable.Range(0, 20).Select(_ => 1 + (40 * dice.Share()))], new(5, 10, 20)))];
        var took = Enumerable.Range(0, Rounds).Select(_ => ProcessorTime.Of(() => WholeBox.Of(tasks, times, Runs))).ToArray();
        ImmutableArray<StageTime> guesses = [.. times.Select(time => time with { Minutes = [] })];
        var guessed = Enumerable.Range(0, Rounds).Select(_ => ProcessorTime.Of(() => WholeBox.Of(tasks, guesses, Runs))).ToArray();
        Console.WriteLine($"{Runs} runs of {ManyStages} stages: with times {Said(took)}, with guesses {Said(guessed)}");
    }

    private static string Said(double[] seconds) => string.Create(CultureInfo.InvariantCulture, $"{seconds[0]:0.00} s first, {seconds.Min():0.00} s at best");
}
