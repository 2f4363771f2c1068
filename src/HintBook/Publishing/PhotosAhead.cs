using System.Collections.Concurrent;
using HintBook.Books;
using HintBook.Checking.Media;
using HintBook.Photos;
using HintBook.Reading.Folder;
using HintBook.Text;

namespace HintBook.Publishing;

/// <summary>
/// Develops photos while the rest of the book is still being checked, on one core, and each only once: what isn't ready when a publish asks for it is
/// developed then. Nothing is written. Thread-safe.
/// </summary>
/// <param name="cache">The folder with the pictures of earlier publishes; what lies there isn't developed ahead.</param>
internal sealed class PhotosAhead(string cache) : IDisposable
{
    // Developed pictures wait in memory: some 0.5 MB for each photo.
    private const int Most = 48;

    private readonly ConcurrentDictionary<PhotoKey, Lazy<DevelopedPhoto>> developed = new();
    private volatile bool enough;
    private Task working = Task.CompletedTask;

    /// <summary>Begins with the photos of a book that is being checked.</summary>
    public void Begin(Book book, BookFolder folder, BookMedia media)
    {
        var photos = media.Photos.DistinctBy(photo => photo.Plan.Key)
            .Where(photo => photo.Plan.Picture.Drawing is null && !File.Exists(photo.Plan.Key.RecordIn(cache)))
            .Take(Most)
            .ToArray();
        working = Task.Run(() =>
        {
            foreach (var photo in photos.TakeWhile(_ => !enough))
                _ = Of(photo, book, folder);
        });
    }

    /// <summary>A photo that was developed ahead, or is now. The caller takes it: asked for again, it is developed again.</summary>
    /// <exception cref="MachineFailure">The file isn't the one that was checked.</exception>
    public DevelopedPhoto Take(BookPhoto photo, Book book, BookFolder folder)
    {
        var taken = Of(photo, book, folder);
        developed.TryRemove(photo.Plan.Key, out _);
        return taken;
    }

    /// <summary>Begins no more photos, and waits for the one that was begun: nobody holds a file of the book when this returns.</summary>
    public void Dispose()
    {
        enough = true;
        // Unlike Wait, it doesn't throw: what went wrong is told to whoever takes the photo.
        _ = Task.WaitAny(working);
    }

    private DevelopedPhoto Of(BookPhoto photo, Book book, BookFolder folder) =>
        developed.GetOrAdd(photo.Plan.Key, _ => new(() => Develop(photo, book, folder))).Value;

    private static DevelopedPhoto Develop(BookPhoto photo, Book book, BookFolder folder)
    {
        var findings = new List<Finding>();
        if (folder.ReadBytes(photo.File.File.Value, photo.File.File.At, MediaCheck.Settings.MaxFileBytes, findings) is not { } bytes)
            return new(null, findings);
        if (PhotoPipeline.KeyOf(bytes, book.Identity, MediaCheck.Settings) != photo.Plan.Key)
        {
            throw new MachineFailure(
                FailureKind.Machine,
                $"“{photo.File.File.Value}” was changed while the book was being published.",
                "Publish again. What was published before is untouched.");
        }

        var result = PhotoPipeline.Develop(bytes, photo.Plan, MediaCheck.Settings);
        return result is ResizedPhoto resized ? new(resized, []) : new(null, [.. PhotoFindings.Check(photo.File, result, MediaCheck.Settings)]);
    }
}

/// <summary>A photo that was developed for the site, or why it can't be.</summary>
/// <param name="Pictures">Its pictures, or null.</param>
/// <param name="Findings">What is to be said of it.</param>
internal sealed record DevelopedPhoto(ResizedPhoto? Pictures, IReadOnlyList<Finding> Findings);
