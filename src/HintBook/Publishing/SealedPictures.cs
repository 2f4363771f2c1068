using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using HintBook.Checking;
using HintBook.Sealing;

namespace HintBook.Publishing;

/// <summary>
/// The pictures that sealed pieces show: each is sealed in a file of its own, and the piece holds what opens it. Safe to be asked by several threads.
/// </summary>
internal sealed class SealedPictures
{
    private const string Folder = "p/";

    private readonly BookKeys keys;
    private readonly OutputWriter writer;
    private readonly Dictionary<string, int> widths;
    private readonly ConcurrentDictionary<string, bool> shown = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, Lazy<string>> made = new(StringComparer.Ordinal);

    public SealedPictures(Examined book, SealingPlan sealing, OutputWriter writer)
    {
        keys = new(sealing.Secret, book.Book.Id!.Value.Value);
        this.writer = writer;
        var files = book.Media.Pictures.Values.SelectMany(picture => picture.Files).DistinctBy(file => file.Path);
        widths = files.ToDictionary(file => file.Path, file => file.Width);
    }

    /// <summary>Notes the pictures that a page shows in the open.</summary>
    public void Show(ReadOnlySpan<byte> page)
    {
        var html = Encoding.UTF8.GetString(page);
        foreach (var path in widths.Keys.Where(path => html.Contains(path, StringComparison.Ordinal)))
            shown[path] = true;
    }

    /// <summary>Takes away every picture that no page shows in the open.</summary>
    public void DropHidden()
    {
        foreach (var path in widths.Keys.Where(path => !shown.ContainsKey(path)))
            writer.Drop(Path.Combine("site", path));
    }

    /// <summary>The same piece, with its pictures sealed: an <c>img</c> without a source, and what its script needs.</summary>
    public string In(string piece)
    {
        if (!piece.Contains("pictures/", StringComparison.Ordinal))
            return piece;
        var body = new HtmlParser().ParseDocument("<body>" + piece).Body!;
        foreach (var picture in body.QuerySelectorAll("img"))
            Seal(picture);
        foreach (var source in body.QuerySelectorAll("picture > source"))
            source.Remove();
        foreach (var link in body.QuerySelectorAll("a[href*='pictures/']"))
            link.RemoveAttribute("href");
        return body.InnerHtml;
    }

    // Every width there is, so that the script takes the one for its screen: name, key, number of segments, width.
    private void Seal(IElement picture)
    {
        var sources = $"{picture.GetAttribute("src")},{picture.GetAttribute("srcset")}".Split([',', ' '], StringSplitOptions.RemoveEmptyEntries);
        var files =
            from source in sources.Select(source => source.StartsWith("../", StringComparison.Ordinal) ? source[3..] : source).Distinct(StringComparer.Ordinal)
            where widths.ContainsKey(source)
            orderby widths[source]
            select made.GetOrAdd(source, path => new(() => Written(path))).Value;
        var said = string.Join(';', files);
        if (said.Length == 0)
            return;
        foreach (var name in new[] { "src", "srcset", "sizes" })
            picture.RemoveAttribute(name);
        picture.SetAttribute("data-sealed-files", said);
    }

    private string Written(string path)
    {
        var content = File.ReadAllBytes(writer.PathOf(Path.Combine("site", path)));
        var padded = new byte[Padding.SizeOfFile(content.Length)];
        content.CopyTo(padded, 0);
        var file = SealedFile.Of(keys, padded);
        for (var k = 0; k < file.Segments.Length; k++)
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"{Folder}{file.Name}-{k}");
            var script = $"hintbook.take(\"{name}\",\"{Convert.ToBase64String(file.Segments[k])}\")\n";
            writer.WriteUnkept(Path.Combine("site", name + ".js"), Encoding.ASCII.GetBytes(script));
        }

        return string.Create(
            CultureInfo.InvariantCulture, $"{file.Name} {Convert.ToHexStringLower(file.Key)} {file.Segments.Length} {content.Length} {widths[path]}");
    }
}
