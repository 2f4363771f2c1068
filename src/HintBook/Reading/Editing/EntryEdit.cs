using System.Collections.Immutable;
using HintBook.Reading.Shapes;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading.Editing;

/// <summary>What came of an edit.</summary>
public abstract record EditedEntry
{
    /// <summary>Only that entry changed: the text was read again, and says everything else as before.</summary>
    /// <param name="Text">The file's text afterwards.</param>
    /// <param name="Changes">What gave way to what; none where the entry said so already.</param>
    public sealed record Done(string Text, ImmutableArray<TextChange> Changes) : EditedEntry;

    /// <summary>It can't be done without touching something else. Nothing was changed.</summary>
    /// <param name="Why">A sentence for the maker.</param>
    public sealed record Refused(string Why) : EditedEntry;
}

/// <summary>
/// Sets, changes or takes out one entry of a file's keys by replacing stretches of its text. Remarks, order, indents, quotes, line ends and all
/// other texts stay byte for byte. Pure.
/// </summary>
public static class EntryEdit
{
    /// <summary>Sets an entry.</summary>
    /// <param name="file">The file: YAML, or Markdown with keys above it.</param>
    /// <param name="path">The keys that lead to it: <c>minutes</c>, or <c>maker</c> and <c>name</c>. What is missing on the way is made.</param>
    /// <param name="to">What it shall say; null takes it out.</param>
    public static EditedEntry Set(SourceFile file, ImmutableArray<string> path, EntryValue? to)
    {
        if (KeysOf(file) is not { } within)
            return new EditedEntry.Refused($"“{file.Path}” has no keys between two lines ---, so this can't be written there. Mend that in the text first.");
        var findings = new List<Finding>();
        var root = YamlFile.Read(within, findings) switch
        {
            YamlMap read => read,
            YamlScalar { IsEmpty: true } => Keys.Empty(within.File.Top),
            _ => null,
        };
        if (root is null || path.IsEmpty || to is EntryValue.Unread)
            return new EditedEntry.Refused($"The keys of “{file.Path}” can't be read as they are. Mend them in the text first.");
        var before = EntryValue.Of(root);
        if (IsBarred(before, path.AsSpan()) || EntryValue.With(before, path.AsSpan(), to) is not EntryValue.Keyed after)
            return new EditedEntry.Refused(Why(file, path));
        if (EntryValue.Same(before, after))
            return new EditedEntry.Done(file.Text, []);
        // First as the file is written already, then with quotes around whatever is new.
        foreach (var quoted in new[] { false, true })
        {
            var changes = EntryChanges.Between(within, root, after, OrderOf(file), quoted);
            if (!AreApart(changes))
                continue;
            var changed = new SourceFile(file.Path, TextChange.Apply(file.Text, changes));
            if (IsOnly(file, root, findings, changed, path, to))
                return new EditedEntry.Done(changed.Text, [.. changes]);
        }

        return new EditedEntry.Refused(Why(file, path));
    }

    /// <summary>What an entry says, with its place from key to end; null where the file has none.</summary>
    /// <param name="file">The file.</param>
    /// <param name="path">The keys that lead to it; none for all of the file's keys.</param>
    public static Located<EntryValue>? At(SourceFile file, ImmutableArray<string> path)
    {
        if (KeysOf(file) is not { } within || YamlFile.Read(within, []) is not { } node)
            return null;
        var at = node.At;
        foreach (var key in path)
        {
            if ((node as YamlMap)?.Entries.FirstOrDefault(entry => entry.Key.Value == key) is not { } entry)
                return null;
            at = entry.Key.At with { End = Math.Max(entry.Key.At.End, entry.Value.At.End) };
            node = entry.Value;
        }

        return new(EntryValue.Of(node), at);
    }

    // Something that has no keys stands where keys would have to be.
    private static bool IsBarred(EntryValue? value, ReadOnlySpan<string> path) =>
        !path.IsEmpty && value is not null and not EntryValue.Nothing
        && (value is not EntryValue.Keyed keyed || IsBarred(keyed[path[0]], path[1..]));

