using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using HintBook.Books;
using HintBook.Photos;

namespace HintBook.Pages;

/// <summary>
/// What makes a site stay on a device: the web app manifest and the worker that keeps its files (W3C Web Application Manifest, W3C Service
/// Workers). First come the pages with their style and script, then each picture in one size; the other sizes are kept once they are asked for.
/// </summary>
public static class Offline
{
    private const string Manifest = "manifest.webmanifest";

    // In the site: their names come from a digest of what is in them.
    private const string PicturesFolder = "pictures/";
    private const string FilmsFolder = "films/";

    // In pixels. A phone's page is about 390 wide, with two or three of the screen's pixels to each of its own.
    private const int PhoneWidth = 800;

    private static readonly JsonWriterOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The files that keep a site on a device; none where the theme has no worker.</summary>
    /// <param name="book">The book.</param>
    /// <param name="theme">Its theme.</param>
    /// <param name="files">Every file of the site, with a hash of its content where its name hasn't one; films and what belongs to them aren't kept.</param>
    /// <param name="pictures">The pictures of the site.</param>
    public static IReadOnlyCollection<MadeFile> Build(
        Book book, Theme theme, IEnumerable<(string Path, string Hash)> files, IEnumerable<Picture> pictures)
    {
        if (theme.Worker is not { } worker)
            return [];
        var all = files.OrderBy(file => file.Path, StringComparer.Ordinal).ToArray();
        var first = all.Select(file => file.Path).Append(Manifest).Where(path => !path.StartsWith(PicturesFolder, StringComparison.Ordinal)
            && !path.StartsWith(FilmsFolder, StringComparison.Ordinal));
        var then = pictures.Select(ForPhones).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);
        return
        [
            new MadeFile(Manifest, () => ManifestOf(book, theme)),
            new MadeFile(Theme.WorkerFile, () => Encoding.UTF8.GetBytes($"""
                const site = {Text(Addresses.Derive(book.Identity, ""))};
                const version = {Text(VersionOf(all))};
                const files = [{string.Join(", ", first.Select(Text))}];
                const pictures = [{string.Join(", ", then.Select(Text))}];

                """ + (book.Sealed is null ? "" : theme.SealedWorker) + worker)),
        ];
    }

    private static string ForPhones(Picture picture) => (picture.Files.LastOrDefault(file => file.Width <= PhoneWidth) ?? picture.Files[0]).Path;

    private static string VersionOf((string Path, string Hash)[] files) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', files.Select(file => $"{file.Path} {file.Hash}")))))[..16];

    private static ReadOnlyMemory<byte> ManifestOf(Book book, Theme theme)
    {
        using var text = new MemoryStream();
        using (var json = new Utf8JsonWriter(text, Plain))
        {
            json.WriteStartObject();
            json.WriteString("name", book.Title.Value);
            json.WriteString("lang", book.Language.Value);
            json.WriteString("dir", TextDirection.Of(book.Language.Value));
            json.WriteString("start_url", "index.html");
            json.WriteString("scope", "./");
            json.WriteString("display", "standalone");
            if (theme.Assets.TryGetValue("icon.svg", out var icon))
            {
                json.WriteStartArray("icons");
                json.WriteStartObject();
                json.WriteString("src", icon.Path);
                json.WriteString("sizes", "any");
                json.WriteString("type", "image/svg+xml");
                json.WriteEndObject();
                json.WriteEndArray();
            }

            json.WriteEndObject();
        }

        return text.ToArray();
    }

    private static string Text(string value) => $"\"{JavaScriptEncoder.Default.Encode(value)}\"";
}
