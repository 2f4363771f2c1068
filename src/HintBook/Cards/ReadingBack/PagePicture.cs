using PdfSharp.Pdf;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace HintBook.Cards.ReadingBack;

/// <summary>How the samples of a picture in a PDF are packed.</summary>
internal enum PicturePacking
{
    /// <summary>In a way that isn't known here.</summary>
    Unknown,

    /// <summary>As a JPEG file.</summary>
    Jpeg,

    /// <summary>One byte of grey for each pixel.</summary>
    Grey,

    /// <summary>A byte each of red, green and blue for each pixel.</summary>
    Rgb,
}

/// <summary>A picture that a page can paint, as it lies in the file.</summary>
/// <param name="Width">Pixels in a row.</param>
/// <param name="Height">Rows.</param>
/// <param name="Packing">How its pixels are packed.</param>
/// <param name="Content">The pixels, packed so.</param>
internal sealed record PagePicture(int Width, int Height, PicturePacking Packing, byte[] Content)
{
    /// <summary>The picture of a dictionary of a PDF (ISO 32000-1, table 89).</summary>
    public static PagePicture Of(PdfDictionary picture)
    {
        var packing = PackingOf(picture);
        var content = packing == PicturePacking.Jpeg ? picture.Stream?.Value : picture.Stream?.UnfilteredValue;
        return new(picture.Elements.GetInteger("/Width"), picture.Elements.GetInteger("/Height"), packing, content ?? []);
    }

    /// <summary>Its pixels of one byte, 0 for black, row by row from the top.</summary>
    /// <exception cref="InvalidDataException">Its pixels are packed in a way that isn't known here, or can't be read.</exception>
    public byte[] Pixels() => Packing switch
    {
        PicturePacking.Jpeg => OfJpeg(),
        PicturePacking.Grey when Content.Length >= Width * Height => Content,
        PicturePacking.Rgb when Content.Length >= 3 * Width * Height =>
            [.. Content.Chunk(3).Take(Width * Height).Select(pixel => Luminance.Of(pixel[0] / 255.0, pixel[1] / 255.0, pixel[2] / 255.0))],
        _ => throw new InvalidDataException("The page has a picture that the reader of codes can't read."),
    };

    /// <summary>Writes all that what is seen follows from.</summary>
    public void Write(BinaryWriter output)
    {
        output.Write(Width);
        output.Write(Height);
        output.Write((int)Packing);
        output.Write(Content.Length);
        output.Write(Content);
    }

    private byte[] OfJpeg()
    {
        try
        {
            using var image = Image.Load<L8>(Content);
            if (image.Width != Width || image.Height != Height)
                throw new InvalidDataException("The page has a picture of another size than the file says.");
            var pixels = new byte[Width * Height];
            image.CopyPixelDataTo(pixels);
            return pixels;
        }
        catch (ImageFormatException wrong)
        {
            throw new InvalidDataException("The page has a picture that can't be read.", wrong);
        }
    }

    // What lets the page shine through, or has colours of its own meaning, isn't known here.
    private static PicturePacking PackingOf(PdfDictionary picture)
    {
        var keys = picture.Elements;
        if (keys.ContainsKey("/SMask") || keys.ContainsKey("/Mask") || keys.ContainsKey("/Decode") || keys.GetBoolean("/ImageMask"))
            return PicturePacking.Unknown;
        var filter = keys.GetObject("/Filter") is PdfArray { Elements.Count: 1 } only ? only.Elements.GetName(0) : keys.GetName("/Filter");
        return (filter, keys.GetName("/ColorSpace"), keys.GetInteger("/BitsPerComponent")) switch
        {
            ("/DCTDecode", "/DeviceRGB" or "/DeviceGray", 8) => PicturePacking.Jpeg,
            ("/FlateDecode" or "", "/DeviceGray", 8) => PicturePacking.Grey,
            ("/FlateDecode" or "", "/DeviceRGB", 8) => PicturePacking.Rgb,
            _ => PicturePacking.Unknown,
        };
    }
}
