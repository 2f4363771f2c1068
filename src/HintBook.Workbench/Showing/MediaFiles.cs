using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using HintBook.Photos;
using HintBook.Photos.Films;

namespace HintBook.Workbench.Showing;

/// <summary>The photos and films in a book's folder. Only what lies in <c>photos</c> and <c>clips</c> is shown, and no link is followed.</summary>
/// <param name="root">The book's folder, as a full path.</param>
internal sealed class MediaFiles(string root)
{
    private const string PhotoFolder = "photos";
    private const string FilmFolder = "clips";
    private const int LongestName = 40;

    // Cameras count their pictures: IMG_2034, DSC00012, PXL_20261128_101500, 20261128_101500, “image (3)”.
    private static readonly string[] WordsOfCameras = ["img", "dsc", "dscn", "pxl", "image", "photo", "picture"];

    private static readonly EnumerationOptions Walk = new()
    {
        RecurseSubdirectories = true,
        MaxRecursionDepth = 3,
        AttributesToSkip = FileAttributes.Hidden | FileAttributes.System | FileAttributes.ReparsePoint,
    };

    private readonly Lock gate = new();

    /// <summary>The names of the films, relative to <c>clips</c>, with slashes.</summary>
    public ImmutableArray<string> Films =>
        [.. In(FilmFolder).Where(FilmFile.IsNamedSo).Order(StringComparer.Ordinal)];

    /// <summary>The full path of a photo or film; null if the book has none of that name.</summary>
    /// <param name="name">Relative to the book: <c>photos/card.jpg</c>.</param>
    public string? PathOf(string name) =>
        name.Split('/', 2) is [PhotoFolder or FilmFolder, var inside] && In(name.Split('/')[0]).Contains(inside)
            ? Path.Combine(root, name)
            : null;

    /// <summary>A good name for a photo that the folder doesn't have yet: what its own name says, or where it stands where that is a camera's number.</summary>
    /// <param name="given">The name of the file it comes from.</param>
    /// <param name="place">Where it will stand: <c>the-smoker-clue</c>.</param>
    public static string NameFor(string given, string place)
    {
        var plain = Letters(Path.GetFileNameWithoutExtension(given));
        var says = plain.Split('-').Any(word => word.Length > 2 && !word.Any(char.IsAsciiDigit) && !WordsOfCameras.Contains(word));
        return says ? plain : Letters(place);
    }

    /// <summary>Keeps a photo under a name that no file of the folder has.</summary>
    /// <param name="name">The name without an ending.</param>
    /// <param name="photo">The photo.</param>
    /// <returns>Its name in the folder.</returns>
    /// <exception cref="IOException">It can't be written.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    public string Keep(string name, KeptPhoto photo)
    {
        lock (gate)
        {
            var folder = Path.Combine(root, PhotoFolder);
            if (new DirectoryInfo(folder).LinkTarget is not null)
                throw new IOException($"“{PhotoFolder}” is a link to another folder, and nothing is written outside of the book.");
            Directory.CreateDirectory(folder);
            var fresh = Path.Combine(folder, $".{Guid.NewGuid():N}.new");
            try
            {
                File.WriteAllBytes(fresh, photo.Bytes.Span);
                var unused = Unused(name);
                File.Move(fresh, Path.Combine(folder, unused));
                return unused;
            }
            catch
            {
                File.Delete(fresh);
                throw;
            }
        }
    }

    /// <summary>The name that a photo would be kept under now.</summary>
    /// <param name="name">The name without an ending.</param>
    public string Unused(string name)
    {
        // Some systems make no difference between capital and small letters.
        var taken = In(PhotoFolder).ToHashSet(StringComparer.OrdinalIgnoreCase);
        for (var number = 1; ; number++)
        {
            var unused = number == 1 ? $"{name}.jpg" : $"{name}-{number}.jpg";
            if (!taken.Contains(unused) && !Path.Exists(Path.Combine(root, PhotoFolder, unused)))
                return unused;
        }
    }

    /// <summary>Takes a photo away again that was just kept.</summary>
    /// <param name="name">Its name in the folder.</param>
    public void Forget(string name) => File.Delete(Path.Combine(root, PhotoFolder, name));

    private IEnumerable<string> In(string folder)
    {
        var path = new DirectoryInfo(Path.Combine(root, folder));
        return path is { Exists: true, LinkTarget: null }
            ? Directory.EnumerateFiles(path.FullName, "*", Walk).Select(file => Path.GetRelativePath(path.FullName, file).Replace('\\', '/'))
            : [];
    }

    // Small letters of ASCII, digits and hyphens: every system and every server takes such a name.
    private static string Letters(string name)
    {
        var letters = new StringBuilder();
        foreach (var sign in name.Normalize(NormalizationForm.FormD).ToLowerInvariant())
        {
            if (char.IsAsciiLetterOrDigit(sign))
                letters.Append(sign);
            else if (letters.Length > 0 && letters[^1] != '-' && CharUnicodeInfo.GetUnicodeCategory(sign) != UnicodeCategory.NonSpacingMark)
                letters.Append('-');
        }

        var cut = letters.ToString(0, Math.Min(LongestName, letters.Length)).Trim('-');
        return cut.Length > 0 ? cut : "photo";
    }
}
