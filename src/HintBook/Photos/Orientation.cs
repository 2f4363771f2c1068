using SixLabors.ImageSharp.Metadata.Profiles.Exif;
using SixLabors.ImageSharp.Processing;

namespace HintBook.Photos;

/// <summary>
/// How a camera was held, in the eight values of the Exif tag Orientation (CIPA DC-008, 0x0112): the value says on which sides
/// the stored picture's first row and first column belong.
/// </summary>
internal static class Orientation
{
    public const int Upright = 1;

    // An Exif block in a JPEG is under 64 KB; larger ones elsewhere carry thumbnails and notes that nobody needs read.
    private const int MostBytes = 1 << 20;

    /// <summary>The value in an Exif block, 1 to 8; 1 for none, and for a block that can't be read.</summary>
    public static int Read(ReadOnlyMemory<byte> exif)
    {
        if (exif.IsEmpty || exif.Length > MostBytes)
            return Upright;
        try
        {
            return new ExifProfile(exif.ToArray()).GetValue(ExifTag.Orientation)?.Value is { } value and >= 1 and <= 8 ? value : Upright;
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // Damaged metadata is about to be thrown away in any case.
            return Upright;
        }
    }

    /// <summary>Whether the stored picture lies on its side.</summary>
    public static bool SwapsSides(int orientation) => orientation >= 5;

    /// <summary>Turns a stored picture upright.</summary>
    public static void Mend(IImageProcessingContext picture, int orientation)
    {
        var (rotation, mirror) = orientation switch
        {
            2 => (RotateMode.None, FlipMode.Horizontal),
            3 => (RotateMode.Rotate180, FlipMode.None),
            4 => (RotateMode.None, FlipMode.Vertical),
            5 => (RotateMode.Rotate90, FlipMode.Horizontal),
            6 => (RotateMode.Rotate90, FlipMode.None),
            7 => (RotateMode.Rotate270, FlipMode.Horizontal),
            8 => (RotateMode.Rotate270, FlipMode.None),
            _ => (RotateMode.None, FlipMode.None),
        };
        if (orientation != Upright)
            picture.RotateFlip(rotation, mirror);
    }
}
