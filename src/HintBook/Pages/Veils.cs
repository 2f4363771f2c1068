using HintBook.Books;
using HintBook.Spoilers;

namespace HintBook.Pages;

/// <summary>
/// Which pictures in an opened step of help show at once. A picture waits behind a veil only where it shows something (<c>shows:</c>) that
/// every reader there may still want to find out: something that isn't known on every way to the stage, and that neither this step's text nor
/// one before it names.
/// </summary>
internal static class Veils
{
    private static readonly Place[] Steps = [Place.Nudge, Place.Clue, Place.Answer];

    /// <summary>The pictures in steps of help that need no veil, compared by reference.</summary>
    public static IReadOnlySet<Photo> NotNeeded(SitePlan plan)
    {
        var names = plan.Book.Box.Names.DistinctBy(named => named.Id.Value).ToDictionary(named => named.Id.Value, StringComparer.Ordinal);
        var stages = plan.Book.Stages.DistinctBy(stage => stage.Id.Value).ToDictionary(stage => stage.Id.Value, StringComparer.Ordinal);
        var search = new NamesSaid(names.Values, plan.Book.Language.Value);
        return plan.Book.Stages.SelectMany(Of).ToHashSet<Photo>(ReferenceEqualityComparer.Instance);

        IEnumerable<Photo> Of(Stage stage) =>
            from photo in stage.Photos
            where Steps.Contains(photo.Place) && photo.Shows.All(shown => IsKnown(shown.Value, stage) || IsSaid(shown.Value, stage, photo.Place))
            select photo;

        bool IsKnown(string id, Stage stage) =>
            names.GetValueOrDefault(id) is { Seen: true }
            || (plan.Survey.Stages.GetValueOrDefault(stage.Id.Value) is { } survey
                && (survey.Gained.Contains(id)
                    || survey.Attained.Any(placed => placed.Name == id)
                    || survey.CertainBefore.Any(before => stages.TryGetValue(before, out var done) && Handles(done, id))));

        bool IsSaid(string id, Stage stage, Place step)
        {
            var read = TextUpTo(stage, step);
            return names.GetValueOrDefault(id) is Code code
                ? read.Contains(code.Answer.Value, StringComparison.OrdinalIgnoreCase)
                : search.In(read).Contains(id);
        }
    }

    private static bool Handles(Stage stage, string id) => stage.Moves.SelectMany(move => move.Changes).Any(change => change.Name.Value == id);

    private static string TextUpTo(Stage stage, Place step) => string.Join('\n',
    [
        stage.Title.Value,
        stage.Sign.Value,
        stage.Nudge.Markdown,
        .. step >= Place.Clue ? [stage.Clue.Markdown] : Array.Empty<string>(),
        .. step >= Place.Answer ? [stage.Answer.Markdown] : Array.Empty<string>(),
    ]);
}
