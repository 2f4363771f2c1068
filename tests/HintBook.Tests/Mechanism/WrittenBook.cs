using System.Globalization;
using System.Text;
using HintBook.Books;
using HintBook.Reading;

namespace HintBook.Tests.Mechanism;

/// <summary>Writes a book of the tests as an author would, and reads it again.</summary>
internal static class WrittenBook
{
    private const string Help = "nudge: a nudge\nclue: a clue\nanswer: an answer\n";

    /// <summary>The book as it is read from its files; nothing may be wrong with them.</summary>
    public static Book ReadBack(Book book)
    {
        var folder = Directory.CreateTempSubdirectory("hintbook-").FullName;
        try
        {
            Write(book, folder);
            var read = Reader.Read(folder);
            Assert.Empty(read.Findings.All);
            // A book must have a stage; a box of handling alone gets one for the file's sake.
            return book.Stages.IsEmpty ? read.Book! with { Stages = [] } : read.Book!;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Writes the files of a book into a folder.</summary>
    public static void Write(Book book, string folder)
    {
        Directory.CreateDirectory(Path.Combine(folder, "stages"));
        foreach (var (path, text) in Files(book))
            File.WriteAllText(Path.Combine(folder, path), text);
    }

    /// <summary>The files of a book: path inside its folder and text.</summary>
    public static IEnumerable<(string Path, string Text)> Files(Book book)
    {
        var text = new StringBuilder($"format: 2\ntitle: {book.Title}\npatience: {(int)book.Patience.TotalSeconds} s\ngoal: {List(book.Goal)}\n");
        Section(
            text,
            "parts",
            book.Box.Parts,
            part => $"{{ positions: {Positions(part)}{Moving(part)}, needs: {List(part.Needs)}{Behind(part)}{Called(part)} }}");
        Section(
            text,
            "things",
            book.Box.Things,
            thing => $"{{ starts: \"{thing.Starts}\", fits: {Names(thing.Fits.Select(f => f.Value))}{Behind(thing)}{Called(thing)} }}");
        Section(text, "facts", book.Box.Facts, _ => "{}");
        Section(text, "codes", book.Box.Codes, code => code.Lock is WheelLock set
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{{ answer: \"{code.Answer}\", lock: {{ wheels: {set.Wheels}, symbols: \"{set.Symbols}\", seconds-a-try: {set.SecondsATry} }} }}")
            : $"{{ answer: \"{code.Answer}\" }}");
        Listed(text, "moves", book.Box.Moves.Select(Written));
        Listed(text, "reactions", book.Box.Reactions.Select(reaction => $"{{ when: {List(reaction.When)}, {Happening(reaction.Changes)} }}"));
        yield return ("book.yaml", text.ToString());
        if (book.Stages.IsEmpty)
            yield return ("stages/1-handling.yaml", $"title: Handling\nsign: a sign\n{Help}");
        foreach (var (index, stage) in book.Stages.Index())
        {
            var keys = new StringBuilder(
                $"title: {stage.Title}\nsign: \"{stage.Sign}\"\n"
                + $"after: {Names(stage.After.Select(id => id.Value))}\noptional: {Flag(stage.Optional)}\nred-herring: {Flag(stage.RedHerring)}\n{Help}");
            Listed(keys, "moves", stage.Moves.Select(Written));
            yield return ($"stages/{index + 1:0000}-{stage.Id}.yaml", keys.ToString());
        }
    }

    private static void Section<T>(StringBuilder text, string name, IReadOnlyCollection<T> all, Func<T, string> written)
        where T : Named
    {
        if (all.Count > 0)
            text.Append(CultureInfo.InvariantCulture, $"{name}:\n");
        foreach (var one in all)
            text.Append(CultureInfo.InvariantCulture, $"  \"{one.Id}\": {written(one)}\n");
    }

    private static void Listed(StringBuilder text, string name, IEnumerable<string> lines)
    {
        foreach (var (index, line) in lines.Index())
            text.Append(CultureInfo.InvariantCulture, $"{(index == 0 ? $"{name}:\n" : "")}  - {line}\n");
    }

    private static string Written(Move move)
    {
        var outside = move.FromOutside ? ", behind: []" : "";
        var undo = move.Undo is { } back ? $", undo: {Written(back)}" : "";
        return $"{{ name: \"{move.Name}\", needs: {List(move.Needs)}, {Happening(move.Changes)}, reversible: {Flag(move.Reversible)}{outside}{undo} }}";
    }

    private static string Written(Undo undo) =>
        undo.Steps.Length == 1 ? Written(undo.Steps[0])
        : undo.Steps.IsEmpty ? $"{{ never: \"{undo.Never}\" }}"
        : $"[ {string.Join(", ", undo.Steps.Select(Written))} ]";

    private static string Written(UndoStep step) =>
        $"{{ needs: {List(step.Needs)}, put-back: {Names(step.PutBack.Select(thing => thing.Value))}, does: {Changed(step.Changes)} }}";

    // What is given stands last, as it is read.
    private static string Happening(IReadOnlyCollection<Change> changes) =>
        $"does: {Changed(changes.Where(change => !change.Given))}, gives: {Names(changes.Where(change => change.Given).Select(change => change.Name.Value))}";

    // A dial is round where its positions are a range; those of the tests are numbers.
    private static string Positions(Part part) =>
        part is { Turns: true, Round: true } ? $"{part.Positions[0]}-{part.Positions[^1]}"
        : part.Details.IsEmpty ? Names(part.Written.Select(position => position.Value))
        : $"{{ {string.Join(", ", part.Positions.Select(position => $"\"{position}\": {{ {Details(part, position)} }}"))} }}";

    private static string Details(Part part, string position)
    {
        var details = part.Details.GetValueOrDefault(position);
        return $"seen: {Flag(details?.Seen ?? part.Seen)}{(details?.Says is { } says ? $", says: \"{says}\"" : "")}";
    }

    // Without a name of its own a part or a thing is called by its id.
    private static string Called(Named named) =>
        (named.Name == named.Id.Value ? "" : $", name: \"{named.Name}\"")
        + (named.Seen ? ", seen: true" : "")
        + (named is Part { ShowsWhen: { IsEmpty: false } when } ? $", shows-when: {List(when)}" : "");

    private static string Moving(Part part) => part.Turns ? ", turns: next" : $", free: {Flag(part.Free)}";

    private static string Behind(Named named) => named.Behind is { } behind ? $", behind: {List(behind)}" : "";

    private static string List(IEnumerable<Condition> conditions) => $"[ {string.Join(", ", conditions.Select(Written))} ]";

    private static string Written(Condition condition) => condition switch
    {
        InPosition { Positions.IsEmpty: true } bare => $"\"{bare.Name}\"",
        InPosition one => $"{{ \"{one.Name}\": {Names(one.Positions.Select(position => position.Value))} }}",
        AnyOf any => $"{{ any: [ {string.Join(", ", any.Alternatives.Select(alternative => List(alternative)))} ] }}",
        _ => throw new InvalidOperationException("There is no other kind of condition."),
    };

    private static string Changed(IEnumerable<Change> changes) =>
        $"{{ {string.Join(", ", changes.Select(change => $"\"{change.Name}\": \"{change.Position}\""))} }}";

    private static string Names(IEnumerable<string> names) => $"[ {string.Join(", ", names.Select(name => $"\"{name}\""))} ]";

    private static string Flag(bool flag) => flag ? "true" : "false";
}
