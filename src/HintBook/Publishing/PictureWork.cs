using System.Collections.Concurrent;
using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Photos;
using HintBook.Reading.Folder;
using HintBook.Text;

namespace HintBook.Publishing;

/// <summary>Develops a book's photos on all cores, and takes those that haven't changed from the cache.</summary>
internal static class PictureWork
{
    private static readonly PhotoSettings Settings = PhotoSettings.Standard;

    /// <summary>The pictures by photo file, and how many had to be developed.</summary>
    public static (ImmutableDictionary<string, Picture> Pictures, int Developed, Findings Findings) Of(
        CheckedBook book, OutputWriter writer, string cache)
    {
        var photos = PhotosOf(book.Book!).GroupBy(photo => photo.File.Value).ToArray();
        var pictures = new ConcurrentDictionary<string, Picture>();
        var findings = new ConcurrentBag<Finding>();
        var developed = 0;
        Directory.CreateDirectory(cache);
        writer.ForEach("photos", photos, photo =>
        {
            var (picture, fresh, found) = One(book, photo.First(), writer, cache);
            if (fresh)
                Interlocked.Increment(ref developed);
            if (picture is not null)
                pictures[photo.Key] = picture;
            foreach (var finding in found.Concat(photo.Skip(1).SelectMany(other => picture is null ? [] : PhotoFindings.OfPicture(other, picture, Settings))))
                findings.Add(finding);
        });
        return (pictures.ToImmutableDictionary(), developed, Findings.Of(findings));
    }

    /// <summary>What can be said of the photos without decoding them.</summary>
    public static IEnumerable<Finding> Glance(Book book, BookFolder folder) =>
        PhotosOf(book).AsParallel().AsOrdered().SelectMany(photo =>
        {
            var findings = new List<Finding>();
            if (folder.ReadBytes(photo.File.Value, photo.File.At, Settings.MaxFileBytes, findings) is { } bytes)
                findings.AddRange(PhotoFindings.OfGlance(photo, PhotoPipeline.Glance(bytes, Settings), Settings));
            return findings;
        });

    private static (Picture? Picture, bool Fresh, IEnumerable<Finding> Findings) One(CheckedBook book, Photo photo, OutputWriter writer, string cache)
    {
        var findings = new List<Finding>();
        if (book.Folder!.ReadBytes(photo.File.Value, photo.File.At, Settings.MaxFileBytes, findings) is not { } bytes)
            return (null, false, findings);
        var key = PhotoPipeline.KeyOf(bytes, book.Book!.Identity, Settings);
        if (Kept(key, cache) is { } kept)
        {
            foreach (var (path, content) in kept.Files)
                writer.Write(Path.Combine("site", path), content);
            return (kept.Picture, false, PhotoFindings.OfPicture(photo, kept.Picture, Settings));
        }

        var result = PhotoPipeline.Develop(bytes, book.Book.Identity, Settings);
        findings.AddRange(PhotoFindings.Check(photo, result, Settings));
        if (result is not ResizedPhoto prints)
            return (null, true, findings);
        foreach (var (file, content) in prints.Picture.Files.Zip(prints.Bytes))
        {
            writer.Write(Path.Combine("site", file.Path), content);
            File.WriteAllBytes(Path.Combine(cache, Path.GetFileName(file.Path)), content.Span);
        }

        File.WriteAllText(RecordOf(key, cache), PictureRecord.Of(prints).Write());
        return (prints.Picture, true, findings);
    }

    // A cache that was cut short, mixed up or tampered with is a miss, never an error.
    private static (Picture Picture, List<(string Path, byte[] Content)> Files)? Kept(PhotoKey key, string cache)
    {
        try
        {
            if (!File.Exists(RecordOf(key, cache)) || PictureRecord.Read(File.ReadAllText(RecordOf(key, cache)), key) is not { } record)
                return null;
            var files = record.Picture.Files
                .Select(file => (File: file, Content: File.ReadAllBytes(Path.Combine(cache, Path.GetFileName(file.Path)))))
                .ToArray();
            return files.All(file => record.Holds(file.File, file.Content))
                ? (record.Picture, files.Select(file => (file.File.Path, file.Content)).ToList())
                : null;
        }
        catch (IOException)
        {
            return null;
        }
    }

    private static string RecordOf(PhotoKey key, string cache) => Path.Combine(cache, key.Hex + ".txt");

    private static IEnumerable<Photo> PhotosOf(Book book) => book.Photos.Concat(book.Stages.SelectMany(stage => stage.Photos));
}
