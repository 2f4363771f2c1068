using System.Text;
using HintBook.Tests.Photos;
using HintBook.Tests.Photos.Films;
using SixLabors.ImageSharp.Formats;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.Formats.Webp;

namespace HintBook.Tests.Cli.GuidePages;

/// <summary>What pages about findings may ask for that isn't a text: a line of one of the tables makes it (see <see cref="Wording"/>).</summary>
internal static class MadeFiles
{
    private static readonly (string Line, Func<Wording, byte[]> Content)[] Files =
    [
        ("a JPEG picture of # × # pixels", told => Shots.Jpeg(told.Number(0), told.Number(1))),
        ("a JPEG picture of # × # pixels, cut in the middle", told => Half(Shots.Jpeg(told.Number(0), told.Number(1)))),
        ("a JPEG picture of # × # pixels, of which only the beginning and the end are there",
            told => Shots.JpegHeader((ushort)told.Number(0), (ushort)told.Number(1))),
        ("a PNG picture of # × # pixels", told => Picture(told, new PngEncoder())),
        ("a PNG picture that says it is # × # pixels", told => Shots.PngHeader(told.Number(0), told.Number(1))),
        ("an animated PNG picture of # × # pixels", told => Moving(Picture(told, new PngEncoder()))),
        ("a WebP picture of # × # pixels", told => Picture(told, new WebpEncoder())),
        ("a GIF picture", _ => "GIF89a\u0001\0\u0001\0\0\0\0;"u8.ToArray()),
        ("a HEIC picture", _ => [0, 0, 0, 24, .. "ftypheic"u8, 0, 0, 0, 0]),
        ("a PDF", _ => "%PDF-1.7\n\0"u8.ToArray()),
        ("a film of #:# minutes", told => Film(told)),
        ("a film of #:# minutes with # MiB", told => [.. Film(told), .. new byte[told.Number(2) << 20]]),
        ("a film of #:# minutes, cut in the middle", told => Half(Film(told))),
        ("a film of #:# minutes with captions inside", told => Mp4.WithWords(Length(told))),
        ("a film of #:# minutes in H.265", told => Mp4.WithPictures(Length(told), "hvc1")),
        ("a film of #:# minutes in H.264", told => Mp4.WithPictures(Length(told), "avc1")),
        ("a film of an old kind", _ => "RIFF\u0020\0\0\0AVI LIST"u8.ToArray()),
        ("an empty file", _ => []),
        ("a file of # MB", told => new byte[told.Number(0) * 1024 * 1024]),
        ("a text saved as UTF-16", _ => [.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes("title: The Tea Caddy\n")]),
        ("a text saved as Latin-1", _ => Encoding.Latin1.GetBytes("title: The Café Caddy\n")),
    ];

    private static readonly (string Line, Action<string, Wording> Make)[] Others =
    [
        ("a folder", (path, _) => InPlaceOfAFile(path)),
        ("a folder of # files", (path, told) => Array.ForEach([.. Enumerable.Range(1, told.Number(0))], n => Write(Path.Combine(path, $"{n}.txt"), []))),
        ("a link that leads out of the book", (path, _) => Link(path, Path.GetTempPath())),
        ("a link that leads nowhere", (path, _) => Link(path, path + "-gone")),
        ("as it was copied, but with `…` instead of `…`", (path, told) => Change(path, told.Text(1), told.Text(0))),
    ];

    /// <summary>Makes what a line asks for, at a place where perhaps a file stands.</summary>
    public static void Make(string line, string path)
    {
        foreach (var (asked, content) in Files)
        {
            if (Wording.Of(line, asked) is { } told)
            {
                Write(path, content(told));
                return;
            }
        }

        foreach (var (asked, make) in Others)
        {
            if (Wording.Of(line, asked) is { } told)
            {
                make(path, told);
                return;
            }
        }

        Assert.Fail($"Nothing makes “{line}”. There is: {string.Join("; ", [.. Files.Select(file => file.Line), .. Others.Select(other => other.Line)])}.");
    }

    private static void Write(string path, byte[] content) => File.WriteAllBytes(InItsFolder(path), content);

    private static void InPlaceOfAFile(string path)
    {
        File.Delete(path);
        Directory.CreateDirectory(path);
    }

    private static void Link(string path, string target)
    {
        File.Delete(InItsFolder(path));
        File.CreateSymbolicLink(path, target);
    }

    private static void Change(string path, string old, string replacement)
    {
        var text = File.ReadAllText(path);
        Assert.Contains(old, text, StringComparison.Ordinal);
        File.WriteAllText(path, text.Replace(old, replacement, StringComparison.Ordinal));
    }

    private static string InItsFolder(string path)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        return path;
    }

    private static byte[] Picture(Wording told, IImageEncoder encoder)
    {
        using var image = Shots.Quarters(told.Number(0), told.Number(1));
        return Shots.Saved(image, encoder);
    }

    private static byte[] Film(Wording told) => Mp4.Of(Length(told));

    private static TimeSpan Length(Wording told) => TimeSpan.FromSeconds((60 * told.Number(0)) + told.Number(1));

    private static byte[] Half(byte[] file) => file[..(file.Length / 2)];

    // An animation control chunk behind the header (W3C PNG, third edition, 11.3.6.1) is what tells an animation.
    private static byte[] Moving(byte[] png) => [.. png[..33], .. Shots.Chunk("acTL", [0, 0, 0, 2, 0, 0, 0, 0]), .. png[33..]];
}
