namespace HintBook.Photos;

/// <summary>A photo for paper: upright, in sRGB, without metadata.</summary>
/// <param name="Jpeg">The picture.</param>
/// <param name="Width">Pixels in a row.</param>
/// <param name="Height">Rows.</param>
/// <param name="Dots">Dots to the inch that the photo has at its place.</param>
public sealed record PrintedPhoto(ReadOnlyMemory<byte> Jpeg, int Width, int Height, int Dots)
{
    /// <summary>Dots to the inch of a photo on paper: more can't be seen.</summary>
    public const int Resolution = 300;

    /// <summary>Under so many dots to the inch a photo looks coarse (common practice of printers, no standard).</summary>
    public const int LeastResolution = 150;

    /// <summary>The width that a photo of some pixels bears at <see cref="LeastResolution"/>, in millimetres.</summary>
    public static double Bears(int pixels) => pixels * MillimetresPerInch / LeastResolution;

    internal const double MillimetresPerInch = 25.4;

    /// <summary>The photo with what is said of it, for <see cref="Read"/>.</summary>
    internal byte[] Write()
    {
        using var content = new MemoryStream();
        using var writer = new BinaryWriter(content);
        writer.Write(Width);
        writer.Write(Height);
        writer.Write(Dots);
        writer.Write(Jpeg.Span);
        return content.ToArray();
    }

    /// <summary>Reads what <see cref="Write"/> wrote.</summary>
    internal static PrintedPhoto Read(byte[] content)
    {
        using var reader = new BinaryReader(new MemoryStream(content, writable: false));
        var (width, height, dots) = (reader.ReadInt32(), reader.ReadInt32(), reader.ReadInt32());
        return new(reader.ReadBytes(content.Length), width, height, dots);
    }
}
