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

    private readonly Lazy<PublishedSite> bilingual;

    // A path with a space and letters beyond ASCII.
    private readonly string folder = Directory.CreateTempSubdirectory("hintbook größe ").FullName;
    private readonly ConcurrentDictionary<string, Lazy<PublishedSite>> titled = [];
    private readonly ConcurrentDictionary<string, Lazy<TwoBooks>> pairs = [];
    private readonly ConcurrentDictionary<(string Book, string Theme, string Language), Lazy<PublishedSite>> sites = [];

    /// <summary>The names of the books: the small one, and the project's example.</summary>
    public static IEnumerable<string> Names => ExampleFolder is null ? [SmallBook.Title] : [SmallBook.Title, Example];

    public Shelf() => bilingual = new(PublishBilingual);

    /// <summary>The small book in English, with one stage and the title in French as well.</summary>
    public PublishedSite Bilingual => bilingual.Value;

    /// <summary>The small book as it is for a reader who has not asked for anything else.</summary>
    public PublishedSite Small => this[SmallBook.Title, new()];

    /// <summary>A book in the theme and language of a reader.</summary>
    public PublishedSite this[string book, Circumstances circumstances] =>
        sites.GetOrAdd((book, circumstances.Theme, circumstances.Language), key => new(() => Publish(key.Book, key.Theme, key.Language))).Value;

    /// <summary>A shelf of two books, with a film and many steps, in a theme.</summary>
    public TwoBooks Pair(string theme) => pairs.GetOrAdd(theme, key => new(() => TwoBooks.In(folder, key))).Value;

    private static string? ExampleFolder { get; } = FindExample();

    public void Dispose()
    {
        foreach (var site in sites.Values.Concat(titled.Values).Where(site => site.IsValueCreated))
            site.Value.Dispose();
        foreach (var pair in pairs.Values.Where(pair => pair.IsValueCreated))
            pair.Value.Dispose();
        if (bilingual.IsValueCreated)
            bilingual.Value.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>A copy of the small book of a test's own, to publish into the folder of its name with ", published".</summary>
    public string SmallBookFor(string test)
    {
        var book = Path.Combine(folder, test);
        SmallBook.WriteTo(book);
        CopyPictures(SmallBook.Title, book + ", published");
        return book;
    }

    /// <summary>The small book under another title.</summary>
    public PublishedSite Titled(string title) => titled.GetOrAdd(title, key => new(() =>
    {
        var book = SmallBookFor($"titled {titled.Count}");
        var settings = Path.Combine(book, "book.yaml");
        File.WriteAllText(settings, File.ReadAllText(settings).Replace($"title: {SmallBook.Title}", $"title: {key}", StringComparison.Ordinal));
        return PublishedSite.Of(key, book, book + ", published");
    })).Value;

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
            CopyPictures(name, output);
        return PublishedSite.Of(name, book, output);
    }

    private PublishedSite PublishBilingual()
    {
        var book = SmallBookFor("bilingual");
        File.AppendAllText(Path.Combine(book, "book.yaml"), "\nlanguages: [ fr ]\n");
        File.WriteAllText(Path.Combine(book, "book.fr.yaml"), "title: La table aux oiseaux\n");
        var stage = Directory.GetFiles(Path.Combine(book, "stages"), "*plover.md").Single();
        Directory.CreateDirectory(Path.Combine(book, "stages", "fr"));
        File.WriteAllText(
            Path.Combine(book, "stages", "fr", Path.GetFileName(stage)),
            File.ReadAllText(stage).Replace(SmallBook.TitleOf("plover"), "Le pluvier", StringComparison.Ordinal));
        return PublishedSite.Of("bilingual", book, book + ", published");
    }

    // The pictures are the same in every theme and language: they are developed once.
    private void CopyPictures(string name, string output) =>
        Copy(Path.Combine(this[name, new()].Folder, "..", ".hintbook", "cache"), Path.Combine(output, ".hintbook", "cache"));

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
