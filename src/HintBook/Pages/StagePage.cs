using HintBook.Books;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>One stage's page: its title and sign in the open, everything else closed until it is asked for.</summary>
internal static class StagePage
{
    /// <summary>The page under the name in use, and a copy under each older one that was ever printed.</summary>
    public static IEnumerable<SitePage> Build(LanguageSite site, Stage stage)
    {
        var names = site.Plan.Addresses.Names[stage.Id.Value];
        var shape = Shape(site, stage);
        return names.Select((name, age) => new SitePage(
            $"{site.Folder}{name}.html",
            "stage.html",
            age == 0 ? shape : $"{shape} older",
            () => Names(site, stage, canonical: age == 0 ? null : $"{names[0]}.html")));
    }

    private static ScriptObject Names(LanguageSite site, Stage stage, string? canonical)
    {
        var name = site.Plan.Addresses.Names[stage.Id.Value][0];
        return site.Page(
            PageHead.Build(site, "stage", $"{name}.html", name, canonical),
            ("stage", View.Of(
                ("title", stage.Title.Value),
                ("sign", stage.Sign.Value),
                ("lang", site.LanguageOf(stage)),
                ("minutes", stage.Minutes is { } minutes ? site.Words.SayNumber("minutes", "minutes", minutes) : null),
                ("cautions", CautionView.List(stage.Cautions, site)),
                ("sign_photos", PhotoView.Build(stage.Photos, Place.Sign, site)),
                ("nudge", Tier(site, stage, stage.Nudge, Place.Nudge)),
                ("clue", Tier(site, stage, stage.Clue, Place.Clue)),
                ("answer", Tier(site, stage, stage.Answer, Place.Answer)),
                ("film", FilmView.OfClip(stage, site)))),
            ("next", Next(site, stage)));
    }

    private static ScriptObject Tier(LanguageSite site, Stage stage, Prose prose, Place place) => View.Of(
        ("text", site.Prose.Of(prose)),
        ("photos", PhotoView.Build(stage.Photos, place, site)));

    private static ScriptObject Next(LanguageSite site, Stage stage)
    {
        var opened = site.Opened[stage.Id.Value];
        var alone = opened.Where(next => NextStages.OpensAlone(site.Plan, stage.Id.Value, next)).ToArray();
        return View.Of(
            ("says", Says(site, stage, alone.Length, opened.Length)),
            ("open", View.List(alone.Select(next => StageLink.Of(site, next)))),
            ("joined", View.List(opened.Except(alone, StringComparer.Ordinal).Select(next => StageLink.Of(site, next)))));
    }

    private static string Says(LanguageSite site, Stage stage, int alone, int opened) => site.Words[(stage, alone, opened) switch
    {
        _ when site.Ends.Contains(stage.Id.Value) => "next_last",
        (_, 1, _) => "next_one",
        (_, > 1, _) => "next_several",
        (_, _, > 0) => "next_joined_only",
        ({ RedHerring: true }, _, _) => "next_red_herring",
        _ => "next_nothing",
    }];

    private static string FilmShape(Stage stage) => stage.Clip is not { } clip ? "" : clip.File is null ? "elsewhere" : "film";

    // Which parts of the template a stage makes use of.
    private static string Shape(LanguageSite site, Stage stage)
    {
        var opened = site.Opened[stage.Id.Value];
        var alone = opened.Count(next => NextStages.OpensAlone(site.Plan, stage.Id.Value, next));
        var photos = string.Join(',', stage.Photos
            .Select(photo => $"{photo.Place}{(photo.Marks.IsEmpty ? "" : "+")}")
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal));
        return $"stage {photos} {!stage.Cautions.IsEmpty} {stage.Cautions.Any(c => c.Note is not null)} {FilmShape(stage)} "
            + $"{stage.Minutes is not null} {Math.Min(alone, 2)} {opened.Length > alone}";
    }
}
