using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>How the box is put back, behind a warning: the computed plan step by step, or the stages backwards where there is none.</summary>
internal static class ResetPage
{
    public static SitePage Of(Edition edition) => new($"{edition.Folder}reset.html", "reset.html", "reset", () => Names(edition));

    private static ScriptObject Names(Edition edition)
    {
        var plan = edition.Plan.Survey.WayBack.Plan;
        var tasks = new ResetTasks(edition);
        return edition.Page(
            PageHead.Of(edition, "reset", "reset.html"),
            ("cautions", View.Cautions(edition.Book.Cautions, edition.Words)),
            ("stages", View.List(plan.IsEmpty ? Backwards(edition, tasks) : AsPlanned(edition, tasks, plan))));
    }

    // Steps that follow each other and belong to one stage, or to none, stand together; what stages say beside the plan comes last.
    private static IEnumerable<ScriptObject> AsPlanned(Edition edition, ResetTasks tasks, ImmutableArray<Step> plan)
    {
        var told = new HashSet<string>();
        foreach (var together in Together(plan))
        {
            var stage = edition.Book.Stages.FirstOrDefault(stage => stage.Id.Value == StageOf(together[0]));
            var lines = together.SelectMany(tasks.Of).ToList();
            yield return stage is not null && told.Add(stage.Id.Value) ? Entry(edition, stage, lines) : Handling(edition, lines);
        }

        foreach (var stage in edition.Book.Stages.Reverse().Where(stage => !told.Contains(stage.Id.Value) && SaysMore(stage)))
            yield return Entry(edition, stage, ResetTasks.NotesOf(stage));
    }

    private static IEnumerable<ScriptObject> Backwards(Edition edition, ResetTasks tasks) =>
        from stage in edition.Book.Stages.Reverse()
        where SaysMore(stage) || ResetTasks.UndosOf(stage).Any()
        select Entry(edition, stage, ResetTasks.UndosOf(stage).Reverse().SelectMany(tasks.Of));

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
        stage.Reset is not null || ResetTasks.NotesOf(stage).Any() || stage.Photos.Any(photo => photo.Place == Place.Reset);

    private static ScriptObject Entry(Edition edition, Stage stage, IEnumerable<string> tasks) => View.Of(
        ("title", stage.Title.Value),
        ("lang", edition.LanguageOf(stage)),
        ("cautions", View.Cautions(stage.Cautions, edition.Words)),
        ("tasks", Tasks(edition, stage.Id.Value, tasks)),
        ("text", edition.Prose.Of(stage.Reset)),
        ("photos", PhotoView.Of(stage.Photos, Place.Reset, edition)));

    private static ScriptObject Handling(Edition edition, IEnumerable<string> tasks) => View.Of(
        ("title", null), ("lang", Html.Empty), ("cautions", null), ("tasks", Tasks(edition, "", tasks)), ("text", Html.Empty), ("photos", null));

    // The key under which a tick is kept says nothing, and lasts as long as the task's own words.
    private static ScriptArray Tasks(Edition edition, string stage, IEnumerable<string> tasks) =>
        View.List(tasks.Select(task => View.Of(
            ("says", task),
            ("key", Addresses.Derive(edition.Book.Identity, $"reset\n{stage}\n{task}")))));
}
