using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using HintBook.Tests.Photos;
using HintBook.Tests.Photos.Films;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.Formats.Webp;

namespace HintBook.Tests.Cli.Findings;

/// <summary>
/// What pages about findings may ask for that isn't text: a line of the table makes it. “#” in a line stands for a whole number,
/// which the maker gets in order.
/// </summary>
internal static class MadeFiles
{
    private static readonly (string Line, Func<int[], byte[]> Content)[] Files =
    [
        ("a JPEG picture of # × # pixels", size => Shots.Jpeg(size[0], size[1])),
        ("a PNG picture of # × # pixels", size => Picture(size[0], size[1], new PngEncoder())),
        ("a WebP picture of # × # pixels", size => Picture(size[0], size[1], new WebpEncoder())),
        ("a JPEG picture, cut in the middle", _ => Half(Shots.Jpeg(700, 500))),
        ("a JPEG picture, damaged", _ => Shots.JpegHeader(600, 600)),
        ("the beginning of a JPEG picture of # × # pixels", size => Shots.JpegHeader(checked((ushort)size[0]), checked((ushort)size[1]))),
        ("a moving PNG picture", _ => Moving(Picture(600, 400, new PngEncoder()))),
        ("a GIF picture", _ => "GIF89a\u0001\0\u0001\0\0\0\0;"u8.ToArray()),
        ("a HEIC picture", _ => [0, 0, 0, 24, .. "ftypheic"u8, 0, 0, 0, 0]),
        ("a PDF", _ => "%PDF-1.7\n\0"u8.ToArray()),
        ("a film of #:# minutes", time => Mp4.Of(TimeSpan.FromSeconds((60 * time[0]) + time[1]))),
        ("a film that doesn't say how long it is", _ => WithoutLength(Mp4.Of(TimeSpan.FromMinutes(3)))),
        ("an empty file", _ => []),
        ("a file of # MB", size => new byte[size[0] * 1024 * 1024]),
        ("a text of # MB", size => Filled(size[0] * 1024 * 1024, (byte)' ')),
        ("a text saved as UTF-16", _ => [.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes("title: The Tea Caddy\n")]),
        ("a text saved as Latin-1", _ => Encoding.Latin1.GetBytes("title: The Café Caddy\n")),
    ];

    private static readonly (string Line, Action<string, int[]> Make)[] Others =
    [
        ("a folder", (path, _) => Directory.CreateDirectory(path)),
        ("a folder of # files", (path, count) => Array.ForEach([.. Enumerable.Range(1, count[0])], n => Write(Path.Combine(path, $"{n}.txt"), []))),
        ("a link that leads out of the book", (path, _) => File.CreateSymbolicLink(InItsFolder(path), Path.GetTempPath())),
        ("a link that leads nowhere", (path, _) => File.CreateSymbolicLink(InItsFolder(path), path + "-gone")),
    ];

    /// <summary>Makes what a line asks for; whatever stood there before is gone.</summary>
    public static void Make(string line, string path)
    {
        File.Delete(path);
        foreach (var (asked, content) in Files)
        {
            if (NumbersIn(line, asked) is { } numbers)
            {
                Write(path, content(numbers));
                return;
            }
        }

        foreach (var (asked, make) in Others)
        {
            if (NumbersIn(line, asked) is { } numbers)
            {
                make(path, numbers);
                return;
            }
        }

        Assert.Fail($"Nothing makes “{line}”. There is: {string.Join("; ", [.. Files.Select(file => file.Line), .. Others.Select(other => other.Line)])}.");
    }

    private static int[]? NumbersIn(string line, string asked)
    {
        var match = Regex.Match(line, $"^{Regex.Escape(asked).Replace(@"\#", "([0-9,]+)", StringComparison.Ordinal)}$");
        return match.Success ? [.. match.Groups.Values.Skip(1).Select(number => int.Parse(number.Value, NumberStyles.AllowThousands, CultureInfo.InvariantCulture))] : null;
    }

    private static void Write(string path, byte[] content) => File.WriteAllBytes(InItsFolder(path), content);

    private static string InItsFolder(string path)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        return path;
    }

    private static byte[] Picture(int width, int height, SixLabors.ImageSharp.Formats.IImageEncoder encoder)
    {
        using var image = Shots.Quarters(width, height);
        return Shots.Saved(image, encoder);
    }

    private static byte[] Half(byte[] file) => file[..(file.Length / 2)];

    // An animation control chunk behind the header (W3C PNG, third edition, 11.3.6.1) is what tells an animation.
    private static byte[] Moving(byte[] png) => [.. png[..33], .. Shots.Chunk("acTL", [0, 0, 0, 2, 0, 0, 0, 0]), .. png[33..]];

    // All ones stand for a length that isn't known (ISO/IEC 14496-12, 8.2.2.3).
    private static byte[] WithoutLength(byte[] film)
    {
        film.AsSpan(film.Length - 100 + 16, 4).Fill(0xFF);
        return film;
    }

    private static byte[] Filled(int length, byte with)
    {
        var bytes = new byte[length];
        bytes.AsSpan().Fill(with);
        return bytes;
    }
}
