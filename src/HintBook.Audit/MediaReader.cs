using System.Collections.Immutable;
using System.Text;
using HintBook.Audit.Mentions;
using MetadataExtractor;
using MetadataExtractor.Formats.Exif;
using MetadataExtractor.Formats.Xmp;

namespace HintBook.Audit;

/// <summary>Reads the metadata of pictures and films: Exif, IPTC, XMP, comments, texts.</summary>
internal static class MediaReader
{
    // Directories of technical values only.
    private static readonly HashSet<string> Technical = new(StringComparer.Ordinal)
    {
        "File Type", "File", "JPEG", "JFIF", "Huffman", "ICC Profile",
        "PNG-IHDR", "PNG-sRGB", "PNG-gAMA", "PNG-pHYs", "WebP", "GIF Header", "QuickTime File Type",
    };

    /// <summary>The secrets that a file's metadata tells too early, and a doubt for metadata that can't be read.</summary>
    public static SiteFile Read(string folder, string path, Secrets secrets) => Read(path, secrets, () => File.OpenRead(Path.Combine(folder, path)));

    /// <summary>The same for a file that lies elsewhere than on the disk.</summary>
    /// <param name="path">Where it would lie.</param>
    /// <param name="secrets">Who may see what.</param>
    /// <param name="open">Opens it.</param>
    public static SiteFile Read(string path, Secrets secrets, Func<Stream> open)
    {
        if (secrets.IsEmpty)
            return new(path);
        try
        {
            using var opened = open();
            var bytes = IsPicture(path) ? Whole(opened) : null;
            using var file = bytes is null ? opened : new MemoryStream(bytes);
            var listener = secrets.Listen(path);
            var behind = bytes is null ? [] : Behind(path, bytes, secrets, listener);
            var directories = Directories(file);
            return new(path)
            {
                Faults =
                [
                    .. behind,
                    .. from directory in directories.OfType<ExifThumbnailDirectory>()
                       where directory.ContainsTag(ExifThumbnailDirectory.TagThumbnailOffset)
                       select new AuditFault(path, 0, 0, "It holds a small picture besides its own, and nobody knows what that shows.") { IsSure = false },
                    .. from directory in directories
                       where directory.HasError
                       select Damaged(path, directory.Name),
                    .. from directory in directories
                       where !Technical.Contains(directory.Name)
                       from text in Texts(directory)
                       from fault in listener.Hear(new(text, 0, 0, $"in its metadata ({directory.Name})", Manner.Prose, secrets.Outside))
                       select fault,
                ],
            };
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // The library throws many kinds of exceptions for damaged files.
            return new(path) { Faults = [Damaged(path, "all of it")] };
        }
    }

    private static byte[] Whole(Stream file)
    {
        using var bytes = new MemoryStream();
        file.CopyTo(bytes);
        return bytes.ToArray();
    }

    private static bool IsPicture(string path) =>
        Path.GetExtension(path).ToLowerInvariant() is ".jpg" or ".jpeg" or ".png" or ".webp" or ".gif";

    private static IReadOnlyList<MetadataExtractor.Directory> Directories(Stream file)
    {
        try
        {
            return ImageMetadataReader.ReadMetadata(file);
        }
        catch (ImageProcessingException)
        {
            // The library knows no metadata in this kind of file.
            return [];
        }
    }

    private static ImmutableArray<AuditFault> Behind(string path, byte[] bytes, Secrets secrets, Secrets.Listener listener)
    {
        if (PictureEnd.Of(bytes) is not { } end || end == bytes.Length)
            return [];
        var said = Encoding.Latin1.GetString(bytes, end, bytes.Length - end);
        var text = IsUtf8(bytes.AsSpan(end)) ? Encoding.UTF8.GetString(bytes, end, bytes.Length - end) : said;
        return
        [
            new(path, 0, 0, $"{bytes.Length - end} bytes stand behind the picture's end, where no viewer shows them.") { IsSure = false },
            .. listener.Hear(new(text, 0, 0, "behind the picture's end", Manner.Prose, secrets.Outside)),
        ];
    }

    private static bool IsUtf8(ReadOnlySpan<byte> bytes) => System.Text.Unicode.Utf8.IsValid(bytes);

    private static AuditFault Damaged(string path, string what) =>
        new(path, 0, 0, $"Its metadata ({what}) is damaged, so nobody knows what it tells.") { IsSure = false };

    private static IEnumerable<string> Texts(MetadataExtractor.Directory directory) => directory is XmpDirectory xmp
        ? xmp.GetXmpProperties().Select(property => property.Value)
        : directory.Tags.SelectMany(tag => TextsOf(directory, tag)).Where(text => !IsTime(text));

    private static IEnumerable<string> TextsOf(MetadataExtractor.Directory directory, Tag tag) => directory.GetObject(tag.Type) switch
    {
        string text => [text],
        StringValue text => [TextOf(text)],
        string[] texts => texts,
        StringValue[] texts => texts.Select(TextOf),
        IEnumerable<MetadataExtractor.KeyValuePair> pairs => pairs.SelectMany(pair => (string[])[pair.Key, TextOf(pair.Value)]),
        byte[] when tag.Type is ExifDirectoryBase.TagUserComment or (>= ExifDirectoryBase.TagWinTitle and <= ExifDirectoryBase.TagWinSubject) =>
            [tag.Description ?? ""],
        _ => [],
    };

    // The standards name different encodings. Bytes that are valid UTF-8 are read as UTF-8.
    private static string TextOf(StringValue text)
    {
        try
        {
            return StrictUtf8.Decode(text.Bytes);
        }
        catch (DecoderFallbackException)
        {
            return text.ToString();
        }
    }

    // Exif 2.32, 4.6.4: "YYYY:MM:DD HH:MM:SS".
    private static bool IsTime(string text) => text.Length == 19 && text[4] == ':' && text[10] == ' ' && text[16] == ':';
}
