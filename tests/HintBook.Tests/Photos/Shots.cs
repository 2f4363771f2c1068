using System.Buffers.Binary;
using System.Text;
using HintBook.Books;
using HintBook.Photos;
using HintBook.Text;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;
using SixLabors.ImageSharp.PixelFormats;

namespace HintBook.Tests.Photos;

/// <summary>Photos for the tests, made on the spot.</summary>
internal static class Shots
{
    public static readonly Rgb24 Red = new(200, 30, 30), Green = new(30, 160, 30), Blue = new(30, 30, 200), Yellow = new(210, 200, 40);

    /// <summary>Four quarters: red and green above, blue and yellow below.</summary>
    public static Image<Rgb24> Quarters(int width, int height)
    {
        var image = new Image<Rgb24>(width, height);
        image.ProcessPixelRows(rows =>
        {
            for (var y = 0; y < height; y++)
            {
                var row = rows.GetRowSpan(y);
                row[..(width / 2)].Fill(y < height / 2 ? Red : Blue);
                row[(width / 2)..].Fill(y < height / 2 ? Green : Yellow);
            }
        });
        return image;
    }

    public static byte[] Saved(Image image, IImageEncoder? encoder = null)
    {
        using var stream = new MemoryStream();
        image.Save(stream, encoder ?? new JpegEncoder { Quality = 92 });
        return stream.ToArray();
    }

    public static byte[] Jpeg(int width, int height, int? orientation = null)
    {
        using var image = Quarters(width, height);
        if (orientation is { } value)
        {
            image.Metadata.ExifProfile = new ExifProfile();
            image.Metadata.ExifProfile.SetValue(ExifTag.Orientation, (ushort)value);
        }

        return Saved(image);
    }

    /// <summary>Develops with the usual settings, and fails the test if that doesn't give pictures.</summary>
    public static ResizedPhoto Prints(byte[] photo) =>
        Assert.IsType<ResizedPhoto>(PhotoPipeline.Develop(photo, "a book", PhotoSettings.Standard));

    /// <summary>Develops what can't be developed, and gives the reason.</summary>
    public static PhotoProblem Problem(byte[] photo, PhotoSettings? settings = null) =>
        Assert.IsType<RejectedPhoto>(PhotoPipeline.Develop(photo, "a book", settings ?? PhotoSettings.Standard)).Problem;

    public static Image<Rgb24> Open(ReadOnlyMemory<byte> bytes) => Image.Load<Rgb24>(bytes.Span);

    /// <summary>A photo as a stage names it.</summary>
    public static Photo Named(string file, string? alt = "The roof, closed.")
    {
        var source = new SourceFile("stages/01-roof.md", $"photos: {{ clue: {file} }}");
        var at = new Span(source, 16, 16 + file.Length);
        return new()
        {
            File = new(file, at),
            Place = Place.Clue,
            Alt = alt is null ? null : new Located<string>(alt, at),
        };
    }

    /// <summary>A PNG of a header and nothing else (W3C PNG, third edition, 11.2.1).</summary>
    public static byte[] PngHeader(int width, int height)
    {
        var header = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, width);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), height);
        (header[8], header[9]) = (8, 2);
        return [0x89, .. "PNG\r\n\u001a\n"u8, .. Chunk("IHDR", header), .. Chunk("IDAT", []), .. Chunk("IEND", [])];
    }

    public static byte[] Chunk(string kind, byte[] data)
    {
        byte[] named = [.. Encoding.ASCII.GetBytes(kind), .. data];
        var framed = new byte[named.Length + 8];
        BinaryPrimitives.WriteInt32BigEndian(framed, data.Length);
        named.CopyTo(framed, 4);
        BinaryPrimitives.WriteUInt32BigEndian(framed.AsSpan(named.Length + 4), Crc(named));
        return framed;
    }

    /// <summary>A JPEG of a start, a frame header and an end (ITU-T T.81, B.2.2).</summary>
    public static byte[] JpegHeader(ushort width, ushort height) =>
    [
        0xFF, 0xD8,
        0xFF, 0xC0, 0, 17, 8, (byte)(height >> 8), (byte)(height & 255), (byte)(width >> 8), (byte)(width & 255),
        3, 1, 0x22, 0, 2, 0x11, 1, 3, 0x11, 1,
        0xFF, 0xD9,
    ];

    // CRC-32 as in PNG's annex D, bit by bit.
    private static uint Crc(byte[] bytes)
    {
        var crc = uint.MaxValue;
        foreach (var b in bytes)
        {
            crc ^= b;
            for (var bit = 0; bit < 8; bit++)
                crc = (crc >> 1) ^ ((crc & 1) == 1 ? 0xEDB88320 : 0);
        }

        return ~crc;
    }
}
