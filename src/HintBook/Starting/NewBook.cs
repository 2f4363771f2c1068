using System.Collections.Immutable;
using System.Reflection;
using HintBook.Publishing;
using HintBook.Reading;
using HintBook.Reading.Editing;

namespace HintBook.Starting;

/// <summary>The small book from which a maker starts.</summary>
public static class NewBook
{
    private const string Prefix = "starter/";

    private static readonly string Bare =
        $"""
        # yaml-language-server: $schema=./schemas/book.schema.json
        format: {Reader.Format}
        title:
        maker:
          name:
        language:
        theme: parlour
        patience: 20 min
        cards: both

        """.ReplaceLineEndings("\n");

    /// <summary>Its files by path inside the book, schemas included.</summary>
    public static IReadOnlyList<(string Path, string Text)> Files { get; } =
    [
        .. Resources(),
        .. Schemas.All.Select(schema => ($"schemas/{schema.Name}", schema.Text)),
    ];

    /// <summary>Writes it into a folder that doesn't exist yet or is empty.</summary>
    public static void In(string folder) => In(folder, Files);

    /// <summary>Writes a book into a folder that doesn't exist yet or is empty.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="files">The book's files by path inside it.</param>
    public static void In(string folder, IReadOnlyList<(string Path, string Text)> files)
    {
        foreach (var (path, text) in files)
            SingleFile.Write(Path.Combine(folder, path), text);
    }

    /// <summary>A book with its maker's own title.</summary>
    /// <param name="title">What the box is called.</param>
    /// <param name="maker">Who makes it.</param>
    /// <param name="language">The language that it will be written in, as a BCP 47 tag.</param>
    /// <param name="sample">
    /// Whether it has the small box that teaches, which is written in English; otherwise it has no parts and no stages yet, and isn't complete.
    /// </param>
    /// <returns>Its files by path inside the book, schemas included.</returns>
    public static IReadOnlyList<(string Path, string Text)> Of(string title, string maker, string language, bool sample)
    {
        ImmutableArray<(string Key, ImmutableArray<string> Path, string Text)> own =
            [("title", ["title"], title), ("maker", ["maker", "name"], maker), ("language", ["language"], language)];
        return
        [
            .. from file in Files
               where sample || !file.Path.StartsWith("stages/", StringComparison.Ordinal)
               select file.Path == "book.yaml" ? (file.Path, own.Aggregate(sample ? file.Text : Bare, With)) : file,
        ];
    }

    private static string With(string text, (string Key, ImmutableArray<string> Path, string Text) entry) =>
        EntryEdit.Set(new("book.yaml", text), entry.Path, new EntryValue.Text(entry.Text)) is EditedEntry.Done done
            ? done.Text
            : throw new InvalidOperationException($"The new book has no room for its {entry.Key}.");

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
