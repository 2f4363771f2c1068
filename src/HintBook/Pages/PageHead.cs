using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>What stands in a page's head and foot. It may say only what anyone sees on the closed box.</summary>
internal static class PageHead
{
    /// <summary>The names that every page's head and foot use.</summary>
    /// <param name="site">The site.</param>
    /// <param name="kind">Which page it is, for the stylesheet and the script: <c>front</c>, <c>where</c>, <c>stage</c>, <c>solution</c>,
    /// <c>reset</c>, <c>care</c>, <c>gone</c>.</param>
    /// <param name="file">The page's file name, beside the other pages of its language.</param>
    /// <param name="name">A stage's page name, which says nothing of the stage, or null.</param>
    /// <param name="canonical">Where the page lives now, if this is an older address of it.</param>
    /// <param name="way">The address of what knows all that comes before a stage, or null.</param>
    public static ScriptObject Build(
        LanguageSite site, string kind, string file, string? name = null, string? canonical = null, string? way = null) => View.Of(
        ("kind", kind),
        ("title", site.Words.Say($"title_{kind}", ("page", name ?? ""), ("book", site.Book.Title.Value))),
        ("name", name),
        ("canonical", canonical),
        ("way", way),
        ("indexed", kind == "front"),
        ("help", HelpAddress.Write(site, name ?? file)),
        ("languages", Languages(site, file)));

    // The same page in the other languages; null where there is only one.
    private static ScriptArray? Languages(LanguageSite site, string file) => site.Plan.Languages.Length < 2
        ? null
        : View.List(site.Plan.Languages.Select(language => View.Of(
            ("tag", language.Tag),
            ("name", site.Theme.NameOf(language.Tag)),
            ("here", language.Tag == site.Book.Language.Value),
            ("href", site.From(language.Folder + file)))));
}
