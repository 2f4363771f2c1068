using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>What stands in a page's head and foot. It may say only what anyone sees on the closed box.</summary>
internal static class PageHead
{
    /// <summary>The names that every page's head and foot use.</summary>
    /// <param name="edition">The site.</param>
    /// <param name="kind">Which page it is, for the stylesheet and the script: <c>front</c>, <c>where</c>, <c>stage</c>, <c>solution</c>, <c>reset</c>, <c>care</c>.</param>
    /// <param name="file">The page's file name, beside the other pages of its language.</param>
    /// <param name="name">A stage's page name, which says nothing of the stage, or null.</param>
    /// <param name="canonical">Where the page lives now, if this is an older address of it.</param>
    public static ScriptObject Of(Edition edition, string kind, string file, string? name = null, string? canonical = null) => View.Of(
        ("kind", kind),
        ("title", edition.Words.Say($"title_{kind}", ("page", name ?? ""), ("book", edition.Book.Title.Value))),
        ("name", name),
        ("canonical", canonical),
        ("indexed", kind == "front"),
        ("help", HelpAddress.Of(edition, name ?? file)),
        ("languages", Languages(edition, file)));

    // The same page in the other languages; null where there is only one.
    private static ScriptArray? Languages(Edition edition, string file) => edition.Plan.Languages.Length < 2
        ? null
        : View.List(edition.Plan.Languages.Select(language => View.Of(
            ("tag", language.Tag),
            ("name", edition.Theme.NameOf(language.Tag)),
            ("here", language.Tag == edition.Book.Language.Value),
            ("href", edition.From(language.Folder + file)))));
}
