using System.Collections.Immutable;
using HintBook.Reading.Yaml;

namespace HintBook.Reading.Editing;

/// <summary>
/// What an entry of a file says, without how it is written. Compared with <see cref="Same"/>; the records' own equality compares lists by reference.
/// </summary>
public abstract record EntryValue
{
    /// <summary>A text or a name.</summary>
    public sealed record Text(string Value) : EntryValue;

    /// <summary>A number, or <c>true</c> or <c>false</c>: something that is written without quotes.</summary>
    public sealed record Bare(string Value) : EntryValue;

    /// <summary>A list.</summary>
    public sealed record Many(ImmutableArray<EntryValue> Items) : EntryValue;

    /// <summary>Values by key, in their order.</summary>
    public sealed record Keyed(ImmutableArray<KeyValuePair<string, EntryValue>> Entries) : EntryValue
    {
        /// <summary>What stands under a key, or null.</summary>
        public EntryValue? this[string key] => Entries.FirstOrDefault(entry => entry.Key == key).Value;
    }

    /// <summary>Something that can't be read. It is like nothing else, and is left as it is.</summary>
    public sealed record Unread : EntryValue;

    /// <summary>Nothing after the colon.</summary>
    public sealed record Nothing : EntryValue;

    /// <summary>Whether two say the same. The order of keys doesn't matter; a number and the text of its digits are alike.</summary>
    public static bool Same(EntryValue one, EntryValue other) => (one, other) switch
    {
        (Text or Bare, Text or Bare) => WordOf(one) == WordOf(other),
        (Many(var items), Many(var others)) => items.Length == others.Length && items.Zip(others).All(pair => Same(pair.First, pair.Second)),
        (Keyed a, Keyed b) => a.Entries.Length == b.Entries.Length && a.Entries.All(entry => b[entry.Key] is { } value && Same(entry.Value, value)),
        (Nothing, Nothing) => true,
        (Unread, Unread) => true,
        _ => false,
    };

    /// <summary>The text of a text, number or answer; null for what has parts, and for nothing.</summary>
    public static string? WordOf(EntryValue? value) => value switch
    {
        Text(var text) => text,
        Bare(var text) => text,
        _ => null,
    };

    /// <summary>What a piece of YAML says.</summary>
    internal static EntryValue Of(YamlNode node) => node switch
    {
        YamlScalar { IsEmpty: true } => new Nothing(),
        YamlScalar scalar when !scalar.Quoted && (Keys.NumberIn(scalar) is not null || Keys.FlagIn(scalar) is not null) => new Bare(scalar.Value),
        YamlScalar scalar => new Text(scalar.Value),
        YamlList list => new Many([.. list.Items.Select(Of)]),
        YamlMap map => new Keyed([.. map.Entries.Select(entry => KeyValuePair.Create(entry.Key.Value, Of(entry.Value)))]),
        _ => new Unread(),
    };

    /// <summary>This value with one inside it set or taken out. What is missing on the way is made.</summary>
    /// <param name="value">The value, or null for none.</param>
    /// <param name="path">The keys on the way to the one that changes.</param>
    /// <param name="to">What stands there afterwards; null takes the key out.</param>
    internal static EntryValue? With(EntryValue? value, ReadOnlySpan<string> path, EntryValue? to)
    {
        if (path.IsEmpty)
            return to;
        var entries = value is Keyed keyed ? keyed.Entries : [];
        var key = path[0];
        var index = entries.IndexOf(entries.FirstOrDefault(entry => entry.Key == key));
        var inner = With(index < 0 ? null : entries[index].Value, path[1..], to);
        // What has nothing left in it goes too.
        if (to is null && inner is Keyed { Entries.IsEmpty: true })
            inner = null;
        return (inner, index) switch
        {
            (null, < 0) => value,
            (null, _) => new Keyed(entries.RemoveAt(index)),
            (_, < 0) => new Keyed(entries.Add(KeyValuePair.Create(key, inner))),
            _ => new Keyed(entries.SetItem(index, KeyValuePair.Create(key, inner))),
        };
    }
}
