using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>How the box is put back, behind a warning: the computed plan step by step, or the stages backwards where there is none.</summary>
internal static class ResetPage
{
    public static SitePage Build(LanguageSite site) => new($"{site.Folder}reset.html", "reset.html", "reset", () => Names(site));

    private static ScriptObject Names(LanguageSite site)
    {
        var plan = site.Plan.Survey.WayBack.Plan;
        var tasks = new ResetTasks(site);
        return site.Page(
            PageHead.Build(site, "reset", "reset.html"),
            ("cautions", View.Cautions(site.Book.Cautions, site.Words)),
            ("stages", View.List(plan.IsEmpty ? Backwards(site, tasks) : AsPlanned(site, tasks, plan))));
    }

    // Steps that follow each other and belong to one stage, or to none, stand together; what stages say beside the plan comes last.
    private static IEnumerable<ScriptObject> AsPlanned(LanguageSite site, ResetTasks tasks, ImmutableArray<Step> plan)
    {
        var told = new HashSet<string>();
        foreach (var together in Together(plan))
        {
            var stage = site.Book.Stages.FirstOrDefault(stage => stage.Id.Value == StageOf(together[0]));
            var lines = together.SelectMany(tasks.Of).ToList();
            yield return stage is not null && told.Add(stage.Id.Value) ? Entry(site, stage, lines) : Handling(site, lines);
        }

        foreach (var stage in site.Book.Stages.Reverse().Where(stage => !told.Contains(stage.Id.Value) && SaysMore(stage)))
            yield return Entry(site, stage, ResetTasks.NotesOf(stage).Concat(ResetTasks.NeverOf(stage)));
    }

    private static IEnumerable<ScriptObject> Backwards(LanguageSite site, ResetTasks tasks) =>
        from stage in site.Book.Stages.Reverse()
        where SaysMore(stage) || ResetTasks.UndosOf(stage).Any()
        select Entry(site, stage, ResetTasks.UndosOf(stage).Reverse().SelectMany(tasks.Of));

    private static IEnumerable<List<Step>> Together(ImmutableArray<Step> plan)
    {
        var together = new List<Step>();
        foreach (var step in plan)
        {
            if (together.Count > 0 && StageOf(together[0]) != StageOf(step))
            {
                yield return together;
                together = [];
            }

            together.Add(step);
        }

        yield return together;
    }

    private static string? StageOf(Step step) => step.Kind == StepKind.PutBack ? step.Stage : null;

    private static bool SaysMore(Stage stage) =>
        stage.Reset is not null || ResetTasks.NotesOf(stage).Concat(ResetTasks.NeverOf(stage)).Any() || stage.Photos.Any(photo => photo.Place == Place.Reset);

    private static ScriptObject Entry(LanguageSite site, Stage stage, IEnumerable<string> tasks) => View.Of(
        ("title", stage.Title.Value),
        ("lang", site.LanguageOf(stage)),
        ("cautions", View.Cautions(stage.Cautions, site.Words)),
        ("tasks", Tasks(site, stage.Id.Value, tasks)),
        ("text", site.Prose.Of(stage.Reset)),
        ("photos", PhotoView.Build(stage.Photos, Place.Reset, site)));

    private static ScriptObject Handling(LanguageSite site, IEnumerable<string> tasks) => View.Of(
        ("title", null), ("lang", Html.Empty), ("cautions", null), ("tasks", Tasks(site, "", tasks)), ("text", Html.Empty), ("photos", null));

    // The key under which a tick is kept says nothing, and lasts as long as the task's own words.
    private static ScriptArray Tasks(LanguageSite site, string stage, IEnumerable<string> tasks) =>
        View.List(tasks.Select(task => View.Of(
            ("says", task),
            ("key", Addresses.Derive(site.Book.Identity, $"reset\n{stage}\n{task}")))));
}
