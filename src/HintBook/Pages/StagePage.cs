using HintBook.Books;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>One stage's page: its title and sign in the open, everything else closed until it is asked for.</summary>
internal static class StagePage
{
    /// <summary>The page under the name in use, and a copy under each older one that was ever printed.</summary>
    public static IEnumerable<SitePage> Of(Edition edition, Stage stage)
    {
        var names = edition.Plan.Addresses.Names[stage.Id.Value];
        var shape = Shape(edition, stage);
        return names.Select((name, age) => new SitePage(
            $"{edition.Folder}{name}.html",
            "stage.html",
            age == 0 ? shape : $"{shape} older",
            () => Names(edition, stage, canonical: age == 0 ? null : $"{names[0]}.html")));
    }

    private static ScriptObject Names(Edition edition, Stage stage, string? canonical)
    {
        var name = edition.Plan.Addresses.Names[stage.Id.Value][0];
        return edition.Page(
            PageHead.Of(edition, "stage", $"{name}.html", name, canonical),
            ("stage", View.Of(
                ("title", stage.Title.Value),
                ("sign", stage.Sign.Value),
                ("lang", edition.LanguageOf(stage)),
                ("minutes", stage.Minutes is { } minutes ? edition.Words.Say("minutes", ("minutes", $"{minutes}")) : null),
                ("cautions", View.Cautions(stage.Cautions, edition.Words)),
                ("sign_photos", PhotoView.Of(stage.Photos, Place.Sign, edition)),
                ("nudge", Tier(edition, stage, stage.Nudge, Place.Nudge)),
                ("clue", Tier(edition, stage, stage.Clue, Place.Clue)),
                ("answer", Tier(edition, stage, stage.Answer, Place.Answer)),
                ("film", View.Film(stage.Clip, edition)))),
            ("next", Next(edition, stage)));
    }

    private static ScriptObject Tier(Edition edition, Stage stage, Prose prose, Place place) => View.Of(
        ("text", edition.Prose.Of(prose)),
        ("photos", PhotoView.Of(stage.Photos, place, edition)));

    private static ScriptObject Next(Edition edition, Stage stage)
    {
        var opened = edition.Opened[stage.Id.Value];
        var alone = opened.Where(next => Way.OpensAlone(edition.Plan, stage.Id.Value, next)).ToArray();
        return View.Of(
            ("says", Says(edition, stage, alone.Length, opened.Length)),
            ("open", View.List(alone.Select(next => StageLink.Of(edition, next)))),
            ("joined", View.List(opened.Except(alone, StringComparer.Ordinal).Select(next => StageLink.Of(edition, next)))));
    }

    private static string Says(Edition edition, Stage stage, int alone, int opened) => edition.Words[(stage, alone, opened) switch
    {
        _ when edition.Ends.Contains(stage.Id.Value) => "next_last",
        (_, 1, _) => "next_one",
        (_, > 1, _) => "next_several",
        (_, _, > 0) => "next_joined_only",
        ({ RedHerring: true }, _, _) => "next_red_herring",
        _ => "next_nothing",
    }];

    // Which parts of the template a stage makes use of.
    private static string Shape(Edition edition, Stage stage)
    {
        var opened = edition.Opened[stage.Id.Value];
        var alone = opened.Count(next => Way.OpensAlone(edition.Plan, stage.Id.Value, next));
        var photos = string.Join(',', stage.Photos
            .Select(photo => $"{photo.Place}{(photo.Marks.IsEmpty ? "" : "+")}")
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal));
        return $"stage {photos} {!stage.Cautions.IsEmpty} {stage.Cautions.Any(c => c.Note is not null)} {stage.Clip is not null} "
            + $"{stage.Minutes is not null} {Math.Min(alone, 2)} {opened.Length > alone}";
    }
}

/// <summary>A link to a stage's page: title, sign, and when it opens.</summary>
internal static class StageLink
{
    public static ScriptObject Of(Edition edition, string id)
    {
        var stage = edition.Stages[id];
        return View.Of(
            ("title", stage.Title.Value),
            ("sign", stage.Sign.Value),
            ("lang", edition.LanguageOf(stage)),
            ("page", edition.Plan.Addresses.Names[id][0]),
            ("href", edition.Plan.Addresses.PageOf(id)),
            ("after", Way.Groups(edition.Plan, id)));
    }
}
