using HintBook.Reading.Shapes;

namespace HintBook.Reading;

/// <summary>The JSON Schemas of the kinds of file, for editors.</summary>
public static class Schemas
{
    /// <summary>File name and text of each schema.</summary>
    public static IReadOnlyList<(string Name, string Text)> All { get; } =
    [
        ("book.schema.json", SchemaText.Write(BookShapes.Book, "HintBook: book.yaml")),
        ("stage.schema.json", SchemaText.Write(BookShapes.Stage, "HintBook: a stage")),
        ("copies.schema.json", SchemaText.Write(BookShapes.Copies, "HintBook: copies.yaml")),
        ("rehearsal.schema.json", SchemaText.Write(BookShapes.Rehearsal, "HintBook: a rehearsal")),
        ("book.translation.schema.json", SchemaText.Write(BookShapes.Translation, "HintBook: book.yaml in another language")),
    ];
}
