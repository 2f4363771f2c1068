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
        FromOutside = map["behind"] is YamlList,
        Undo = UndoIn(map["undo"]),
    };

    /// <summary>What something lies behind, as a map or a list; null where nothing is written.</summary>
    public static ImmutableArray<Condition>? Behind(YamlNode? node) => node switch
    {
        YamlMap map => [.. map.Entries.Select(InEntry)],
        YamlList list => Conditions(list),
        _ => null,
    };

    public static ImmutableArray<Condition> Conditions(YamlNode? node) =>
        node is YamlList list ? [.. list.Items.SelectMany(InItem)] : [];

    /// <summary><c>does</c>, <c>gives</c> and <c>takes</c> as one list.</summary>
    public static ImmutableArray<Change> Changes(YamlMap map, IReadOnlyDictionary<string, Named> names) =>
    [
        .. Does(map),
        .. map.Texts("gives").Where(name => OwnWords.IsName(name.Value))
            .Select(name => new Change(name, name.With(names.GetValueOrDefault(name.Value)?.Attained ?? Thing.InHand)) { Given = true }),
        .. map.Texts("takes").Where(name => OwnWords.IsName(name.Value)).Select(name => new Change(name, name.With(Thing.UsedUp))),
    ];

    /// <summary>Names with the positions that they go to.</summary>
    public static IEnumerable<Change> ChangesIn(YamlMap does) => does.Entries
        .Where(entry => entry.Value is YamlScalar { IsEmpty: false })
        .Select(entry => new Change(entry.Key.Located, ((YamlScalar)entry.Value).Located));

    private static IEnumerable<Change> Does(YamlMap map) =>
        map["does"] is YamlMap does ? ChangesIn(does) : [];

    private static Undo? UndoIn(YamlNode? node) => node switch
    {
        YamlMap map => new Undo([.. UndoSteps([map])], map.Text("never"), map.At),
        YamlList list => new Undo([.. UndoSteps(list.Items.OfType<YamlMap>())], null, list.At),
        _ => null,
    };

    // What only says that it never goes back has nothing to do.
    private static IEnumerable<UndoStep> UndoSteps(IEnumerable<YamlMap> maps) =>
        from map in maps
        let step = new UndoStep
        {
            Needs = Conditions(map["needs"]),
            PutBack = map.Texts("put-back"),
            Changes = [.. Does(map)],
            Says = (map.Text("says") ?? map.Text("note"))?.Value,
            At = map.At,
        }
        where map["never"] is null || !step.PutBack.IsEmpty || !step.Changes.IsEmpty
        select step;

    private static IEnumerable<Condition> InItem(YamlNode item) => item switch
    {
        // What is no name has its finding already.
        YamlScalar { IsEmpty: false } name when OwnWords.IsName(name.Value) => [new InPosition { At = name.At, Name = name.Located, Positions = [] }],
        YamlMap map => map.Entries.Select(InEntry),
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
