using System.Collections.Immutable;
using HintBook.Reading.Shapes;

namespace HintBook.Handbook;

/// <summary>The format as the handbook lists it: every entry that each kind of file may have, from the shapes that check the files.</summary>
internal static class EntryLists
{
    public static ImmutableArray<(string Title, string Anchor, ImmutableArray<Entry> Entries)> All { get; } =
    [
        Of("book.yaml", BookShapes.Book),
        Of("A stage", BookShapes.Stage),
        Of("copies.yaml", BookShapes.Copies),
        Of("A rehearsal", BookShapes.Rehearsal),
        Of("book.yaml in another language", BookShapes.Translation),
    ];

    private static (string, string, ImmutableArray<Entry>) Of(string title, FieldsShape shape) =>
        (title, HandbookSection.AnchorOf(title), [.. KeyRows.Of(shape).Select(row =>
            new Entry(row.Key, row.Takes, row.Field.Says, row.Field.Required)
            {
                Anchor = row.Key.Contains('.') ? null : $"{HandbookSection.AnchorOf(title)}-{row.Key}",
            })]);
}

/// <summary>An entry of a file.</summary>
/// <param name="Name">Its way there, such as <c>parts.NAME.positions</c>.</param>
/// <param name="Takes">What may stand behind its colon.</param>
/// <param name="Says">What it means.</param>
/// <param name="Required">Whether it can't be left out.</param>
internal sealed record Entry(string Name, string Takes, string Says, bool Required)
{
    /// <summary>Its place on the page, for an entry that lies in no other one; otherwise null.</summary>
    public string? Anchor { get; init; }
}
