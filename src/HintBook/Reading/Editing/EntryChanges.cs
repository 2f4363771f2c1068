using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading.Editing;

/// <summary>
/// Finds the stretches of a file that must give way so that it says something else. What stays as it is isn't written again, so that
/// remarks, order, indents and quotes stay.
/// </summary>
internal sealed class EntryChanges
{
    private readonly Span within;
    private readonly string text;
    private readonly EntryWriter? forced;
    private readonly string lineEnd;
    private readonly List<TextChange> changes = [];

    private EntryChanges(Span within, EntryWriter? forced)
    {
        this.within = within;
        this.forced = forced;
        text = within.File.Text;
        lineEnd = LineEndOf(text);
    }

    /// <summary>The changes that lead to a value.</summary>
    /// <param name="within">The keys of the file.</param>
    /// <param name="root">Them, read.</param>
    /// <param name="to">What they shall say.</param>
    /// <param name="order">The usual order of the file's own keys.</param>
    /// <param name="quoted">Whether every new text is put in double quotes, whatever stood there.</param>
    public static List<TextChange> Between(Span within, YamlMap root, EntryValue.Keyed to, IReadOnlyList<string> order, bool quoted)
    {
        var all = new EntryChanges(within, quoted ? new EntryWriter(LineEndOf(within.File.Text), QuoteStyle.Double) : null);
        if (root.Entries.IsEmpty)
            all.Begin(to);
        else
            all.Map(root, to, order);
        return all.changes;
    }

    private static string LineEndOf(string text)
    {
        var first = text.IndexOf('\n', StringComparison.Ordinal);
        return first > 0 && text[first - 1] == '\r' ? "\r\n" : "\n";
    }

    private EntryWriter As(QuoteStyle style) => forced ?? new(lineEnd, style);

    // A file that has no keys yet gets them below its remarks.
    private void Begin(EntryValue.Keyed to)
    {
        var gap = within.End > within.Start && text[within.End - 1] is not '\n' ? lineEnd : "";
        var lines = to.Entries.Select(entry => As(QuoteStyle.Plain).Entry(entry.Key, entry.Value, 0) + lineEnd);
        Replace(within.End, within.End, gap + string.Concat(lines));
    }

    private void Change(YamlNode old, EntryValue to, int column, bool inBrackets, int colon)
    {
        if (EntryValue.Same(EntryValue.Of(old), to))
            return;
        switch (old, to)
        {
            case (YamlScalar { IsEmpty: false } scalar, EntryValue.Text or EntryValue.Bare):
                Replace(scalar.At.Start, scalar.At.End, Rewritten(scalar, to, column, inBrackets));
                break;
            case (YamlList { Items.IsEmpty: false } list, EntryValue.Many { Items.IsEmpty: false } many):
                List(list, many, inBrackets);
                break;
            case (YamlMap map, EntryValue.Keyed keyed) when map.Entries.Any(entry => keyed[entry.Key.Value] is not null):
                Map(map, keyed, []);
                break;
            default:
                Instead(old, to, column, inBrackets, colon);
                break;
        }
    }

    private string Rewritten(YamlScalar old, EntryValue to, int column, bool inBrackets)
    {
        var style = text[old.At.Start] switch
        {
            '"' => QuoteStyle.Double,
            '\'' => QuoteStyle.Single,
            '|' or '>' => QuoteStyle.Block,
            _ => QuoteStyle.Plain,
        };
        return to is EntryValue.Bare
            ? As(style).Write(to, null)
            : As(style == QuoteStyle.Block ? QuoteStyle.Plain : style).Write(to, inBrackets ? null : column);
    }

    // Begins behind the colon where what stood there went over lines of its own, unless a remark stands between.
    private void Instead(YamlNode old, EntryValue to, int column, bool inBrackets, int colon)
    {
        var written = As(QuoteStyle.Plain).Write(to, inBrackets ? null : column);
        var empty = old is YamlScalar { IsEmpty: true } && old.At.End == old.At.Start;
        var between = colon >= 0 && colon <= old.At.Start ? text[colon..old.At.Start] : "#";
        if (empty && colon >= 0)
            Replace(colon, colon, written[0] is '\n' or '\r' ? written : " " + written);
        else if (between.Contains('\n') && !between.Contains('#'))
            Replace(colon, old.At.End, written[0] is '\n' or '\r' ? written : " " + written);
        else
            Replace(old.At.Start, old.At.End, written.TrimStart('\r', '\n', ' '));
    }

    private void List(YamlList old, EntryValue.Many to, bool inBrackets)
    {
        var brackets = text[old.At.Start] == '[';
        var values = old.Items.Select(EntryValue.Of).ToArray();
        var first = 0;
        while (first < values.Length && first < to.Items.Length && EntryValue.Same(values[first], to.Items[first]))
            first++;
        var last = 0;
        while (last < values.Length - first && last < to.Items.Length - first && EntryValue.Same(values[^(last + 1)], to.Items[^(last + 1)]))
            last++;
        var (gone, fresh) = (values.Length - first - last, to.Items.Length - first - last);
        var both = Math.Min(gone, fresh);
        var column = ColumnOf(old.At.Start);
        for (var index = first; index < first + both; index++)
            Change(old.Items[index], to.Items[index], column, inBrackets || brackets, colon: -1);
        var at = first + both;
        if (gone > both)
            Remove(old, at, first + gone, brackets);
        else if (fresh > both)
            Insert(old, at, to.Items[at..(first + fresh)], brackets, column);
    }

