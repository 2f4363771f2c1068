using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>A link to a stage's page: title and sign, in the other languages of the book as well, and when it opens.</summary>
internal static class StageLink
{
    /// <summary>The link, put together once for all pages: templates don't change what they get.</summary>
    public static ScriptObject Of(LanguageSite site, string id) => site.Links.GetOrAdd(id, static (each, of) => Made(of, each), site);

    private static ScriptObject Made(LanguageSite site, string id)
    {
        var stage = site.Stages[id];
        return View.Of(
            ("title", stage.Title.Value),
            ("sign", stage.Sign.Value),
            ("lang", site.LanguageOf(stage)),
            ("page", site.Plan.Addresses.Names[id][0]),
            ("href", site.Plan.Addresses.PageOf(id)),
            ("after", NextStages.Groups(site.Plan, id)),
            ("others", Others(site, id)));
    }

    // For a reader who changes the language: what the device has met in one is then known in the others.
    private static ScriptArray? Others(LanguageSite site, string id)
    {
        var others = View.List(
            from other in site.InOtherLanguages
            let stage = other.Stages.GetValueOrDefault(id)
            where stage is not null
            select View.Of(("lang", other.Says), ("title", stage.Title.Value), ("sign", stage.Sign.Value)));
        return others.Count == 0 ? null : others;
    }
}
