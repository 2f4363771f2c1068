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
        var wayOn = WayOn.From(site, stage);
        var shape = Shape(site, stage, wayOn);
        return names.Select((name, age) => new SitePage(
            $"{site.Folder}{name}.html",
            "stage.html",
            age == 0 ? shape : $"{shape} older",
            () => Names(site, stage, wayOn, canonical: age == 0 ? null : $"{names[0]}.html")));
    }

    private static ScriptObject Names(LanguageSite site, Stage stage, WayOn wayOn, string? canonical)
    {
        var name = site.Plan.Addresses.Names[stage.Id.Value][0];
        return site.Page(
            PageHead.Build(site, "stage", $"{name}.html", name, canonical, wayOn.AddressOfWay(site)),
            ("stage", View.Of(
                ("title", stage.Title.Value),
                ("sign", stage.Sign.Value),
                ("lang", site.LanguageOf(stage)),
                ("minutes", stage.Minutes is { } minutes ? site.Words.SayNumber("minutes", "minutes", minutes) : null),
                ("cautions", CautionView.List(stage.Cautions, site)),
                ("gate", Gate(site, stage)),
                ("sign_photos", PhotoView.Build(stage.Photos, Place.Sign, site)),
                ("nudge", Tier(site, stage, stage.Nudge, Place.Nudge)),
                ("clue", Tier(site, stage, stage.Clue, Place.Clue)),
                ("answer", Tier(site, stage, stage.Answer, Place.Answer)),
                ("film", FilmView.OfClip(stage, site)))),
            ("next", wayOn.View(site, stage)));
    }

    // A word has no name: the sign of the stage says where readers find it.
    private static ScriptObject? Gate(LanguageSite site, Stage stage)
    {
        if (site.Plan.Seal is null || stage.Gate is not { } gate)
            return null;
        var code = gate.CodeIn(site.Book.Box);
        return View.Of(("name", code?.Name), ("lang", code is null ? Html.Empty : site.LanguageOfCode(code)));
    }

    private static ScriptObject Tier(LanguageSite site, Stage stage, Prose prose, Place place) => View.Of(
        ("text", site.Prose.Of(prose)),
        ("photos", PhotoView.Build(stage.Photos, place, site)));

    private static string FilmShape(Stage stage) => stage.Clip is not { } clip ? "" : clip.File is null ? "elsewhere" : "film";

    private static string GateShape(LanguageSite site, Stage stage) =>
        site.Plan.Seal is null || stage.Gate is not { } gate ? "" : gate.CodeIn(site.Book.Box) is null ? "word" : "code";

    // Which parts of the template a stage makes use of.
    private static string Shape(LanguageSite site, Stage stage, WayOn wayOn)
    {
        var photos = string.Join(',', stage.Photos
            .Select(photo => $"{photo.Place}{(photo.Marks.IsEmpty ? "" : "+")}{(site.IsVeiled(photo) ? "?" : "")}")
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal));
        return $"stage {photos} {!stage.Cautions.IsEmpty} {stage.Cautions.Any(c => c.Note is not null)} {FilmShape(stage)} "
            + $"{stage.Minutes is not null} {GateShape(site, stage)} {wayOn.Shape}";
    }
}
