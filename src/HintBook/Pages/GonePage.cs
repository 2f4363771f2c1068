namespace HintBook.Pages;

/// <summary>The page of a stage that the book has no more: whoever comes there with an old card is told so, and led to their place.</summary>
internal static class GonePage
{
    /// <summary>The page under one of its names.</summary>
    public static SitePage Build(LanguageSite site, string name) => new(
        $"{site.Folder}{name}.html", Theme.GoneTemplate, "gone", () => site.Page(PageHead.Build(site, "gone", $"{name}.html")));
}
