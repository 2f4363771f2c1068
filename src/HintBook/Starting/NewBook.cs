using System.Reflection;
using HintBook.Publishing;
using HintBook.Reading;

namespace HintBook.Starting;

/// <summary>The small book from which a maker starts.</summary>
public static class NewBook
{
    private const string Prefix = "starter/";

    /// <summary>Its files by path inside the book, schemas included.</summary>
    public static IReadOnlyList<(string Path, string Text)> Files { get; } =
    [
        .. Resources(),
        .. Schemas.All.Select(schema => ($"schemas/{schema.Name}", schema.Text)),
    ];

    /// <summary>Writes it into a folder that doesn't exist yet or is empty.</summary>
    public static void In(string folder)
    {
        foreach (var (path, text) in Files)
            SingleFile.Write(Path.Combine(folder, path), text);
    }

    private static IEnumerable<(string Path, string Text)> Resources()
    {
        var assembly = Assembly.GetExecutingAssembly();
        foreach (var name in assembly.GetManifestResourceNames().Where(name => name.StartsWith(Prefix, StringComparison.Ordinal)).Order(StringComparer.Ordinal))
        {
            using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!);
            yield return (name[Prefix.Length..], reader.ReadToEnd());
        }
    }
}
