using System.Collections.Immutable;
using CsCheck;
using HintBook.Reading.Editing;
using HintBook.Starting;
using HintBook.Text;

namespace HintBook.Tests.Reading.Editing;

/// <summary>One entry changes, and nothing else of the file does.</summary>
public class EntryEditTests
{
    private static readonly Gen<string> Words = Gen.OneOf(
        "The lid", "x", "0420", "5", "2:16", "true", "null", "It's shut: look # here", "\"quoted\"", " led by a space ", "é 日本 🐝",
        "- a", "[ a ]", "a, b", "{ a }", "a: b", "ends with:", "&a", "*a", "!tag", "| no", "> no", "% no", "@no", "`no`",
        "back\\slash", "no\u00A0break", "“curly”", "---", "tab\there", "#", "~", "");

    private static readonly Gen<string> Texts =
        Gen.OneOf(Words, Words, Words.Select(word => $"{word}\nsecond line\n"), Words.Select(word => $"one\n\n  {word}"));

    private static readonly Gen<EntryValue> Names =
        Gen.OneOf("steel-pin", "lid", "box-tilt", "on", "off", "42").Select(EntryValue (name) => new EntryValue.Text(name));

    private static readonly Gen<EntryValue> Conditions = Gen.OneOf(
        Names,
        Gen.Select(Names, Names, EntryValue (name, position) => Keyed((Word(name), position))),
        Gen.Select(Names, Texts, EntryValue (name, note) => Keyed(("kind", name), ("note", Text(note)))));

    private static readonly Gen<EntryValue> Values = Gen.OneOf(
        Texts.Select(Text),
        Gen.Int[1, 999].Select(EntryValue (number) => new EntryValue.Bare($"{number}")),
        Conditions.Array[0, 4].Select(EntryValue (items) => new EntryValue.Many([.. items])),
        Gen.Select(Gen.OneOf("lid", "off"), Texts, Texts, EntryValue (key, one, other) => Keyed((key, Text(one)), ("a", Text(other)))));

    private static readonly ImmutableArray<(string Path, string Text)> Written =
    [
        .. NewBook.Files.Where(file => file.Path.EndsWith(".md", StringComparison.Ordinal) || file.Path == "book.yaml"),
        .. new[] { "book.yaml", "stages/04-the-verse.md", "stages/06-the-smoker.md", "stages/16-the-guest-book.yaml" }
            .Select(path => (path, File.ReadAllText(Path.Combine(Where.Example, path)))),
        ("stages/01-odd.md", "---\ntitle: 'The lid'   # said so\n\nsign: \"It is \\\"shut\\\".\"\n"
            + "goal:\n- a   # first\n# between\n-  { b: c }\n-\n  d: e\n  f: g\nnothing:\n"
            + "folded: >-\n  one\n  two\nkept: |+ # so\n  one\n\nlast: [ a,\n   b, # of two\n   c ]\n---\n# Nudge\ntitle: not this\n"),
        ("stages/02-empty.md", "---\n# nothing yet\n---\n# Nudge\n"),
        ("book.yaml", "title: x"),
        ("book.yaml", ""),
        ("book.yaml", "{ title: x, goal: [ a ] }\n"),
    ];

    private static readonly Gen<(SourceFile File, ImmutableArray<string> Path)> Places =
        from file in Gen.OneOf([.. Written])
        from windows in Gen.Bool
        let source = new SourceFile(file.Path, windows ? file.Text.ReplaceLineEndings("\r\n") : file.Text)
        from path in Gen.OneOf([.. PathsIn(source), ["title"], ["minutes"], ["new", "one"]])
        select (source, path);

