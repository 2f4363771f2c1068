using System.Security.Cryptography;
using System.Text;
using HintBook.Audit.Mentions;

namespace HintBook.Audit;

/// <summary>Reads any file of a site with the reader for its kind.</summary>
internal static class SiteFileReader
{
    /// <summary>Reads a file and its name. Of a kind of file without text only the name counts.</summary>
    /// <param name="folder">The site's folder.</param>
    /// <param name="path">The file's path in the site, with forward slashes.</param>
    /// <param name="secrets">Who may see what.</param>
    public static SiteFile Read(string folder, string path, Secrets secrets)
    {
        var file = TextReader(path) is { } read ? WithText(folder, path, text => read(path, text, secrets)) : Binary(folder, path, secrets);
        var named = secrets.IsEmpty ? [] : secrets.Listen(path).Hear(new(path, 0, 0, "in the file's name", PictureAddresses.MannerOf(path), secrets.Outside));
        return file with { Faults = [.. file.Faults, .. named, .. Exchanged(folder, path, secrets)] };
    }

    private static IEnumerable<AuditFault> Exchanged(string folder, string path, Secrets secrets)
    {
        if (secrets.DigestOf(path) is not { } digest)
            return [];
        using var file = File.OpenRead(Path.Combine(folder, path));
        return Convert.ToHexStringLower(SHA256.HashData(file)) == digest
            ? []
            : [new(path, 0, 0, "This isn't the picture that was made under this name: what it shows may be told too early.")];
    }

    private static Func<string, string, Secrets, SiteFile>? TextReader(string path) => Extension(path) switch
    {
        ".html" or ".htm" => PageReader.Read,
        ".css" => StyleReader.Read,
        ".svg" => DrawingReader.Read,
        ".js" when path.EndsWith(CaptionReader.ScriptEnding, StringComparison.Ordinal) => CaptionReader.ReadScript,
        ".js" or ".mjs" => PlainReader.Script,
        ".json" or ".webmanifest" or ".map" => PlainReader.Data,
        ".vtt" or ".srt" => CaptionReader.Read,
        ".txt" or ".xml" or ".md" or ".csv" or ".yaml" or ".yml" or "" => PlainReader.Text,
        _ => null,
    };

    private static SiteFile Binary(string folder, string path, Secrets secrets) => Extension(path) switch
    {
        ".jpg" or ".jpeg" or ".png" or ".webp" or ".gif" or ".avif" or ".heic" or ".tif" or ".tiff" or ".bmp" or ".ico"
            or ".mp4" or ".m4v" or ".mov" or ".mp3" or ".m4a" or ".avi" or ".wav" => MediaReader.Read(folder, path, secrets),
        ".pdf" => new(path)
        {
            Faults = PrintReader.Faults(File.ReadAllBytes(Path.Combine(folder, path)), path, int.MaxValue, secrets, new List<(string?, int)>()),
        },
        _ => new(path),
    };

    private static string Extension(string path) => Path.GetExtension(path).ToLowerInvariant();

    private static SiteFile WithText(string folder, string path, Func<string, SiteFile> read)
    {
        try
        {
            return read(StrictUtf8.Decode(File.ReadAllBytes(Path.Combine(folder, path))));
        }
        catch (DecoderFallbackException)
        {
            return Unread(path, "The file is not UTF-8 text.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Unread(path, "The file can't be read from the disk.");
        }
    }

    private static SiteFile Unread(string path, string why) => new(path) { Faults = [new(path, 0, 0, why)] };
}
