using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace HintBook.Photos;

/// <summary>
/// What a cache keeps beside the finished files of one photo, as a few lines of text: enough to have the
/// <see cref="Picture"/> again without decoding anything, and to notice a file that is no longer what was written.
/// </summary>
/// <example><code>
/// hintbook picture
/// key 3f9a…
/// 400 300 18734 5c1e…
/// 800 600 61290 a07b…
/// sum 90d2…
/// </code></example>
public sealed record PictureRecord
{
    private const string Heading = "hintbook picture";

    private PictureRecord(PhotoKey key, ImmutableArray<Entry> entries) => (Key, Entries) = (key, entries);

    /// <summary>What the photo is kept under.</summary>
    public PhotoKey Key { get; }

    /// <summary>The picture, as the pages need it.</summary>
    public Picture Picture => new([.. Entries.Select(e => new PictureFile(Key.PathOf(e.Width), e.Width, e.Height))]);

    /// <summary>The files with the SHA-256 of each, in small hexadecimal digits.</summary>
    public IEnumerable<(string Path, string Digest)> Digests => Entries.Select(entry => (Key.PathOf(entry.Width), entry.Hash));

    private ImmutableArray<Entry> Entries { get; }

    /// <summary>The record of a photo that was just developed.</summary>
    public static PictureRecord Of(ResizedPhoto prints) => new(
        prints.Key,
        [.. prints.Picture.Files.Zip(prints.Bytes, (file, bytes) => new Entry(file.Width, file.Height, bytes.Length, HashOf(bytes.Span)))]);

    /// <summary>Reads a record back; null, which is a miss, for one of another photo and for one that isn't word for word what was written.</summary>
    /// <param name="text">What the cache holds; any text.</param>
    /// <param name="key">The key that it was looked up under.</param>
    public static PictureRecord? Read(string text, PhotoKey key)
    {
        var lines = text.Split('\n');
        if (lines is not [Heading, var keyLine, .. var sizes, var sum, ""] || keyLine != KeyLine(key) || sizes.Length == 0)
            return null;
        var entries = sizes.Select(Entry.Read).OfType<Entry>().ToImmutableArray();
        var record = new PictureRecord(key, entries);
        return entries.Length == sizes.Length && sum == SumLine(record.Body()) ? record : null;
    }

    /// <summary>Whether a file of the cache is still the one that was written; if not, the photo is developed anew.</summary>
    /// <param name="file">One of <see cref="Picture"/>'s.</param>
    /// <param name="bytes">What the cache holds for it.</param>
    public bool Holds(PictureFile file, ReadOnlySpan<byte> bytes)
    {
        foreach (var entry in Entries)
        {
            if (entry.Width == file.Width && file.Path == Key.PathOf(entry.Width))
                return entry.Length == bytes.Length && entry.Hash == HashOf(bytes);
        }

        return false;
    }

    /// <summary>The record as text, with line feeds.</summary>
    public string Write() => $"{Body()}{SumLine(Body())}\n";

    private string Body() => string.Concat([$"{Heading}\n{KeyLine(Key)}\n", .. Entries.Select(entry => $"{entry.Write()}\n")]);

    private static string KeyLine(PhotoKey key) => $"key {key.Hex}";

    private static string SumLine(string body) => $"sum {HashOf(Encoding.UTF8.GetBytes(body))}";

    private static string HashOf(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    private sealed record Entry(int Width, int Height, int Length, string Hash)
    {
        public string Write() => $"{Width} {Height} {Length} {Hash}";

        public static Entry? Read(string line) =>
            line.Split(' ') is [var width, var height, var length, var hash]
            && Number(width) is { } w && Number(height) is { } h && Number(length) is { } l
                ? new(w, h, l, hash)
                : null;

        private static int? Number(string digits) =>
            int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 0 ? number : null;
    }
}