    [Theory]
    [InlineData("title: The lid   # its name\nminutes: 5\n", "title", "The box", "title: The box   # its name\nminutes: 5\n")]
    [InlineData("title: 'The lid'\n", "title", "It's", "title: 'It''s'\n")]
    [InlineData("title: \"The lid\"\n", "title", "The box", "title: \"The box\"\n")]
    [InlineData("title: The lid\n", "title", "Lid: shut", "title: \"Lid: shut\"\n")]
    [InlineData("title: The lid\n", "title", "0420", "title: \"0420\"\n")]
    [InlineData("title: The lid\r\nminutes: 5\r\n", "sign", "It is shut.", "title: The lid\r\nsign: It is shut.\r\nminutes: 5\r\n")]
    [InlineData("title: The lid\n# on time\nminutes: 5", "nudge", "x", "title: The lid\n# on time\nminutes: 5\nnudge: x")]
    [InlineData("title: The lid", "sign", "It is shut.", "title: The lid\nsign: It is shut.")]
    [InlineData("title:\nminutes: 5\n", "title", "The lid", "title: The lid\nminutes: 5\n")]
    [InlineData("title: |\n  The lid\n  of it\nminutes: 5\n", "title", "The lid\n\nand box\n", "title: |\n  The lid\n\n  and box\nminutes: 5\n")]
    [InlineData("# only a remark\n", "title", "The lid", "# only a remark\ntitle: The lid\n")]
    [InlineData("maker: { name: Oak, help: x }\n", "maker.name", "Elm", "maker: { name: Elm, help: x }\n")]
    [InlineData("maker:\n  name: Oak   # who\n", "maker.help", "mailto:a@b.example", "maker:\n  name: Oak   # who\n  help: mailto:a@b.example\n")]
    [InlineData("title: x\n", "maker.name", "Elm", "title: x\nmaker: { name: Elm }\n")]
    public void A_text_is_changed_where_it_stands(string before, string path, string to, string after) =>
        Assert.Equal(after, Changed(before, path, Text(to)));

