using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using HintBook.Checking;

namespace HintBook.Publishing;

/// <summary>
/// The pictures that sealed pieces show: each is sealed in a file of its own, and the piece holds what opens it. Safe to be asked by several threads.
/// </summary>
internal sealed class SealedPictures
{
    private readonly SealedFileFolder files;
    private readonly OutputWriter writer;
    private readonly Dictionary<string, int> widths;
    private readonly ConcurrentDictionary<string, bool> shown = new(StringComparer.Ordinal);

    public SealedPictures(Examined book, SealedFileFolder files, OutputWriter writer)
    {
        (this.files, this.writer) = (files, writer);
        var pictures = book.Media.Pictures.Values.SelectMany(picture => picture.Files).DistinctBy(file => file.Path);
        widths = pictures.ToDictionary(file => file.Path, file => file.Width);
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
        var shows =
            from source in sources.Select(source => source.StartsWith("../", StringComparison.Ordinal) ? source[3..] : source).Distinct(StringComparer.Ordinal)
            where widths.ContainsKey(source)
            orderby widths[source]
            select string.Create(CultureInfo.InvariantCulture, $"{files.Of(source)} {widths[source]}");
        var said = string.Join(';', shows);
        if (said.Length == 0)
            return;
        foreach (var name in new[] { "src", "srcset", "sizes" })
            picture.RemoveAttribute(name);
        picture.SetAttribute("data-sealed-files", said);
    }
}
