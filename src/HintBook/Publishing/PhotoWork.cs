using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using HintBook.Checking;
using HintBook.Checking.Media;
using HintBook.Photos;
using HintBook.Photos.Drawings;
using HintBook.Text;

namespace HintBook.Publishing;

/// <summary>Develops a book's photos on all cores, and takes those that haven't changed from the cache.</summary>
internal static class PhotoWork
{
    /// <summary>Writes the pictures, and says how many had to be developed and what couldn't be.</summary>
    /// <param name="book">The book.</param>
    /// <param name="writer">Where the site is put together.</param>
    /// <param name="cache">The folder with the pictures of earlier publishes.</param>
    /// <param name="ahead">What has been developed already.</param>
    public static (int Developed, IEnumerable<Finding> Findings) Run(Examined book, OutputWriter writer, string cache, PhotosAhead ahead)
    {
        var findings = new ConcurrentBag<Finding>();
        var developed = 0;
        Directory.CreateDirectory(cache);
        // Two files with the same bytes have the same pictures.
        var photos = book.Media.Photos.DistinctBy(photo => photo.Plan.Key).ToArray();
        writer.ForEach("photos", photos, photo =>
        {
            if (photo.Plan.Picture.Drawing is { } drawing)
            {
                writer.Write(Path.Combine("site", photo.Plan.Picture.Largest.Path), SvgWriter.Write(drawing));
                return;
            }

            if (Kept(photo.Plan, cache) is { } kept)
            {
                foreach (var (path, content) in kept)
                    writer.Write(Path.Combine("site", path), content);
                return;
            }

            Interlocked.Increment(ref developed);
            foreach (var finding in Develop(photo, book, writer, cache, ahead))
                findings.Add(finding);
        });
        return (developed, findings);
    }

    private static IReadOnlyList<Finding> Develop(BookPhoto photo, Examined book, OutputWriter writer, string cache, PhotosAhead ahead)
    {
        var (pictures, findings) = ahead.Take(photo, book.Book, book.Folder);
        if (pictures is null)
            return findings;
        foreach (var (file, content) in pictures.Picture.Files.Zip(pictures.Bytes))
        {
            writer.Write(Path.Combine("site", file.Path), content);
            writer.Disk.Write(Path.Combine(cache, Path.GetFileName(file.Path)), content);
        }

        writer.Disk.Write(photo.Plan.Key.RecordIn(cache), Encoding.UTF8.GetBytes(PictureRecord.Of(pictures).Write()));
        return findings;
    }

    // A cache that was cut short, mixed up or tampered with is a miss, never an error.
    private static List<(string Path, byte[] Content)>? Kept(PlannedPhoto plan, string cache)
    {
        try
        {
            if (!File.Exists(plan.Key.RecordIn(cache)) || PictureRecord.Read(File.ReadAllText(plan.Key.RecordIn(cache)), plan.Key) is not { } record)
                return null;
            if (!record.Picture.Files.SequenceEqual(plan.Picture.Files))
                return null;
            var files = record.Picture.Files
                .Select(file => (File: file, Content: File.ReadAllBytes(Path.Combine(cache, Path.GetFileName(file.Path)))))
                .ToArray();
            return files.All(file => record.Holds(file.File, file.Content)) ? [.. files.Select(file => (file.File.Path, file.Content))] : null;
        }
        catch (IOException)
        {
            return null;
        }
    }

    /// <summary>The SHA-256 of every published picture whose record a cache still has, by its path in the site.</summary>
    public static IEnumerable<(string Path, string Digest)> DigestsIn(string cache, IEnumerable<BookPhoto> photos) =>
        photos.DistinctBy(photo => photo.Plan.Key).SelectMany(photo => DigestsOf(photo, cache));

    private static IEnumerable<(string Path, string Digest)> DigestsOf(BookPhoto photo, string cache)
    {
        var (plan, record) = (photo.Plan, photo.Plan.Key.RecordIn(cache));
        if (plan.Picture.Drawing is { } drawing)
            return [(plan.Picture.Largest.Path, Convert.ToHexStringLower(SHA256.HashData(SvgWriter.Write(drawing))))];
        return File.Exists(record) && PictureRecord.Read(File.ReadAllText(record), plan.Key) is { } kept ? kept.Digests : [];
    }
}
