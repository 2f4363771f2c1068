using System.Collections.Immutable;
using System.Text;
using HintBook.Audit.Mentions;

namespace HintBook.Audit;

/// <summary>What is kept of a file once it has been read.</summary>
/// <param name="Path">In the site.</param>
internal sealed record SiteFile(string Path)
{
    /// <summary>What is wrong with the file by itself.</summary>
    public ImmutableArray<AuditFault> Faults { get; init; } = [];

    /// <summary>The addresses in it.</summary>
    public ImmutableArray<Reference> References { get; init; } = [];

    /// <summary>The ids that an address can point to, or null for a kind of file in which nobody looks for them.</summary>
    public IReadOnlySet<string>? Ids { get; init; }

    /// <summary>Whether it is HTML that could be read.</summary>
    public bool IsPage { get; init; }

    /// <summary>UTF-8 that throws for what isn't.</summary>
    public static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Reads what a file says, and its name; of kinds of files that say nothing only the name counts.</summary>
    public static SiteFile Read(string folder, string path, Secrets secrets)
    {
        var file = Kind(path) is { } read ? WithText(folder, path, text => read(path, text, secrets)) : Media(folder, path, secrets);
        var named = secrets.IsEmpty ? [] : secrets.Listen(path).Hear(new(path, 0, 0, "in the file's name", Manner.Address, secrets.Outside));
        return file with { Faults = [.. file.Faults, .. named] };
    }

    private static Func<string, string, Secrets, SiteFile>? Kind(string path) => System.IO.Path.GetExtension(path).ToLowerInvariant() switch
    {
        ".html" or ".htm" => PageReader.Read,
        ".css" => StyleReader.Read,
        ".svg" => DrawingReader.Read,
        ".js" or ".mjs" => PlainReader.Script,
        ".json" or ".webmanifest" or ".map" => PlainReader.Data,
        ".txt" or ".xml" or ".vtt" or ".srt" or ".md" or ".csv" or ".yaml" or ".yml" or "" => PlainReader.Text,
        _ => null,
    };

    private static SiteFile Media(string folder, string path, Secrets secrets) => System.IO.Path.GetExtension(path).ToLowerInvariant() switch
    {
        ".jpg" or ".jpeg" or ".png" or ".webp" or ".gif" or ".avif" or ".heic" or ".tif" or ".tiff" or ".bmp" or ".ico"
            or ".mp4" or ".m4v" or ".mov" or ".mp3" or ".m4a" or ".avi" or ".wav" => MediaReader.Read(folder, path, secrets),
        ".pdf" => new SiteFile(path) { Faults = PrintReader.Faults(folder, path, int.MaxValue, secrets, new List<(string?, int)>()) },
        _ => new SiteFile(path),
    };

    private static SiteFile WithText(string folder, string path, Func<string, SiteFile> read)
    {
        try
        {
            return read(Strict.GetString(File.ReadAllBytes(System.IO.Path.Combine(folder, path))));
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
