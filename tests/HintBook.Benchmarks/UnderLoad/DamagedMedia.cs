using System.Collections.Immutable;
using System.Text;
using HintBook.Tests.Photos.Films;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats;
using SixLabors.ImageSharp.Formats.Bmp;
using SixLabors.ImageSharp.Formats.Gif;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.Formats.Tiff;
using SixLabors.ImageSharp.Formats.Webp;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;
using SixLabors.ImageSharp.PixelFormats;

namespace HintBook.Benchmarks.UnderLoad;

/// <summary>A book of one stage with a photo, a film or captions that are damaged. No published file may say what only the metadata of a photo says.</summary>
internal static class DamagedMedia
{
    private const string OnlyInMetadata = "taken-in-the-workshop-at-night";

    private static readonly ImmutableArray<(string Ending, byte[] Bytes)> Photos =
    [
        ("jpg", Photo(new JpegEncoder())),
        ("jpg", Photo(new JpegEncoder { Quality = 30, ColorType = JpegColorType.YCbCrRatio444 })),
        ("jpg", Photo(new JpegEncoder { ColorType = JpegColorType.Luminance })),
        ("png", Photo(new PngEncoder())),
        ("png", Photo(new PngEncoder { InterlaceMethod = PngInterlaceMode.Adam7, ColorType = PngColorType.RgbWithAlpha, BitDepth = PngBitDepth.Bit16 })),
        ("png", Photo(new PngEncoder { ColorType = PngColorType.Palette })),
        ("webp", Photo(new WebpEncoder())),
        ("webp", Photo(new WebpEncoder { FileFormat = WebpFileFormatType.Lossless })),
        ("gif", Photo(new GifEncoder())),
        ("bmp", Photo(new BmpEncoder())),
        ("tif", Photo(new TiffEncoder())),
    ];

    private static readonly ImmutableArray<byte[]> Films =
    [
        Mp4.Of(TimeSpan.FromMinutes(2)),
        Mp4.Wide(TimeSpan.FromMinutes(2)),
        [.. Mp4.Of(TimeSpan.FromMinutes(2)), .. Mp4.Box("free", new byte[64]), .. Mp4.Box("moov", Mp4.Box("trak", Mp4.Box("tkhd", new byte[84])))],
    ];

    private static readonly byte[] Captions = Encoding.UTF8.GetBytes(
        "WEBVTT\n\nNOTE for nobody\n\n1\n00:05.000 --> 00:09.000 align:start\nTurn it <b>over</b>.\n\n2\n00:00:10.000 --> 00:00:12.500\nListen &amp; wait.\n");

    /// <summary>Writes one into a folder that isn't there yet.</summary>
    /// <returns>What the program is to be told.</returns>
    public static string[] Write(string folder, Random dice)
    {
        foreach (var name in new[] { "stages", "photos", "clips" })
            Directory.CreateDirectory(Path.Combine(folder, name));
        var (ending, photo) = Photos[dice.Next(Photos.Length)];
        var (film, captions) = (Films[dice.Next(Films.Length)], Captions);
        var kind = dice.Next(10);
        for (var times = dice.Next(1, 4); times > 0; times--)
        {
            if (kind < 6)
                photo = Damage.Of(photo, dice);
            else if (kind < 8)
                film = Damage.Of(film, dice);
            else if (dice.Next(2) == 0)
                captions = Damage.Of(captions, dice);
            else
                captions = Encoding.UTF8.GetBytes(Damage.Of(Encoding.UTF8.GetString(captions), dice, ["WEBVTT\n"]));
        }

        File.WriteAllBytes(Path.Combine(folder, "photos", $"open.{ending}"), photo);
        if (kind >= 6)
        {
            File.WriteAllBytes(Path.Combine(folder, "clips", "film.mp4"), film);
            File.WriteAllBytes(Path.Combine(folder, "clips", "film.en.vtt"), captions);
        }

        File.WriteAllText(
            Path.Combine(folder, "book.yaml"),
            "format: 2\ntitle: The Tea Caddy\nmaker: { name: Nobody, help: mailto:help@nobody.example }\n"
                + "parts: { lid: [ shut, open ] }\ngoal: [ { lid: open } ]\n");
        File.WriteAllText(
            Path.Combine(folder, "stages", "01-the-lid.md"),
            $"""
            ---
            title: The lid
            sign: The box stands before you.
            does: {"{"} lid: open {"}"}
            undo: {"{"} does: {"{"} lid: shut {"}"} {"}"}
            minutes: 5
            photos: {"{"} answer: {"{"} file: open.{ending}, alt: The open box {"}"} {"}"}
            {(kind < 6 ? "cautions: [ sharp-edge ]" : "clip: { file: film.mp4, from: 0:05, to: 1:02 }")}
            ---
            # Nudge
            Look at the grain.

            # Clue
            One side moves.

            # Answer
            Slide it to the left.
            """);
        return ["publish", folder, "--out", Path.Combine(folder, "..", "out")];
    }

    /// <summary>What published pictures still tell: a picture that can't be read, or metadata.</summary>
    /// <param name="site">The published site; where there is none, nothing is told.</param>
    public static IEnumerable<string> Tells(string site)
    {
        var folder = Path.Combine(site, "photos");
        if (!Directory.Exists(folder))
            yield break;
        foreach (var file in Directory.GetFiles(folder))
        {
            var bytes = File.ReadAllBytes(file);
            if (Encoding.Latin1.GetString(bytes).Contains(OnlyInMetadata, StringComparison.Ordinal))
                yield return $"{Path.GetFileName(file)} still says what stood in the metadata";
            if (Fault(bytes) is { } fault)
                yield return $"{Path.GetFileName(file)}: {fault}";
        }
    }

    private static string? Fault(byte[] bytes)
    {
        try
        {
            using var image = Image.Load(bytes);
            return image.Metadata is { ExifProfile: null, XmpProfile: null, IptcProfile: null } ? null : "it has metadata";
        }
        catch (ImageFormatException e)
        {
            return $"it can't be read: {e.Message}";
        }
    }

    private static byte[] Photo(IImageEncoder encoder)
    {
        using var image = new Image<Rgba32>(180, 120);
        image.ProcessPixelRows(rows =>
        {
            for (var y = 0; y < rows.Height; y++)
            {
                var row = rows.GetRowSpan(y);
                for (var x = 0; x < row.Length; x++)
                    row[x] = new Rgba32((byte)(x * 7 & 255), (byte)(y * 9 & 255), (byte)((x ^ y) * 3 & 255), 255);
            }
        });
        image.Metadata.ExifProfile = new ExifProfile();
        image.Metadata.ExifProfile.SetValue(ExifTag.Orientation, (ushort)6);
        image.Metadata.ExifProfile.SetValue(ExifTag.ImageDescription, OnlyInMetadata);
        using var memory = new MemoryStream();
        image.Save(memory, encoder);
        return memory.ToArray();
    }
}
