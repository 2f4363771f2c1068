using System.Collections.Immutable;
using HintBook.Reading.Editing;
using HintBook.Text;

namespace HintBook.Workbench.Writing;

/// <summary>The forms beside the texts: which entries of a file a maker fills in most, in their words.</summary>
internal static class EntryForms
{
    private static readonly ImmutableArray<FormField> Stage =
    [
        new(["title"], "Title", "What you call this step.", FieldKind.Text),
        new(["sign"], "Sign", "How a reader sees on the box that this step comes next.", FieldKind.Text),
        new(["needs"], "Needs", "What must be in the hand or known, and how parts must stand.", FieldKind.Conditions, "all"),
        new(["does"], "Does", "Which parts go where.", FieldKind.Changes, "parts"),
        new(["gives"], "Gives", "Things that come into the hand; codes and facts that become known.", FieldKind.Names, "given"),
        new(["takes"], "Takes", "Things that are used up.", FieldKind.Names, "things"),
        new(["after"], "After", "Steps that come first although no part says so.", FieldKind.Names, "stages"),
        new(["cautions"], "Cautions", "Dangers that are met in this step.", FieldKind.Cautions),
        new(["minutes"], "Minutes", "About how long people take.", FieldKind.Number),
    ];

    private static readonly ImmutableArray<FormField> Help =
    [
        new(["nudge"], "Nudge", "A push in the right direction.", FieldKind.Lines),
        new(["clue"], "Clue", "What to look at, and why.", FieldKind.Lines),
        new(["answer"], "Answer", "Everything.", FieldKind.Lines),
    ];

    private static readonly ImmutableArray<FormField> Book =
    [
        new(["title"], "Title", "What the box is called.", FieldKind.Text),
        new(["maker", "name"], "Maker", "You, or your workshop.", FieldKind.Text),
        new(["maker", "help"], "Help", "Where a stuck owner can write: mailto:… or https://…", FieldKind.Text),
        new(["language"], "Language", "The language you write in, such as en or de.", FieldKind.Text),
        new(["address"], "Address", "Where the pages will live: https://… The cards carry it.", FieldKind.Text),
        new(["goal"], "Goal", "What the solver has, or what is open, at the end.", FieldKind.Conditions, "all"),
        new(["patience"], "Patience", "How long somebody tries a lock's settings one by one, such as 20 min.", FieldKind.Text),
        new(["cautions"], "Cautions", "Dangers of the whole box.", FieldKind.Cautions),
        new(["welcome"], "Welcome", "A few words for the front page.", FieldKind.Lines),
    ];

    /// <summary>Where names are declared in <c>book.yaml</c>, and what one of them is called.</summary>
    public static ImmutableArray<(string Key, string One)> Declared { get; } =
        [("parts", "part"), ("things", "thing"), ("codes", "code"), ("facts", "fact")];

    /// <summary>The form of a file; empty for a file that has none.</summary>
    public static ImmutableArray<FormGroup> Of(SourceFile file)
    {
        if (file.Path == "book.yaml")
            return [new("The box", Book), .. Declared.SelectMany(declared => Named(file, declared.Key, declared.One))];
        if (StageName.Of(file.Path) is not { Language: null } || EntryEdit.At(file, []) is not { } keys)
            return [];
        var several = keys.Value is EntryValue.Keyed all && all["moves"] is not null;
        // What each of several moves gives stands with that move.
        var fields = several ? [.. Stage.Where(field => field.Path[0] is not ("does" or "gives" or "takes"))] : Stage;
        return [new("This step", file.Path.EndsWith(".md", StringComparison.Ordinal) ? fields : [.. fields, .. Help])];
    }

    /// <summary>What a new name is declared with, so that only what nobody can guess is missing.</summary>
    /// <param name="key">One of <see cref="Declared"/>.</param>
    /// <param name="name">The name, such as <c>hive-tool</c>.</param>
    public static EntryValue Fresh(string key, string name)
    {
        KeyValuePair<string, EntryValue> called = new("name", new EntryValue.Text(name.Replace('-', ' ')));
        return new EntryValue.Keyed(key switch
        {
            "parts" => [new("positions", new EntryValue.Many([new EntryValue.Text("shut"), new EntryValue.Text("open")])), called],
            "codes" => [new("answer", new EntryValue.Text("")), called],
            _ => [called],
        });
    }

    private static IEnumerable<FormGroup> Named(SourceFile file, string key, string one) =>
        from name in EntryEdit.At(file, [key]) is { Value: EntryValue.Keyed(var entries) } ? entries.Select(entry => entry.Key) : []
        let fields = Fields(key).Select(field => field with { Path = [key, name, .. field.Path] })
        select new FormGroup($"{char.ToUpperInvariant(one[0])}{one[1..]}: {name}", [.. fields]);

    private static ImmutableArray<FormField> Fields(string key)
    {
        FormField called = new(["name"], "Name", "What people call it, in a sentence.", FieldKind.Text);
        FormField also = new(["also"], "Other names", "Other words for it, that would give it away too.", FieldKind.Names);
        FormField seen = new(["seen"], "Seen", "It shows on the closed box.", FieldKind.Flag);
        FormField place = new(["place"], "Place", "Where it is, in words.", FieldKind.Text);
        return key switch
        {
            "parts" =>
            [
                called,
                new(["positions"], "Positions", "All the ways it can stand; the first is how the box leaves you.", FieldKind.Names),
                also,
                place,
                seen,
                new(["free"], "Free", "It may go back and forth at any time.", FieldKind.Flag),
            ],
            "things" => [called, also, place, seen],
            "codes" =>
            [
                new(["answer"], "Answer", "What opens the lock.", FieldKind.Text),
                called,
                new(["clue"], "Clue", "The clue as the solver meets it.", FieldKind.Lines),
                new(["reads"], "Read as", "The ways of reading that turn the clue into the answer, in order.", FieldKind.Names, "ways"),
            ],
            _ => [called, also, seen],
        };
    }
}
