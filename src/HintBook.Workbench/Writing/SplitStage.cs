using System.Collections.Immutable;
using System.Globalization;
using HintBook.Reading.Editing;

namespace HintBook.Workbench.Writing;

/// <summary>Divides what a stage does between it and a second one.</summary>
internal static class SplitStage
{
    private static readonly string[] Parts = ["does", "gives", "takes"];

    /// <summary>What may go to the second stage, each with the words for it.</summary>
    public static ImmutableArray<(string Key, string Says)> Choices(EntryValue.Keyed stage) => stage["moves"] is EntryValue.Many(var moves)
        ? [.. moves.Select((move, index) => ($"move:{index}", EntryValue.WordOf((move as EntryValue.Keyed)?["name"]) ?? $"move {index + 1}"))]
        : [.. from part in Parts from name in NamesIn(stage[part]) select ($"{part}:{name}", $"{part} {name}")];

    /// <summary>The entries of both that change; null where one of them would have nothing left to do.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="goes">What goes to the second, as <see cref="Choices"/> names it.</param>
    public static (ImmutableArray<KeyValuePair<string, EntryValue?>> First, ImmutableArray<KeyValuePair<string, EntryValue?>> Second)? Of(
        EntryValue.Keyed stage, IReadOnlySet<string> goes)
    {
        var all = Choices(stage).Select(choice => choice.Key).ToArray();
        if (!all.Any(goes.Contains) || all.All(goes.Contains))
            return null;
        if (stage["moves"] is EntryValue.Many(var moves))
        {
            return ([new("moves", MovesOf(moves, goes, second: false))],
                [new("moves", MovesOf(moves, goes, second: true)), new("was", null), new("undo", null)]);
        }

        return (Half(stage, goes, second: false), [.. Half(stage, goes, second: true), new("was", null)]);
    }

    private static ImmutableArray<KeyValuePair<string, EntryValue?>> Half(EntryValue.Keyed stage, IReadOnlySet<string> goes, bool second) =>
    [
        .. Parts.Select(part => new KeyValuePair<string, EntryValue?>(part, Of(stage[part], part, goes, second))),
        new("undo", Undo(stage, goes, second)),
    ];

    private static EntryValue.Many MovesOf(ImmutableArray<EntryValue> moves, IReadOnlySet<string> goes, bool second) =>
        new([.. moves.Where((_, index) => goes.Contains(string.Create(CultureInfo.InvariantCulture, $"move:{index}")) == second)]);

    private static EntryValue? Of(EntryValue? value, string part, IReadOnlySet<string> goes, bool second) => value switch
    {
        EntryValue.Many(var items) when items.Where(item => goes.Contains($"{part}:{EntryValue.WordOf(item)}") == second).ToArray() is { Length: > 0 } kept =>
            new EntryValue.Many([.. kept]),
        EntryValue.Keyed(var entries) when entries.Where(entry => goes.Contains($"{part}:{entry.Key}") == second).ToArray() is { Length: > 0 } kept =>
            new EntryValue.Keyed([.. kept]),
        _ => null,
    };

    // What is put back goes with what gave it, and a part with what moved it; the maker's words stay with the first.
    private static EntryValue? Undo(EntryValue.Keyed stage, IReadOnlySet<string> goes, bool second)
    {
        if (stage["undo"] is not EntryValue.Keyed undo)
            return second ? null : stage["undo"];
        var entries = from entry in undo.Entries
                      let kept = entry.Key switch
                      {
                          "put-back" => PutBack(entry.Value),
                          "does" => Of(entry.Value, "does", goes, second),
                          "needs" => entry.Value,
                          _ => second ? null : entry.Value,
                      }
                      where kept is not null
                      select KeyValuePair.Create(entry.Key, kept);
        ImmutableArray<KeyValuePair<string, EntryValue>> all = [.. entries];
        return all.Any(entry => entry.Key != "needs") ? new EntryValue.Keyed(all) : null;

        EntryValue? PutBack(EntryValue value) => value is EntryValue.Many(var items)
            && items.Where(item => (goes.Contains($"gives:{EntryValue.WordOf(item)}") || goes.Contains($"takes:{EntryValue.WordOf(item)}")) == second).ToArray()
                is { Length: > 0 } kept
                ? new EntryValue.Many([.. kept])
                : null;
    }

    private static IEnumerable<string> NamesIn(EntryValue? value) => value switch
    {
        EntryValue.Many(var items) => items.Select(EntryValue.WordOf).OfType<string>(),
        EntryValue.Keyed(var entries) => entries.Select(entry => entry.Key),
        _ => [],
    };
}
