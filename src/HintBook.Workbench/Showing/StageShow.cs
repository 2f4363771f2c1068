using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using HintBook.Reading.Editing;
using HintBook.Text;

namespace HintBook.Workbench.Showing;

/// <summary>A mark on a photo, as the page writes it.</summary>
/// <param name="X">Per cent from the left.</param>
/// <param name="Y">Per cent from the top.</param>
/// <param name="Says">What is there.</param>
internal sealed record ShownMark(double X, double Y, string Says);

/// <summary>A photo of a stage, as the page writes it.</summary>
/// <param name="Place">Where it stands: one of <see cref="StageShow.Places"/>.</param>
/// <param name="Index">Its number there, from 0.</param>
/// <param name="File">The file in the folder <c>photos</c>.</param>
/// <param name="Alt">What it shows, for those who don't see it; null where nothing is written.</param>
/// <param name="Marks">The marks on it.</param>
internal sealed record ShownPhoto(string Place, int Index, string File, string? Alt, ImmutableArray<ShownMark> Marks)
{
    /// <summary>Whether both are written alike.</summary>
    public bool IsLike(ShownPhoto other) => this with { Marks = [] } == other with { Marks = [] } && Marks.AsSpan().SequenceEqual(other.Marks.AsSpan());
}

/// <summary>The part of a film that a stage shows, as the page writes it.</summary>
/// <param name="File">The film, in the folder <c>clips</c>; null for one that lives elsewhere.</param>
/// <param name="From">Where it starts, such as <c>2:16.4</c>.</param>
/// <param name="To">Where it ends; null for the film's end.</param>
internal sealed record ShownClip(string? File, string From, string? To);

/// <summary>The photos and the clip that a stage's text names, and changes to them.</summary>
internal sealed partial class StageShow
{
    /// <summary>Where photos can stand in a stage.</summary>
    public static readonly ImmutableArray<string> Places = ["sign", "nudge", "clue", "answer", "reset"];

    private readonly SourceFile file;
    private readonly EntryValue.Keyed keys;

    private StageShow(SourceFile file, EntryValue.Keyed keys) => (this.file, this.keys) = (file, keys);

    /// <summary>The photos, by place.</summary>
    public ImmutableArray<ShownPhoto> Photos =>
        [.. from place in Places from item in ItemsAt(place).Index() select PhotoOf(place, item.Index, item.Item)];

    /// <summary>The clip, or null.</summary>
    public ShownClip? Clip => keys["clip"] is EntryValue.Keyed clip && WordOf(clip["from"]) is { } from
        ? new(WordOf(clip["file"]), from, WordOf(clip["to"]))
        : null;

    /// <summary>Reads a stage; null where its keys can't be read, so that the text must be mended first.</summary>
    /// <param name="name">The file's name.</param>
    /// <param name="text">Its text.</param>
    public static StageShow? Read(string name, string text)
    {
        var read = new SourceFile(name, text);
        return EntryEdit.At(read, []) is { Value: EntryValue.Keyed entries } ? new(read, entries) : null;
    }

    /// <summary>Adds a photo.</summary>
    /// <param name="photo">The photo; it becomes the last of its place.</param>
    public EditedEntry Add(ShownPhoto photo) =>
        SetItems(photo.Place, ItemsAt(photo.Place).Add(Item(new EntryValue.Text(photo.File), photo with { Marks = [] }, null)));

    /// <summary>Gives a photo other words and marks.</summary>
    /// <param name="was">The photo as whoever changes it has seen it.</param>
    /// <param name="now">The photo as it shall be, in the same place.</param>
    public EditedEntry Change(ShownPhoto was, ShownPhoto now)
    {
        if (!Photos.Any(photo => photo.IsLike(was)))
            return new EditedEntry.Refused("This photo's entry was changed in the text meanwhile. Look at it again.");
        var items = ItemsAt(was.Place);
        return SetItems(was.Place, items.SetItem(was.Index, Item(items[was.Index], now, was)));
    }

    /// <summary>Sets which part of which film the stage shows.</summary>
    /// <param name="was">The clip as whoever changes it has seen it.</param>
    /// <param name="now">The clip as it shall be; null for none.</param>
    public EditedEntry Show(ShownClip? was, ShownClip? now)
    {
        if (Clip != was)
            return new EditedEntry.Refused("The clip's entry was changed in the text meanwhile. Look at it again.");
        if (now is null)
            return Set(["clip"], null);
        var clip = keys["clip"] as EntryValue.Keyed ?? new([]);
        clip = With(clip, "file", now.File is null ? null : new EntryValue.Text(now.File));
        clip = With(clip, "from", new EntryValue.Bare(now.From));
        return Set(["clip"], With(clip, "to", now.To is null ? null : new EntryValue.Bare(now.To)));
    }

