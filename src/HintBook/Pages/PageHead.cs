using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>What stands in a page's head and foot. It may say only what anyone sees on the closed box.</summary>
internal static class PageHead
{
    /// <summary>The names that every page's head and foot use.</summary>
    /// <param name="edition">The site.</param>
    /// <param name="kind">Which page it is, for the stylesheet and the script: <c>front</c>, <c>stage</c>, <c>solution</c>, <c>reset</c>.</param>
    /// <param name="titleWord">The word that makes the title; <c>{book}</c> and <c>{page}</c> are filled in.</param>
    /// <param name="name">A stage's page name, which says nothing of the stage, or null.</param>
    /// <param name="canonical">Where the page lives now, if this is an older address of it.</param>
    public static ScriptObject Of(Edition edition, string kind, string titleWord, string? name = null, string? canonical = null) => View.Of(
        ("kind", kind),
        ("title", edition.Words.Say(titleWord, ("page", name ?? ""), ("book", edition.Book.Title.Value))),
        ("name", name),
        ("canonical", canonical),
        ("indexed", kind == "front"));
}
