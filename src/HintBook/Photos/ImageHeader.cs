namespace HintBook.Photos;

/// <summary>
/// What a picture file says of itself before a pixel is decoded. The library that decodes fills what is missing with black
/// and unpacks compressed comments of any size, so both questions are answered here, from the file's outer structure alone.
/// </summary>
/// <param name="Complete">Whether the file reaches its own end mark.</param>
/// <param name="Moving">Whether it has several frames.</param>
/// <param name="Exif">The Exif block, starting with its byte order; empty where there is none.</param>
internal readonly record struct ImageHeader(bool Complete, bool Moving, ReadOnlyMemory<byte> Exif)
{
    /// <summary>Reads a file's outer structure, or gives null for a kind that isn't developed.</summary>
    public static ImageHeader? Read(ReadOnlyMemory<byte> file) => file.Span switch
    {
        [0xFF, 0xD8, 0xFF, ..] => JpegStructure.Read(file),
        [0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10, ..] => PngStructure.Read(file),
        [(byte)'R', (byte)'I', (byte)'F', (byte)'F', _, _, _, _, (byte)'W', (byte)'E', (byte)'B', (byte)'P', ..] => WebpStructure.Read(file),
        _ => null,
    };

    /// <summary>The name of a kind of file that people send instead of a JPEG, by its first bytes, or null.</summary>
    public static string? LooksLike(ReadOnlySpan<byte> file) => file switch
    {
        [] => "an empty file",
        [(byte)'G', (byte)'I', (byte)'F', (byte)'8', ..] => "a GIF",
        [(byte)'B', (byte)'M', ..] => "a BMP picture",
        [(byte)'I', (byte)'I', 42, 0, ..] or [(byte)'M', (byte)'M', 0, 42, ..] => "a TIFF or a camera's raw file",
        [_, _, _, _, (byte)'f', (byte)'t', (byte)'y', (byte)'p', (byte)'a', (byte)'v', (byte)'i', (byte)'f', ..] => "an AVIF picture",
        [_, _, _, _, (byte)'f', (byte)'t', (byte)'y', (byte)'p', (byte)'h' or (byte)'m', ..] => "a HEIC photo or a film",
        [_, _, _, _, (byte)'f', (byte)'t', (byte)'y', (byte)'p', ..] => "a film",
        [(byte)'%', (byte)'P', (byte)'D', (byte)'F', ..] => "a PDF",
        [(byte)'<', ..] => "an SVG or a web page",
        _ when file[..Math.Min(file.Length, 512)].IndexOfAnyInRange((byte)0, (byte)8) < 0 => "a text",
        _ => null,
    };
}
