using System.Diagnostics;
using HintBook.Benchmarks.Books;
using HintBook.Benchmarks.UnderLoad;
using HintBook.Benchmarks.Whole;
using HintBook.Cards;
using HintBook.Checking;
using HintBook.Print;
using HintBook.Publishing;
using QRCoder;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace HintBook.Benchmarks.Rooms;

/// <summary>
/// What is printed: cards beside what their codes alone cost (QRCoder makes each and its picture, ZXing decodes each picture twice, as often as the
/// cards are read back), a booklet of 300 entries with 100 photos, and all papers of the example. Processor time of one process, so that a busy machine
/// counts less.
/// </summary>
internal static class PaperNumbers
{
    private const int PixelsPerModule = 20;

    /// <summary>Measures what is printed.</summary>
    /// <param name="cards">How many cards.</param>
    /// <param name="part"><c>example</c>, <c>booklet</c> or <c>cards</c>; null for all of them.</param>
    /// <param name="rounds">How often the example is printed each way: the process is warm when the last rounds take no less time than those before.</param>
    public static int Print(int cards, string? part = null, int rounds = 12)
    {
        var root = Directory.CreateTempSubdirectory("hintbook-bench-").FullName;
        try
        {
            if (part is null or "example")
                OfExample(Path.Combine(root, "example"), rounds);
            if (part is null or "booklet")
                OfBooklet(Path.Combine(root, "booklet"), Path.Combine(root, "out"));
            if (part is null or "cards")
                OfCards(Path.Combine(root, "cards"), cards);
            return 0;
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }

    // The photos are developed and the process is warm. The check of the book is part of a print, and said by itself too.
    private static void OfExample(string output, int rounds)
    {
        var source = Path.Combine(Checkout.Root, "content-example");
        var options = new PublishOptions { Output = output };
        HashSet<PaperKind> all = [.. Enum.GetValues<PaperKind>()];
        Say("the first time, photos developed", [Took(Print)]);
        Say("everything printed anew", Enumerable.Range(0, rounds).Select(_ =>
        {
            foreach (var file in Directory.EnumerateFiles(output, "*.kept", SearchOption.AllDirectories).ToArray())
                File.Delete(file);
            return Took(Print);
        }));
        Say("nothing changed", Enumerable.Range(0, rounds).Select(_ => Took(Print)));
        Say("of it the check of the book", Enumerable.Range(0, rounds).Select(_ => Took(() => Check.Run(source))));

        void Print()
        {
            if (Pipeline.PrintPapers(source, all, options) is not Published)
                throw new InvalidOperationException("The example wasn't printed.");
        }

        static void Say(string what, IEnumerable<(double Processor, double Clock)> took)
        {
            var all = took.ToArray();
            var last = all[^((all.Length + 3) / 4)..];
            Console.WriteLine($"all papers of the example, {what}: at best {all.Min(each => each.Processor):0.00} s of processor time, "
                + $"{all.Min(each => each.Clock):0.00} s by the clock; median {Median(each => each.Processor):0.00} s and {Median(each => each.Clock):0.00} s; "
                + $"of the last {last.Length} of {all.Length} {last.Average(each => each.Processor):0.00} s of processor time on the average");

            double Median(Func<(double Processor, double Clock), double> part) => all.Select(part).Order().ElementAt(all.Length / 2);
        }
    }

    private static void OfCards(string source, int cards)
    {
        MadeBook.Write(source, cards, photos: 0, cards: true);
        var book = Checked(source).Examined;
        var (words, _) = book.Theme.WordsIn(book.Book.Language);
        var cardWords = CardWords.Of(words, book.Theme.InEnglish, Pages.Theme.ToolsEnglish);
        string[] says = [.. CardList.Build(book.Book, book.Addresses, []).Select(card => card.Says)];
        var (ours, floor) = (double.MaxValue, double.MaxValue);
        for (var round = 0; round < 3; round++)
        {
            floor = Math.Min(floor, Took(() => says.AsParallel().ForAll(Code)).Processor);
            ours = Math.Min(ours, Took(() =>
            {
                var (set, _) = CardPrint.Print(book.Book, book.Addresses, Paper.A4, cardWords, look: CardLook.Of(book.Theme).Look);
                if (!set.ReadBack.All)
                    throw new InvalidOperationException("A code wasn't read back.");
                foreach (var file in set.Files)
                    file.Content();
            }).Processor);
        }

        Console.WriteLine($"{says.Length} cards            {ours:0.0} s");
        Console.WriteLine($"their codes alone     {floor:0.0} s");
        Console.WriteLine($"ratio                 {ours / floor:0.00}");
    }

    private static void Code(string says)
    {
        using var code = new QRCodeGenerator().CreateQrCode(says, QRCodeGenerator.ECCLevel.M);
        var png = new PngByteQRCode(code).GetGraphic(PixelsPerModule);
        for (var time = 0; time < 2; time++)
        {
            using var image = Image.Load<L8>(png);
            var pixels = new byte[image.Width * image.Height];
            image.CopyPixelDataTo(pixels);
            var source = new RGBLuminanceSource(pixels, image.Width, image.Height, RGBLuminanceSource.BitmapFormat.Gray8);
            // About one in a thousand isn't found by this reader alone.
            new QRCodeReader().decode(new BinaryBitmap(new GlobalHistogramBinarizer(source)));
        }
    }

    private static void OfBooklet(string source, string output)
    {
        MadeBook.Write(source, stages: 100, photos: 100, cards: false, photoWidth: 1600);
        var options = new PublishOptions { Output = output };
        HashSet<PaperKind> booklet = [PaperKind.Booklet];
        // Developing photos is measured elsewhere: they are in the cache, the booklet isn't.
        Pipeline.PrintPapers(source, new HashSet<PaperKind> { PaperKind.Label }, options);
        GC.Collect();
        PeakMemory.Forget();
        var (processor, clock) = Took(() =>
        {
            if (Pipeline.PrintPapers(source, booklet, options) is not Published)
                throw new InvalidOperationException("The booklet wasn't printed.");
        });
        Console.WriteLine($"a booklet of 300 entries and questions, 100 photos, checked, set, written and audited: "
            + $"{clock:0.0} s by the clock, {processor:0.0} s of processor time, {PeakMemory.Kibibytes / 1024} MiB at most");
        (processor, clock) = Took(() => Pipeline.PrintPapers(source, booklet, options));
        Console.WriteLine($"the same, nothing changed: {clock:0.0} s by the clock, {processor:0.0} s of processor time");
    }

    private static Sound Checked(string source) =>
        Check.Run(source) as Sound ?? throw new InvalidOperationException("The book that was made has errors.");

    private static (double Processor, double Clock) Took(Action action)
    {
        using var process = Process.GetCurrentProcess();
        process.Refresh();
        var (start, clock) = (process.TotalProcessorTime, Stopwatch.StartNew());
        action();
        process.Refresh();
        return ((process.TotalProcessorTime - start).TotalSeconds, clock.Elapsed.TotalSeconds);
    }
}
