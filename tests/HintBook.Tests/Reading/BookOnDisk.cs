using HintBook.Mechanism;
using HintBook.Reading;
using HintBook.Text;

namespace HintBook.Tests.Reading;

/// <summary>A small book that nothing is wrong with, in a folder of its own that is gone after the test. A test changes what it is about.</summary>
internal sealed class BookOnDisk : IDisposable
{
    public const string Keys = "title: The Tea Caddy\ngoal: [ honey ]\nthings: { honey: {} }\n" + WayBack;

    /// <summary>Handling that puts the small book's box back.</summary>
    public const string WayBack = "moves: [ { name: put the honey back, needs: [ honey ], does: { honey: hidden } } ]\n";

    public const string Help = "# Nudge\nLook up.\n\n# Clue\nLook at the lid.\n\n# Answer\nLift the lid.\n";

    public BookOnDisk()
    {
        Path = Directory.CreateTempSubdirectory("hintbook-").FullName;
        With("book.yaml", Keys).With("stages/01-the-lid.md", Stage("gives: [ honey ]"));
    }

    public string Path { get; }

    /// <summary>A stage in Markdown with a title, a sign and all its help.</summary>
    public static string Stage(string keys = "", string title = "The lid") => $"---\ntitle: {title}\nsign: It is shut.\n{keys}\n---\n{Help}";

    // The small books of the tests say their format, unless a test is about that.
    public BookOnDisk With(string path, string text) => With(path, System.Text.Encoding.UTF8.GetBytes(
        path == "book.yaml" && IsWholeWithoutFormat(text) ? text + "format: 2\n" : text));

    public BookOnDisk With(string path, byte[] bytes)
    {
        var full = System.IO.Path.Combine(Path, path);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(full)!);
        File.WriteAllBytes(full, bytes);
        return this;
    }

    public BookOnDisk WithLink(string path, string target)
    {
        var full = System.IO.Path.Combine(Path, path);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(full)!);
        File.CreateSymbolicLink(full, target);
        return this;
    }

    public BookOnDisk Without(string path)
    {
        File.Delete(System.IO.Path.Combine(Path, path));
        return this;
    }

    private static bool IsWholeWithoutFormat(string text) =>
        text.TrimStart('\uFEFF').StartsWith("title:", StringComparison.Ordinal)
        && text.EndsWith('\n')
        && !text.Contains("\nformat:", StringComparison.Ordinal);

    public ReadBook Read() => Reader.Read(Path);

    /// <summary>What reading says, and the survey where the files are good.</summary>
    /// <param name="limits">What the survey may use.</param>
    public Findings Findings(SolveLimits? limits = null)
    {
        var (_, book, findings) = Read();
        return book is null ? findings : findings.And(Surveyor.Survey(book, whole: !findings.AnyError, limits).Findings.All);
    }

    /// <summary>The findings' codes, in printed order.</summary>
    public string[] Codes() => [.. Findings().All.Select(finding => finding.Code.Id)];

    /// <summary>The one finding that there is.</summary>
    public Finding Only() => Assert.Single(Findings().All);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