    private static string Why(SourceFile file, ImmutableArray<string> path) =>
        $"“{string.Join(" › ", path)}” in “{file.Path}” is written in a way that can't be changed from here without touching something else. "
        + "Change it in the text.";

    private static Span? KeysOf(SourceFile file) =>
        file.Path.EndsWith(".md", StringComparison.Ordinal) ? FrontMatter.Split(file, []).Keys : file.Whole;

    private static IReadOnlyList<string> OrderOf(SourceFile file) =>
        [.. (file.Path.StartsWith("stages/", StringComparison.Ordinal) ? BookShapes.Stage : BookShapes.Book).Fields.Select(field => field.Key)];

    private static bool AreApart(IEnumerable<TextChange> changes)
    {
        var end = 0;
        foreach (var change in changes.OrderBy(change => change.Start).ThenBy(change => change.End))
        {
            if (change.Start < end || change.End < change.Start)
                return false;
            end = change.End;
        }

        return true;
    }

    private static bool IsOnly(SourceFile file, YamlMap root, List<Finding> findings, SourceFile changed, ImmutableArray<string> path, EntryValue? to)
    {
        if (KeysOf(changed) is not { } within || Body(file) != Body(changed))
            return false;
        var found = new List<Finding>();
        var read = YamlFile.Read(within, found);
        if (read is YamlScalar { IsEmpty: true })
            read = Keys.Empty(within.File.Top);
        return found.Count <= findings.Count
            && found.Select(finding => finding.Code.Id).All(code => findings.Exists(finding => finding.Code.Id == code))
            && read is not null
            && IsOnly(root, read, path.AsSpan(), to);
    }

    private static string Body(SourceFile file) =>
        file.Path.EndsWith(".md", StringComparison.Ordinal) ? FrontMatter.Split(file, []).Body.Text : "";

    private static bool IsOnly(YamlNode? before, YamlNode after, ReadOnlySpan<string> path, EntryValue? to)
    {
        if (path.IsEmpty)
            return to is not null && EntryValue.Same(EntryValue.Of(after), to) && (to is EntryValue.Bare || !LosesQuotes(after, to));
        if (after is not YamlMap map)
            return false;
        var key = path[0];
        var others = (before as YamlMap)?.Entries.Where(entry => entry.Key.Value != key) ?? [];
        if (!others.SequenceEqual(map.Entries.Where(entry => entry.Key.Value != key), Alike))
            return false;
        if (map[key] is { } inner)
            return (to is not null || path.Length > 1) && IsOnly((before as YamlMap)?[key], inner, path[1..], to);
        return to is null;
    }

    // A text that is read as a number is another one: "0420" and 420.
    private static bool LosesQuotes(YamlNode node, EntryValue to) =>
        to is EntryValue.Text && node is YamlScalar { Quoted: false } scalar && (Keys.NumberIn(scalar) is not null || Keys.FlagIn(scalar) is not null);

    private static readonly IEqualityComparer<YamlEntry> Alike = EqualityComparer<YamlEntry>.Create(
        (one, other) => one is not null && other is not null && IsAlike(one.Key, other.Key) && IsAlike(one.Value, other.Value),
        entry => entry.Key.Value.GetHashCode(StringComparison.Ordinal));

    private static bool IsAlike(YamlNode one, YamlNode other) => (one, other) switch
    {
        (YamlScalar a, YamlScalar b) => a.Value == b.Value && a.Quoted == b.Quoted,
        (YamlList a, YamlList b) => a.Items.Length == b.Items.Length && a.Items.Zip(b.Items).All(pair => IsAlike(pair.First, pair.Second)),
        (YamlMap a, YamlMap b) => a.Entries.SequenceEqual(b.Entries, Alike),
        (YamlUnread, YamlUnread) => true,
        _ => false,
    };
}
