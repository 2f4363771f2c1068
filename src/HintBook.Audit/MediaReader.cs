using System.Text;
using HintBook.Audit.Mentions;
using MetadataExtractor;
using MetadataExtractor.Formats.Exif;
using MetadataExtractor.Formats.Xmp;

namespace HintBook.Audit;

/// <summary>Reads what pictures and films carry besides what they show: Exif, IPTC, XMP, remarks, texts.</summary>
internal static class MediaReader
{
    // What they say of themselves in numbers is for programs.
    private static readonly HashSet<string> Technical = new(StringComparer.Ordinal)
    {
        "File Type", "File", "JPEG", "JFIF", "Huffman", "ICC Profile",
        "PNG-IHDR", "PNG-sRGB", "PNG-gAMA", "PNG-pHYs", "WebP", "GIF Header", "QuickTime File Type",
    };

    /// <summary>What a file's metadata tells that it may not. What can't be taken apart is told.</summary>
    public static SiteFile Read(string folder, string path, Secrets secrets)
    {
        if (secrets.IsEmpty)
            return new(path);
        try
        {
            using var file = File.OpenRead(Path.Combine(folder, path));
            var listener = secrets.Listen(path);
            var directories = ImageMetadataReader.ReadMetadata(file);
            return new(path)
            {
                Faults =
                [
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
        catch (ImageProcessingException)
        {
            // No kind of file that has metadata that anybody reads.
            return new(path);
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // The reader of metadata throws many kinds of exceptions for damaged files.
            return new(path) { Faults = [Damaged(path, "all of it")] };
        }
    }

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

    // Standards of different ages name different encodings; what is UTF-8 is meant as UTF-8.
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
