using HintBook.Books;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>The first page: what anyone sees on the closed box, how the hints work, and the stages that are open from the start.</summary>
internal static class FrontPage
{
    // Where “Start” leads as long as there are several stages to begin with: the list of them on the page.
    private const string ListOfFirst = "#first";

    // A longer title is set smaller, so that what follows it stays on a phone's first screen.
    private const int LongTitle = 60;

    public static SitePage Build(LanguageSite site) => new($"{site.Folder}index.html", "front.html", "front", () => Names(site));

    private static ScriptObject Names(LanguageSite site) => site.Page(
        PageHead.Build(site, "front", "index.html"),
        ("welcome", site.Prose.Of(site.Book.Welcome)),
        ("welcome_lang", site.LanguageOf(site.Book.Welcome)),
        ("photos", PhotoView.Build(site.Book.Photos, Place.Front, site)),
        ("cautions", CautionView.List(site.Book.Cautions, site)),
        ("is_long", site.Book.Title.Value.Length > LongTitle),
        ("start", site.Plan.Survey.First is [var only] ? site.Plan.Addresses.PageOf(only) : ListOfFirst),
        ("first", View.List(site.Plan.Survey.First.Select(stage => StageLink.Of(site, stage)))));
}
