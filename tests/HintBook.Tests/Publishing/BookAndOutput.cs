using HintBook.Publishing;
using HintBook.Starting;

namespace HintBook.Tests.Publishing;

/// <summary>A folder of one test's own, with a small book in it and a place to publish to; gone when the test is.</summary>
internal sealed class BookAndOutput : IDisposable
{
    public BookAndOutput(string bookName = "book")
    {
        Root = Directory.CreateTempSubdirectory("hintbook-tests-").FullName;
        Book = Path.Combine(Root, bookName);
        NewBook.In(Book);
    }

    public string Root { get; }

    /// <summary>The book that <c>begin</c> makes: three stages.</summary>
    public string Book { get; }

    public string Output => Path.Combine(Root, "out");

    public string Site => Path.Combine(Output, "site");

    public PublishOptions Options => new() { Output = Output };

    public string StageFile => Path.Combine(Book, "stages", "02-the-number.md");

    public PublishOutcome Publish(PublishOptions? options = null) => Pipeline.Publish(Book, options ?? Options);

    public Published Published(PublishOptions? options = null) => Assert.IsType<Published>(Publish(options));

    public void Change(string file, string from, string to)
    {
        var path = Path.Combine(Book, file);
        var text = File.ReadAllText(path);
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(path, text.Replace(from, to, StringComparison.Ordinal));
    }

    /// <summary>Has the next publish do everything, whether the book has changed or not; what else is in the cache stays.</summary>
    public void ForgetLastPublish()
    {
        var kept = Path.Combine(Output, ".hintbook", "cache", "publish.kept");
        if (File.Exists(kept))
            File.Delete(kept);
    }

    /// <summary>Every file below a folder with its bytes, for comparing whole trees.</summary>
    public static SortedDictionary<string, string> Tree(string folder) => new(
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .ToDictionary(file => Path.GetRelativePath(folder, file), file => Convert.ToHexString(File.ReadAllBytes(file))),
        StringComparer.Ordinal);

    public void Dispose() => Directory.Delete(Root, recursive: true);
}