    [Theory]
    [InlineData("needs: [ a, b, c ]\n", "a b c d", "needs: [ a, b, c, d ]\n")]
    [InlineData("needs: [ a, b, c ]\n", "b c", "needs: [ b, c ]\n")]
    [InlineData("needs: [ a, b, c ]\n", "a c", "needs: [ a, c ]\n")]
    [InlineData("needs: [ a, b, c ]\n", "a x c", "needs: [ a, x, c ]\n")]
    [InlineData("needs: [ a, { b: c } ]\n", "a", "needs: [ a ]\n")]
    [InlineData("needs: [ a ]   # so\n", "", "needs: []   # so\n")]
    [InlineData("needs:\n  - a   # first\n  # then\n  - b\n", "a x b", "needs:\n  - a   # first\n  - x\n  # then\n  - b\n")]
    [InlineData("needs:\n- a   # first\n- b\n", "b", "needs:\n- b\n")]
    [InlineData("needs:\n- a\n- b\nminutes: 5\n", "", "needs: []\nminutes: 5\n")]
    [InlineData("needs:\n  - a\n", "a b", "needs:\n  - a\n  - b\n")]
    [InlineData("minutes: 5\n", "a on 42", "needs: [ a, on, \"42\" ]\nminutes: 5\n")]
    public void Items_come_and_go_and_the_others_stay_as_they_are(string before, string items, string after) =>
        Assert.Equal(after, Changed(before, "needs", new EntryValue.Many([.. items.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Text)])));

    [Theory]
    [InlineData("title: x\nminutes: 5   # about\nsign: y\n", "minutes", "title: x\nsign: y\n")]
    [InlineData("title: x\nneeds:\n  - a\n  - b\n\n# above the sign\nsign: y\n", "needs", "title: x\n\n# above the sign\nsign: y\n")]
    [InlineData("maker: { name: Oak, help: x }\n", "maker.help", "maker: { name: Oak }\n")]
    [InlineData("maker: { name: Oak }\ntitle: x\n", "maker.name", "title: x\n")]
    [InlineData("title: x\n", "minutes", "title: x\n")]
    public void An_entry_is_taken_out_with_its_line(string before, string path, string after) => Assert.Equal(after, Changed(before, path, null));

    [Fact]
    public void A_long_group_is_written_with_one_entry_a_line()
    {
        var note = new string('a', 120);
        var caution = Keyed(("kind", Text("heavy")), ("note", Text(note)));

        Assert.Equal($"title: x\ncautions:\n  - kind: heavy\n    note: {note}\n", Changed("title: x\n", "cautions", new EntryValue.Many([caution])));
    }

    [Theory]
    [InlineData("title: [ x\n", "title")]
    [InlineData("title: x\n", "title.name")]
    public void What_cannot_be_read_is_not_changed(string before, string path) =>
        Assert.IsType<EditedEntry.Refused>(EntryEdit.Set(new("stages/01-x.yaml", before), [.. path.Split('.')], Keyed(("a", Text("b")))));

    [Fact]
    public void A_file_without_keys_is_not_changed() =>
        Assert.IsType<EditedEntry.Refused>(EntryEdit.Set(new("stages/01-x.md", "# Nudge\n"), ["title"], Text("x")));

    [Fact]
    public void Neighbours_that_are_taken_out_together_come_back_in_their_order()
    {
        const string Before = "parts:\n  a: 1\n  b: 2\n  c: 3\n";
        var done = Assert.IsType<EditedEntry.Done>(EntryEdit.Set(new("book.yaml", Before), ["parts"], Keyed(("c", Text("3")))));

        Assert.Equal("parts:\n  c: 3\n", done.Text);
        Assert.Equal(Before, TextChange.Apply(done.Text, TextChange.Back(Before, done.Changes)));
    }

    [Fact]
    public void In_any_file_any_entry_changes_alone_and_its_changes_lead_back() => Gen.Select(Places, Gen.Null(Values)).Sample((place, value) =>
    {
        var (file, path) = place;
        if (EntryEdit.Set(file, path, value) is not EditedEntry.Done done)
            return;
        var changed = new SourceFile(file.Path, done.Text);
        Assert.Equal(done.Text, TextChange.Apply(file.Text, done.Changes));
        Assert.Equal(file.Text, TextChange.Apply(done.Text, TextChange.Back(file.Text, done.Changes)));
        var after = EntryEdit.At(changed, path)?.Value;
        Assert.True(value is null ? after is null : after is not null && EntryValue.Same(after, value));
        var (old, now) = (EntryEdit.At(file, [])?.Value, EntryEdit.At(changed, [])?.Value);
        foreach (var other in PathsIn(file).Where(other => At(old, other) is not null).Where(other => !StartsWith(other, path) && !StartsWith(path, other)))
            Assert.True(At(old, other) is { } one && At(now, other) is { } same && EntryValue.Same(one, same), string.Join('.', other));
        // Every line that holds nothing of the entry is there as it was.
        var outside = Lines(file, path);
        Assert.Empty(outside.Except(done.Text.Split('\n')));
    }, seed: "2O407wQbbCK0");

    [Fact]
    public void Almost_every_entry_of_a_well_written_book_can_be_changed()
    {
        var (tried, refused) = (0, 0);
        foreach (var (path, text) in Written.Take(8))
        {
            var file = new SourceFile(path, text);
            foreach (var entry in PathsIn(file))
            {
                tried++;
                if (EntryEdit.Set(file, entry, Text("It's shut: look # here")) is EditedEntry.Refused
                    || EntryEdit.Set(file, entry, null) is EditedEntry.Refused)
                    refused++;
            }
        }

        Assert.True(tried > 200, $"{tried}");
        Assert.Equal(0, refused);
    }

    private static EntryValue.Keyed Keyed(params (string Key, EntryValue Value)[] entries) =>
        new([.. entries.Select(entry => KeyValuePair.Create(entry.Key, entry.Value))]);

    private static EntryValue Text(string text) => new EntryValue.Text(text);

    private static string Word(EntryValue value) => EntryValue.WordOf(value) ?? "";

    private static string Changed(string before, string path, EntryValue? to) =>
        Assert.IsType<EditedEntry.Done>(EntryEdit.Set(new("stages/01-x.yaml", before), [.. path.Split('.')], to)).Text;

    private static bool StartsWith(ImmutableArray<string> path, ImmutableArray<string> with) => path.Take(with.Length).SequenceEqual(with);

    private static EntryValue? At(EntryValue? value, IEnumerable<string> path) =>
        path.Aggregate(value, (at, key) => (at as EntryValue.Keyed)?[key]);

    // Those that are there, one that is new, and those inside of groups.
    private static IEnumerable<ImmutableArray<string>> PathsIn(SourceFile file)
    {
        return EntryEdit.At(file, []) is { Value: EntryValue.Keyed root } ? [.. Below([], root)] : [["title"], ["maker", "name"]];

        static IEnumerable<ImmutableArray<string>> Below(ImmutableArray<string> path, EntryValue.Keyed keyed) =>
            keyed.Entries.SelectMany(entry => entry.Value is EntryValue.Keyed inner
                ? Below(path.Add(entry.Key), inner).Prepend(path.Add(entry.Key))
                : [path.Add(entry.Key)]);
    }

    // The lines before and after the entry's own, or before and after the top entry that it would be made in.
    private static IEnumerable<string> Lines(SourceFile file, ImmutableArray<string> path)
    {
        var lines = file.Text.Split('\n');
        if (EntryEdit.At(file, path) is not { } at)
            return [];
        var (from, to) = (file.PlaceOf(at.At.Start).Line, file.PlaceOf(at.At.End).Line);
        return lines.Take(from - 1).Concat(lines.Skip(to)).Where(line => line.Trim().Length > 0 && !line.Contains(": {", StringComparison.Ordinal));
    }
}
