using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.Processing;

namespace HintBook.Benchmarks.Floors;

/// <summary>
/// The least that any maker of three widths on this library must do, done in the fastest order known: load, shrink, turn, shrink
/// again from there, write; one photo a thread, on all cores.
/// </summary>
internal static class PhotosFloor
{
    private static readonly int[] Widths = [1600, 800, 400];

    public static int Run(string book, string output)
    {
        Directory.CreateDirectory(output);
        var encoder = new JpegEncoder { Quality = 82 };
        Parallel.ForEach(Directory.GetFiles(Path.Combine(book, "photos")), file =>
        {
            using var image = Image.Load(File.ReadAllBytes(file));
            foreach (var width in Widths)
            {
                image.Mutate(picture => picture.Resize(width, 0));
                if (width == 1600)
                    image.Mutate(picture => picture.AutoOrient());
                image.Metadata.ExifProfile = null;
                image.SaveAsJpeg(Path.Combine(output, $"{Path.GetFileNameWithoutExtension(file)}-{width}.jpg"), encoder);
            }
        });
        return 0;
    }
}
