using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace HintBook.Publishing;

/// <summary>
/// The clips that sealed pieces show: each is sealed with what is said in it, and the piece holds what opens them. Safe to be asked by several threads.
/// </summary>
/// <param name="files">Where sealed files are written.</param>
/// <param name="writer">Where the site is put together.</param>
internal sealed class SealedFilms(SealedFileFolder files, OutputWriter writer)
{
    private const string Folder = "films/";

    /// <summary>The same piece, with its films sealed: a <c>video</c> without a source, and what its script needs.</summary>
    public string In(string piece)
    {
        if (!piece.Contains("<video", StringComparison.Ordinal))
            return piece;
        var body = new HtmlParser().ParseDocument("<body>" + piece).Body!;
        foreach (var film in body.QuerySelectorAll("video"))
        {
            Move(film, "data-sealed-film", source => $"{files.Of(source)} {TypeOf(source)}");
            foreach (var track in film.QuerySelectorAll("track"))
                Move(track, "data-sealed-captions", source => $"{files.Of(source)} {source}");
        }

        return body.InnerHtml;
    }

    /// <summary>Takes away every film that lies in the open, and what belongs to it.</summary>
    public void DropOpen()
    {
        foreach (var path in writer.Made.Keys.Where(path => path.StartsWith($"site/{Folder}", StringComparison.Ordinal)).ToArray())
            writer.Drop(path);
        var folder = writer.PathOf($"site/{Folder}");
        if (Directory.Exists(folder))
            Directory.Delete(folder);
    }

    // The pages of a translation lie in a folder of their own. A clip that is the whole film has its part behind the sign #.
    private static void Move(IElement element, string attribute, Func<string, string> opening)
    {
        var source = element.GetAttribute("src") ?? "";
        var path = (source.StartsWith("../", StringComparison.Ordinal) ? source[3..] : source).Split('#')[0];
        if (!path.StartsWith(Folder, StringComparison.Ordinal))
            return;
        element.SetAttribute(attribute, opening(path));
        element.RemoveAttribute("src");
    }

    // By which a player chooses how to read it. What QuickTime packs is read like MP4.
    private static string TypeOf(string path) => Path.GetExtension(path) switch
    {
        ".webm" => "video/webm",
        ".mkv" => "video/x-matroska",
        ".ogv" => "video/ogg",
        _ => "video/mp4",
    };
}
