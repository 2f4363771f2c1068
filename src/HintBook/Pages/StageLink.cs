using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>A link to a stage's page: title, sign, and when it opens.</summary>
internal static class StageLink
{
    public static ScriptObject Of(LanguageSite site, string id)
    {
        var stage = site.Stages[id];
        return View.Of(
            ("title", stage.Title.Value),
            ("sign", stage.Sign.Value),
            ("lang", site.LanguageOf(stage)),
            ("page", site.Plan.Addresses.Names[id][0]),
            ("href", site.Plan.Addresses.PageOf(id)),
            ("after", NextStages.Groups(site.Plan, id)));
    }
}
