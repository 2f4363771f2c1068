using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;
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
        // On a busy machine the pool would start more and more threads, each with a whole picture in memory: 200 photos took 3.3 GB.
        var cores = new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount };
        Parallel.ForEach(Directory.GetFiles(Path.Combine(book, "photos")), cores, file =>
        {
            using var image = Image.Load(File.ReadAllBytes(file));
            // The widths are those of the picture as it is looked at: one that lies on its side is that wide in its height.
            var lies = image.Metadata.ExifProfile?.GetValue(ExifTag.Orientation)?.Value >= 5;
            foreach (var width in Widths)
            {
                if (width == Widths[0])
                    image.Mutate(picture => (lies ? picture.Resize(0, width) : picture.Resize(width, 0)).AutoOrient());
                else
                    image.Mutate(picture => picture.Resize(width, 0));
                image.Metadata.ExifProfile = null;
                image.SaveAsJpeg(Path.Combine(output, $"{Path.GetFileNameWithoutExtension(file)}-{width}.jpg"), encoder);
            }
        });
        return 0;
    }
}
