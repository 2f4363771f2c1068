using HintBook.Tests.Reading;

namespace HintBook.Tests.Publishing;

/// <summary>A copy of the example that a test may write in, with a folder to publish it into.</summary>
internal sealed class WholeExample : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("hintbook-tests-").FullName;

    public WholeExample()
    {
        foreach (var file in Directory.EnumerateFiles(Where.Example, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(Folder, Path.GetRelativePath(Where.Example, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }

    /// <summary>The book.</summary>
    public string Folder => Path.Combine(root, "book");

    /// <summary>The output folder.</summary>
    public string Output => Path.Combine(root, "out");

    public void Dispose() => Directory.Delete(root, recursive: true);
}
