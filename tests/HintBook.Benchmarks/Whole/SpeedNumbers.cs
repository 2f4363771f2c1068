using System.Globalization;
using HintBook.Benchmarks.Books;

namespace HintBook.Benchmarks.Whole;

/// <summary>
/// Large books published by whole processes, ours and the floors in turn: processor time, time by the clock and the most memory. Prints
/// the tables of this folder's README.
/// </summary>
internal static class SpeedNumbers
{
    private static readonly string[] Cli = ["dotnet", Path.Combine(AppContext.BaseDirectory, "HintBook.Cli.dll")];
    private static readonly string[] Self = ["dotnet", Path.Combine(AppContext.BaseDirectory, "HintBook.Benchmarks.dll")];

    /// <summary>Stages with text alone: published anew, and again with nothing changed, beside Markdig, Scriban and writing.</summary>
    /// <param name="stages">How many stages.</param>
    /// <param name="rounds">How often each is done.</param>
    public static int Pages(int stages, int rounds) => In(root =>
    {
        var (book, output) = (Path.Combine(root, "book"), Path.Combine(root, "out"));
        MadeBook.Write(book, stages, photos: 0, cards: false);
        var (floor, first, again) = (new List<Used>(), new List<Used>(), new List<Used>());
        for (var round = 0; round < rounds; round++)
        {
            Clear(output);
            floor.Add(Used.By([.. Self, "floor-pages", book, output]));
            Clear(output);
            first.Add(Used.By([.. Cli, "publish", book, "--out", output]));
            again.Add(Used.By([.. Cli, "publish", book, "--out", output]));
        }

        Table(Used.Best(floor),
            ($"{stages} stages, the floor", Used.Best(floor)),
            ($"{stages} stages, from nothing", Used.Best(first)),
            ($"{stages} stages, nothing changed", Used.Best(again)));
    });

    /// <summary>200 photos of 12 megapixels to three widths, beside ImageSharp alone and Debian's <c>vipsthumbnail</c> (package libvips-tools).</summary>
    /// <param name="photos">How many photos.</param>
    /// <param name="rounds">How often each is done.</param>
    public static int Photos(int photos, int rounds) => In(root =>
    {
        var (book, output) = (Path.Combine(root, "book"), Path.Combine(root, "out"));
        MadeBook.Write(book, photos, photos, cards: false);
        var (floor, vips, first, again) = (new List<Used>(), new List<Used>(), new List<Used>(), new List<Used>());
        for (var round = 0; round < rounds; round++)
        {
            Clear(output);
            floor.Add(Used.By([.. Self, "floor-photos", book, output]));
            Clear(output);
            Directory.CreateDirectory(output);
            vips.Add(Used.By("sh", "-c", VipsOn(Path.Combine(book, "photos"), output)));
            Clear(output);
            first.Add(Used.By([.. Cli, "publish", book, "--out", output]));
            again.Add(Used.By([.. Cli, "publish", book, "--out", output]));
        }

        Table(Used.Best(floor),
            ($"{photos} photos, ImageSharp alone", Used.Best(floor)),
            ($"{photos} photos, vipsthumbnail", Used.Best(vips)),
            ($"{photos} photos, from nothing", Used.Best(first)),
            ($"{photos} photos, nothing changed", Used.Best(again)));
    });

    // One process for each photo and width, as many at once as there are cores: "400x" is as wide as that after turning. The same quality as ours.
    private static string VipsOn(string photos, string output) => string.Create(CultureInfo.InvariantCulture,
        $"for width in 1600 800 400; do ls {photos}/*.jpg | xargs -P {Environment.ProcessorCount} -n 25 vipsthumbnail --size ${{width}}x "
        + $"-o {output}/%s-$width.jpg[Q=82,strip]; done");

    private static void Table(Used floor, params (string What, Used Used)[] rows)
    {
        Console.WriteLine("| what | processor time | of the floor | by the clock | of the floor | memory |");
        Console.WriteLine("|---|---|---|---|---|---|");
        foreach (var (what, used) in rows)
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"| {what} | {used.Processor:0.00} s | {used.Processor / floor.Processor:0.00} | {used.Clock:0.00} s | {used.Clock / floor.Clock:0.00} "
                + $"| {used.Mebibytes:0} MiB |"));
        }
    }

    private static int In(Action<string> measure)
    {
        var root = Directory.CreateTempSubdirectory("hintbook-bench-").FullName;
        try
        {
            measure(root);
            return 0;
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }

    private static void Clear(string folder)
    {
        if (Directory.Exists(folder))
            Directory.Delete(folder, recursive: true);
    }
}
