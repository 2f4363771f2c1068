using System.Net;
using AngleSharp.Dom;
using HintBook.Books;

namespace HintBook.Tests.Pages.Walking;

/// <summary>A page of “Where am I?” as a reader has it before them.</summary>
internal sealed record PlacePage
{
    /// <summary>The file in the site.</summary>
    public required string Path { get; init; }

    /// <summary>The signs, each with the stage whose page it leads to.</summary>
    public required IReadOnlyList<(string Sign, string Stage)> Signs { get; init; }

    /// <summary>The lines, of which the first that is true counts, each with the file it leads to.</summary>
    public required IReadOnlyList<(string Says, string To)> Lines { get; init; }

    /// <summary>The file that “none of these” leads to, or null.</summary>
    public required string? None { get; init; }

    /// <summary>The file for whom an answer is true, and who wants another stage than it leads to, or null.</summary>
    public required string? Other { get; init; }

    /// <summary>Whether a link leads back to the first page.</summary>
    public required bool LeadsBack { get; init; }

    /// <summary>All that the page says in so many words, descriptions of pictures among it.</summary>
    public required string Text { get; init; }

    /// <summary>How many words there are to read above the foot.</summary>
    public required int Words { get; init; }

    /// <summary>Everything that its file holds, with characters as they are read.</summary>
    public required string Source { get; init; }

    /// <summary>The files that answers lead to, the stages' aside.</summary>
    public IEnumerable<string> Onward => [.. Lines.Select(line => line.To), .. new[] { None, Other }.OfType<string>()];
}

/// <summary>The pages of “Where am I?” of a finished site, read from their HTML alone.</summary>
internal sealed class PlacePages
{
    /// <summary>The file of the first page.</summary>
    public const string First = "where.html";

    /// <summary>The front page, where somebody is sent who may be told of no step.</summary>
    public const string Front = "index.html";

    private readonly Addresses addresses;
    private readonly Dictionary<string, string> stageOf;

    /// <summary>Reads the pages that can be reached from the first.</summary>
    /// <param name="files">The site's pages by their files.</param>
    /// <param name="addresses">Where each stage's page lives.</param>
    public PlacePages(IReadOnlyDictionary<string, string> files, Addresses addresses)
    {
        this.addresses = addresses;
        stageOf = addresses.Names.Keys.ToDictionary(addresses.PageOf);
        var open = new Queue<string>([First]);
        while (open.TryDequeue(out var path))
        {
            if (path == Front || stageOf.ContainsKey(path) || Pages.ContainsKey(path))
                continue;
            Pages[path] = Read(path, files[path]);
            Pages[path].Onward.ToList().ForEach(open.Enqueue);
        }
    }

    /// <summary>The pages that can be reached from the first, by their files.</summary>
    public SortedDictionary<string, PlacePage> Pages { get; } = new(StringComparer.Ordinal);

    /// <summary>The stage whose page a file is, or null.</summary>
    public string? StageOf(string path) => stageOf.GetValueOrDefault(path);

    /// <summary>The file of a stage's page.</summary>
    public string AddressOf(string stage) => addresses.PageOf(stage);

    private PlacePage Read(string path, string html)
    {
        var page = Sites.Parse(html);
        return new()
        {
            Path = path,
            Signs = [.. page.QuerySelectorAll("ul.stages > li[data-page] > a").Select(link => (Words(link), stageOf[Target(path, link)]))],
            Lines = [.. page.QuerySelectorAll("ol.lines > li > a").Select(link => (Words(link), Target(path, link)))],
            None = page.QuerySelector("p.none a") is { } none ? Target(path, none) : null,
            Other = page.QuerySelector("p.other a") is { } other ? Target(path, other) : null,
            LeadsBack = page.QuerySelectorAll("main a").Any(link => Target(path, link) == First),
            Words = page.QuerySelector("main")!.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Length,
            Text = string.Join('\n', page.Body!.TextContent, string.Join('\n', page.QuerySelectorAll("[alt]").Select(each => each.GetAttribute("alt")))),
            Source = WebUtility.HtmlDecode(html),
        };
    }

    private static string Words(IElement element) => string.Join(' ', element.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    // Addresses in a page are relative to it.
    private static string Target(string path, IElement link) =>
        new Uri(new Uri($"https://site.example/{path}"), link.GetAttribute("href")).AbsolutePath.TrimStart('/');
}
