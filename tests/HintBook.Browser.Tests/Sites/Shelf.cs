namespace HintBook.Browser.Tests.Sites;

/// <summary>The books that are read in these tests, published once each into a folder that goes when the tests end.</summary>
internal sealed class Shelf : IDisposable
{
    // A space and letters beyond ASCII, as on many a memory stick.
    private readonly string folder = Directory.CreateTempSubdirectory("hintbook größe ").FullName;
    private readonly Lazy<PublishedSite> small;
    private readonly Lazy<PublishedSite> example;

    public Shelf()
    {
        small = new(() => Publish(SmallBook.Title, SmallBook.WriteTo));
        example = new(() => Publish("content-example", book => Copy(ExampleFolder!, book)));
    }

    /// <summary>The names of the books: the small one, and the project's example.</summary>
    public static IEnumerable<string> Names => ExampleFolder is null ? [SmallBook.Title] : [SmallBook.Title, "content-example"];

    public PublishedSite Small => small.Value;

    public PublishedSite this[string name] => name == SmallBook.Title ? small.Value : example.Value;

    private static string? ExampleFolder { get; } = FindExample();

    public void Dispose()
    {
        foreach (var site in new[] { small, example }.Where(site => site.IsValueCreated))
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

    private PublishedSite Publish(string name, Action<string> write)
    {
        var book = Path.Combine(folder, name);
        write(book);
        return PublishedSite.Of(name, book, Path.Combine(folder, $"{name}, published"));
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
