using System.Collections.Concurrent;
using HintBook.Browser.Tests.Reading;

namespace HintBook.Browser.Tests.Sites;

/// <summary>
/// The books that these tests read. Each is published once for each theme and language that is asked for, into a folder that is deleted when
/// the tests end.
/// </summary>
internal sealed class Shelf : IDisposable
{
    /// <summary>The name of the project's example.</summary>
    public const string Example = "content-example";

    // A path with a space and letters beyond ASCII.
    private readonly string folder = Directory.CreateTempSubdirectory("hintbook größe ").FullName;
    private readonly ConcurrentDictionary<(string Book, string Theme, string Language), Lazy<PublishedSite>> sites = [];

    /// <summary>The names of the books: the small one, and the project's example.</summary>
    public static IEnumerable<string> Names => ExampleFolder is null ? [SmallBook.Title] : [SmallBook.Title, Example];

    /// <summary>The small book as it is for a reader who has not asked for anything else.</summary>
    public PublishedSite Small => this[SmallBook.Title, new()];

    /// <summary>A book in the theme and language of a reader.</summary>
    public PublishedSite this[string book, Circumstances circumstances] =>
        sites.GetOrAdd((book, circumstances.Theme, circumstances.Language), key => new(() => Publish(key.Book, key.Theme, key.Language))).Value;

    private static string? ExampleFolder { get; } = FindExample();

    public void Dispose()
    {
        foreach (var site in sites.Values.Where(site => site.IsValueCreated))
            site.Value.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>A copy of the small book of a test's own, to publish more than once.</summary>
    public string SmallBookFor(string test)
    {
        var book = Path.Combine(folder, test);
        SmallBook.WriteTo(book);
        return book;
    }

    // The pictures are the same in every theme: they are developed once.
    private PublishedSite Publish(string name, string theme, string language)
    {
        var book = Path.Combine(folder, name, theme, language);
        if (name == SmallBook.Title)
            SmallBook.WriteTo(book);
        else
            Copy(ExampleFolder!, book);

        var settings = Path.Combine(book, "book.yaml");
        var others = File.ReadLines(settings)
            .Where(line => !line.StartsWith("theme:", StringComparison.Ordinal) && !line.StartsWith("language:", StringComparison.Ordinal));
        File.WriteAllLines(settings, [.. others, $"theme: {theme}", $"language: {language}"]);
        var output = book + ", published";
        if (theme != Pages.Theme.Default || language != new Circumstances().Language)
            Copy(Path.Combine(this[name, new()].Folder, "..", ".hintbook", "cache"), Path.Combine(output, ".hintbook", "cache"));
        return PublishedSite.Of(name, book, output);
    }

    private static string? FindExample()
    {
        var root = new DirectoryInfo(AppContext.BaseDirectory);
        while (root is not null && !File.Exists(Path.Combine(root.FullName, "HintBook.sln")))
            root = root.Parent;
        return root is not null && File.Exists(Path.Combine(root.FullName, "content-example", "book.yaml"))
            ? Path.Combine(root.FullName, "content-example")
            : null;
    }

    private static void Copy(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(to, Path.GetRelativePath(from, file));
            if (Path.GetRelativePath(from, file).StartsWith("published", StringComparison.Ordinal))
                continue;
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }
}
