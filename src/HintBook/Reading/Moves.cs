using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>Reads what must hold, what changes and how it is put back: the same keys in moves, reactions and stages.</summary>
internal static class Moves
{
    public static Move Move(YamlMap map, Located<string> name, IReadOnlyDictionary<string, Named> names) => new()
    {
        Name = name,
        Needs = Conditions(map["needs"]),
        Changes = Changes(map, names),
        Reversible = map.Flag("reversible"),
        Undo = map["undo"] is YamlMap undo ? Undo(undo) : null,
    };

    public static ImmutableArray<Condition> Conditions(YamlNode? node) =>
        node is YamlList list ? [.. list.Items.SelectMany(InItem)] : [];

    /// <summary><c>does</c>, <c>gives</c> and <c>takes</c> as one list.</summary>
    public static ImmutableArray<Change> Changes(YamlMap map, IReadOnlyDictionary<string, Named> names) =>
    [
        .. Does(map),
        .. map.Texts("gives").Select(name => new Change(name, name.With(names.GetValueOrDefault(name.Value)?.Attained ?? Thing.InHand))),
        .. map.Texts("takes").Select(name => new Change(name, name.With(Thing.UsedUp))),
    ];

    private static IEnumerable<Change> Does(YamlMap map) =>
        map["does"] is YamlMap does
            ? does.Entries
                .Where(entry => entry.Value is YamlScalar { IsEmpty: false })
                .Select(entry => new Change(entry.Key.Located, ((YamlScalar)entry.Value).Located))
            : [];

    private static Undo Undo(YamlMap map) =>
        new(map.Texts("put-back"), [.. Does(map)], map.Text("note")?.Value, map.At);

    private static IEnumerable<Condition> InItem(YamlNode item) => item switch
    {
        YamlScalar { IsEmpty: false } name => [new InPosition { At = name.At, Name = name.Located, Positions = [] }],
        YamlMap map => map.Entries.Select(entry => InEntry(entry)),
        _ => [],
    };

    private static Condition InEntry(YamlEntry entry) => entry switch
    {
        { Key.Value: Shapes.ConditionShape.AnyKey, Value: YamlList list } => new AnyOf
        {
            At = entry.Key.At,
            Alternatives = [.. list.Items.Select(item => item is YamlList all ? Conditions(all) : [.. InItem(item)])],
        },
        _ => new InPosition { At = entry.Key.At, Name = entry.Key.Located, Positions = Keys.TextsIn(entry.Value) },
    };
}
