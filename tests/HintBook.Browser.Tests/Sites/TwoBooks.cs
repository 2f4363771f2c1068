using System.Text.RegularExpressions;
using HintBook.Publishing;

namespace HintBook.Browser.Tests.Sites;

/// <summary>A shelf of two books, with what the others lack: the small one with a film and the maker's mark, and a long one.</summary>
internal sealed partial class TwoBooks : IDisposable
{
    private const string Small = "bird-table";

    private readonly string folder;
    private readonly FolderServer server;

    private TwoBooks(string site)
    {
        (folder, server) = (site, FolderServer.Of(site));
        Pages =
        [
            .. from page in Directory.EnumerateFiles(folder, "*.html", SearchOption.AllDirectories)
               let path = Path.GetRelativePath(folder, page).Replace('\\', '/')
               let text = File.ReadAllText(page)
               where !path.StartsWith(Small, StringComparison.Ordinal) || text.Contains("<video", StringComparison.Ordinal)
               orderby path.EndsWith("where.html", StringComparison.Ordinal) ? 0 : 1, path.Length, path
               group path by (Path.GetDirectoryName(path), Kind().Match(text).Value) into kind
               from path in kind.Take(kind.Key.Value.Contains("where", StringComparison.Ordinal) ? 2 : 1)
               select path,
        ];
    }

    /// <summary>The shelf itself, the pages with a film, and of the long book one page of each kind and two of “Where am I?”.</summary>
    public IReadOnlyList<string> Pages { get; }

    /// <summary>Where the shelf is served, with a slash at the end.</summary>
    public string Address => server.Address;

    /// <summary>Publishes the shelf in a theme, into a folder that is the tests' own.</summary>
    public static TwoBooks In(string folder, string theme)
    {
        var books = Path.Combine(folder, "two books", theme);
        var (small, large) = (Path.Combine(books, Small), Path.Combine(books, "long-box"));
        SmallBook.WriteTo(small);
        Film.AddTo(small);
        LongBook.WriteTo(large);
        var settings = Path.Combine(small, "book.yaml");
        File.WriteAllText(
            settings,
            File.ReadAllText(settings).Replace("maker: {", "shelf: { line: A table for birds. }\nmaker: { logo: front.jpg,", StringComparison.Ordinal));
        foreach (var book in new[] { small, large })
            File.AppendAllText(Path.Combine(book, "book.yaml"), $"\ntheme: {theme}\n");
        var output = books + ", published";
        var outcome = Publishing.Shelf.Publish(books, new PublishOptions { Output = output }, (_, _) => { });
        Assert.IsType<Published>(outcome);
        return new(Path.Combine(output, "site"));
    }

    public void Dispose() => server.Dispose();

    [GeneratedRegex("<body class=\"[a-z ]*\"")]
    private static partial Regex Kind();
}