    // A single photo stands by itself, several in a list.
    private EditedEntry SetItems(string place, ImmutableArray<EntryValue> items)
    {
        var isList = (keys["photos"] as EntryValue.Keyed)?[place] is EntryValue.Many;
        return Set(["photos", place], items is [var one] && !isList ? one : new EntryValue.Many(items));
    }

    // Remarks stay: what would take one away with it isn't done.
    private EditedEntry Set(ImmutableArray<string> path, EntryValue? to) => EntryEdit.Set(file, path, to) switch
    {
        EditedEntry.Done done when done.Changes.Any(change => Remark().IsMatch(Quoted().Replace(file.Text[change.Start..change.End], ""))) =>
            new EditedEntry.Refused("There is a remark inside this entry, which would be lost. Change the entry in the text."),
        var edited => edited,
    };

    private ImmutableArray<EntryValue> ItemsAt(string place) => (keys["photos"] as EntryValue.Keyed)?[place] switch
    {
        null or EntryValue.Nothing => [],
        EntryValue.Many(var items) => items,
        var one => [one],
    };

    // What isn't about words or marks stays, and so do marks that are the same: they may be finer than the page has them.
    private static EntryValue Item(EntryValue item, ShownPhoto now, ShownPhoto? was)
    {
        var entries = item as EntryValue.Keyed ?? new([KeyValuePair.Create("file", item)]);
        if (was?.Alt != now.Alt)
            entries = With(entries, "alt", now.Alt is { Length: > 0 } alt ? new EntryValue.Text(alt) : null);
        if (was is null || !was.Marks.AsSpan().SequenceEqual(now.Marks.AsSpan()))
            entries = With(entries, "marks", now.Marks.IsEmpty ? null : new EntryValue.Many([.. now.Marks.Select(Value)]));
        return item is not EntryValue.Keyed && entries.Entries.Length == 1 ? item : entries;
    }

    private static EntryValue Value(ShownMark mark) => new EntryValue.Keyed(
    [
        KeyValuePair.Create<string, EntryValue>("at", new EntryValue.Many([Per(mark.X), Per(mark.Y)])),
        KeyValuePair.Create<string, EntryValue>("says", new EntryValue.Text(mark.Says)),
    ]);

    private static EntryValue.Bare Per(double number) => new(Math.Round(number, 1).ToString(CultureInfo.InvariantCulture));

    private static EntryValue.Keyed With(EntryValue.Keyed keys, string key, EntryValue? to)
    {
        var others = keys.Entries.RemoveAll(entry => entry.Key == key);
        return to is null ? new(others)
            : keys[key] is null ? new(others.Add(KeyValuePair.Create(key, to)))
            : new([.. keys.Entries.Select(entry => entry.Key == key ? KeyValuePair.Create(key, to) : entry)]);
    }

    private static ShownPhoto PhotoOf(string place, int index, EntryValue item) => item is EntryValue.Keyed keys
        ? new(place, index, WordOf(keys["file"]) ?? "", WordOf(keys["alt"]), MarksIn(keys["marks"]))
        : new(place, index, WordOf(item) ?? "", null, []);

    private static ImmutableArray<ShownMark> MarksIn(EntryValue? marks) =>
    [
        .. from mark in (marks as EntryValue.Many)?.Items.OfType<EntryValue.Keyed>() ?? []
           let at = mark["at"] as EntryValue.Many
           where at is { Items.Length: 2 }
           select new ShownMark(Number(at.Items[0]), Number(at.Items[1]), WordOf(mark["says"]) ?? ""),
    ];

    private static double Number(EntryValue value) =>
        double.TryParse(WordOf(value), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? Math.Round(number, 1) : 0;

    private static string? WordOf(EntryValue? value) => EntryValue.WordOf(value);

    [GeneratedRegex("""(?:^|\s)#""")]
    private static partial Regex Remark();

    [GeneratedRegex("""
        "(?:[^"\\]|\\.)*"|'(?:[^']|'')*'
        """, RegexOptions.IgnorePatternWhitespace)]
    private static partial Regex Quoted();
}
