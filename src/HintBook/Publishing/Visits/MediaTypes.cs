namespace HintBook.Publishing.Visits;

/// <summary>The media types that a browser needs, by the ending of a file's name.</summary>
internal static class MediaTypes
{
    // IANA, Media Types; JavaScript: RFC 9239 and WHATWG MIME Sniffing, 4.6, whose older names browsers take as well. A manifest may have any
    // JSON type (W3C Web Application Manifest, "Processing the manifest"). WebVTT: W3C WebVTT, appendix.
    private static readonly Dictionary<string, string[]> Known = new(StringComparer.OrdinalIgnoreCase)
    {
        [".html"] = ["text/html"],
        [".css"] = ["text/css"],
        [".js"] = ["text/javascript", "application/javascript", "application/x-javascript"],
        [".webmanifest"] = ["application/manifest+json", "application/json", "text/json"],
        [".json"] = ["application/json", "text/json"],
        [".svg"] = ["image/svg+xml"],
        [".png"] = ["image/png"],
        [".jpg"] = ["image/jpeg"],
        [".jpeg"] = ["image/jpeg"],
        [".webp"] = ["image/webp"],
        [".vtt"] = ["text/vtt"],
        [".mp4"] = ["video/mp4"],
        [".m4v"] = ["video/mp4", "video/x-m4v"],
        [".webm"] = ["video/webm"],
        [".woff2"] = ["font/woff2", "application/font-woff2"],
    };

    /// <summary>The types that are right for a file, the best first; none where any will do.</summary>
    public static string[] Of(string path) => Known.GetValueOrDefault(Path.GetExtension(path), []);
}
