using HintBook.Reading.Shapes;

namespace HintBook.Reading;

/// <summary>The JSON Schemas of the kinds of file, for editors.</summary>
public static class Schemas
{
    private static readonly (string Name, Func<FieldsShape> Shape, string Title)[] Kinds =
    [
        ("book.schema.json", () => BookShapes.Book, "HintBook: book.yaml"),
        ("stage.schema.json", () => BookShapes.Stage, "HintBook: a stage"),
        ("copies.schema.json", () => BookShapes.Copies, "HintBook: copies.yaml"),
        ("rehearsal.schema.json", () => BookShapes.Rehearsal, "HintBook: a rehearsal"),
        ("book.translation.schema.json", () => BookShapes.Translation, "HintBook: book.yaml in another language"),
    ];

    /// <summary>The file name of each schema.</summary>
    public static IEnumerable<string> Names => Kinds.Select(kind => kind.Name);

    /// <summary>File name and text of each schema; written only when asked for, since every verb names them in its help.</summary>
    public static IReadOnlyList<(string Name, string Text)> All => field ??= [.. Kinds.Select(kind => (kind.Name, SchemaText.Write(kind.Shape(), kind.Title)))];
}
