using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>Reads how a clue leads to its answer: the steps, the tables they look things up in, and what the author has ruled out.</summary>
internal static class ClueReads
{
    /// <summary>The steps under <c>reads</c>: bare names, and names with what they are told.</summary>
    public static ImmutableArray<ReadingStep> Steps(YamlMap code) =>
    [
        .. code.Items("reads").SelectMany(item => item switch
        {
            YamlScalar { IsEmpty: false } way => [new ReadingStep(way.Located, [], way.At)],
            YamlMap map => map.Entries.Select(entry => new ReadingStep(entry.Key.Located, Keys.TextsIn(entry.Value), map.At)),
            _ => Enumerable.Empty<ReadingStep>(),
        }),
    ];

    /// <summary>The settings under <c>ruled-out</c>.</summary>
    public static ImmutableArray<RuledOut> RuledOut(YamlMap code) =>
        [.. Pairs(code["ruled-out"]).Select(pair => new RuledOut(pair.Key, pair.Value))];

    /// <summary>The tables of the book.</summary>
    public static ImmutableArray<Table> Tables(YamlMap book) =>
    [
        .. book.Named("tables").Select(table =>
            new Table(table.Name, [.. Pairs(table.Keys).Select(pair => new TableRow(pair.Key, pair.Value))])),
    ];

    private static IEnumerable<(Located<string> Key, Located<string> Value)> Pairs(YamlNode? node) =>
        from entry in (node as YamlMap)?.Entries ?? []
        where entry.Value is YamlScalar { IsEmpty: false }
        select (entry.Key.Located, ((YamlScalar)entry.Value).Located);
}