    private void Insert(YamlList old, int at, IEnumerable<EntryValue> items, bool brackets, int column)
    {
        var writer = As(QuoteStyle.Plain);
        if (brackets)
        {
            var written = string.Join(", ", items.Select(item => writer.Write(item, null)));
            if (at > 0)
                Replace(old.Items[at - 1].At.End, old.Items[at - 1].At.End, ", " + written);
            else
                Replace(old.Items[0].At.Start, old.Items[0].At.Start, written + ", ");
            return;
        }

        var margin = new string(' ', column);
        var place = at > 0 ? EndOfLine(old.Items[at - 1].At.End) : StartOfLine(old.At.Start);
        var lines = items.Select(item => margin + writer.Entry(null, item, column));
        Replace(place, place, at > 0 ? string.Concat(lines.Select(line => lineEnd + line)) : string.Concat(lines.Select(line => line + lineEnd)));
    }

    private void Remove(YamlList old, int from, int to, bool brackets)
    {
        if (!brackets)
            Replace(StartOfLine(DashBefore(old, from)), AfterLine(old.Items[to - 1].At.End), "");
        else if (to < old.Items.Length)
            Replace(old.Items[from].At.Start, old.Items[to].At.Start, "");
        else
            Replace(old.Items[from - 1].At.End, old.Items[to - 1].At.End, "");
    }

    // The item's own dash stands before it with nothing but spaces and remarks between.
    private int DashBefore(YamlList list, int item)
    {
        var column = ColumnOf(list.At.Start);
        for (var line = StartOfLine(list.Items[item].At.Start); line >= StartOfLine(list.At.Start); line = line > 0 ? StartOfLine(line - 1) : -1)
        {
            if (line + column < text.Length && text[line + column] == '-')
                return line + column;
        }

        return list.Items[item].At.Start;
    }

    private void Map(YamlMap old, EntryValue.Keyed to, IReadOnlyList<string> order)
    {
        var brackets = text[old.At.Start] == '{';
        var column = ColumnOf(old.Entries[0].Key.At.Start);
        var kept = old.Entries.Where(entry => to[entry.Key.Value] is not null).ToArray();
        foreach (var entry in kept)
        {
            if (to[entry.Key.Value] is { } value)
                Change(entry.Value, value, column, brackets, ColonOf(entry) + 1);
        }

        for (var index = 0; index < old.Entries.Length; index++)
        {
            if (to[old.Entries[index].Key.Value] is null)
                Remove(old, index, brackets, to);
        }

        foreach (var (key, value) in to.Entries.Where(entry => old[entry.Key] is null))
            Add(old, key, value, brackets, column, order);
    }

    private void Remove(YamlMap old, int index, bool brackets, EntryValue.Keyed to)
    {
        var entry = old.Entries[index];
        if (!brackets)
            Replace(StartOfLine(entry.Key.At.Start), AfterLine(EndOf(entry)), "");
        else if (old.Entries.Take(index).Any(before => to[before.Key.Value] is not null))
            Replace(EndOf(old.Entries[index - 1]), EndOf(entry), "");
        else
            Replace(entry.Key.At.Start, old.Entries[index + 1].Key.At.Start, "");
    }

    private void Add(YamlMap old, string key, EntryValue value, bool brackets, int column, IReadOnlyList<string> order)
    {
        var writer = As(QuoteStyle.Plain);
        var before = Before(old, key, order);
        if (brackets)
        {
            var written = $"{EntryWriter.Key(key)}: {writer.Write(value, null)}";
            Replace(EndOf(old.Entries[^1]), EndOf(old.Entries[^1]), ", " + written);
        }
        else
        {
            var line = new string(' ', column) + writer.Entry(key, value, column);
            var place = before is null ? StartOfLine(old.Entries[0].Key.At.Start) : EndOfLine(EndOf(before));
            Replace(place, place, before is null ? line + lineEnd : lineEnd + line);
        }
    }

    // The entry after which a new one usually stands; null for the first of all.
    private static YamlEntry? Before(YamlMap old, string key, IReadOnlyList<string> order)
    {
        var usual = Place(key);
        if (usual < 0)
            return old.Entries[^1];
        var before = old.Entries.LastOrDefault(entry => Place(entry.Key.Value) is >= 0 and var place && place < usual);
        return before ?? (old.Entries.Any(entry => Place(entry.Key.Value) < 0) ? old.Entries[^1] : null);

        int Place(string name) => order.Index().Where(pair => pair.Item == name).Select(pair => pair.Index).DefaultIfEmpty(-1).First();
    }

    private int ColonOf(YamlEntry entry) => text.IndexOf(':', entry.Key.At.End) is >= 0 and var colon ? colon : entry.Key.At.End;

    private int EndOf(YamlEntry entry) => entry.Value is YamlScalar { IsEmpty: true } && entry.Value.At.End == entry.Value.At.Start
        ? Math.Min(ColonOf(entry) + 1, within.End)
        : Math.Max(entry.Value.At.End, entry.Key.At.End);

    private int ColumnOf(int offset) => offset - StartOfLine(offset);

    private int StartOfLine(int offset) => offset == 0 ? 0 : text.LastIndexOf('\n', offset - 1) + 1;

    private int EndOfLine(int offset)
    {
        var end = text.IndexOf('\n', offset);
        return end < 0 ? text.Length : end > 0 && text[end - 1] == '\r' && end > offset ? end - 1 : end;
    }

    private int AfterLine(int offset) => Lines.Next(text, offset);

    private void Replace(int start, int end, string with) => changes.Add(new(start, end, with));
}
