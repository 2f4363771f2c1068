using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>Reads the copies of an edition, and where a code differs by copy.</summary>
internal static class Copies
{
    /// <summary>The copies in the author's order, each with its own values.</summary>
    public static ImmutableArray<Copy> Read(YamlMap book) =>
    [
        .. from copy in book.Named("copies")
           select new Copy(copy.Name, [.. Values(copy.Keys)]),
    ];

    /// <summary>The name in <c>{ copy: name }</c>, or null for anything else.</summary>
    public static Located<string>? NameIn(YamlNode? node) => (node as YamlMap)?.Text("copy");

    private static IEnumerable<CopyValue> Values(YamlMap copy) =>
        from entry in copy.Entries
        where entry.Value is YamlScalar { IsEmpty: false }
        select new CopyValue(entry.Key.Located, ((YamlScalar)entry.Value).Located);
}
