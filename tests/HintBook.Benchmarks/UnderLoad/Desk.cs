using System.Globalization;
using HintBook.Benchmarks.Books;

namespace HintBook.Benchmarks.UnderLoad;

/// <summary>
/// A folder with a made book and a place to publish to, gone at the end. Each change gives a stage another name, so that the next publish has another page.
/// </summary>
internal sealed class Desk : IDisposable
{
    // So many stages change their names, to and fro: every name that a stage ever had keeps a page, and there shall not be more and more of them.
    private const int StagesThatMove = 20;

    private readonly int stages;
    private int changes;

    public Desk(int stages, int photos)
    {
        this.stages = stages;
        Root = Directory.CreateTempSubdirectory("hintbook-load-").FullName;
        MadeBook.Write(Book, stages, photos, cards: true, photoWidth: 1200);
        // Nothing that is printed for a host of examples is kept.
        var yaml = Path.Combine(Book, "book.yaml");
        File.WriteAllText(yaml, File.ReadAllText(yaml).Replace("https://nobody.example/made/", "https://made.home.arpa/", StringComparison.Ordinal));
    }

    public string Root { get; }

    public string Book => Path.Combine(Root, "book");

    public string Output => Path.Combine(Root, "out");

    public string[] Publish => ["publish", Book, "--out", Output];

    /// <summary>Renames a stage and changes its text.</summary>
    public void Change()
    {
        var stage = changes % Math.Min(StagesThatMove, stages);
        var folder = Path.Combine(Book, "stages");
        var file = Directory.GetFiles(folder, string.Create(CultureInfo.InvariantCulture, $"{stage + 1:0000}-*.md")).Single();
        var back = string.Create(CultureInfo.InvariantCulture, $"{stage + 1:0000}-stage-{stage}.md");
        var name = Path.GetFileName(file) == back ? string.Create(CultureInfo.InvariantCulture, $"{stage + 1:0000}-moved-{stage}.md") : back;
        var sentence = string.Create(CultureInfo.InvariantCulture, $"# Clue\nChange {changes}. ");
        var text = File.ReadAllText(file).Replace("# Clue\n", sentence, StringComparison.Ordinal);
        File.Delete(file);
        File.WriteAllText(Path.Combine(folder, name), text);
        changes++;
    }

    /// <summary>The book as it is now, in a folder beside it: for publishing that version again later.</summary>
    public string CopyOfBook()
    {
        var copy = Path.Combine(Root, "as-it-was");
        foreach (var file in Directory.EnumerateFiles(Book, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(copy, Path.GetRelativePath(Book, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }

        return copy;
    }

    public void Dispose() => Directory.Delete(Root, recursive: true);
}
