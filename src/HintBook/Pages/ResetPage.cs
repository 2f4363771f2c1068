using HintBook.Books;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>How the box is put back: the stages in reverse, behind a warning.</summary>
internal static class ResetPage
{
    public static SitePage Of(Edition edition) => new("reset.html", "reset.html", "reset", () => Names(edition));

    private static ScriptObject Names(Edition edition)
    {
        var names = edition.Book.Box.Names.GroupBy(named => named.Id.Value, StringComparer.Ordinal).ToDictionary(named => named.Key, named => named.First());
        return edition.Page(
            PageHead.Of(edition, "reset", "title_reset"),
            ("cautions", View.Cautions(edition.Book.Cautions, edition.Words)),
            ("stages", View.List(edition.Book.Stages.Reverse().Where(Says).Select(stage => Step(edition, stage, names)))));
    }

    private static bool Says(Stage stage) =>
        stage.Reset is not null || stage.Moves.Any(move => move.Undo is not null) || stage.Photos.Any(photo => photo.Place == Place.Reset);

    private static ScriptObject Step(Edition edition, Stage stage, Dictionary<string, Named> names) => View.Of(
        ("title", stage.Title.Value),
        ("cautions", View.Cautions(stage.Cautions, edition.Words)),
        ("tasks", View.List(stage.Moves.Reverse().Select(move => move.Undo).OfType<Undo>().SelectMany(undo => Tasks(undo, names, edition.Words)))),
        ("text", edition.Prose.Of(stage.Reset)),
        ("photos", View.Photos(stage.Photos, Place.Reset, edition)));

    private static IEnumerable<string> Tasks(Undo undo, Dictionary<string, Named> names, ThemeWords words)
    {
        foreach (var change in undo.Changes)
            yield return words.Say("reset_position", ("part", NameOf(change.Name.Value, names)), ("position", Spoken(change.Position.Value)));
        foreach (var thing in undo.PutBack)
        {
            yield return names.GetValueOrDefault(thing.Value) is Thing { Place: { } place } known
                ? words.Say("reset_place", ("thing", known.Name), ("place", place))
                : words.Say("reset_thing", ("thing", NameOf(thing.Value, names)));
        }

        if (undo.Note is { } note)
            yield return note;
    }

    private static string NameOf(string id, Dictionary<string, Named> names) => names.GetValueOrDefault(id)?.Name ?? Spoken(id);

    private static string Spoken(string id) => id.Replace('-', ' ');
}
