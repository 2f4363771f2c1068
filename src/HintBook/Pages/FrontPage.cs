using HintBook.Books;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>The first page: what anyone sees on the closed box, how the hints work, and the stages that are open from the start.</summary>
internal static class FrontPage
{
    public static SitePage Build(LanguageSite site) => new($"{site.Folder}index.html", "front.html", "front", () => Names(site));

    private static ScriptObject Names(LanguageSite site) => site.Page(
        PageHead.Build(site, "front", "index.html"),
        ("welcome", site.Prose.Of(site.Book.Welcome)),
        ("welcome_lang", site.LanguageOf(site.Book.Welcome)),
        ("photos", PhotoView.Build(site.Book.Photos, Place.Front, site)),
        ("cautions", CautionView.List(site.Book.Cautions, site)),
        ("first", View.List(site.Plan.Survey.First.Select(stage => StageLink.Of(site, stage)))));
}
