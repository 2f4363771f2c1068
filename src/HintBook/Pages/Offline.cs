using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using HintBook.Books;

namespace HintBook.Pages;

/// <summary>
/// What makes a site stay on a device: the web app manifest and the worker that keeps every file (W3C Web Application Manifest, W3C Service
/// Workers).
/// </summary>
public static class Offline
{
    private const string Manifest = "manifest.webmanifest";

    private static readonly JsonWriterOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The files that keep a site on a device; none where the theme has no worker.</summary>
    /// <param name="book">The book.</param>
    /// <param name="theme">Its theme.</param>
    /// <param name="files">Every file of the site that is to be kept, with a hash of its content; films aside, which are too large to be kept unasked.</param>
    public static IReadOnlyCollection<MadeFile> Build(Book book, Theme theme, IEnumerable<(string Path, string Hash)> files)
    {
        if (theme.Worker is not { } worker)
            return [];
        var kept = files.OrderBy(file => file.Path, StringComparer.Ordinal).ToArray();
        return
        [
            new MadeFile(Manifest, () => ManifestOf(book, theme)),
            new MadeFile(Theme.WorkerFile, () => Encoding.UTF8.GetBytes($"""
                const site = {Text(Addresses.Derive(book.Identity, ""))};
                const version = {Text(VersionOf(kept))};
                const files = [{string.Join(", ", kept.Select(file => Text(file.Path)))}];

                """ + worker)),
        ];
    }

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
