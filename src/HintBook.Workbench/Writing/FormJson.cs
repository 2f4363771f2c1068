using System.Text.Json;
using HintBook.Books;
using HintBook.Ciphers;
using HintBook.Reading.Editing;
using HintBook.Text;

namespace HintBook.Workbench.Writing;

/// <summary>A file's form and the names that may stand in it, as the page reads them.</summary>
internal static class FormJson
{
    /// <summary>
    /// <c>groups</c> (<c>title</c>, <c>fields</c>: <c>path</c>, <c>label</c>, <c>help</c>, <c>kind</c>, <c>names</c>, <c>value</c>, <c>shown</c>, the lines
    /// <c>from</c> and <c>to</c>), <c>stage</c> (the id of the stage that the file is), <c>splits</c>, <c>declares</c>, <c>lists</c> (names by what they
    /// are) and <c>positions</c> (of each part).
    /// </summary>
    /// <param name="file">The file.</param>
    /// <param name="book">The newest state of the book; null while there is none.</param>
    public static byte[] Of(SourceFile file, Book? book) => JsonLists.Document(json =>
    {
        json.WriteObjects("groups", EntryForms.Of(file), group =>
        {
            json.WriteString("title", group.Title);
            json.WriteObjects("fields", group.Fields, field => Write(json, file, field));
        });
        json.WriteString("stage", StageName.Of(file.Path) is { Language: null } stage ? stage.Id : null);
        json.WriteObjects("splits", EntryEdit.At(file, []) is { Value: EntryValue.Keyed keys } ? SplitStage.Choices(keys) : [], choice =>
        {
            json.WriteString("key", choice.Key);
            json.WriteString("says", choice.Says);
        });
        json.WriteObjects("declares", file.Path == "book.yaml" ? EntryForms.Declared : [], declared =>
        {
            json.WriteString("key", declared.Key);
            json.WriteString("one", declared.One);
        });
        json.WriteStartObject("lists");
        foreach (var (name, words) in Lists(book))
            json.WriteTexts(name, words);
        json.WriteEndObject();
        json.WriteStartObject("positions");
        foreach (var part in (book?.Box.Names ?? []).Where(named => named is Part or Thing).DistinctBy(part => part.Id.Value))
            json.WriteTexts(part.Id.Value, part.Positions.Take(MostPositions));
        json.WriteEndObject();
    });

    // A dial may have thousands, of which nobody reads a list.
    private const int MostPositions = 60;

    private static void Write(Utf8JsonWriter json, SourceFile file, FormField field)
    {
        var found = field.In(file);
        json.WriteTexts("path", field.Path);
        json.WriteString("label", field.Label);
        json.WriteString("help", field.Help);
        json.WriteString("kind", field.Kind.ToString().ToLowerInvariant());
        json.WriteString("names", field.Names);
        json.WriteBoolean("shown", field.Shows(found?.Value));
        json.WriteNumber("from", found is { At: var at } ? file.PlaceOf(at.Start).Line : 0);
        json.WriteNumber("to", found is { At: var end } ? file.PlaceOf(end.End).Line : 0);
        json.WritePropertyName("value");
        EntryJson.Write(json, found?.Value);
    }

    private static IEnumerable<(string Name, IEnumerable<string> Words)> Lists(Book? book)
    {
        var box = book?.Box ?? new Box();
        var (parts, things) = (Ids(box.Parts), Ids(box.Things));
        string[] known = [.. Ids(box.Codes), .. Ids(box.Facts)];
        return
        [
            ("parts", parts),
            ("things", things),
            ("given", [.. things, .. known]),
            ("all", [.. things, .. known, .. parts]),
            ("stages", (book?.Stages ?? []).Select(stage => stage.Id.Value)),
            ("cautions", Cautions.Names),
            ("ways", ProofText.WayNames),
        ];
    }

    private static string[] Ids(IEnumerable<Named> named) => [.. named.Select(each => each.Id.Value).Distinct()];
}
