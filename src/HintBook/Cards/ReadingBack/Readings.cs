using System.Text;
using HintBook.Cards.Kept;

namespace HintBook.Cards.ReadingBack;

/// <summary>
/// Reads codes, and takes what was read earlier from the very same bytes. A picture is known by its file; a page by its instructions, and
/// where these have changed each code by its own pixels, so that one changed card is one reading.
/// </summary>
internal sealed class Readings(KeptWork kept)
{
    // The quiet zone is measured to its end, so a little of what lies beyond is looked at too: nothing is printed there.
    private const double Around = 0.3;

    /// <summary>What the code in a PNG file says.</summary>
    /// <param name="png">The file.</param>
    /// <param name="reads">Told when it is read now.</param>
    public ReadCode Picture(byte[] png, Action reads) => Take(WorkKey.Of("read picture", input => input.Write(png)), () =>
    {
        reads();
        return new(CodeReader.ReadPng(png), null);
    });

    /// <summary>What the codes on some pages say, side by side; a file that was read before isn't opened again.</summary>
    /// <param name="pdf">The file.</param>
    /// <param name="pages">The pages and where codes stand on them.</param>
    /// <param name="reads">Told which code of which page of these is read now.</param>
    public ReadCode[][] Pages(byte[] pdf, IReadOnlyList<CodedPage> pages, Action<int, int> reads)
    {
        var file = WorkKey.Of("read file", input =>
        {
            input.Write(pdf);
            foreach (var page in pages)
            {
                input.Write(page.Number);
                input.Write(page.OnHead);
                Write(input, page.Codes);
            }
        });
        if (kept.TryTake(file, out var list))
        {
            ReadCode[][] known = [.. Encoding.ASCII.GetString(list).Split('\n').Select(Kept).OfType<ReadCode[]>()];
            if (known.Length == pages.Count)
                return known;
        }

        var read = FinishedPage.In(pdf, pages).Zip(pages).AsParallel().AsOrdered()
            .Select((page, number) => Page(page.First, page.Second.Codes, slot => reads(number, slot)))
            .ToArray();
        if (read.All(page => page.Codes.All(code => code.Says is not null)))
            kept.Keep(file, Encoding.ASCII.GetBytes(string.Join('\n', read.Select(page => page.Key))));
        return [.. read.Select(page => page.Codes)];
    }

    private (string Key, ReadCode[] Codes) Page(FinishedPage finished, Rect[] places, Action<int> reads)
    {
        var page = WorkKey.Of("read page", input =>
        {
            input.Write(finished.Content.Length);
            input.Write(finished.Content);
            input.Write(finished.Width);
            input.Write(finished.Height);
            input.Write(finished.OnHead);
            finished.Resources.Write(input);
            Write(input, places);
        });
        if (Kept(page) is { } known)
            return (page, known);

        var pixels = finished.Pixels();
        var codes = places.Select((place, i) => Code(pixels, place, () => reads(i))).ToArray();
        if (codes.All(code => code.Code.Says is not null))
            kept.Keep(page, Encoding.ASCII.GetBytes(string.Join('\n', codes.Select(code => code.Key))));
        return (page, [.. codes.Select(code => code.Code)]);
    }

    private (string Key, ReadCode Code) Code(Raster? page, Rect place, Action reads)
    {
        if (page is null)
        {
            reads();
            return ("", new(null, null));
        }

        var (pixels, width, height) = page.Cut(place);
        var (around, aroundWidth, aroundHeight) = page.Cut(place.Grown(Around));
        // The code lies in it, as far from its edges as pixels allow.
        var key = WorkKey.Of("read code", input =>
        {
            input.Write(width);
            input.Write(height);
            input.Write(Inside(place.X));
            input.Write(Inside(place.Y));
            input.Write(aroundWidth);
            input.Write(aroundHeight);
            input.Write(around);
        });
        return (key, Take(key, () =>
        {
            reads();
            return new(CodeReader.Read(pixels, width, height), CodeFigures.In(around, aroundWidth, aroundHeight, Raster.PixelsPerMillimetre));
        }));
    }

    private static int Inside(double at) =>
        (int)Math.Round(at * Raster.PixelsPerMillimetre) - (int)Math.Round((at - Around) * Raster.PixelsPerMillimetre);

    private ReadCode Take(string key, Func<ReadCode> read)
    {
        if (kept.TryTake(key, out var before))
            return ReadCode.Kept(before);
        var now = read();
        if (now.Write() is { } content)
            kept.Keep(key, content);
        return now;
    }

    private ReadCode[]? Kept(string page)
    {
        if (!kept.TryTake(page, out var list))
            return null;
        var keys = Encoding.ASCII.GetString(list).Split('\n');
        var known = new ReadCode[keys.Length];
        for (var i = 0; i < keys.Length; i++)
        {
            if (!kept.TryTake(keys[i], out var content))
                return null;
            known[i] = ReadCode.Kept(content);
        }

        return known;
    }

    private static void Write(BinaryWriter input, Rect[] places)
    {
        input.Write(places.Length);
        foreach (var place in places)
            WorkKey.Write(input, place);
    }
}
